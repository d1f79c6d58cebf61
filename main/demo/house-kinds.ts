/** The kinds that Alder End makes: house ratios of our own, within what the fruit library allows. */
import type { Cut } from '../../shared/schemas/moves.ts'

export interface Ingredient {
  readonly fruitId: string
  /** Mass for each kilogram of the main fruit, as bought. */
  readonly kgPerKg: number
  readonly cut: Cut
  /** Stones, cores and peel taken out before charging, as a share of what was bought. */
  readonly refuseShare: number
  /** Zero for what grows in the orchard or the hedge. */
  readonly priceMinorPerKg: number
}

export interface HouseKind {
  readonly id: string
  readonly title: string
  readonly colour: string
  readonly ingredients: readonly [Ingredient, ...Ingredient[]]
  /** The usual day of picking or buying. */
  readonly pickedOn: readonly [month: number, day: number]
  readonly spiritPctVol: number
  readonly kgPerLSpirit: number
  /** Sugar that draws the juice before the spirit, by mass of fruit; zero: straight into spirit. */
  readonly layerSugarShare: number
  /** Sugar over the spent fruit, by mass of fruit; zero: none. */
  readonly drawSugarShare: number
  /** Hard or stony fruit that sugar has shrunk holds on to the rest, whatever the press does. */
  readonly isNeverPressed?: true
  readonly steepDays: number
  readonly sweetener: 'sugar' | 'honey'
  readonly finished: { readonly strengthPctVol: number; readonly sugarGPerL: number }
  /** Citric acid stirred in at the end, where the fruit has too little of its own. */
  readonly addedAcidGPerL?: number
  readonly restMonths: number
  /** What was said of it, young and later. */
  readonly tastings: readonly [young: string, later: string]
}

const orchard = (
  fruitId: string,
  cut: Cut,
  refuseShare = 0,
  priceMinorPerKg = 0,
): readonly [Ingredient] => [{ fruitId, kgPerKg: 1, cut, refuseShare, priceMinorPerKg }]

const lemonPeel: Ingredient = {
  fruitId: 'lemon_peel',
  kgPerKg: 0.12,
  cut: 'cut',
  refuseShare: 0,
  priceMinorPerKg: 900,
}

export const houseKinds = {
  sourCherry: {
    id: 'sour-cherry',
    title: 'Sour cherry',
    colour: '#8c1c2b',
    ingredients: orchard('sour_cherry', 'cut', 0.09, 320),
    pickedOn: [7, 9],
    spiritPctVol: 72,
    kgPerLSpirit: 1.05,
    layerSugarShare: 0.2,
    drawSugarShare: 0.2,
    steepDays: 44,
    sweetener: 'sugar',
    finished: { strengthPctVol: 31, sugarGPerL: 210 },
    restMonths: 6,
    tastings: ['Sharp and bright, the spirit still on top.', 'Round. Almond behind the cherry.'],
  },
  blackcurrant: {
    id: 'blackcurrant',
    title: 'Blackcurrant',
    colour: '#3b1230',
    ingredients: orchard('blackcurrant', 'crushed', 0, 480),
    pickedOn: [7, 14],
    spiritPctVol: 70,
    kgPerLSpirit: 1,
    layerSugarShare: 0.3,
    drawSugarShare: 0.25,
    steepDays: 40,
    sweetener: 'sugar',
    finished: { strengthPctVol: 25, sugarGPerL: 290 },
    restMonths: 4,
    tastings: ['Thick, all leaf and tannin.', 'The leaf is gone, the berry stayed.'],
  },
  raspberry: {
    id: 'raspberry',
    title: 'Raspberry',
    colour: '#b3243c',
    ingredients: orchard('raspberry', 'whole', 0, 750),
    pickedOn: [7, 3],
    spiritPctVol: 70,
    kgPerLSpirit: 1,
    layerSugarShare: 0.2,
    drawSugarShare: 0.2,
    steepDays: 22,
    sweetener: 'sugar',
    finished: { strengthPctVol: 29, sugarGPerL: 200 },
    restMonths: 3,
    tastings: ['Smells of the whole hedge.', 'Paler and browner; drink up.'],
  },
  quince: {
    id: 'quince',
    title: 'Quince',
    colour: '#c8942f',
    ingredients: orchard('quince', 'cut', 0.36, 180),
    pickedOn: [10, 12],
    spiritPctVol: 72,
    kgPerLSpirit: 1.4,
    layerSugarShare: 0.15,
    drawSugarShare: 0.15,
    steepDays: 56,
    sweetener: 'sugar',
    finished: { strengthPctVol: 35, sugarGPerL: 180 },
    restMonths: 6,
    tastings: ['Rough on the tongue, lovely nose.', 'Honey and pear; worth the peeling.'],
  },
  sloe: {
    id: 'sloe',
    title: 'Sloe',
    colour: '#5a1a3a',
    ingredients: orchard('sloe', 'frozen'),
    pickedOn: [10, 22],
    spiritPctVol: 52,
    kgPerLSpirit: 0.62,
    layerSugarShare: 0,
    drawSugarShare: 0.2,
    isNeverPressed: true,
    steepDays: 56,
    sweetener: 'sugar',
    finished: { strengthPctVol: 28, sugarGPerL: 170 },
    restMonths: 9,
    tastings: ['Dry as chalk. Put away.', 'Plum stone and smoke, no longer harsh.'],
  },
  damson: {
    id: 'damson',
    title: 'Damson',
    colour: '#4a2545',
    ingredients: orchard('damson', 'pricked', 0, 220),
    pickedOn: [9, 10],
    spiritPctVol: 55,
    kgPerLSpirit: 0.75,
    layerSugarShare: 0,
    drawSugarShare: 0.22,
    steepDays: 56,
    sweetener: 'sugar',
    finished: { strengthPctVol: 27, sugarGPerL: 200 },
    restMonths: 6,
    tastings: ['Jammy, a little flat.', 'Deep, good with cheese.'],
  },
  walnut: {
    id: 'walnut',
    title: 'Green walnut',
    colour: '#3d3420',
    ingredients: orchard('green_walnut', 'cut'),
    pickedOn: [6, 24],
    spiritPctVol: 68,
    kgPerLSpirit: 0.7,
    layerSugarShare: 0,
    drawSugarShare: 0.25,
    isNeverPressed: true,
    steepDays: 56,
    sweetener: 'sugar',
    finished: { strengthPctVol: 36, sugarGPerL: 150 },
    restMonths: 12,
    tastings: ['Bitter to the roots.', 'Chocolate and iodine, at last.'],
  },
  cornelian: {
    id: 'cornelian-cherry',
    title: 'Cornelian cherry',
    colour: '#a12a1e',
    ingredients: orchard('cornelian_cherry', 'frozen'),
    pickedOn: [9, 16],
    spiritPctVol: 70,
    kgPerLSpirit: 1,
    layerSugarShare: 0,
    drawSugarShare: 0.2,
    steepDays: 84,
    sweetener: 'sugar',
    finished: { strengthPctVol: 35, sugarGPerL: 180 },
    restMonths: 9,
    tastings: ['Sour, clean, a bit of bark.', 'The best red in the house.'],
  },
  orangePeel: {
    id: 'orange-peel',
    title: 'Orange peel',
    colour: '#d9822b',
    ingredients: orchard('orange_peel', 'cut', 0, 600),
    pickedOn: [1, 12],
    spiritPctVol: 75,
    kgPerLSpirit: 0.15,
    layerSugarShare: 0,
    drawSugarShare: 0,
    steepDays: 14,
    sweetener: 'sugar',
    finished: { strengthPctVol: 35, sugarGPerL: 230 },
    restMonths: 2,
    tastings: ['Clouded when watered, as always.', 'Marmalade.'],
  },
  gingerHoney: {
    id: 'ginger-honey',
    title: 'Ginger and honey',
    colour: '#c9a24b',
    ingredients: [
      { fruitId: 'ginger', kgPerKg: 1, cut: 'cut', refuseShare: 0.07, priceMinorPerKg: 650 },
      lemonPeel,
    ],
    pickedOn: [2, 4],
    spiritPctVol: 62,
    kgPerLSpirit: 0.2,
    layerSugarShare: 0,
    drawSugarShare: 0,
    steepDays: 12,
    sweetener: 'honey',
    finished: { strengthPctVol: 32, sugarGPerL: 220 },
    addedAcidGPerL: 2,
    restMonths: 3,
    tastings: ['Hot. Honey haze will take its time.', 'Clear at the top; a winter bottle.'],
  },
  strawberry: {
    id: 'strawberry',
    title: 'Strawberry',
    colour: '#c4473f',
    ingredients: orchard('strawberry', 'cut', 0.05, 420),
    pickedOn: [6, 8],
    spiritPctVol: 70,
    kgPerLSpirit: 1.1,
    layerSugarShare: 0.25,
    drawSugarShare: 0.15,
    steepDays: 14,
    sweetener: 'sugar',
    finished: { strengthPctVol: 28, sugarGPerL: 200 },
    restMonths: 2,
    tastings: ['Sweets shop.', 'Gone brown, still kind.'],
  },
  elderflower: {
    id: 'elderflower',
    title: 'Elderflower',
    colour: '#ddc98a',
    ingredients: [
      { fruitId: 'elderflower', kgPerKg: 1, cut: 'whole', refuseShare: 0, priceMinorPerKg: 0 },
      lemonPeel,
    ],
    pickedOn: [6, 1],
    spiritPctVol: 55,
    kgPerLSpirit: 0.2,
    layerSugarShare: 0,
    drawSugarShare: 0,
    steepDays: 7,
    sweetener: 'sugar',
    finished: { strengthPctVol: 27, sugarGPerL: 220 },
    addedAcidGPerL: 3,
    restMonths: 2,
    tastings: ['June in a glass.', 'Muscat, a little tea.'],
  },
  plum: {
    id: 'plum',
    title: 'Plum',
    colour: '#7a2f4e',
    ingredients: orchard('plum', 'cut', 0.06, 160),
    pickedOn: [9, 2],
    spiritPctVol: 74,
    kgPerLSpirit: 1,
    layerSugarShare: 0.12,
    drawSugarShare: 0.15,
    steepDays: 56,
    sweetener: 'sugar',
    finished: { strengthPctVol: 34, sugarGPerL: 150 },
    restMonths: 6,
    tastings: ['Skins and stones.', 'Prune, cinnamon though there is none.'],
  },
  japaneseQuince: {
    id: 'japanese-quince',
    title: 'Japanese quince',
    colour: '#d6b13f',
    ingredients: orchard('japanese_quince', 'cut', 0.18, 250),
    pickedOn: [10, 4],
    spiritPctVol: 74,
    kgPerLSpirit: 1.1,
    layerSugarShare: 0.4,
    drawSugarShare: 0.2,
    steepDays: 42,
    sweetener: 'sugar',
    finished: { strengthPctVol: 33, sugarGPerL: 240 },
    restMonths: 6,
    tastings: ['Lemon with shoulders.', 'As sharp as the first day, and better for it.'],
  },
  rowan: {
    id: 'rowan',
    title: 'Rowan',
    colour: '#b5532c',
    ingredients: orchard('rowan', 'frozen'),
    pickedOn: [10, 8],
    spiritPctVol: 64,
    kgPerLSpirit: 0.65,
    layerSugarShare: 0,
    drawSugarShare: 0.15,
    isNeverPressed: true,
    steepDays: 56,
    sweetener: 'sugar',
    finished: { strengthPctVol: 38, sugarGPerL: 130 },
    restMonths: 12,
    tastings: ['Medicine.', 'Marzipan and grapefruit pith.'],
  },
  apricot: {
    id: 'apricot',
    title: 'Apricot',
    colour: '#d98f3c',
    ingredients: orchard('apricot', 'cut', 0.07, 390),
    pickedOn: [7, 22],
    spiritPctVol: 70,
    kgPerLSpirit: 1.1,
    layerSugarShare: 0.18,
    drawSugarShare: 0.18,
    steepDays: 35,
    sweetener: 'sugar',
    finished: { strengthPctVol: 31, sugarGPerL: 180 },
    restMonths: 5,
    tastings: ['Cloudy, promising.', 'Bright since it was racked.'],
  },
  blackberry: {
    id: 'blackberry',
    title: 'Blackberry',
    colour: '#43203f',
    ingredients: orchard('blackberry', 'frozen'),
    pickedOn: [8, 24],
    spiritPctVol: 70,
    kgPerLSpirit: 0.95,
    layerSugarShare: 0.2,
    drawSugarShare: 0.18,
    steepDays: 34,
    sweetener: 'sugar',
    finished: { strengthPctVol: 30, sugarGPerL: 200 },
    restMonths: 4,
    tastings: ['Seeds give it a grip.', 'Soft, a bit woody.'],
  },
} as const satisfies Record<string, HouseKind>

export type KindName = keyof typeof houseKinds
