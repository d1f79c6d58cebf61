/** The handbook: a jar's way, instruments, cautions, how numbers are computed, terms. */
import type {
  Chapter,
  Danger,
  HandTool,
  Reckoning,
  Step,
} from '../../../screens/handbook/chapters.ts'

const chapter = {
  stages: 'A jar’s way',
  instruments: 'Instruments',
  cautions: 'Cautions',
  numbers: 'How it is reckoned',
  terms: 'Terms',
} as const satisfies Record<Chapter, string>

/** What is done, and what is written into the book. Strengths come in already formatted. */
const step = {
  layer: {
    name: 'Layer with sugar',
    text: 'Clean, sound fruit is layered with sugar overnight. Sugar draws juice out of living fruit; a day is enough, longer and it ferments.',
    log: 'Charge fruit, with its weight and how it was cut, and Add sugar.',
  },
  cover: {
    name: 'Cover with spirit',
    text: 'Water first, then strong spirit, until the fruit is covered by a finger’s breadth. Juicy fruit takes spirit of {{low}} to {{high}}, peel stronger, herbs weaker.',
    log: 'Pour spirit and Pour water. Ratafia says how strong the jar will be once the fruit’s juice has come out.',
  },
  steep: {
    name: 'Steep in the dark',
    text: 'Weeks for soft or cut fruit, months for whole stone fruit. Turned daily at first, the jar gets on far faster: sugar and juice lie heavy at the bottom.',
    log: 'Take a reading now and then: each moves the forecast of this jar and teaches the book about your fruit.',
  },
  drawOff: {
    name: 'Draw off',
    text: 'When what is still to come is worth less than the wait, the liquid is poured off. The fruit keeps a good part of it.',
    log: 'Draw off, with the volume that came: it tells how much the fruit still holds.',
  },
  sugarDraw: {
    name: 'Draw with sugar',
    text: 'The fruit is crushed and covered with sugar again. It dissolves in the spirit inside, and a sweet extract can be poured off after some days, once or more.',
    log: 'Crush, Cover with sugar, then Draw off.',
  },
  press: {
    name: 'Press',
    text: 'What still hangs in the fruit can be pressed. Then the fruit has given what it had.',
    log: 'Press, with the volume that came, then Discard the fruit.',
  },
  marry: {
    name: 'Marry',
    text: 'The extracts are poured together in even shares, so that all bottles are alike. Water, spirit, sugar or acid bring the blend to what you want.',
    log: 'The Marry screen works out shares and additions; one press writes the moves.',
  },
  filter: {
    name: 'Filter',
    text: 'Sieve, cloth, some days of settling, rack, then paper. Each step keeps a little back.',
    log: 'Filter, with the medium and what came through.',
  },
  bottle: {
    name: 'Bottle',
    text: 'Clean bottles, a little room under the cork, a label on each with name, vintage, strength and sugar.',
    log: 'Bottle, with sizes and numbers; Labels prints what goes on them.',
  },
  rest: {
    name: 'Rest and drink',
    text: 'Harshness rounds off over months, colour and fresh aroma fade over years, the cooler and darker the slower.',
    log: 'Take a taste: your tastings move the window in which the lot is at its best.',
  },
} as const satisfies Record<Step, { name: string; text: string; log: string }>

const tool = {
  hydrometer: {
    name: 'Hydrometer',
    text: 'Floats in the liquid and shows its density: higher in a heavy liquid, deeper in a light one. Sugar makes heavy, alcohol makes light, so that one reading alone says neither.',
  },
  alcoholometer: {
    name: 'Alcoholometer',
    text: 'A hydrometer marked in % vol. Right in spirit and water alone, at the temperature on its stem; wrong as soon as there is sugar.',
  },
  refractometer: {
    name: 'Refractometer',
    text: 'A drop on glass, read in °Bx. Right in juice and syrup; in a liqueur alcohol bends light as well. Together with a density it gives both strength and sugar.',
  },
  boilOff: {
    name: 'Hydrometer and pan',
    text: 'Measure the density, boil a measured sample to a third so that all alcohol goes, fill up with water to where it was, and measure again at the same temperature. Two densities give strength and sugar. Air the room and use no open flame: what goes off burns.',
  },
  scale: {
    name: 'Scale',
    text: 'The most trustworthy of all. Weights add up where volumes do not; a measured flask on a scale is a fine hydrometer.',
  },
  thermometer: {
    name: 'Thermometer',
    text: 'Every reading needs one: from a cool cellar to a warm kitchen the same spirit moves an alcoholometer by several marks.',
  },
} as const satisfies Record<HandTool, { name: string; text: string }>

/** Temperatures and strengths come in already formatted. */
const danger = {
  flame: {
    name: 'Strong spirit burns',
    text: 'Spirit of {{strong}} gives off vapour that a flame or spark lights at {{strongFlash}}, spirit of {{weak}} at {{weakFlash}}. No flame, no hob, no smoking, air the room, open little at a time. Never heat spirit; warm only water or syrup, and let it cool before joining.',
  },
  pouring: {
    name: 'Mixing makes warm',
    text: 'Spirit and water warm each other and shrink. Let them cool before closing the jar, and leave room in it.',
  },
  stones: {
    name: 'Kernels and leaves',
    text: 'Stones of cherries, plums, apricots and peaches, their leaves and bitter almonds hold matter that turns into cyanide. Few stones, whole, not for long; never crushed kernels in a jar; keep it dark.',
  },
  rawFruit: {
    name: 'Fruit that is not eaten raw',
    text: 'Elder berries, rowan and some others are poisonous or upsetting raw, and are heated first. Gather only what you know for certain. The page of each fruit says what to mind.',
  },
  mould: {
    name: 'Fruit above the liquid',
    text: 'It browns and moulds. Weigh it down, cover it, turn the jar. A jar with furry mould is thrown away whole.',
  },
  gas: {
    name: 'Gas in a bottle',
    text: 'A weak sweet liqueur can ferment, and a closed bottle burst. Bubbles, a bulging cork or a hiss: open it with a cloth over it, chill it, add spirit. Ratafia warns by the Delle number; it does not know your yeast.',
  },
  vessels: {
    name: 'Vessels',
    text: 'Glass, lead-free glazed stoneware or stainless steel. No copper, aluminium, zinc, soft rubber or thin plastic with strong spirit.',
  },
  drinking: {
    name: 'Drinking',
    text: 'Alcohol harms. Keep it from children, do not drive, do not drink while pregnant or with medicines that forbid it. A glass of liqueur can hold as much as a glass of wine.',
  },
  law: {
    name: 'Law',
    text: 'Steeping fruit in spirit on which duty was paid is allowed at home in most places, distilling is not, and selling needs a licence almost everywhere. What holds where you live goes before anything said here; ask those who are licensed.',
  },
} as const satisfies Record<Danger, { name: string; text: string }>

/** `source` is where the method or the numbers come from. */
const reckoning = {
  ledger: {
    name: 'The ledger',
    text: 'Every move carries alcohol, water, sugar, acid, other solubles and pulp from one place to another, in grams. Nothing is made or lost: Safekeeping shows the sum. Strength and sugar are worked out from what is in a place, never kept.',
    source:
      'Conservation of mass; the compositions of fruit and their sources are on each fruit’s page.',
  },
  strength: {
    name: 'Spirit and water',
    text: 'Density from strength and temperature by the international formula, strength from density by solving it. Glass instruments are corrected for their own warmth.',
    source:
      'OIML International Alcoholometric Tables, R 22 (1975). Checked against the European Pharmacopoeia and United States gauging tables.',
  },
  sugar: {
    name: 'Sugar and water',
    text: 'Density from sugar and temperature, and the reverse; °Bx is the share of sugar by weight.',
    source: 'ICUMSA SPS-4 density of sucrose solutions.',
  },
  mixture: {
    name: 'Spirit, water and sugar together',
    text: 'The volume of spirit and water alone, plus the room sugar takes up in that much water. Exact where one of them is absent; between, within about 1 kg/m³.',
    source: 'Our composition of the two tables above; no public table of all three was found.',
  },
  readings: {
    name: 'Readings',
    text: 'One reading and what is known of the jar, or two readings together, give strength and sugar with how far they may be out: fineness of the instruments and of the method are carried through.',
    source:
      'Solved with the densities above; refraction by Lorentz and Lorenz, fitted to handbook values (from memory).',
  },
  steeping: {
    name: 'Steeping',
    text: 'Where it ends is known from the balance of matter. How fast it gets there is a half-time by kind of fruit, cut and turning, good to a factor of two or three; your readings narrow it for the jar and for the fruit.',
    source:
      'Diffusion into a limited volume (Crank 1975, from memory, checked by an independent solution); half-times are engineering estimates.',
  },
  yields: {
    name: 'What fruit holds and gives',
    text: 'Litres held by a kilogram after draining and pressing, beginning with the usual and moving to your own with each finished batch.',
    source: 'Estimates within published juice yields; your own measurements.',
  },
  keeping: {
    name: 'Keeping',
    text: 'The Delle number tells whether yeast can live in it. Acidity is left out, which errs to the safe side in tart fruit only.',
    source: 'Kunkee and Amerine 1968, after a wine-laboratory note.',
  },
  ageing: {
    name: 'Ageing',
    text: 'Colour goes by halves, faster when warm; windows begin with the custom for the fruit and shift by strength, sugar, acid, warmth, light and your tastings.',
    source:
      'Published half-lives of anthocyanins in red liqueurs; windows are common practice, no source.',
  },
  stock: {
    name: 'Stock',
    text: 'How fast you drink and give away, by month, from your own book, with a band that is wide while the book is young.',
    source: 'Gamma and Poisson statistics of your own moves.',
  },
  season: {
    name: 'Next season',
    text: 'From wishes and stock back to litres, fruit, spirit and sugar; then jars and weeks are filled by an integer program which covers the wishes by priority, and then saves money. If time runs out, the plan says how far from the best it may be.',
    source:
      'Mixed integer programming (the HiGHS solver); every planned batch is replayed through the ledger.',
  },
} as const satisfies Record<Reckoning, { name: string; text: string; source: string }>

export const handbook = {
  title: 'Handbook',
  open: 'Handbook',
  lead: 'How a liqueur is made in a jar, and how Ratafia reckons.',
  views: 'Chapters',
  chapter,
  step,
  log: 'In the book:',
  tool,
  float: {
    title: 'One hydrometer in three glasses',
    text: 'A liqueur can carry the float as high as water does: alcohol pulls it down, sugar pushes it up.',
    water: 'water',
    spirit: 'spirit',
    liqueur: 'liqueur',
  },
  danger,
  reckoning,
  source: 'From:',
} as const
