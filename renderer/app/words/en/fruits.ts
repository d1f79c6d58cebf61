/** Words of the fruit library and of one fruit's page. Numbers and months come in formatted. */
import type { FruitOrigin, KineticClass, Piece } from '../../../../shared/schemas/fruits.ts'
import type { FactGroup, FactName, FactUnit } from '../../../screens/fruits/facts.ts'
import type { KnownKind } from '../../../screens/fruits/kinds.ts'
import type { FruitGroup } from '../../../screens/fruits/list-of-fruits.ts'
import type { LearnedQuantity } from '../../../screens/fruits/learned-lines.ts'

const kind = {
  berry: 'berry',
  stoneFruit: 'stone fruit',
  drupe: 'drupe',
  pome: 'pome',
  citrus: 'citrus',
  hip: 'hip',
  stalk: 'stalk',
  nut: 'nut',
  flower: 'flower',
  root: 'root',
  spice: 'spice',
  dry: 'dry goods',
  dried: 'dried fruit',
  other: 'other fruit',
} as const satisfies Record<KnownKind, string>

/** How liquid gets in and out. */
const kineticClass = {
  cutSoft: 'cut soft flesh',
  softWhole: 'soft, whole',
  thinSkin: 'thin skin',
  waxySkin: 'waxy skin',
  hardSlice: 'hard slices',
  dry: 'dry',
  driedFruit: 'dried fruit',
} as const satisfies Record<KineticClass, string>

const shape = {
  slab: 'slice',
  cylinder: 'stick',
  sphere: 'ball',
} as const satisfies Record<Piece['shape'], string>

const origin = {
  library: 'library',
  edited: 'your copy',
  own: 'your own',
} as const satisfies Record<FruitOrigin, string>

const group = {
  all: 'All',
  inSeason: 'In season now',
  yours: 'Yours',
} as const satisfies Record<FruitGroup, string>

const factGroup = {
  steeping: 'How it is steeped',
  liquid: 'How it treats liquid',
  composition: 'What it is made of',
} as const satisfies Record<FactGroup, string>

const fact = {
  steepingStrength: 'Strength of the spirit',
  steepingWeeks: 'Time in the spirit',
  fruitPerSpirit: 'Fruit to spirit',
  finishedStrength: 'Finished strength',
  finishedSugar: 'Finished sugar',
  rest: 'Rest before drinking',
  drinkBy: 'Best drunk within',
  kineticClass: 'Steeps as',
  piece: 'Piece',
  drained: 'Held after draining',
  pressed: 'Held after pressing',
  bulkDensity: 'Loosely filled in a jar',
  pace: 'Pace against its class',
  pectinHaze: 'Haze from pectin',
  edible: 'Edible part',
  water: 'Water',
  sugar: 'Sugar',
  acid: 'Acid',
  solubles: 'Other solubles',
  pulp: 'Insoluble',
} as const satisfies Record<FactName, string>

/** After a number that has no other unit. */
const unit = {
  pct: '%',
  weeks: 'weeks',
  months: 'months',
  years: 'years',
  times: '×',
} as const satisfies Record<FactUnit, string>

const learned = {
  drainedLPerKg: 'Held after draining',
  pressedLPerKg: 'Held after pressing',
  yieldLPerKg: 'Finished liqueur from edible fruit',
  pace: 'Pace against its kinetic class',
} as const satisfies Record<LearnedQuantity, string>

export const fruits = {
  title: 'Fruit',
  lead: '{{all}} kinds; {{inSeason}} in season this month.',
  list: 'Kinds of fruit',
  search: 'Search by name or kind',
  filter: 'Which fruit',
  shown: '{{shown}} of {{all}}',
  noMatch: 'No fruit matches.',
  noneYours:
    'Nothing here is yours yet. Edit a fruit to keep a copy of your own, or add a kind that the library lacks.',
  noneInSeason: 'Nothing is in season this month.',
  showAll: 'Show all',
  add: 'Add a fruit',
  columns: {
    name: 'Fruit',
    season: 'Season',
    kind: 'Kind',
    kineticClass: 'Steeps as',
    origin: 'From',
  },
  kind,
  kineticClass,
  shape,
  origin,
  group,
  factGroup,
  fact,
  unit,
  haze: { low: 'unlikely', medium: 'possible', high: 'likely' },
  season: {
    title: 'Season',
    allYear: 'all year',
    months: '{{from}} to {{to}}',
    oneMonth: '{{month}}',
    peak: 'best in {{months}}',
    earlier_one: 'Around the Mediterranean {{count}} week earlier.',
    earlier_other: 'Around the Mediterranean {{count}} weeks earlier.',
    later_one: 'Around the Mediterranean {{count}} week later.',
    later_other: 'Around the Mediterranean {{count}} weeks later.',
    north: 'In the north-temperate zone.',
  },
  page: {
    back: 'All fruit',
    edit: 'Edit',
    another: 'Add one like it',
    reset: 'Back to the library',
    delete: 'Delete',
    inUse: 'A purchase, draft or recipe names it, so it stays in the book.',
    originText: {
      edited: 'Your copy. Charges from now on reckon with it; earlier ones keep what they had.',
      own: 'A kind of your own.',
    } satisfies Record<Exclude<FruitOrigin, 'library'>, string>,
    cautions: 'Take care',
    preparation: 'Preparation',
    columns: { fact: 'Fact', value: 'Typical', range: 'Range', source: 'Source' },
    inLibrary: 'library: {{value}}',
    range: '{{low}} to {{high}}',
    piece: '{{shape}}, {{size}} from the middle to the surface',
  },
  learned: {
    title: 'From your batches',
    none: 'Nothing learned yet. Measure what you draw off and press: batches of this fruit alone will tell how much it holds, how fast it steeps and what it yields.',
    quantity: learned,
    line_one:
      'Yours: {{own}} from {{count}} batch; {{base}} {{library}}; reckoned with {{blended}}.',
    line_other:
      'Yours: {{own}} from {{count}} batches; {{base}} {{library}}; reckoned with {{blended}}.',
    base: { library: 'library', edited: 'your copy', own: 'your figure' } satisfies Record<
      FruitOrigin,
      string
    >,
    batches: 'Batches behind it',
  },
  form: {
    title: 'Edit {{name}}',
    names: 'Name and kind',
    nameEn: 'Name',
    namePl: 'Name in Polish',
    latin: 'Latin name',
    nameMissing: 'Give it a name.',
    kind: 'Kind',
    kindHint: 'Stone fruit gets a warning when its stones stay in for long.',
    kineticClass: 'Steeps as',
    handling: 'Preparation and cautions',
    preparation: 'Preparation',
    hazards: 'Cautions, one a line',
    composition: 'What it is made of',
    compositionHint: 'Of the edible part; what is left of 100 % are other solubles.',
    edible: 'Edible part',
    rest: 'Other solubles: {{rest}}.',
    over: 'The parts come to {{sum}}: that is more than 100 %.',
    piece: 'Piece',
    pieceNone: 'no shape of its own',
    pieceSize: 'From the middle to the surface',
    low: 'Low',
    typical: 'Typical',
    high: 'High',
    order: 'Low, typical and high must rise.',
    allThree: 'Fill in all three, or none.',
    needed: 'Fill in all three.',
    outside: 'From {{min}} to {{max}}.',
    season: 'Season',
    isSeasonal: 'Has a season',
    startMonth: 'From',
    endMonth: 'To',
    peak: 'Best months',
    shift: 'Around the Mediterranean, weeks later (earlier is below zero)',
    pectinHaze: 'Haze from pectin',
    pectinHazeUnknown: 'not known',
    save: 'Save',
    incomplete: 'Something above still needs a number.',
  },
  addForm: {
    title: 'Add a fruit',
    text: 'It begins with the facts of a fruit like it; each can be changed on its page.',
    name: 'Name',
    namePl: 'Name in Polish',
    like: 'Like which fruit',
    choose: 'Choose…',
    likeMissing: 'Choose the fruit most like it.',
    go: 'Add it',
  },
  resetForm: {
    title: 'Back to the library?',
    text: 'Your copy of {{name}} goes, and the library’s facts count again. What was charged before keeps what it had.',
    go: 'Back to the library',
    deleteTitle: 'Delete {{name}}?',
    deleteText: 'Nothing in the book names it. It goes from the list.',
    deleteGo: 'Delete',
  },
} as const
