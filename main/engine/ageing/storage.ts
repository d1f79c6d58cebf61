/**
 * How much older does a lot become where it stands?
 *
 * Method: a clock that runs as many times faster than at the reference as the rate of a stay says,
 * integrated over the stays. Before the first stay, and without any, it stood as the trade advises:
 * 15 °C, dark (craft reference: 10 to 18 °C, practice). In: instants in ms, rates without unit.
 * Out: days by that clock since bottling, and back. Leaves out: how temperature swings in a stay.
 * @example clockOf(0, [], () => 2).ageDays(86_400_000) // 2
 */
import type { ShelfLight } from '../../../shared/schemas/shelf.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import { arrhenius } from '../steeping/keeping.ts'
import type { Stay } from './ageing-lot.ts'

export type Storage = Omit<Stay, 'fromMs'>

export const usualStorage: Storage = Object.freeze({ temperatureC: 15, light: 'dark' })

export const daysPerMonth = 365.25 / 12
export const msPerMonth = daysPerMonth * msPerDay

/** Of the loss of anthocyanins, kJ/mol: juices and liqueurs, 60 to 77; craft reference. */
export const ageingActivation = { typical: 68, low: 60, high: 77 } as const

/** Times faster in that light; daylight halves the half-life to quarters it, the rest is estimate. */
export const fasterInLight: Record<ShelfLight, { typical: number; low: number; high: number }> = {
  dark: { typical: 1, low: 1, high: 1 },
  dim: { typical: 1.3, low: 1, high: 1.8 },
  daylight: { typical: 3, low: 2, high: 4 },
}

/** Rate of ageing against the usual storage, by warmth alone. */
export const fasterThanUsual = ({ temperatureC }: Pick<Storage, 'temperatureC'>): number =>
  arrhenius(ageingActivation.typical, temperatureC) /
  arrhenius(ageingActivation.typical, usualStorage.temperatureC)

export interface Clock {
  /** Days since bottling as the clock counts them; none before. */
  readonly ageDays: (atMs: number) => number
  readonly atAgeMs: (ageDays: number) => number
}

interface Stretch {
  readonly fromMs: number
  readonly ageDays: number
  readonly rate: number
}

export function clockOf(
  bottledAtMs: number,
  stays: readonly Stay[],
  rateOf: (storage: Storage) => number,
): Clock {
  const stretches: Stretch[] = [{ fromMs: bottledAtMs, ageDays: 0, rate: rateOf(usualStorage) }]
  for (const stay of stays.toSorted((a, b) => a.fromMs - b.fromMs)) {
    const before = stretches.at(-1) as Stretch
    // What it stood in when it was bottled is the last stay that began before.
    const fromMs = Math.max(stay.fromMs, bottledAtMs)
    if (fromMs === before.fromMs) stretches.pop()
    const ageDays = ageIn(before, fromMs)
    stretches.push({ fromMs, ageDays, rate: rateOf(stay) })
  }
  return {
    ageDays: (atMs) => {
      let at = stretches.length - 1
      while (at > 0 && (stretches[at] as Stretch).fromMs > atMs) at -= 1
      return Math.max(0, ageIn(stretches[at] as Stretch, atMs))
    },
    atAgeMs: (days) => {
      let at = stretches.length - 1
      while (at > 0 && (stretches[at] as Stretch).ageDays > days) at -= 1
      const { fromMs, ageDays, rate } = stretches[at] as Stretch
      return fromMs + ((days - ageDays) / rate) * msPerDay
    },
  }
}

const ageIn = ({ fromMs, ageDays, rate }: Stretch, atMs: number): number =>
  ageDays + (rate * (atMs - fromMs)) / msPerDay
