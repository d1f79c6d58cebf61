/** Rows as they were read, beside what the book says of them and what the maker chose. */
import type { RowVerdict } from '../../../shared/schemas/sheets.ts'
import type { ReadRow } from './read-rows.ts'

/** `there` is in the book already, or in an earlier row, and not wanted twice. */
export type RowStanding = 'ready' | 'there' | 'mend' | 'leftOut' | 'waiting'

export interface JudgedRow extends ReadRow {
  readonly verdict: RowVerdict | undefined
  /** Of the earlier row that says the same. */
  readonly twinLine: number | undefined
  readonly standing: RowStanding
}

/** By the numbers of their lines. */
export interface RowChoices {
  readonly leftOut: ReadonlySet<number>
  /** Wanted though they are there already. */
  readonly wanted: ReadonlySet<number>
}

/** Verdicts come in the order of the rows that could be read. */
export function judgedRows(
  rows: readonly ReadRow[],
  verdicts: readonly RowVerdict[] | undefined,
  choices: RowChoices,
): JudgedRow[] {
  const lines = rows.flatMap(({ row, line }) => (row ? [line] : []))
  const verdictOf = new Map(lines.map((line, at) => [line, verdicts?.[at]]))
  return rows.map((row) => {
    const verdict = verdictOf.get(row.line)
    const of = verdict?.verdict === 'twin' ? verdict.of : undefined
    return {
      ...row,
      verdict,
      twinLine: of && 'rowIndex' in of ? lines[of.rowIndex] : undefined,
      standing: standingOf(row, verdict, choices),
    }
  })
}

function standingOf(
  { row, line }: ReadRow,
  verdict: RowVerdict | undefined,
  { leftOut, wanted }: RowChoices,
): RowStanding {
  if (leftOut.has(line)) return 'leftOut'
  if (!row || verdict?.verdict === 'refused') return 'mend'
  if (!verdict) return 'waiting'
  return verdict.verdict === 'twin' && !wanted.has(line) ? 'there' : 'ready'
}
