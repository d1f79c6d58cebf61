/** What can be wrong with the file itself; the service turns the kind into an error code. */
export type BookErrorKind =
  'bookNewer' | 'bookDamaged' | 'bookForeign' | 'bookReadOnly' | 'bookBusy' | 'diskFull'

export class BookError extends Error {
  override name = 'BookError'
  readonly kind: BookErrorKind
  constructor(kind: BookErrorKind, message: string, options?: ErrorOptions) {
    super(message, options)
    this.kind = kind
  }
}

const kinds: readonly [prefix: string, kind: BookErrorKind, message: string][] = [
  ['SQLITE_FULL', 'diskFull', 'the disk is full'],
  ['SQLITE_BUSY', 'bookBusy', 'another program is writing to this book'],
  ['SQLITE_LOCKED', 'bookBusy', 'another program is writing to this book'],
  ['SQLITE_READONLY', 'bookReadOnly', 'the book or its folder cannot be written to'],
  ['SQLITE_CANTOPEN', 'bookReadOnly', 'the book cannot be opened or made here'],
  ['SQLITE_IOERR', 'bookDamaged', 'the disk failed to read or write the book'],
  ['SQLITE_CORRUPT', 'bookDamaged', 'the book is damaged'],
  ['SQLITE_NOTADB', 'bookDamaged', 'this file is not a cellar book any more'],
]

/** The book error behind an SQLite error; undefined for anything else, which is a bug. */
export function bookErrorOf(error: unknown): BookError | undefined {
  if (error instanceof BookError) return error
  const code = error instanceof Error && 'code' in error ? String(error.code) : ''
  const known = kinds.find(([prefix]) => code.startsWith(prefix))
  return known && new BookError(known[1], known[2], { cause: error })
}
