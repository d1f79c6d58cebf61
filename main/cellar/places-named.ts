/** The jars and shelves that a move names, by the names of its fields. */
import type { Move } from '../../shared/schemas/moves.ts'

export interface PlacesNamed {
  readonly jarIds: readonly string[]
  readonly shelfIds: readonly string[]
}

export function placesNamed(move: Move): PlacesNamed {
  const found = { jarIds: new Set<string>(), shelfIds: new Set<string>() }
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return
    for (const [key, each] of Object.entries(value)) {
      if (typeof each !== 'string') visit(each)
      else if (/^(from|to)?jarId$/i.test(key)) found.jarIds.add(each)
      else if (/^(from|to)?shelfId$/i.test(key)) found.shelfIds.add(each)
    }
  }
  visit(move)
  return { jarIds: [...found.jarIds], shelfIds: [...found.shelfIds] }
}
