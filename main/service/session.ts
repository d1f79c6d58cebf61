/** The open book with its ledger, and the only way to change which book is open. */
import { existsSync, renameSync, rmSync } from 'node:fs'
import { replaceLots } from '../cellar/lot-store.ts'
import { closeBook, openBook, type Book } from '../cellar/open-book.ts'
import { cellarFruits, type CellarFruits } from './cellar-fruits.ts'
import { viewOfBook, type LedgerView } from './ledger-view.ts'
import { lotRowsOf } from './lot-rows.ts'
import type { ServiceOptions } from './service.ts'

export interface Session {
  readonly options: ServiceOptions
  readonly isDemo: boolean
  readonly book: Book
  readonly ledger: LedgerView
  /** Puts a new view in place once its rows are in the book. */
  adopt: (ledger: LedgerView) => void
  /** The fruits as this cellar reckons with them. */
  readonly fruits: CellarFruits
  /** Reads them again once the maker's changed rows are in the book. */
  rereadFruits: () => void
  openOwn: () => void
  openDemo: () => Promise<void>
  /** Deletes the demo book's file, with the maker's own book open. */
  removeDemo: () => void
  close: () => void
}

/** Makes a book at a file and fills it with the demo, through a service of its own. */
export type FillBook = (file: string) => Promise<void>

/** Opens the maker's own book, or the demo alone when asked to start with it. */
export async function createSession(options: ServiceOptions, fill: FillBook): Promise<Session> {
  let isDemo = false
  let book: Book
  let ledger: LedgerView
  let fruits: CellarFruits

  // The next book is opened before the present one is let go: a failure leaves all as it was.
  function change(file: string, toDemo: boolean) {
    const next = openBook(file)
    const view = viewOfBook(next)
    const kept = cellarFruits(next)
    if (book) closeBook(book)
    book = next
    ledger = view
    fruits = kept
    isDemo = toDemo
  }

  async function openDemo() {
    if (isDemo) return
    if (!existsSync(options.demoFile)) await makeDemo(options, fill)
    change(options.demoFile, true)
  }

  function openOwn() {
    if (book && !isDemo) return
    change(options.ownFile, false)
  }

  if (options.startWithDemo) await openDemo()
  else openOwn()

  return {
    options,
    get isDemo() {
      return isDemo
    },
    get book() {
      return book
    },
    get ledger() {
      return ledger
    },
    adopt: (view) => {
      ledger = view
    },
    get fruits() {
      return fruits
    },
    rereadFruits: () => {
      fruits = cellarFruits(book)
    },
    openOwn,
    openDemo,
    removeDemo: () => {
      openOwn()
      removeBook(options.demoFile)
    },
    close: () => closeBook(book),
  }
}

/**
 * Makes the demo under another name first, so that a demo cut short never passes for a whole one.
 */
async function makeDemo({ demoFile }: ServiceOptions, fill: FillBook): Promise<void> {
  const unfinished = `${demoFile}.unfinished`
  removeBook(unfinished)
  await fill(unfinished)
  renameSync(unfinished, demoFile)
  removeBook(unfinished)
}

function removeBook(file: string) {
  for (const suffix of ['', '-wal', '-shm', '.lock']) rmSync(file + suffix, { force: true })
}

/** Derives the lot tables again from the ledger. */
export const rebuild = (session: Session): void =>
  session.book
    .transaction(() => replaceLots(session.book, lotRowsOf(session.ledger.folded.cellar)))
    .immediate()
