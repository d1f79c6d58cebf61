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

/** Which steps concern a place, and how its jars were called by then. */
interface Index {
  readonly steps: readonly Step[]
  readonly stepsOfPlace: ReadonlyMap<string, readonly number[]>
  /** The places of each step that touches jars, transfer by transfer; others name theirs alone. */
  readonly named: ReadonlyMap<number, readonly Ends[]>
}
type Ends = Pick<Hop, 'from' | 'to'>

export const isOutside = (place: string): boolean => place.startsWith('outside:')

/** Brings what was bought into its pantry lot: where matter begins. */
export const isPurchase = ({ from }: Hop): boolean => from === 'outside:supplier'

const known = new WeakMap<readonly Step[], Index>()

/** Worked out once for each fold. */
function indexOf(steps: readonly Step[]): Index {
  const found = known.get(steps) ?? readIndex(steps)
  known.set(steps, found)
  return found
}

/** Those that leave a place or come to it, in order. */
export function hopsOfPlace(steps: readonly Step[], place: string): Hop[] {
  const index = indexOf(steps)
  return (index.stepsOfPlace.get(place) ?? []).flatMap((at) =>
    hopsOfStep(index, at).filter(({ from, to }) => from === place || to === place),
  )
}

/** All those of the steps that are wanted, in order. */
export function hopsOfSteps(steps: readonly Step[], isWanted: (step: Step) => boolean): Hop[] {
  const index = indexOf(steps)
  return steps.flatMap((step, at) => (isWanted(step) ? hopsOfStep(index, at) : []))
}

function readIndex(steps: readonly Step[]): Index {
  const stepsOfPlace = new Map<string, number[]>()
  const named = new Map<number, Ends[]>()
  const batchIn = new Map<string, string>()
  const put = (place: string, at: number) => {
    if (isOutside(place)) return
    const there = stepsOfPlace.get(place)
    if (!there) stepsOfPlace.set(place, [at])
    else if (there.at(-1) !== at) there.push(at)
  }
  steps.forEach(({ effect }, at) => {
    const ends = effect.jars ? endsInJars(effect, batchIn) : effect.transfers
    if (effect.jars) named.set(at, ends as Ends[])
    for (const { from, to } of ends) {
      put(from, at)
      put(to, at)
    }
    for (const [jarId, jar] of effect.jars ?? [])
      if (jar) batchIn.set(jarId, jar.batchId)
      else batchIn.delete(jarId)
  })
  return { steps, stepsOfPlace, named }
}

const jarIdOf = (place: string): string => place.slice('jar:'.length)

function endsInJars({ jars, transfers }: Step['effect'], batchIn: ReadonlyMap<string, string>) {
  const name = (place: string): string => {
    if (!place.startsWith('jar:')) return place
    const jarId = jarIdOf(place)
    return `${place}@${jars?.get(jarId)?.batchId ?? batchIn.get(jarId) ?? ''}`
  }
  return transfers.map(({ from, to }): Ends => ({ from: name(from), to: name(to) }))
}

/** More than any step has transfers. */
const ordersInStep = 1024

function hopsOfStep({ steps, named }: Index, at: number): Hop[] {
  const { effect, atMs } = steps[at] as Step
  const { transfers } = effect
  return transfers.flatMap(({ from, to, matter }, index) => {
    const ends = named.get(at)?.[index] ?? { from, to }
    const empties = isEmptiedBy(effect, from, index)
    return oneWay({ ...ends, order: at * ordersInStep + 2 * index, atMs, matter, empties })
  })
}

/** The last transfer out of a jar that stands empty after the step. */
const isEmptiedBy = ({ jars, transfers }: Step['effect'], from: string, index: number): boolean =>
  from.startsWith('jar:') &&
  jars?.get(jarIdOf(from)) === null &&
  transfers.findLastIndex((transfer) => transfer.from === from) === index

/** The parts of a transfer that go forth and, where it is below zero, those that go back. */
function oneWay(hop: Hop): Hop[] {
  const { from, to, matter, order } = hop
  if (matterKinds.every((kind) => matter[kind] >= 0)) return massOf(matter) > 0 ? [hop] : []
  const forth = mapMatter(matter, (amountG) => Math.max(0, amountG))
  const back = mapMatter(matter, (amountG) => Math.max(0, -amountG))
  return [
    { ...hop, matter: forth },
    { ...hop, from: to, to: from, matter: back, order: order + 1 },
  ].filter((way) => massOf(way.matter) > 0)
}
