/** Drinkers whose habits are known, played with a seeded generator: what a forecast is held against. */
import type { StockChange } from '../../../main/engine/index.ts'

/** Mulberry32: small, seeded, and good enough for a few thousand draws. */
export function randomOf(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

export const bottleMl = 500
export const dayMs = 86_400_000

export interface Drinker {
  /** Bottles a month of each kind, in the mean month. */
  readonly drunkAMonth: readonly number[]
  readonly givenAMonth: readonly number[]
  /** By month of the year; means of 1. */
  readonly drunkSeason: readonly number[]
  readonly givenSeason: readonly number[]
}

const winter = [1.3, 1.2, 1, 0.9, 0.8, 0.7, 0.7, 0.7, 0.9, 1.1, 1.2, 1.5]
const yearsEnd = [0.3, 0.3, 0.3, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.6, 1.5, 6]

/** Whose kinds differ as much as an exponential, or half as much. */
export function drinkerOf(random: () => number, kinds: number): Drinker {
  const exponential = () => -Math.log(1 - random())
  const rate = () => (exponential() + exponential()) / 2
  const mean = 0.2 + 1.2 * random()
  return {
    drunkAMonth: Array.from({ length: kinds }, () => mean * rate()),
    givenAMonth: Array.from({ length: kinds }, () => 0.3 * mean * rate()),
    drunkSeason: winter,
    givenSeason: yearsEnd,
  }
}

function poissonOf(random: () => number, mean: number): number {
  const limit = Math.exp(-mean)
  let count = 0
  for (let product = random(); product > limit; product *= random()) count += 1
  return count
}

export const kindIdOf = (kind: number) => `kind${kind}`

/** Takings day by day between two days since 2020 began, as bottles of half a litre. */
export function takingsOf(
  drinker: Drinker,
  random: () => number,
  fromDay: number,
  toDay: number,
): StockChange[] {
  const found: StockChange[] = []
  for (let day = fromDay; day < toDay; day += 1) {
    const atMs = Date.UTC(2020, 0, 1) + (day + random()) * dayMs
    const month = new Date(atMs).getUTCMonth()
    for (const [way, rates, season] of [
      ['drunk', drinker.drunkAMonth, drinker.drunkSeason],
      ['given', drinker.givenAMonth, drinker.givenSeason],
    ] as const)
      rates.forEach((aMonth, kind) => {
        const aDay = (aMonth * (season[month] as number)) / (365.25 / 12)
        for (let left = poissonOf(random, aDay); left > 0; left -= 1)
          found.push({ atMs, kindId: kindIdOf(kind), changeMl: -bottleMl, way })
      })
  }
  return found
}
