/**
 * The ledger's transfers as a lineage needs them: each from one place to another, in the order in
 * which they happened, found by place. A jar is a place of its own for each batch it holds,
 * `jar:ID@batch`. A correction that takes some kinds of matter and brings others is two hops.
 */
import { mapMatter, massOf, matterKinds, type Matter } from '../../../shared/matter.ts'
import type { Step } from './fold.ts'

export interface Hop {
  readonly order: number
  readonly from: string
  readonly to: string
  readonly atMs: number
  /** Never below zero. */
  readonly matter: Matter
  /** The place it came from stood empty afterwards: whatever rounding left there came along. */
  readonly empties: boolean
}

export interface Hops {
  readonly all: readonly Hop[]
  /** Those that leave a place or come to it; of places outside, none. */
  readonly ofPlace: ReadonlyMap<string, readonly Hop[]>
}

const known = new WeakMap<readonly Step[], Hops>()

/** Worked out once for each fold. */
export function hopsOf(steps: readonly Step[]): Hops {
  const found = known.get(steps)
  if (found) return found
  const hops = readHops(steps)
  known.set(steps, hops)
  return hops
}

export const isOutside = (place: string): boolean => place.startsWith('outside:')

/** Brings what was bought into its pantry lot: where matter begins. */
export const isPurchase = ({ from }: Hop): boolean => from === 'outside:supplier'

function readHops(steps: readonly Step[]): Hops {
  const all: Hop[] = []
  const ofPlace = new Map<string, Hop[]>()
  const batchIn = new Map<string, string>()
  const put = (place: string, hop: Hop) => {
    if (isOutside(place)) return
    const there = ofPlace.get(place)
    if (there) there.push(hop)
    else ofPlace.set(place, [hop])
  }
  for (const { effect, atMs } of steps) {
    const emptied = new Map<string, number>()
    effect.transfers.forEach(({ from }, index) => {
      if (from.startsWith('jar:') && effect.jars?.get(jarIdOf(from)) === null)
        emptied.set(from, index)
    })
    const named = (place: string) => placeWithBatch(place, effect, batchIn)
    effect.transfers.forEach((transfer, index) => {
      const [from, to] = [named(transfer.from), named(transfer.to)]
      const empties = emptied.get(transfer.from) === index
      for (const hop of oneWay(from, to, transfer.matter)) {
        const whole = { ...hop, order: all.length, atMs, empties }
        all.push(whole)
        put(whole.from, whole)
        put(whole.to, whole)
      }
    })
    for (const [jarId, jar] of effect.jars ?? [])
      if (jar) batchIn.set(jarId, jar.batchId)
      else batchIn.delete(jarId)
  }
  return { all, ofPlace }
}

const jarIdOf = (place: string): string => place.slice('jar:'.length)

function placeWithBatch(
  place: string,
  { jars }: Step['effect'],
  batchIn: ReadonlyMap<string, string>,
): string {
  if (!place.startsWith('jar:')) return place
  const jarId = jarIdOf(place)
  const batchId = jars?.get(jarId)?.batchId ?? batchIn.get(jarId)
  return `${place}@${batchId ?? ''}`
}

/** The parts of a transfer that go forth and, where it is below zero, those that go back. */
function oneWay(from: string, to: string, matter: Matter) {
  if (matterKinds.every((kind) => matter[kind] >= 0))
    return massOf(matter) > 0 ? [{ from, to, matter }] : []
  const forth = mapMatter(matter, (amountG) => Math.max(0, amountG))
  const back = mapMatter(matter, (amountG) => Math.max(0, -amountG))
  return [
    { from, to, matter: forth },
    { from: to, to: from, matter: back },
  ].filter((hop) => massOf(hop.matter) > 0)
}
