/** What a host says where no screen is there to say it: how it is started, why it cannot, and its menu. */
import type { BookErrorKind } from '../../cellar/book-error.ts'

const otherFile = 'name another book with --cellar FILE'

export const en = {
  title: {
    cannotStart: 'Ratafia cannot start',
    otherBookOpen: 'Ratafia has another book open',
  },
  waits: (file) => `Quit Ratafia, then open ${file}.`,
  showBook: 'Show the Cellar Book’s File',
  argument: {
    help: `Usage: npm start [-- [OPTIONS] [FILE]]

  FILE                     open the book that is in FILE, or look into the backup or export
  --host browser|electron  where Ratafia opens (default: Electron when it is here, else a browser)
  --no-open                print the link and wait; open no window (browser only)
  --port N                 the port of 127.0.0.1 to use (browser only; default: any free one)
  --cellar FILE            keep the book in FILE; a new one if there is none
  --demo                   open the demo cellar, apart from your own
  --fetch-electron         fetch Electron first, however long that takes
  --help                   this text`,
    host: (typed) => `--host is browser or electron, not '${typed}'`,
    browserOnly: '--no-open and --port go with --host browser only',
    needsValue: (option) => `${option} needs a value`,
    takesNone: (option) => `${option} takes no value`,
    unknown: (option) => `there is no option '${option}'`,
    oneFile: (typed) => `one file at a time: '${typed}' is too many`,
    port: (typed) => `--port is a whole number from 0 to 65535, not '${typed}'`,
  },
  starts: {
    inElectron: 'Ratafia opens in Electron.',
    inBrowser: 'Ratafia opens in a browser.',
    withoutElectron: "Ratafia opens in a browser: Electron's binary is not on this machine.",
    noElectron:
      "Electron's binary is not here and could not be fetched. `npm start -- --fetch-electron` tries again; `npm start -- --host browser` does without.",
    fetching: (seconds) => `Fetching Electron, this once, for at most ${seconds} s …`,
    electronFails: (message) => `Electron does not start: ${message}`,
    noWindow: 'No window could be opened: open the link above.',
  },
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
  /** What can be typed after the program, and what is wrong with what was. */
  argument: Readonly<Record<'help' | 'browserOnly', string>> &
    Readonly<
      Record<
        'host' | 'needsValue' | 'takesNone' | 'unknown' | 'oneFile' | 'port',
        (typed: string) => string
      >
    >
  starts: Readonly<
    Record<'inElectron' | 'inBrowser' | 'withoutElectron' | 'noElectron' | 'noWindow', string>
  > & {
    readonly fetching: (seconds: number) => string
    readonly electronFails: (message: string) => string
  }
  /** `where` is the file, or the port. */
  problem: Readonly<Record<StartProblemCode, (where: string) => string>>
}
