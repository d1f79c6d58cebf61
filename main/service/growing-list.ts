/**
 * A list that is added to at its end, one version after another, and is put together only when
 * somebody reads it: copying decades of moves for each new one would make a book slower with age.
 */
export interface GrowingList<T> {
  /** Put together at the first reading. */
  readonly all: readonly T[]
  /** The list with more at its end; this one stays as it is. */
  readonly with: (added: readonly T[]) => GrowingList<T>
}

interface Version<T> {
  /** Either the whole of it, or what it added to the version before. */
  all: readonly T[] | undefined
  before: Version<T> | undefined
  readonly added: readonly T[]
}

export const growingList = <T>(all: readonly T[]): GrowingList<T> =>
  listOf({ all, before: undefined, added: [] })

const listOf = <T>(version: Version<T>): GrowingList<T> => ({
  get all() {
    return wholeOf(version)
  },
  with: (added) => listOf({ all: undefined, before: version, added }),
})

function wholeOf<T>(version: Version<T>): readonly T[] {
  if (version.all) return version.all
  const later: (readonly T[])[] = []
  let at: Version<T> | undefined = version
  for (; at && !at.all; at = at.before) later.push(at.added)
  const all = (at?.all ?? []).concat(later.toReversed().flat())
  version.all = all
  // What came before is needed no more from here.
  version.before = undefined
  return all
}
