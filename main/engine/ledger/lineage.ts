/**
 * Which purchases are in this bottle, and where did this purchase go?
 *
 * Method: what stands in a place counts as mixed, so that each transfer takes the same share of every
 * origin's part, for each kind of matter by itself. Forward a place's followed matter goes with what
 * leaves it; backward it came with what was brought, each in proportion. Only the places that lead
 * there are walked. In: the steps of a fold and a place, `bottles:ID`, `opened:ID`, `jar:ID@batch`,
 * `lot:ID`. Out: grams that add up to all that came into the place. Corrections of the place itself
 * are left out; matter that went round between two jars has passed through them twice.
 * @example lineageBack({ steps: [] }, 'bottles:none').nodes // []
 */
import {
  addMatter,
  massOf,
  noMatter,
  subtractMatter,
  sumMatter,
  type Matter,
} from '../../../shared/matter.ts'
import type { Folded } from './fold.ts'
import { pictureOf, type Passage } from './lineage-picture.ts'
import type { LineageFound, LineageShare } from './lineage-found.ts'
import { hopsOfPlace, isOutside, isPurchase, type Hop } from './matter-hops.ts'
import { partOf, sharesOf } from './matter-shares.ts'

/** Less than this is rounding, in grams. */
const traceG = 1e-9

export function lineageBack({ steps }: Pick<Folded, 'steps'>, place: string): LineageFound {
  const hops = hopsAround(steps, place, 'upstream')
  const followed = new Amounts()
  const origins = new Amounts()
  const passages: Passage[] = []
  for (const { hop, brought } of sharesOf(hops).toReversed()) {
    const { from, to } = hop
    const known = partOf(followed.of(to), brought)
    followed.take(to, known)
    // All that came into the place asked about is followed, not only what left it and came again.
    const passing = isEntry(hop, place) ? hop.matter : known
    if (massOf(passing) <= 0) continue
    if (isOutside(from)) origins.add(isPurchase(hop) ? to : from, passing)
    else followed.add(from, passing)
    passages.push({ hop, matter: passing })
  }
  const found = origins.shares()
  return {
    ...pictureOf(passages.toReversed()),
    origins: found,
    destinations: asWhole(place, found),
  }
}

export function lineageForward({ steps }: Pick<Folded, 'steps'>, place: string): LineageFound {
  const hops = hopsAround(steps, place, 'downstream')
  const followed = new Amounts()
  const passages: Passage[] = []
  for (const { hop, taken } of sharesOf(hops)) {
    const known = partOf(followed.of(hop.from), taken)
    followed.take(hop.from, known)
    const passing = isEntry(hop, place) ? hop.matter : known
    if (massOf(passing) <= 0) continue
    followed.add(hop.to, passing)
    passages.push({ hop, matter: passing })
  }
  const destinations = followed.shares()
  return {
    ...pictureOf(passages.filter(({ hop }) => hop.to !== place || isPurchase(hop))),
    origins: asWhole(place, destinations),
    destinations,
  }
}

/** Brings matter into the place asked about; putting the book right there brings none. */
const isEntry = ({ from, to }: Hop, place: string): boolean =>
  to === place && from !== 'outside:correction'

/** The hops of all places that matter came through on its way there, or came to from there. */
function hopsAround(
  steps: Folded['steps'],
  place: string,
  way: 'upstream' | 'downstream',
): readonly Hop[] {
  const found = new Map<number, Hop>()
  const places = new Set([place])
  for (const here of places)
    for (const hop of hopsOfPlace(steps, here)) {
      found.set(hop.order, hop)
      const [end, next] = way === 'upstream' ? [hop.to, hop.from] : [hop.from, hop.to]
      if (end === here && !isOutside(next)) places.add(next)
    }
  return [...found.values()].sort((a, b) => a.order - b.order)
}

class Amounts {
  readonly #byPlace = new Map<string, Matter>()

  of(place: string): Matter {
    return this.#byPlace.get(place) ?? noMatter
  }

  add(place: string, matter: Matter): void {
    this.#byPlace.set(place, addMatter(this.of(place), matter))
  }

  take(place: string, matter: Matter): void {
    if (massOf(matter) > 0) this.#byPlace.set(place, subtractMatter(this.of(place), matter))
  }

  /** The most first. */
  shares(): LineageShare[] {
    return [...this.#byPlace]
      .map(([key, matter]) => ({ key, matter }))
      .filter(({ matter }) => massOf(matter) > traceG)
      .sort((a, b) => massOf(b.matter) - massOf(a.matter))
  }
}

function asWhole(key: string, parts: readonly LineageShare[]): LineageShare[] {
  if (parts.length === 0) return []
  return [{ key, matter: sumMatter(parts.map(({ matter }) => matter)) }]
}
