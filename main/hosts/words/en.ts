/** What a host says where no screen is there to say it: why it cannot start, and its menu. */
import type { BookErrorKind } from '../../cellar/book-error.ts'

const otherFile = 'name another book with --cellar FILE'

export const en = {
  title: {
    cannotStart: 'Ratafia cannot start',
    otherBookOpen: 'Ratafia has another book open',
  },
  waits: (file) => `Quit Ratafia, then open ${file}.`,
  showBook: 'Show the Cellar Book’s File',
  problem: {
    bookNewer: (file) =>
      `Ratafia cannot open ${file}: it was written by a newer Ratafia.\nUpdate this one. The book was not touched.`,
    bookDamaged: (file) =>
      `Ratafia cannot open ${file}: it is damaged.\nNothing was changed. Put a copy back, or ${otherFile}.`,
    bookForeign: (file) =>
      `Ratafia cannot open ${file}: this file is not a cellar book.\nIt was not touched. Name a cellar book, or a new file, with --cellar FILE.`,
    bookReadOnly: (file) =>
      `Ratafia cannot open ${file}: the book or its folder cannot be written to.\nCheck the rights of the file and its folder, or ${otherFile}.`,
    bookBusy: (file) =>
      `Ratafia cannot open ${file}: the book is open in another window of Ratafia, or in another program.\nClose it there and start again.`,
    diskFull: (file) =>
      `Ratafia cannot open ${file}: the disk is full.\nMake room on it and start again.`,
    demoBusy: (file) =>
      `Ratafia cannot open the demo, ${file}: it is open in another window of Ratafia. Your book was not touched.\nClose it there and start again, or start without --demo.`,
    demoSpoilt: (file) =>
      `Ratafia cannot open the demo, ${file}: it is damaged, or of another version. Your book was not touched.\nDelete this file, and the demo is made anew.`,
    noFolder: (file) =>
      `Ratafia cannot make the folder of ${file}.\nCheck the rights of the folders above it, or ${otherFile}.`,
    twoBooks: (file) =>
      `${file} is a book, and --cellar names another.\nLeave one of them out: Ratafia opens one book at a time.`,
    isNoBook: (file) =>
      `${file} is no cellar book. It was not touched.\nName a cellar book; a new one begins with --cellar FILE.`,
    isUnreadable: (file) =>
      `${file} cannot be read.\nCheck its name and its rights; a new book begins with --cellar FILE.`,
    portTaken: (port) =>
      `Port ${port} of 127.0.0.1 cannot be used: it is taken or not allowed.\nWithout --port a free one is chosen.`,
    notInstalled: () => 'Ratafia is not installed yet.\nRun `npm ci` in the project folder first.',
    notBuilt: () => 'Ratafia could not be built; the reason is above.',
  },
} satisfies HostWords

export type StartProblemCode =
  | BookErrorKind
  | 'demoBusy'
  | 'demoSpoilt'
  | 'noFolder'
  | 'twoBooks'
  | 'isNoBook'
  | 'isUnreadable'
  | 'portTaken'
  | 'notInstalled'
  | 'notBuilt'

export interface HostWords {
  title: Readonly<Record<'cannotStart' | 'otherBookOpen', string>>
  waits: (file: string) => string
  showBook: string
  /** `where` is the file, or the port. */
  problem: Readonly<Record<StartProblemCode, (where: string) => string>>
}
