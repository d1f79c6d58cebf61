/** Where the bottles of Alder End stand, and which of them is taken next. */
import type { Shelf } from '../../shared/schemas/shelf.ts'

export const shelves = [
  { id: 'rack', name: 'Cellar rack', temperatureC: 13, light: 'dark', isRetired: false },
  { id: 'pantry', name: 'Pantry shelf', temperatureC: 18, light: 'dim', isRetired: false },
  { id: 'sill', name: 'Kitchen sill', temperatureC: 21, light: 'daylight', isRetired: false },
] as const satisfies readonly Shelf[]

export type ShelfId = (typeof shelves)[number]['id']

/** A lot on its shelves, as the house remembers it; null where nobody wrote down where. */
export interface Shelved {
  readonly bottleLotId: string
  readonly bottleSizeMl: number
  readonly counts: Map<ShelfId | null, number>
}

export const laidDown = (
  lot: { readonly bottleLotId: string; readonly bottleSizeMl: number; readonly count: number },
  shelfId: ShelfId | null,
): Shelved => ({ ...lot, counts: new Map([[shelfId, lot.count]]) })

export const countOf = ({ counts }: Shelved): number =>
  [...counts.values()].reduce((sum, count) => sum + count, 0)

export function put({ counts }: Shelved, shelfId: ShelfId | null, count: number): void {
  const there = (counts.get(shelfId) ?? 0) + count
  if (there > 0) counts.set(shelfId, there)
  else counts.delete(shelfId)
}

/** What is at hand goes first, the cellar last; undefined once all are gone. */
const nearestFirst: readonly (ShelfId | null)[] = [null, 'sill', 'pantry', 'rack']

/** Takes one bottle out of the house's memory, and says from where as a move does. */
export function takeOne(shelved: Shelved): { shelfId?: ShelfId } | undefined {
  const from = nearestFirst.find((shelfId) => shelved.counts.has(shelfId))
  if (from === undefined) return undefined
  put(shelved, from, -1)
  return from === null ? {} : { shelfId: from }
}
