/** What papers say, in English. Amounts, days and names come in already written. */
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { StrengthPrefix } from '../../../shared/schemas/labels.ts'
import type { Cut, FilterMedium } from '../../../shared/schemas/moves.ts'
import type { Shop } from '../../../shared/schemas/season.ts'
import type { Loss, TaskKind } from '../../../shared/schemas/tasks.ts'
import { tables } from './en-tables.ts'

type Sweetener = 'sugar' | 'honey'

const deeds: Readonly<Record<TaskKind, string>> = {
  charge: 'Charge fruit',
  addSpirit: 'Pour the spirit',
  strengthen: 'Strengthen',
  coverFruit: 'Cover the fruit',
  lookIn: 'Look in',
  turn: 'Turn',
  drawOff: 'Draw off',
  coverWithSugar: 'Cover the fruit with sugar',
  pourOffSugarDraw: 'Pour off the sugar draw',
  press: 'Press the fruit',
  clearJar: 'Throw out the spent fruit',
  marry: 'Marry the extracts',
  rack: 'Rack off the sediment',
  filter: 'Filter',
  bottle: 'Bottle',
  taste: 'Taste',
  drinkUp: 'Drink up',
  finishOpened: 'Finish the open bottle',
}

const losses: Readonly<Record<Loss, string>> = {
  ferments: 'it begins to ferment',
  mould: 'the fruit may mould',
  stones: 'the stones have been in too long',
  oversteeps: 'the fruit gives up bitterness',
  fades: 'it fades',
  idle: 'it only takes up its vessel',
  nothing: 'nothing is lost',
}

const media: Readonly<Record<FilterMedium, string>> = {
  sieve: 'a sieve',
  cloth: 'a cloth',
  paper: 'paper',
  racking: 'racking off the sediment',
}

const cuts: Readonly<Record<Cut, string>> = {
  whole: 'whole',
  pricked: 'pricked',
  cut: 'cut',
  crushed: 'crushed',
  frozen: 'frozen',
}

const sweeteners: Readonly<Record<Sweetener, string>> = { sugar: 'sugar', honey: 'honey' }

const shops: Readonly<Record<Shop, string>> = {
  market: 'Market',
  hedgerow: 'Hedgerow',
  grocer: 'Grocer',
  spirits: 'Spirit shop',
  supplies: 'Bottles and corks',
}

/** What is done there, as a calendar says it. */
const errands: Readonly<Record<Shop, string>> = {
  market: 'Buy at the market',
  hedgerow: 'Gather from the hedgerow',
  grocer: 'Buy at the grocer',
  spirits: 'Buy at the spirit shop',
  supplies: 'Buy bottles and corks',
}

const strengthPrefixes: Readonly<Record<StrengthPrefix, string>> = {
  none: '',
  alc: 'alc. ',
  alcohol: 'alcohol ',
}

const bottles = (count: number): string => `${count} ${count === 1 ? 'bottle' : 'bottles'}`

export const en = {
  units: { pctVol: '% vol', L: 'L', gPerL: 'g/L' },
  fruitName: ({ nameEn }: Pick<Fruit, 'nameEn' | 'namePl'>): string => nameEn,
  task: {
    summary: (kind: TaskKind, batch: string): string => `${deeds[kind]}: ${batch}`,
    where: (jars: string): string => `In ${jars}.`,
    from: (day: string): string => `Can be done from ${day}.`,
    late: (day: string, loss: Loss): string => `From ${day} ${losses[loss]}.`,
  },
  plan: {
    toBuy: 'To buy',
    toDo: 'To do',
    spirit: (volume: string, strength: string): string => `${volume} spirit at ${strength}`,
    sweetener: (mass: string, which: Sweetener): string => `${mass} ${sweeteners[which]}`,
    bottles: (count: number, size: string): string => `${bottles(count)} of ${size}`,
    fruit: (mass: string, name: string): string => `${mass} ${name.toLowerCase()}`,
    cutFruit: (fruit: string, cut: Cut): string => `${fruit}, ${cuts[cut]}`,
    charge: (fruits: string): string => `Fill the jar with ${fruits}.`,
    stirIn: (sweetener: string): string => `Stir in ${sweetener} until it is dissolved.`,
    layer: (sweetener: string): string => `Cover it with ${sweetener}, in layers.`,
    addSpirit: (volume: string, strengths: string): string =>
      `Add ${volume} spirit (${strengths}).`,
    pourOnSpirit: (volume: string, strengths: string): string =>
      `Pour on ${volume} spirit (${strengths}).`,
    addWater: (volume: string): string => `Add ${volume} water.`,
    drawOff: 'Pour off the liquid, and keep it.',
    coverWithSugar: (sweetener: string): string =>
      `Cover the fruit with ${sweetener}; turn it every day.`,
    press: 'Press the fruit.',
    marry: 'Pour the extracts together.',
    filter: (medium: FilterMedium): string => `Filter through ${media[medium]}.`,
    bottle: (count: number, size: string): string => `Fill ${bottles(count)} of ${size}.`,
    nothing: 'Nothing comes out of it.',
    inBottles: (count: number, volume: string): string => `${bottles(count)} (${volume})`,
    over: (volume: string): string => ` and ${volume} over`,
    outcome: (whole: string, strength: string, sugar: string): string =>
      `${whole} at ${strength} with ${sugar} sugar`,
    ready: (day: string): string => `Ready about ${day}.`,
    drinkBy: (day: string): string => `Best drunk by ${day}.`,
    costs: (money: string): string => `Costs ${money}.`,
    costsInPart: (money: string): string => `Costs ${money}, of what has a price.`,
    standard: (temperature: string): string =>
      `Amounts are for ${temperature}. Keep strong spirit away from flames.`,
  },
  purchases: {
    title: 'Purchases',
    none: 'Nothing is to be bought.',
    open: (count: number, all: number): string => `${count} of ${all} still to buy`,
    inPart: (money: string): string => `${money} for what has a price`,
    week: (day: string): string => `Week of ${day}`,
    shop: (shop: Shop): string => shops[shop],
    errand: (shop: Shop): string => errands[shop],
    anyFruit: 'fruit',
    spirit: (strength: string): string => `Spirit at ${strength}`,
    sweetener: (which: Sweetener): string => ({ sugar: 'Sugar', honey: 'Honey' })[which],
    bottle: (size: string): string => `Bottles of ${size}`,
    cork: 'Corks',
    label: 'Labels',
    for: (kinds: string): string => `for ${kinds}`,
    columns: {
      week: 'Week of',
      shop: 'Shop',
      goods: 'Goods',
      count: 'Count',
      price: (currency: string): string => `Price (${currency})`,
      bought: 'Bought on',
      for: 'For',
    },
  },
  tables,
  label: {
    file: 'Labels',
    test: 'Alignment test',
    strengthPrefix: (prefix: StrengthPrefix): string => strengthPrefixes[prefix],
    batch: (id: string): string => `Batch ${id}`,
    bottled: (day: string): string => `Bottled ${day}`,
    and: (first: string, second: string): string => `${first} and ${second}`,
    liqueur: (fruits: string): string => `${fruits} liqueur`,
    inSpirit: (fruits: string): string => `${fruits} in spirit`,
    ingredients: {
      spirit: 'spirit',
      sugar: 'sugar',
      honey: 'honey',
      water: 'water',
      acid: 'citric acid',
    },
    nuts: (names: string): string => `Contains nuts: ${names}`,
    energy: (amounts: string): string => `Energy in 100\u00a0ml: ${amounts}`,
    drinksUs: (count: string): string => `${count} US standard drinks (14\u00a0g each)`,
    drinksUk: (count: string): string => `${count} UK units`,
    drinks: (count: string): string => `${count} standard drinks (10\u00a0g each)`,
    stones: 'Made with stone fruit: a stone or a piece of one may be in it.',
    children: 'Keep out of the reach of children.',
  },
  reminder: {
    title: (count: number): string =>
      count === 1 ? 'One thing wants your hands' : `${count} things want your hands`,
    more: (names: string, count: number): string => `${names} and ${count} more`,
  },
}

/** What a language must be able to say. */
export type PaperWords = typeof en
