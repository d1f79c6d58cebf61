/** Words of Marry and Mend. Amounts, names and lists come in formatted. */
import type {
  BrokenWish,
  MarryRequest,
  Trouble,
  WishName,
} from '../../../../shared/schemas/marrying.ts'
import type { AmountKind, Sense } from '../../../screens/marry/entries.ts'

const wish = {
  strengthPctVol: 'Strength',
  sugarGPerL: 'Sugar',
  acidGPerL: 'Acid',
  volumeMl: 'Volume',
} as const satisfies Record<WishName, string>

const sense = {
  any: 'as it comes',
  exactly: 'exactly',
  atLeast: 'at least',
  atMost: 'at most',
} as const satisfies Record<Sense, string>

const amountKind = {
  most: 'As much as can be',
  volume: 'A volume',
  bottles: 'Whole bottles',
} as const satisfies Record<AmountKind, string>

const prefer = {
  useUp: 'use up the extracts',
  cheapest: 'cost least',
  even: 'take an even share of each',
} as const satisfies Record<MarryRequest['prefer'], string>

const holds = {
  composition: 'Keep what it is like, make less',
  volume: 'Keep the amount, come as near as can be',
} as const satisfies Record<MarryRequest['holds'], string>

const why = {
  beyondParts: '{{wish}} cannot be {{asked}}: these parts make {{low}} to {{high}}.',
  conflict:
    '{{wish}} cannot be {{asked}} together with the rest: with it, these parts make {{low}} to {{high}}.',
  conflictAlone: '{{wish}} cannot be {{asked}} together with the rest.',
  saturation:
    '{{wish}} cannot be {{asked}}: at this strength about {{high}} dissolves, and more would lie at the bottom.',
  stock: '{{wish}} comes to {{reached}} and not {{asked}}: there is no more of {{places}}.',
  stockNone: '{{wish}} comes to {{reached}} and not {{asked}}: nothing chosen is left to use.',
  leastUse: '{{wish}} comes to {{reached}} and not {{asked}}: so much must be used of {{places}}.',
  noEnd: 'Nothing here limits the amount. Say a volume, or a strength.',
} as const satisfies Record<BrokenWish['reason'] | 'conflictAlone' | 'stockNone', string>

const trouble = {
  tooSweet: 'Too sweet',
  tooWeak: 'Too weak',
  tooStrong: 'Too strong',
  tooSour: 'Too sour',
  tooFlat: 'Too flat',
  hazy: 'Hazy',
} as const satisfies Record<Trouble, string>

export const marry = {
  title: 'Marry',
  lead: 'Choose what goes in and say what it shall be: the amounts follow.',
  tabs: { label: 'Marry or mend', marry: 'Marry', mend: 'Mend one jar' },
  parts: {
    title: 'What goes in',
    jars: 'Extracts in jars',
    bottles: 'Older vintages, by whole bottles',
    pantry: 'From the pantry',
    there: '{{amount}} there',
    limits: 'Limits for {{name}}',
    least: 'Use at least',
    most: 'Use at most',
    keepBack: 'Keep back',
    all: 'Use all of it',
    none: 'No jar holds liquid, and the pantry holds neither spirit nor sugar.',
    goBatches: 'Go to Batches',
    water: 'Water from the tap',
    acid: 'Citric acid, bought for it',
    takes: 'takes {{amount}}',
    vintage: '{{name}}, {{size}}',
    ofBatch: 'of {{batch}}',
    more: '{{group}} ({{count}})',
  },
  wishes: {
    title: 'What it shall be',
    sense: '{{wish}}: how',
    value: '{{wish}}, wished for',
    amount: 'How much',
    volume: 'Volume',
    bottleSize: 'Bottle size',
    bottleCount: 'How many',
    bottleCountHint: 'Left empty: as many as can be filled.',
    addSize: 'Another size',
    removeSize: 'Take this size away',
    prefer: 'Of all ways to get there',
  },
  wish,
  sense,
  senseValue: {
    any: '{{value}}',
    exactly: '{{value}}',
    atLeast: '{{value}} or more',
    atMost: '{{value}} or less',
  },
  amountKind,
  preferOne: prefer,
  holds,
  answer: {
    title: 'What it comes to',
    label: 'The blend',
    choose: 'Choose at least one thing that goes in.',
    nothing: 'Nothing can be made of this.',
    cost: 'Cost',
    perBottle: '{{cost}} a bottle of {{size}}',
    perGlass: '{{cost}} a glass of {{size}}',
    unknownCost: 'Some of what goes in has no price in the book.',
    acid: '{{acid}} of acid',
    contraction: '{{less}} less than poured, by contraction',
    undissolved: 'About {{sugar}} of sugar would stay at the bottom.',
    broken: 'Not all of it can be had. This is the nearest:',
    cutShort: 'There is less of {{places}} than must be used.',
    filled: '{{bottles}} of {{size}}',
    rest: 'and {{rest}} over',
  },
  why,
  picture: {
    label: 'To scale: {{parts}} flow together into {{target}}',
    part: '{{amount}} of {{name}}',
    noTarget: '{{volume}}, no vessel chosen',
  },
  amounts: {
    title: 'Pour, in this order',
    caption: 'Amounts in the order of pouring',
    order:
      'Dry things first, then the lightest liquid and each heavier one after it: it sinks through what is there and stirs it on its way. A habit of the trade, not a rule of anybody’s.',
    part: 'Part',
    measure: 'Measure',
    weigh: 'Weigh',
    cost: 'Cost',
    usedUp: 'all of it',
    sum: 'Together',
  },
  target: {
    label: 'Pour into',
    choose: 'Choose a vessel',
    empty: '{{jar}}, {{size}}, empty',
    holds: '{{jar}}, {{size}}, holds {{volume}}',
    overBrim: '{{jar}} holds {{size}} to the brim: {{over}} would run over.',
    overSafe: '{{jar}} would stand above its safe fill line, {{over}} too much.',
  },
  pour: {
    title: 'Even in every bottle',
    caption: 'What goes into each bottle',
    bottle: 'Bottle',
    makes: 'Makes',
    remainder: 'Left over',
    total: 'Needed',
    hint: 'Rounded, the same in every bottle of a size. What rounding leaves stands in the last line, so that all adds up.',
    print: 'Print the table',
    each: '{{count}} × {{size}}',
  },
  record: {
    open: 'Record…',
    title: 'Record what was poured',
    needsTarget: 'Choose a vessel to pour into first.',
    overflows: 'This vessel is too small.',
    batch: 'Into the batch',
    newBatch: 'A new batch…',
    name: 'Name of the new batch',
    nameMissing: 'Give it a name.',
    at: 'When',
    note: 'Note',
    go: 'Record it',
    done: 'Recorded into {{batch}}.',
    toBatch: 'Go to the batch',
    after: 'After it, {{jar}}',
    breaks: 'A later move would no longer be possible. Nothing is written until it is changed.',
    acidBought: 'Citric acid bought with it',
    acidMass: 'Bought',
    acidMassHint: 'Left empty: just what goes in. The rest stays in the pantry.',
    acidPrice: 'Price',
  },
  mend: {
    title: 'Mend one jar',
    lead: 'Say what is wrong with a jar: what to add, first to {{sample}} of it, then to all.',
    jar: 'The jar',
    choose: 'Choose a jar',
    none: 'No jar holds liquid.',
    trouble: 'What is wrong',
    target: '{{wish}} shall be',
    holdLabel: 'Keep as it is',
    with: 'What may be added',
    now: 'Now {{value}}',
    add: 'Add to the jar',
    trialAdd: 'Try on {{sample}} first',
    trialHint:
      'Take the sample out, add the small amount, taste after a day, and only then mend the jar: what is added does not come out again.',
    after: 'Then the jar holds',
    costs: 'It costs {{cost}}',
    costsAtLeast: 'It costs {{cost}} and what has no price in the book',
    noneNeeded: 'Nothing needs adding: it is so already.',
    chooseMeans: 'Choose at least one thing that may be added.',
    ratio: '{{ratio}} parts of sugar to one of acid',
    ratioHint: 'Most fruit liqueurs have 12 to 45, about 25.',
    wrongWay: 'That is the other way round: the jar has {{value}} now.',
  },
  trouble,
  haze: {
    title: 'A haze has no sum, but a ladder: the gentlest step first',
    test: {
      title: 'Find out which haze it is',
      text: 'Mix {{sample}} of the liqueur with {{spirit}} of strong spirit ({{strong}} or more). Jelly or threads: pectin. Clear at once: oils, a louche. Neither: fine lees that need time.',
    },
    chill: {
      title: 'Chill and wait',
      text: 'Two weeks as cold as the house allows, without moving it. Much of a haze falls by itself.',
    },
    rack: {
      title: 'Rack',
      text: 'Draw the clear liquid off what has fallen; it costs about 3 % of the volume, {{loss}} here.',
    },
    bentonite: {
      title: 'Bentonite',
      text: '{{low}} to {{high}} for this jar (0.5 to 1 g a litre), swollen for a day in {{waterLow}} to {{waterHigh}} of hot water, stirred in; rack after a week. Try it on {{trial}} first.',
    },
    louche: {
      title: 'If it is a louche',
      text: 'Oils of peel and seeds cloud when the strength falls. Raise the strength, or accept it: it is harmless.',
      action: 'Raise the strength',
    },
    pectin: {
      title: 'If it is pectin',
      text: 'An enzyme breaks pectin down before the spirit goes on the fruit; above about {{limit}} it hardly works any more. Now only cold, racking and time are left; next year, enzyme first.',
    },
    source:
      'Common practice of the trade; the doses are those of the bench, not of a label: follow the packet.',
  },
} as const
