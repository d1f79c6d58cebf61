/** What all drafts of moves share: when, a note, and what is still missing. */

export interface DraftHead {
  /** Undefined while what stands in the date field cannot be read. */
  readonly at: string | undefined
  readonly note: string
}

/** Something the maker has still to fill in; the field is named as in the draft. */
export interface Problem {
  readonly field: string
  readonly code: 'missing' | 'chooseTwo' | 'sameJar' | 'nothingFound' | 'nothingKept'
}

export type Outcome<T> = { ok: true; moves: T[] } | { ok: false; problems: Problem[] }

export const complete = <T>(moves: T[]): Outcome<T> => ({ ok: true, moves })

export const incomplete = (...problems: Problem[]): { ok: false; problems: Problem[] } => ({
  ok: false,
  problems,
})

/** Which of these fields hold nothing yet. */
export const missing = (fields: Readonly<Record<string, unknown>>) =>
  incomplete(
    ...Object.entries(fields)
      .filter(([, value]) => value === undefined || (Array.isArray(value) && value.length === 0))
      .map(([field]): Problem => ({ field, code: 'missing' })),
  )

/** The part of a move that every kind has. */
export const headOf = (at: string, note: string) => ({
  at,
  ...(note.trim() !== '' && { note: note.trim() }),
})

export const headOfMove = (move: { at: string; note?: string | undefined }): DraftHead => ({
  at: move.at,
  note: move.note ?? '',
})

/** Only the numbers that are there, for a contract that knows no undefined. */
export function given<Key extends string>(
  fields: Readonly<Record<Key, number | undefined>>,
): { [K in Key]?: number } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [K in Key]?: number
  }
}
