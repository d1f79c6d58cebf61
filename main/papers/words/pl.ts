/** What `en.ts` says, in Polish. */
import type { PaperWords } from './en.ts'
import { tables } from './pl-tables.ts'

const rules = new Intl.PluralRules('pl')

/** "1 butelka", "3 butelki", "7 butelek". */
const counted = (count: number, one: string, few: string, many: string): string => {
  const rule = rules.select(count)
  return `${count} ${rule === 'one' ? one : rule === 'many' ? many : few}`
}

const bottles = (count: number): string => counted(count, 'butelka', 'butelki', 'butelek')
const bottlesToFill = (count: number): string => counted(count, 'butelkę', 'butelki', 'butelek')

const deeds: Readonly<Record<Parameters<PaperWords['task']['summary']>[0], string>> = {
  charge: 'Wsyp owoce',
  addSpirit: 'Wlej spirytus',
  strengthen: 'Wzmocnij',
  coverFruit: 'Zalej owoce',
  lookIn: 'Zajrzyj',
  turn: 'Obróć',
  drawOff: 'Zlej',
  coverWithSugar: 'Zasyp owoce cukrem',
  pourOffSugarDraw: 'Zlej syrop spod zasypu',
  press: 'Wyciśnij owoce',
  clearJar: 'Wyrzuć zużyte owoce',
  marry: 'Skupażuj nalewy',
  rack: 'Ściągnij znad osadu',
  filter: 'Przefiltruj',
  bottle: 'Rozlej do butelek',
  taste: 'Skosztuj',
  drinkUp: 'Wypij',
  finishOpened: 'Dopij otwartą butelkę',
}

const losses: Readonly<Record<Parameters<PaperWords['task']['late']>[1], string>> = {
  ferments: 'zaczyna fermentować',
  mould: 'owoce mogą spleśnieć',
  stones: 'pestki leżą za długo',
  oversteeps: 'owoce oddają gorycz',
  fades: 'słabnie',
  idle: 'tylko zajmuje naczynie',
  nothing: 'nic się nie traci',
}

const media: Readonly<Record<Parameters<PaperWords['plan']['filter']>[0], string>> = {
  sieve: 'przez sito',
  cloth: 'przez płótno',
  paper: 'przez papier',
  racking: 'ściągając znad osadu',
}

const cuts: Readonly<Record<Parameters<PaperWords['plan']['cutFruit']>[1], string>> = {
  whole: 'całe',
  pricked: 'nakłute',
  cut: 'pokrojone',
  crushed: 'rozgniecione',
  frozen: 'przemrożone',
}

const shops: Readonly<Record<Parameters<PaperWords['purchases']['shop']>[0], string>> = {
  market: 'Targ',
  hedgerow: 'Miedza i las',
  grocer: 'Spożywczy',
  spirits: 'Alkohole',
  supplies: 'Butelki i korki',
}

const errands: typeof shops = {
  market: 'Kup na targu',
  hedgerow: 'Zbierz z miedzy i lasu',
  grocer: 'Kup w spożywczym',
  spirits: 'Kup w sklepie z alkoholem',
  supplies: 'Kup butelki i korki',
}

export const pl: PaperWords = {
  units: { pctVol: '% obj.', L: 'l', gPerL: 'g/l' },
  fruitName: ({ namePl }) => namePl,
  task: {
    summary: (kind, batch) => `${deeds[kind]}: ${batch}`,
    where: (jars) => `Naczynia: ${jars}.`,
    from: (day) => `Można zrobić od ${day}.`,
    late: (day, loss) => `Od ${day} ${losses[loss]}.`,
  },
  plan: {
    toBuy: 'Do kupienia',
    toDo: 'Do zrobienia',
    spirit: (volume, strength) => `spirytus ${strength}, ${volume}`,
    sweetener: (mass, which) => `${which === 'honey' ? 'miód' : 'cukier'}, ${mass}`,
    bottles: (count, size) => `${bottles(count)} ${size}`,
    fruit: (mass, name) => `${name.toLowerCase()}, ${mass}`,
    cutFruit: (fruit, cut) => `${fruit}, ${cuts[cut]}`,
    charge: (fruits) => `Wsyp do naczynia: ${fruits}.`,
    stirIn: (sweetener) => `Wmieszaj do rozpuszczenia: ${sweetener}.`,
    layer: (sweetener) => `Przełóż warstwami: ${sweetener}.`,
    addSpirit: (volume, strengths) => `Dolej ${volume} spirytusu (${strengths}).`,
    pourOnSpirit: (volume, strengths) => `Zalej ${volume} spirytusu (${strengths}).`,
    addWater: (volume) => `Dolej ${volume} wody.`,
    drawOff: 'Zlej płyn i zachowaj go.',
    coverWithSugar: (sweetener) => `Zasyp owoce: ${sweetener}; obracaj codziennie.`,
    press: 'Wyciśnij owoce.',
    marry: 'Zlej nalewy razem.',
    filter: (medium) => `Przefiltruj ${media[medium]}.`,
    bottle: (count, size) => `Napełnij ${bottlesToFill(count)} ${size}.`,
    nothing: 'Nic z tego nie wyjdzie.',
    inBottles: (count, volume) => `${bottles(count)} (${volume})`,
    over: (volume) => ` i zostaje ${volume}`,
    outcome: (whole, strength, sugar) => `${whole}, moc ${strength}, cukier ${sugar}`,
    ready: (day) => `Dojrzeje około ${day}.`,
    drinkBy: (day) => `Najlepsza do ${day}.`,
    costs: (money) => `Kosztuje ${money}.`,
    costsInPart: (money) => `Kosztuje ${money}, licząc to, co ma cenę.`,
    standard: (temperature) =>
      `Ilości podano dla ${temperature}. Trzymaj mocny spirytus z dala od ognia.`,
  },
  purchases: {
    title: 'Zakupy',
    none: 'Nie ma nic do kupienia.',
    open: (count, all) => `${count} z ${all} jeszcze do kupienia`,
    inPart: (money) => `${money} za to, co ma cenę`,
    week: (day) => `Tydzień od ${day}`,
    shop: (shop) => shops[shop],
    errand: (shop) => errands[shop],
    anyFruit: 'owoce',
    spirit: (strength) => `Spirytus ${strength}`,
    sweetener: (which) => (which === 'honey' ? 'Miód' : 'Cukier'),
    bottle: (size) => `Butelki ${size}`,
    cork: 'Korki',
    label: 'Etykiety',
    for: (kinds) => `na: ${kinds}`,
    columns: {
      week: 'Tydzień od',
      shop: 'Sklep',
      goods: 'Towar',
      count: 'Sztuk',
      price: (currency) => `Cena (${currency})`,
      bought: 'Kupiono',
      for: 'Na',
    },
  },
  tables,
  label: {
    file: 'Etykiety',
    test: 'Próba ustawienia',
    strengthPrefix: (prefix) => ({ none: '', alc: 'alk. ', alcohol: 'alkohol ' })[prefix],
    batch: (id) => `Nastaw ${id}`,
    bottled: (day) => `Butelkowano ${day}`,
    and: (first, second) => `${first} i ${second}`,
    liqueur: (fruits) => `likier: ${fruits}`,
    inSpirit: (fruits) => `${fruits} w spirytusie`,
    ingredients: {
      spirit: 'spirytus',
      sugar: 'cukier',
      honey: 'miód',
      water: 'woda',
      acid: 'kwas cytrynowy',
    },
    nuts: (names) => `Zawiera orzechy: ${names}`,
    energy: (amounts) => `Wartość energetyczna w 100\u00a0ml: ${amounts}`,
    drinksUs: (count) => `Porcje standardowe w USA (po 14\u00a0g): ${count}`,
    drinksUk: (count) => `Jednostki brytyjskie: ${count}`,
    drinks: (count) => `Porcje standardowe (po 10\u00a0g): ${count}`,
    stones: 'Z owoców pestkowych: może zawierać pestkę lub jej kawałek.',
    children: 'Trzymać z dala od dzieci.',
  },
  reminder: {
    title: (count) =>
      count === 1
        ? 'Jedna rzecz potrzebuje twoich rąk'
        : counted(
            count,
            'rzecz potrzebuje twoich rąk',
            'rzeczy potrzebują twoich rąk',
            'rzeczy potrzebuje twoich rąk',
          ),
    more: (names, count) => `${names} i jeszcze ${count}`,
  },
}
