/** Is a backup sound, and in what does it differ from the present book? */
import { rmSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import type { BooksCompared, MoveInBook } from '../../shared/schemas/books-compared.ts'
import type { BackupManifest, RestorePreview } from '../../shared/schemas/safekeeping.ts'
import { Move } from '../../shared/schemas/moves.ts'
import { BackupUnfit, unpackBackup } from './backup-file.ts'
import { bookErrorOf } from './book-error.ts'
import { bookFacts, type BookFacts } from './book-facts.ts'
import { knownVersion } from './migrate.ts'
import { integrityOf, type Book } from './open-book.ts'

export interface Looking {
  readonly onStep: (step: 'packing' | 'checking' | 'comparing', progress: number) => void
}

/**
 * Unpacks a backup to `into` and opens what came out, without a doubt about it: checksum, integrity,
 * foreign keys, version, and the moves told again. Throws `BackupUnfit` with the reason.
 */
export async function verifyBackup(
  file: string,
  { into, onStep }: Looking & { into: string },
): Promise<{ manifest: BackupManifest; facts: BookFacts }> {
  onStep('packing', 0)
  const manifest = await unpackBackup(file, { into, onShare: (share) => onStep('packing', share) })
  onStep('checking', 0)
  const book = new Database(into)
  try {
    knownVersion(book)
    const integrity = integrityOf(book)
    if (integrity !== 'ok') throw new BackupUnfit('damagedInside', integrity)
    const orphans = book.pragma('foreign_key_check') as unknown[]
    if (orphans.length > 0) throw new BackupUnfit('damagedInside', 'rows name what is not there')
    return { manifest, facts: bookFacts(book) }
  } catch (error) {
    const inBook = bookErrorOf(error)
    if (!inBook) throw error
    const problem = inBook.kind === 'bookNewer' ? 'newerProgram' : 'damagedInside'
    throw new BackupUnfit(problem, inBook.message, { cause: error })
  } finally {
    book.close()
  }
}

export async function lookIntoBackup(
  file: string,
  options: Looking & { workFolder: string; bookFile: string | null },
): Promise<RestorePreview> {
  const into = join(options.workFolder, 'looked-into.ratafia')
  try {
    const { manifest, facts } = await verifyBackup(file, { into, onStep: options.onStep })
    options.onStep('comparing', 0)
    return { file, manifest, ...besideBook(into, { facts, bookFile: options.bookFile }) }
  } finally {
    for (const suffix of ['', '-wal', '-shm']) rmSync(into + suffix, { force: true })
  }
}

/** What came out of a file, beside the present book; both are only read. */
export function besideBook(
  cameOut: string,
  { facts, bookFile }: { facts: BookFacts; bookFile: string | null },
): BooksCompared {
  const there = new Database(cameOut, { readonly: true })
  const here = bookFile === null ? undefined : readable(bookFile)
  try {
    return compared({ there, facts, here })
  } finally {
    there.close()
    here?.close()
  }
}

/** A book too damaged to be read is as good as none. */
function readable(bookFile: string): Book | undefined {
  try {
    const book = new Database(bookFile, { readonly: true, fileMustExist: true })
    book.prepare('SELECT count(*) FROM move').get()
    return book
  } catch {
    return undefined
  }
}

function compared({
  there,
  facts,
  here,
}: {
  there: Book
  facts: BookFacts
  here: Book | undefined
}): BooksCompared {
  const factsHere = here && tryFacts(here)
  const movesThere = newestRows(there)
  const movesHere = factsHere && here ? newestRows(here) : new Map<string, NewestRow>()
  const only = (rows: typeof movesHere, others: typeof movesHere) =>
    [...rows.values()].filter((row) => row.payload !== null && !others.get(row.id)?.payload)
  const changed = [...movesHere.values()].filter((row) => {
    const other = movesThere.get(row.id)?.payload
    return row.payload !== null && other && other !== row.payload
  })
  return {
    there: side(facts),
    here: factsHere ? side(factsHere) : null,
    isAnotherCellar: Boolean(
      factsHere?.firstMoveId && facts.firstMoveId && factsHere.firstMoveId !== facts.firstMoveId,
    ),
    onlyHere: some(only(movesHere, movesThere), here),
    onlyThere: some(only(movesThere, movesHere), there),
    changed: some(changed, here),
  }
}

const side = ({ counts, lastMove }: BookFacts) => ({ counts, lastMove })

function tryFacts(book: Book): BookFacts | undefined {
  try {
    return bookFacts(book)
  } catch (error) {
    if (bookErrorOf(error)) return undefined
    throw error
  }
}

interface NewestRow {
  readonly id: string
  readonly seq: number
  readonly recordedAt: string
  readonly payload: string | null
}

/** Every move that ever was, as it stands now; without payload where it was struck. */
function newestRows(book: Book): Map<string, NewestRow> {
  const rows = book
    .prepare(
      `SELECT move.id, move.seq, recorded_at AS recordedAt, payload
       FROM move JOIN move_group ON move_group.id = group_id
       ORDER BY move.id, version`,
    )
    .all() as NewestRow[]
  return new Map(rows.map((row) => [row.id, row]))
}

const mostShown = 50

function some(rows: readonly NewestRow[], book: Book | undefined) {
  const newest = [...rows].sort((a, b) => b.seq - a.seq).slice(0, mostShown)
  return { count: rows.length, newest: newest.flatMap((row) => moveInBook(row, book)) }
}

export function moveInBook(
  { id, recordedAt, payload }: Pick<NewestRow, 'id' | 'recordedAt' | 'payload'>,
  book: Book | undefined,
): MoveInBook[] {
  const read = Move.safeParse(JSON.parse(payload ?? 'null'))
  if (!read.success) return []
  const batchId = 'batchId' in read.data ? read.data.batchId : undefined
  const batchName = book
    ?.prepare('SELECT name FROM batch WHERE id = ?')
    .pluck()
    .get(batchId ?? '') as string | undefined
  return [{ moveId: id, move: read.data, recordedAt, batchName: batchName ?? null }]
}
