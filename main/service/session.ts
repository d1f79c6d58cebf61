/** The open book with its ledger, and the only way to change which book is open. */
import { BookError, bookErrorOf } from '../cellar/book-error.ts'
import { replaceLots } from '../cellar/lot-store.ts'
import {
  closeBook,
  makeBook,
  needsMigration,
  openBook,
  removeBookFiles,
  type Book,
} from '../cellar/open-book.ts'
import { putInPlace } from '../cellar/put-in-place.ts'
import { readWhereabouts } from '../cellar/whereabouts.ts'
import { backupJob } from './backup-job.ts'
import { cellarFruits, type CellarFruits } from './cellar-fruits.ts'
import { demoErrorOf, makeDemo, removeDemo, type FillBook } from './demo-file.ts'
import { viewOfBook, type LedgerView } from './ledger-view.ts'
import { lotRowsOf } from './lot-rows.ts'
import { safekeepingJobs, type SafekeepingJobs } from './safekeeping-jobs.ts'
import type { ServiceOptions } from './service.ts'

export interface Session {
  readonly options: ServiceOptions
  readonly isDemo: boolean
  /** Throws what is wrong with the maker's own book, while nothing is open for it. */
  readonly book: Book
  readonly ledger: LedgerView
  /** Why no book is open: the maker's own is damaged and waits to be rescued. */
  readonly trouble: BookError | undefined
  /** Backups being made and looked into. */
  readonly jobs: SafekeepingJobs
  /** Puts a new view in place once its rows are in the book. */
  adopt: (ledger: LedgerView) => void
  /** The fruits as this cellar reckons with them. */
  readonly fruits: CellarFruits
  /** Reads them again once the maker's changed rows are in the book. */
  rereadFruits: () => void
  openOwn: () => Promise<void>
  openDemo: () => Promise<void>
  /** Deletes the demo book's file, with the maker's own book open. */
  removeDemo: () => Promise<void>
  /**
   * Puts another book in place of the maker's own and opens it; a new one when none is given.
   * Answers under which name the present one is kept aside.
   */
  replaceOwn: (nextFile: string | undefined) => Promise<string | null>
  close: () => void
}

interface Opened {
  readonly book: Book
  readonly ledger: LedgerView
  readonly fruits: CellarFruits
}

/** Opens the maker's own book, or the demo alone when asked to start with it. */
export async function createSession(options: ServiceOptions, fill: FillBook): Promise<Session> {
  const { ownFile, demoFile } = options
  const jobs = safekeepingJobs(ownFile)
  let isDemo = false
  let open: Opened | undefined
  let trouble: BookError | undefined

  // The next book is opened before the present one is let go: a failure leaves all as it was.
  function change(file: string, toDemo: boolean) {
    const next = opened(file)
    if (open) closeBook(open.book)
    open = next
    isDemo = toDemo
    trouble = undefined
  }

  async function openDemo() {
    if (isDemo) return
    try {
      await makeDemo(demoFile, fill)
      await jobs.stop()
      change(demoFile, true)
    } catch (error) {
      throw demoErrorOf(error)
    }
  }

  async function openOwn() {
    if (open && !isDemo) return
    if (options.backsUp && needsMigration(ownFile)) await backUpBeforeMigration()
    change(ownFile, false)
  }

  /** Into the folder beside the book, which is always there; without it the schema stays. */
  async function backUpBeforeMigration() {
    const whereabouts = { ...readWhereabouts(ownFile), folder: null }
    const jobId = options.newId()
    await jobs.run(backupJob(options, { jobId, reason: 'migration', whereabouts }))
  }

  async function replaceOwn(nextFile: string | undefined) {
    await jobs.stop()
    if (open) closeBook(open.book)
    open = undefined
    isDemo = false
    try {
      const asideFile = putInPlace(ownFile, {
        nextFile: nextFile ?? begunBook(ownFile),
        at: options.now(),
      })
      change(ownFile, false)
      return asideFile
    } catch (error) {
      trouble = bookErrorAt(error)
      throw error
    }
  }

  async function start() {
    if (options.startWithDemo) return openDemo()
    try {
      await openOwn()
    } catch (error) {
      // What can be rescued is told on a screen; anything else stops the program at once.
      if (!(error instanceof BookError) || error.kind !== 'bookDamaged') throw error
      trouble = error
    }
  }

  await start()

  const present = (): Opened => {
    if (open) return open
    throw trouble ?? new Error('no book is open')
  }

  return {
    options,
    jobs,
    get isDemo() {
      return isDemo
    },
    get trouble() {
      return trouble
    },
    get book() {
      return present().book
    },
    get ledger() {
      return present().ledger
    },
    adopt: (ledger) => {
      open = { ...present(), ledger }
    },
    get fruits() {
      return present().fruits
    },
    rereadFruits: () => {
      open = { ...present(), fruits: cellarFruits(present().book) }
    },
    openOwn,
    openDemo,
    removeDemo: async () => {
      await openOwn()
      removeDemo(demoFile)
    },
    replaceOwn,
    close: () => {
      void jobs.stop()
      if (open) closeBook(open.book)
    },
  }
}

/** An empty book that waits to be put in place. */
function begunBook(ownFile: string): string {
  const file = `${ownFile}.begun`
  removeBookFiles(file)
  makeBook(file)
  return file
}

function opened(file: string): Opened {
  const book = openBook(file)
  try {
    return { book, ledger: viewOfBook(book), fruits: cellarFruits(book) }
  } catch (error) {
    closeBook(book)
    throw bookErrorOf(error) ?? error
  }
}

const bookErrorAt = (error: unknown): BookError =>
  bookErrorOf(error) ?? new BookError('bookReadOnly', 'the book cannot be put in its place')

/** Derives the lot tables again from the ledger. */
export const rebuild = (session: Session): void =>
  session.book
    .transaction(() => replaceLots(session.book, lotRowsOf(session.ledger.folded.cellar)))
    .immediate()
