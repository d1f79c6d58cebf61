/** Why Ratafia cannot start, in words for whoever started it: no screen is there yet to say so. */
import { bookErrorOf, type BookErrorKind } from '../cellar/book-error.ts'

export class StartProblem extends Error {
  override name = 'StartProblem'
}

const remedies: Readonly<Record<BookErrorKind, string>> = {
  bookNewer: 'It was written by a newer Ratafia: update this one. The book was not touched.',
  bookDamaged: 'Nothing was changed. Put a copy back, or name another book with --cellar FILE.',
  bookForeign: 'It was not touched. Name a cellar book, or a new file, with --cellar FILE.',
  bookReadOnly: 'Check the rights of the file and its folder, or name another with --cellar FILE.',
  bookBusy: 'Close the other Ratafia, or the program that holds the file, and start again.',
  diskFull: 'Make room on the disk and start again.',
}

/** The problem behind an error met while starting; undefined for anything else, which is a bug. */
export function startProblemOf(error: unknown, bookFile: string): StartProblem | undefined {
  if (error instanceof StartProblem) return error
  const bookError = bookErrorOf(error)
  if (bookError)
    return new StartProblem(
      `Ratafia cannot open ${bookFile}: ${bookError.message}.\n${remedies[bookError.kind]}`,
      { cause: error },
    )
  const code = error instanceof Error && 'code' in error ? error.code : undefined
  if (code === 'EACCES' || code === 'EROFS' || code === 'ENOTDIR' || code === 'EEXIST')
    return new StartProblem(
      `Ratafia cannot make the folder of ${bookFile}.\n${remedies.bookReadOnly}`,
      { cause: error },
    )
  return undefined
}
