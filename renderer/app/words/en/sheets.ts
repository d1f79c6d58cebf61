/** Words of coming from a spreadsheet. */
import type { FieldId } from '../../../screens/bring-in/fields.ts'

const field = {
  name: 'Name',
  fruits: 'Fruit',
  date: 'Bottled',
  count: 'Bottles',
  size: 'Bottle size',
  strength: 'Strength',
  sugar: 'Sugar',
  shelf: 'Shelf',
  note: 'Note',
} as const satisfies Record<FieldId, string>

/** Of the file to fill in: with the unit, and found again when it comes back. */
const head = {
  name: 'Name',
  fruits: 'Fruit',
  date: 'Bottled',
  count: 'Bottles',
  size: 'Bottle size (ml)',
  strength: 'Strength (% vol)',
  sugar: 'Sugar (g/L)',
  shelf: 'Shelf',
  note: 'Note',
} as const satisfies Record<FieldId, string>

export const sheets = {
  title: 'From a spreadsheet',
  open: 'From a spreadsheet…',
  lead: 'Bring in the bottles you kept in a spreadsheet. You see every row before anything is written, and one undo takes it all back.',
  firstRun: {
    title: 'I kept a spreadsheet',
    text: 'Bottles that you kept a list of come onto the shelf from a CSV file. Look at every row first.',
  },
  steps: 'Steps',
  step: { file: 'The file', columns: 'Its columns', rows: 'Its rows' },
  back: 'Back',
  toColumns: 'Go on to the columns',
  toRows: 'Look at the rows',
  toShelf: 'To the shelf',
  backToRows: 'Back to the rows',
  done_one: 'Brought in: {{count}} bottle, {{volume}}.',
  done_other: 'Brought in: {{count}} bottles, {{volume}}.',
  column: 'Column {{number}}',
  field,
  head,
  template: {
    bottles: 'bottles',
    first: 'Sloe on rye',
    second: 'Quince with honey',
  },
  file: {
    label: 'CSV file',
    hint: 'In your spreadsheet, choose “Save as” or “Download”, then CSV. Up to 5 MB, 5,000 rows and 100 columns.',
    chosen: 'Chosen: {{name}}. It is read here and left as it is.',
    template: 'No list yet, or a very different one?',
    getTemplate: 'Download a file to fill in',
    letters: 'Letters',
    encoding: {
      'utf-8': 'Unicode (UTF-8)',
      'utf-16le': 'Unicode (UTF-16)',
      'utf-16be': 'Unicode (UTF-16, big-endian)',
      'windows-1250': 'Central European (Windows-1250)',
      'windows-1252': 'Western European (Windows-1252)',
    },
    delimiter: 'Columns are parted by',
    delimiters: { semicolon: 'semicolon ;', comma: 'comma ,', tab: 'tab', bar: 'bar |' },
    hasHeads: 'The first row names the columns',
    begin_one: 'How it begins: {{count}} row',
    begin_other: 'How it begins: {{count}} rows',
    problem: {
      tooLarge:
        'This file is larger than {{max}} MB. Part it, and bring in one part after the other.',
      aSpreadsheet:
        'This is a spreadsheet’s own file. Open it in your spreadsheet and save the sheet as CSV.',
      notText: 'This is no text file. Save the sheet as CSV from your spreadsheet.',
      otherLetters: 'This file has other letters than chosen. Choose others.',
      noRows: 'There are no rows in this file.',
      tooManyRows_one: '{{count}} row is too many: up to {{max}} at a time. Part the file.',
      tooManyRows_other: '{{count}} rows are too many: up to {{max}} at a time. Part the file.',
      tooManyColumns_one: '{{count}} column is too many: up to {{max}}. Is the separator right?',
      tooManyColumns_other:
        '{{count}} columns are too many: up to {{max}}. Is the separator right?',
      openQuote:
        'A quotation mark is opened in row {{line}} and never closed. Close it or take it out, and save the file again.',
    },
  },
  columns: {
    inFile: 'In the file',
    examples: 'For example',
    is: 'What it is',
    isOf: 'What “{{head}}” is',
    how: 'How it is written',
    leaveOut: 'leave out',
    unit: 'Where no unit is written',
    decimalMark: 'Decimal mark',
    marks: { comma: 'comma: 1,5', point: 'point: 1.5' },
    dateOrder: 'Order of dates',
    orders: { dmy: 'day, month, year', mdy: 'month, day, year' },
    choose: 'choose',
    ask: {
      decimalMark: 'These numbers can be read two ways. Say which.',
      dateOrder: 'These dates can be read two ways. Say which.',
    },
    same: 'Not in the file',
    sameHint:
      'Write what holds for every row, or choose a column above. Single rows can be changed in the next step.',
    missing: 'Still needed: {{fields}}.',
    asked: 'A column above can be read two ways: say which.',
  },
  rows: {
    sums: 'What this comes to',
    ready_one: '{{count}} row ready: {{bottles}}, {{volume}}',
    ready_other: '{{count}} rows ready: {{bottles}}, {{volume}}',
    bottles_one: '{{count}} bottle',
    bottles_other: '{{count}} bottles',
    toMend_one: '{{count}} to mend',
    toMend_other: '{{count}} to mend',
    out_one: '{{count}} left out',
    out_other: '{{count}} left out',
    accept_one: 'Bring in {{count}} row',
    accept_other: 'Bring in {{count}} rows',
    leaveOutAll_one: 'Leave out the row to mend',
    leaveOutAll_other: 'Leave out the {{count}} rows to mend',
    mendOnly: 'Only rows to mend',
    mendFirst: 'Mend these rows or leave them out; then the others can be brought in.',
    noneToMend: 'No row is to be mended.',
    take: 'Take row',
    cell: 'Row {{line}}: {{field}}',
    waiting: 'Reading…',
  },
  verdict: {
    newBatch_one:
      '{{count}} bottle of {{size}}, {{strength}}, {{sugar}}, of {{day}}, in a new batch “{{batch}}”.',
    newBatch_other:
      '{{count}} bottles of {{size}}, {{strength}}, {{sugar}}, of {{day}}, in a new batch “{{batch}}”.',
    intoBatch_one:
      '{{count}} bottle of {{size}}, {{strength}}, {{sugar}}, of {{day}}, into your batch “{{batch}}”.',
    intoBatch_other:
      '{{count}} bottles of {{size}}, {{strength}}, {{sugar}}, of {{day}}, into your batch “{{batch}}”.',
    inBook: 'In the book already: same name, size and day. Left out unless you tick it.',
    inSheet: 'The same as row {{line}}. Left out unless you tick it.',
    leftOut: 'Left out.',
    mend: '{{field}}: {{why}}',
  },
  problem: {
    missing: 'Nothing is written here. Write it, or leave the row out.',
    tooLong: 'This is too long. Shorten it.',
    noFruit: 'No fruit is called “{{name}}”. Write it as under Fruits, or leave the cell empty.',
    noShelf: 'No shelf is called “{{name}}”. Add it under Shelf, Places, or leave the cell empty.',
    notADate: 'This is no date. Write it as 2021-12-04, or the year alone.',
    noSuchDay: 'There is no such day. Look at day, month and year.',
    future: 'This day is still to come. Write the day of bottling.',
    ambiguousDate: 'This can be two days. Write it as 2021-12-04.',
  },
} as const
