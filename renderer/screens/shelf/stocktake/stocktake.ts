/** A count of one place against the book: which lots, how many, and the moves that put it right. */
import type { BottleLot } from '../../../../shared/schemas/cellar.ts'
import type { MoveOf } from '../../../../shared/schemas/moves.ts'
import { collatorOf } from '../../../parts/formatters/formatters.ts'

/** What the maker counted, by lot: a whole number, or undefined while it cannot be read. */
export type Counts = ReadonlyMap<string, number | undefined>

export interface StocktakeRow {
  readonly lot: BottleLot
  /** On this place, as the book has it. */
  readonly booked: number
  /** Of what was filled, how many the book has on other places. */
  readonly elsewhere: number
  /** Found here though nothing was booked here. */
  readonly isAdded: boolean
}

export const bookedOn = ({ places }: BottleLot, shelfId: string | null): number =>
  places.find((place) => place.shelfId === shelfId)?.count ?? 0

/** The lots booked on the place by name, then those that were found and added. */
export function stocktakeRows(
  lots: readonly BottleLot[],
  shelfId: string | null,
  addedIds: readonly string[],
  locale: string,
): StocktakeRow[] {
  const collator = collatorOf(locale)
  const rowOf = (lot: BottleLot, isAdded: boolean): StocktakeRow => {
    const booked = bookedOn(lot, shelfId)
    return { lot, booked, elsewhere: lot.count - booked, isAdded }
  }
  const booked = lots
    .filter((lot) => bookedOn(lot, shelfId) > 0)
    .toSorted((a, b) => collator.compare(a.name, b.name) || a.bottleSizeMl - b.bottleSizeMl)
    .map((lot) => rowOf(lot, false))
  const added = addedIds.flatMap((id) => {
    const lot = lots.find((one) => one.id === id)
    return lot && bookedOn(lot, shelfId) === 0 ? [rowOf(lot, true)] : []
  })
  return [...booked, ...added]
}

export const isCounted = ({ lot }: StocktakeRow, counts: Counts): boolean =>
  counts.get(lot.id) !== undefined

/** Undefined while the lot is not counted. */
export function differenceOf({ lot, booked }: StocktakeRow, counts: Counts): number | undefined {
  const there = counts.get(lot.id)
  return there === undefined ? undefined : there - booked
}

export const differing = (rows: readonly StocktakeRow[], counts: Counts): StocktakeRow[] =>
  rows.filter((row) => (differenceOf(row, counts) ?? 0) !== 0)

/** The contract takes so many moves at once. */
export const mostAtOnce = 50

/** One correction for each lot that differs, as many as go at once. */
export function corrections(
  rows: readonly StocktakeRow[],
  counts: Counts,
  { shelfId, at, note }: { shelfId: string | null; at: string; note: string },
): MoveOf<'correct'>[] {
  return differing(rows, counts)
    .slice(0, mostAtOnce)
    .flatMap(({ lot }) => {
      const count = counts.get(lot.id)
      return count === undefined
        ? []
        : [{ kind: 'correct', at, note, found: { bottleLotId: lot.id, count, shelfId } }]
    })
}
