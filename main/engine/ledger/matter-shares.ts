/**
 * What share of a place's matter does a hop take out of it, and what share of the place it comes to
 * does it make up? Kind by kind of matter, by the contents that the hops themselves add up to: what
 * stands in a place counts as mixed.
 */
import {
  addMatter,
  mapMatter,
  noMatter,
  subtractMatter,
  type Matter,
} from '../../../shared/matter.ts'
import { isOutside, type Hop } from './matter-hops.ts'

/** Amounts nearer to each other than this, as a share, are the same but for rounding. */
const hair = 1e-9

export interface HopShares {
  readonly hop: Hop
  /** Of what stood where it came from, 0 to 1; nothing from outside, where matter never mixes. */
  readonly taken: Matter
  /** Of what then stood where it came to, 0 to 1. */
  readonly brought: Matter
}

/** Of each hop, in order. All hops of the places asked about must be there; others count for nothing. */
export function sharesOf(hops: readonly Hop[]): HopShares[] {
  const contents = new Map<string, Matter>()
  return hops.map((hop) => {
    const { from, to, matter, empties } = hop
    const before = contents.get(from) ?? noMatter
    const taken = isOutside(from) ? noMatter : empties ? everything : shareOf(matter, before)
    if (!isOutside(from)) contents.set(from, empties ? noMatter : rest(before, matter, taken))
    const there = contents.get(to) ?? noMatter
    const after = addMatter(there, matter)
    if (!isOutside(to)) contents.set(to, after)
    return { hop, taken, brought: shareOf(matter, after) }
  })
}

const everything: Matter = mapMatter(noMatter, () => 1)

const shareOf = (part: Matter, whole: Matter): Matter =>
  mapMatter(part, (amountG, kind) => {
    if (amountG === 0) return 0
    return amountG >= whole[kind] * (1 - hair) ? 1 : amountG / whole[kind]
  })

/** What a hop leaves: exactly nothing of the kinds that it took whole. */
const rest = (before: Matter, matter: Matter, taken: Matter): Matter =>
  mapMatter(subtractMatter(before, matter), (amountG, kind) => (taken[kind] === 1 ? 0 : amountG))

/** The part of some matter that the shares of its kinds make. */
export const partOf = (matter: Matter, shares: Matter): Matter =>
  mapMatter(matter, (amountG, kind) => amountG * shares[kind])
