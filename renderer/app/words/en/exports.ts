/** Words of the open export: writing the whole cellar out, and bringing one in. */
import type { ExportProblem } from '../../../../shared/schemas/exports.ts'

const problem = {
  notAnExport: 'This file is no cellar that Ratafia exported.',
  cutShort: 'This file is cut short. Copy it again from where it came from.',
  unreadable:
    'This file cannot be read. Check that it is there, its rights, and the disk it is on.',
  checksum:
    'Something in this file was changed after it was made. Use the file as it was exported, or another one.',
  damagedInside: 'This file is damaged inside. Copy it again from where it came from.',
  notBySchema:
    'What stands in this file is no cellar book: it does not keep to its own description. Use another export.',
  unsafeNames:
    'This file was not made by Ratafia: names in it lead out of their folder, as in files made to do harm. Do not use it.',
  tooLarge:
    'This file was not made by Ratafia: what is packed in it is far too large or nested too deep. Do not use it.',
  otherState: 'What was written did not come back the same, and was thrown away. Try again.',
  newerProgram: 'This cellar was exported by a newer Ratafia. Update this one first.',
} as const satisfies Record<ExportProblem, string>

export const exportWords = {
  problem,
  out: {
    title: 'The whole cellar in an open form',
    text: 'All that is in the book as one zip file that other programs can read: tables for a spreadsheet, and every move and recipe to the last digit, with a description of each file. It can be brought in again.',
    go: 'Export the whole cellar',
    folder: 'Folder on this machine',
    folderHint: 'Left empty, it goes into the folder “exports” beside the book.',
    label: 'Exporting the cellar',
    made: 'Written, brought in again for a trial, and found the same to the last digit: {{count}} moves, {{size}}.',
    madeIn: 'It is {{file}}.',
    stopped: 'Stopped. Nothing was written.',
    notVerified:
      'The export did not come back the same as the book and was thrown away. Try again.',
  },
  in: {
    title: 'Bring in an exported cellar',
    text: 'It takes the place of the present book, which is kept aside under another name; nothing is overwritten.',
    firstRun: 'From another machine or program: begin with a cellar in the open form.',
    ask: 'Choose an export',
    list: 'Exports found',
    none: 'There is no exported cellar in this folder.',
    made: 'Exported',
    book: 'Book',
    lookIntoOne: 'Look into it: the cellar exported {{when}}',
    looking: 'Looking into the export',
    preview: 'The cellar exported {{when}}',
    sound:
      'It can be brought in: every line keeps to its description, every move was worked through.',
    refused_one: '{{count}} move in it cannot be, as in the book it was made from.',
    refused_other: '{{count}} moves in it cannot be, as in the book it was made from.',
    compare: 'The export beside the present book',
    there: 'In the export',
    onlyThere_one: '{{count}} move is in the export only and would come in:',
    onlyThere_other: '{{count}} moves are in the export only and would come in:',
    go: 'Bring in this cellar',
    done: 'The book is now the cellar exported {{when}}.',
  },
} as const
