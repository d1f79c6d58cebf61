/** Words for every closed set of codes in the contract; a code without words does not compile. */
import type { Caution, JarShape, Stage } from '../../../../shared/schemas/cellar.ts'
import type { ErrorCode, Refusal } from '../../../../shared/schemas/errors.ts'
import type { Cut, FilterMedium, MoveKind, Turned } from '../../../../shared/schemas/moves.ts'
import type { Instrument, ReadingDoubt } from '../../../../shared/schemas/readings.ts'
import type { MatterKind } from '../../../../shared/matter.ts'

const stage = {
  empty: 'not begun',
  layered: 'layered',
  steeping: 'steeping',
  drawnOff: 'drawn off',
  sugarDraw: 'sugar draw',
  pressed: 'pressed',
  married: 'married',
  filtered: 'filtered',
  resting: 'resting',
  finished: 'finished',
} as const satisfies Record<Stage, string>

const move = {
  buy: 'Buy',
  charge: 'Charge fruit',
  sugar: 'Add sugar',
  addAcid: 'Acidify',
  pourSpirit: 'Pour spirit',
  pourWater: 'Pour water',
  keep: 'How it stands',
  stir: 'Stir',
  read: 'Take a reading',
  drawOff: 'Draw off',
  press: 'Press',
  crush: 'Crush',
  coverWithSugar: 'Cover with sugar',
  marry: 'Marry',
  filter: 'Filter',
  bottle: 'Bottle',
  bringIn: 'Bring in bottles',
  unbottle: 'Open back into a jar',
  drawBottle: 'Draw a bottle',
  give: 'Give away',
  breakBottle: 'Broken or leaked',
  shelve: 'Move to another place',
  openBottle: 'Open a bottle',
  pourGlass: 'Pour a glass',
  topUp: 'Top up',
  taste: 'Take a taste',
  discard: 'Discard',
  correct: 'Correct',
  remark: 'Note',
} as const satisfies Record<MoveKind, string>

const cut = {
  whole: 'whole',
  pricked: 'pricked',
  cut: 'cut',
  crushed: 'crushed',
  frozen: 'frozen first',
} as const satisfies Record<Cut, string>

const turned = {
  daily: 'turned daily',
  weekly: 'turned weekly',
  never: 'never turned',
} as const satisfies Record<Turned, string>

const medium = {
  sieve: 'sieve',
  cloth: 'cloth',
  paper: 'paper',
  racking: 'racking',
} as const satisfies Record<FilterMedium, string>

const instrument = {
  alcoholometer: 'Alcoholometer',
  hydrometer: 'Hydrometer',
  refractometer: 'Refractometer',
  hydrometerAndRefractometer: 'Hydrometer and refractometer',
  boilOff: 'Boil-off',
  measuringJug: 'Measuring jug',
} as const satisfies Record<Instrument, string>

const doubt = {
  outOfRange: 'This is outside what the instrument can show.',
  strongerThanAnythingPoured: 'This is stronger than any spirit poured into the jar.',
  instrumentMisledBySugar: 'Sugar misleads this instrument: it shows too little strength.',
  noSuchMixture: 'No mixture of spirit, water and sugar shows these numbers together.',
} as const satisfies Record<ReadingDoubt, string>

const shape = {
  jar: 'Jar',
  demijohn: 'Demijohn',
  crock: 'Crock',
  flask: 'Flask',
} as const satisfies Record<JarShape, string>

const matter = {
  ethanolG: 'Ethanol',
  waterG: 'Water',
  sugarG: 'Sugar',
  acidG: 'Acid',
  solublesG: 'Other solubles',
  pulpG: 'Pulp',
} as const satisfies Record<MatterKind, string>

/** `value` and `limit` come in already formatted with their unit. */
const caution = {
  sugarOnlyTooLong: {
    title: 'Fruit and sugar without spirit',
    text: 'It has stood {{value}} without spirit; from {{limit}} on it begins to ferment. Pour the spirit.',
  },
  mayFerment: {
    title: 'May ferment',
    text: 'Strength and sugar together are too low to keep yeast away. Add spirit or sugar, and leave no closed bottle of it.',
  },
  weakForFruit: {
    title: 'Weak for fruit',
    text: 'With fruit in it this jar will come to {{value}}; below {{limit}} fruit may spoil. Pour stronger spirit.',
  },
  jarOverfull: {
    title: 'Overfull',
    text: 'It is filled to {{value}}; above {{limit}} there is no room for turning and warmth. Take some out.',
  },
  uncovered: {
    title: 'Fruit above the liquid',
    text: 'There is {{value}} of free liquid, and the fruit needs about {{limit}} to be covered. Uncovered fruit moulds: top up or press it down.',
  },
  strongSpirit: {
    title: 'Strong spirit',
    text: 'Spirit of {{value}} gives off vapour that burns at room temperature. Keep it from flames, sparks and the hob, and air the room.',
  },
  stonesTooLong: {
    title: 'Stones in the jar for long',
    text: 'Whole stones have been in for {{value}}; after {{limit}} kernels give off bitter, poisonous matter. Draw off.',
  },
  fruitHazard: {
    title: '{{fruit}}: take care',
    text: '{{hazards}}',
  },
  sugarUndissolved: {
    title: 'Sugar at the bottom',
    text: '{{value}} of sugar has not dissolved yet. Stir or turn the jar.',
  },
  openedSpirit: {
    title: 'Is it shut?',
    text: 'It was opened {{since}}, and {{value}} is left. Spirit that stands open loses strength, and its vapour burns at room temperature: shut it tight, away from flames and warmth. If it stood open, measure it, and enter what is left anew at the strength it has.',
  },
} as const satisfies Record<Caution['code'], { title: string; text: string }>

const severity = { note: 'Note', warning: 'Warning' } as const satisfies Record<
  Caution['severity'],
  string
>

/** Why a move cannot be. Amounts and names of places come in already formatted. */
const refusal = {
  notEnough:
    '{{place}} holds {{available}}; you asked for {{asked}}. The most that can be is {{nearest}}.',
  nothingThere: 'There is nothing in {{place}} at that time. Choose another, or a later time.',
  beforeItExisted: '{{place}} is there only from {{from}}. Choose that time or a later one.',
  inTheFuture:
    'That time has not come yet. The book holds only what was done: choose a time up to now.',
  jarTaken: '{{place}} holds another batch ({{batch}}). Choose an empty jar, or one of this batch.',
  noFruit: 'There is no fruit in {{place}}. Choose a jar that holds fruit.',
  unknownPlace: 'There is no {{place}} in this book. It may have been removed: choose another.',
  wrongGoods: '{{place}} is not what this move needs. Choose another lot from the pantry.',
  sameJar: '{{place}} is named twice. Choose two different jars.',
  alreadyThere: '{{place}} is in the book already. Nothing was written again.',
  noSuchMixture:
    'No liquid of this volume, strength and sugar can be in {{place}}. Check the three numbers against each other.',
  noRoom: '{{place}} has room for {{available}}; you asked for {{asked}}.',
  neverFilled:
    'Only {{available}} of {{place}} were ever filled; you counted {{asked}}. The most that can be is {{nearest}}.',
} as const satisfies Record<Refusal['code'], string>

type OtherError = Exclude<ErrorCode, Refusal['code']>

/** What went wrong and what to do; refusals have their own words above. */
const error = {
  unknownChannel:
    'This window and the program behind it are of different versions. Close Ratafia and start it again.',
  badInput: 'Something filled in here is not possible. Check the fields and try again.',
  breaksLater:
    'This would make later moves impossible. Nothing was changed; change those moves first.',
  outOfRange: 'The {{quantity}} is {{value}}. It must lie from {{low}} to {{high}}.',
  ambiguous:
    'So cold, many strengths share this density. Warm the sample to room temperature and measure it again.',
  notFound: 'This is no longer in the book. Go back to the list and open it again.',
  staleEdit:
    'This was changed in another window meanwhile. Look at it as it is now, then change it again.',
  nothingToUndo: 'There is nothing left to undo.',
  stillInUse: 'This is still in use. Empty it first, then try again.',
  bookNewer:
    'This book was last opened by a newer Ratafia. Nothing was touched: use that newer one.',
  bookDamaged:
    'The book’s file is damaged. Nothing was written. Close Ratafia and start it again: it then offers to go back to a backup.',
  bookForeign: 'This file is not a cellar book. Nothing was touched.',
  backupFailed: 'The backup could not be made or used. Open Safekeeping to see why.',
  demoOpen: 'This is the demo, which is not backed up. Go back to your cellar first.',
  bookReadOnly:
    'The book can’t be written: the file or its folder is read-only. Change that, then try again.',
  bookBusy: 'Another program has the book open. Close it there, then try again.',
  demoBusy:
    'The demo is open in another window of Ratafia that keeps its book in the same folder. Close it there, then try again.',
  demoSpoilt:
    'The demo’s file is damaged or of another version; your own book is not touched. Delete “alder-end-demo.ratafia” beside your book: the demo is then made anew.',
  diskFull: 'The disk is full. Nothing was written: free some space, then try again.',
  internal:
    'Something went wrong in Ratafia itself. Nothing was written. Try again; if it stays, start Ratafia again.',
} as const satisfies Record<OtherError, string>

/** Quantities that have a range, as part of a sentence. */
const limited = {
  temperature: 'temperature',
  waterTemperature: 'temperature of the water',
  graduation: 'temperature on the instrument',
  strength: 'strength',
  targetStrength: 'strength wanted',
  sugar: 'sugar',
  targetSugar: 'sugar wanted',
  acid: 'acid',
  volume: 'volume',
  mass: 'weight',
  proof: 'proof',
  density: 'density',
  densityBefore: 'density before boiling',
  densityAfter: 'density after boiling',
  densityOfSpirit: 'density of sugar-free spirit',
  densityOfSyrup: 'density of syrup',
  hydrometer: 'hydrometer’s reading',
  alcoholometer: 'alcoholometer’s reading',
  refractometer: 'refractometer’s reading',
} as const

/** Numbers that are impossible together, and by how much. */
const mixture = {
  densities:
    'No liqueur has these two densities: they are {{by}} away from the nearest that can be. Measure both again, at the same temperature and volume.',
  refraction:
    'No mixture of spirit, water and sugar shows these two numbers: the nearest shows {{nearest}}, which is {{by}} away. Measure both again.',
  overflow:
    'No liquid has this strength with this much sugar: the two alone overfill a litre by {{by}}.',
  other: 'No mixture of spirit, water and sugar has these numbers together.',
} as const

const crashed =
  'This screen stopped working. Nothing in the book was changed. Open the window again to go on.'

const lost =
  'Ratafia does not answer. It may have been closed: start it again and use the new link.'

export const codes = {
  stage,
  move,
  cut,
  turned,
  medium,
  instrument,
  doubt,
  shape,
  matter,
  caution,
  severity,
  refusal,
  error,
  limited,
  mixture,
  lost,
  crashed,
} as const
