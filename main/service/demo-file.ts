/** The demo's file, which all programs whose books lie in one folder share. */
import { existsSync, renameSync } from 'node:fs'
import { bookErrorOf, type BookErrorKind } from '../cellar/book-error.ts'
import { lockBook } from '../cellar/book-lock.ts'
import { removeBookFiles } from '../cellar/open-book.ts'
import { ServiceError } from './service-error.ts'

/** Makes a book at a file and fills it with the demo, through a service of its own. */
export type FillBook = (file: string) => Promise<void>

/**
 * Makes the demo unless it is there, under another name first, so that a demo cut short never passes
 * for a whole one. Another program that makes it now is not disturbed.
 */
export async function makeDemo(demoFile: string, fill: FillBook): Promise<void> {
  if (existsSync(demoFile)) return
  const lock = lockBook(demoFile)
  try {
    const unfinished = `${demoFile}.unfinished`
    removeBookFiles(unfinished)
    await fill(unfinished)
    renameSync(unfinished, demoFile)
    removeBookFiles(unfinished)
  } finally {
    lock.release()
  }
}

/** Not while another program has it open. */
export function removeDemo(demoFile: string): void {
  try {
    lockBook(demoFile).release()
  } catch (error) {
    throw demoErrorOf(error)
  }
  removeBookFiles(demoFile)
}

const codes: { readonly [Kind in BookErrorKind]?: 'demoBusy' | 'demoSpoilt' } = {
  bookBusy: 'demoBusy',
  bookNewer: 'demoSpoilt',
  bookDamaged: 'demoSpoilt',
  bookForeign: 'demoSpoilt',
}

/** What is wrong with the demo's file is said of the demo, not of the maker's book. */
export function demoErrorOf(error: unknown): unknown {
  const bookError = bookErrorOf(error)
  const code = bookError && codes[bookError.kind]
  return code ? new ServiceError(code, `the demo: ${bookError.message}`) : error
}
