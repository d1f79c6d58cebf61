/** Why work on backups and exports failed, where it is not the file that was looked into. */
import type { BackupFailure } from '../../shared/schemas/safekeeping.ts'
import { failureOfSystem } from './backup-file.ts'
import { bookErrorOf, type BookErrorKind } from './book-error.ts'

const failures: Readonly<Record<BookErrorKind, BackupFailure>> = {
  bookDamaged: 'bookDamaged',
  bookForeign: 'bookDamaged',
  bookNewer: 'notVerified',
  bookReadOnly: 'folderReadOnly',
  bookBusy: 'internal',
  diskFull: 'diskFull',
}

export function failureOf(error: unknown): BackupFailure {
  const inBook = bookErrorOf(error)
  return (inBook ? failures[inBook.kind] : failureOfSystem(error)) ?? 'internal'
}

/** For the log only. */
export const messageOf = (error: unknown): string =>
  error instanceof Error ? (error.stack ?? error.message) : String(error)
