/** Words of the labels: what they say, how they look, and what should be seen before printing. */
import type {
  LabelDesign,
  LabelField,
  LabelPart,
  LabelProblem,
  StrengthPrefix,
} from '../../../../shared/schemas/labels.ts'

const field = {
  name: 'Name',
  kind: 'Kind',
  vintage: 'Vintage',
  strength: 'Strength',
  volume: 'Volume',
  batch: 'Batch',
  bottled: 'Day of bottling',
  ingredients: 'Ingredients',
  allergens: 'Allergens',
  energy: 'Energy',
  drinks: 'Standard drinks',
  cautions: 'Cautions',
  note: 'Note',
} as const satisfies Record<LabelField, string>

const design = {
  parlour: 'Parlour',
  ledger: 'Ledger',
  glass: 'Glass',
  lamplight: 'Lamplight',
} as const satisfies Record<LabelDesign, string>

const part = {
  front: 'Front',
  neck: 'Neck',
} as const satisfies Record<LabelPart, string>

const prefix = {
  none: '30 % vol',
  alc: 'alc. 30 % vol',
  alcohol: 'alcohol 30 % vol',
} as const satisfies Record<StrengthPrefix, string>

const problem = {
  doesNotFit:
    '{{field}}: at the smallest letters only {{share}} has room. Shorten it, or leave something out.',
  noLetters: '{{field}}: there are no letters for {{characters}}. Each is printed as an empty box.',
  rightToLeft: '{{field}}: writing from right to left can’t be set.',
  controlsLeftOut: '{{field}}: invisible control characters are left out.',
  smallLetters:
    '{{field}}: small letters are {{value}} mm high. On what is sold the law asks for {{limit}} mm.',
  codeTooFine:
    'The code’s squares are {{value}} mm wide; below {{limit}} mm not every phone reads them. A larger label or shorter words help.',
  codeLeftOut: 'There is no room for the code: it is left out.',
  emblemLeftOut: 'There is no room for the bottle: it is left out.',
  strengthForm:
    'Strength is not written as the law asks: a number with at most one decimal and “% vol”, with “alc.” or “alcohol” before it if you like.',
  strengthOff: 'Says {{value}}, but the book has {{limit}}.',
} as const satisfies Record<LabelProblem['code'], string>

export const labels = {
  title: 'Labels',
  lead: '{{labels}} on {{sheets}}',
  count_one: '{{count}} label',
  count_other: '{{count}} labels',
  sheets_one: '{{count}} sheet',
  sheets_other: '{{count}} sheets',
  backToShelf: 'Shelf',
  empty: 'Labels are for bottles, and none have been filled yet.',
  toBatches: 'To the batches',
  chooseLot: 'Choose which bottles get labels.',
  save: 'Save PDF',
  saved: 'The PDF is made. Print it at its actual size, without fitting to the page.',
  lots: {
    title: 'Bottles',
    add: 'Add bottles',
    addChoice: 'Choose a lot',
    lot: '{{name}}, {{size}}, {{bottled}}',
    copies: 'Labels for {{name}}',
    unit: 'labels',
    remove: 'Leave out',
    removeNamed: 'Leave out {{name}}',
    notWhole: 'A whole number from 1 to 2000.',
    gone: 'Some of the bottles in this link are not in the book.',
  },
  look: {
    title: 'Look',
    part: 'Which label',
    design: 'Design',
    shown: 'What it says',
    parts: 'What is drawn',
    code: 'Code with a short text',
    emblem: 'The bottle, to scale',
    cutMarks: 'Marks to cut along',
    prefix: 'Strength as',
    neckSays: 'A neck says name, vintage and strength.',
  },
  sheet: {
    title: 'Sheet',
    choose: 'Sheet of labels',
    first: 'Begin at label',
    ofMany: 'of {{count}}',
    notThere: 'The sheet has labels 1 to {{count}}.',
    size: '{{paper}}: {{columns}} × {{rows}} labels of {{width}} × {{height}} mm',
    ownSize: '{{name}}: {{size}}',
    custom: '{{width}} × {{height}} mm',
    test: 'Alignment test',
    testHint:
      'Print the test on plain paper and hold it against a sheet of labels: it shows what your printer shifts.',
    newSheet: 'A sheet of my own',
    editSheet: 'Change this sheet',
    removeSheet: 'Forget this sheet',
  },
  own: {
    title: 'A sheet of my own',
    lead: 'Measure from the paper’s top left corner.',
    name: 'Name',
    paper: 'Paper',
    a4: 'A4',
    letter: 'Letter',
    other: 'Other',
    pageWidth: 'Paper width',
    pageHeight: 'Paper height',
    columns: 'Labels across',
    rows: 'Labels down',
    labelWidth: 'Label width',
    labelHeight: 'Label height',
    marginLeft: 'Left margin',
    marginTop: 'Top margin',
    gapX: 'Gap between columns',
    gapY: 'Gap between rows',
    tooWide: 'The columns need {{needs}} mm; the paper has {{has}} mm.',
    tooHigh: 'The rows need {{needs}} mm; the paper has {{has}} mm.',
    between: '{{min}} to {{max}}.',
    mm: 'mm',
    keep: 'Keep the sheet',
  },
  words: {
    title: 'Words',
    of: 'Words of',
    reset: 'As the book has it',
    book: 'In the book {{strength}}; a label with steeped fruit may be {{tolerance}} off, by European law.',
    nothingShown: 'Nothing is chosen to be said.',
  },
  preview: {
    title: 'Preview',
    page: 'Sheet {{page}} of {{pages}}',
    previous: 'Sheet before',
    next: 'Next sheet',
    closeUp: 'The label of {{name}}',
    picture: 'Sheet {{page}} of {{pages}}: {{names}}',
  },
  problems: {
    warnings: 'To look at before printing',
    notes: 'Worth knowing',
    of: '{{name}}: {{problem}}',
    ...problem,
  },
  field,
  design,
  part,
  prefix,
} as const
