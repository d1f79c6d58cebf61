/** How many of a lot's bottles stand on each shelf, and which are taken when nobody says. */

/** Bottles by shelf; null for those that have no place. No entry is 0. */
export type ShelfCounts = ReadonlyMap<string | null, number>

export const standingOn = (shelves: ShelfCounts, shelfId: string | null): number =>
  shelves.get(shelfId) ?? 0

/** The counts with as many more (or, negative, fewer) on one shelf. */
export function added(shelves: ShelfCounts, shelfId: string | null, count: number): ShelfCounts {
  const after = new Map(shelves)
  const there = standingOn(shelves, shelfId) + count
  if (there > 0) after.set(shelfId, there)
  else after.delete(shelfId)
  return after
}

/** The counts without bottles that were taken from wherever: no place first, then by shelf id. */
export function without(shelves: ShelfCounts, count: number): ShelfCounts {
  let after = shelves
  let missing = count
  for (const shelfId of [...shelves.keys()].sort(inTakingOrder)) {
    const taken = Math.min(missing, standingOn(shelves, shelfId))
    after = added(after, shelfId, -taken)
    missing -= taken
  }
  return after
}

function inTakingOrder(a: string | null, b: string | null): number {
  if (a === b) return 0
  if (a === null) return -1
  if (b === null) return 1
  return a < b ? -1 : 1
}
