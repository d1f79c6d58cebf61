/** The years of a batch's bottles: laid down, carried, opened, poured, tasted, given, broken, counted. */
import type { Move } from '../../../shared/schemas/moves.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import { atHour, instant, monthOf } from '../../../main/demo/days.ts'
import { glassTasted } from '../../../main/demo/glass-tasted.ts'
import type { Shelf } from '../../../shared/schemas/shelf.ts'
import type { Telling } from './batch.ts'

const shelf = (id: string, temperatureC: number, light: Shelf['light']): Shelf => ({
  id,
  name: `Shelf ${id}`,
  temperatureC,
  light,
  isRetired: false,
})

export const shelves: readonly [Shelf, ...Shelf[]] = [
  shelf('rack-a', 12, 'dark'),
  shelf('rack-b', 13, 'dark'),
  shelf('rack-c', 13, 'dark'),
  shelf('vault', 11, 'dark'),
  shelf('pantry', 18, 'dim'),
  shelf('dresser', 20, 'daylight'),
]

interface Standing {
  readonly telling: Telling
  readonly bottleLotId: string
  readonly bottleSizeMl: number
  readonly bottledMs: number
  /** By shelf; none is left out. */
  readonly counts: Map<string, number>
  opened: number
}

/** Most go into half litres; what is left over into small ones. */
export function planBottles(telling: Telling, count: number, ms: number): Move[] {
  const { batchId, extractJarId, noise } = telling
  const smallCount = noise.happens(0.35) ? 3 : 0
  const sizes = [
    {
      bottleLotId: `${batchId}-b`,
      bottleSizeMl: 500,
      count: count - Math.ceil((smallCount * 2) / 5),
    },
    { bottleLotId: `${batchId}-s`, bottleSizeMl: 200, count: smallCount },
  ].filter((size) => size.count > 0)
  return sizes.map((size): Move => {
    const { id: shelfId } = noise.pick(shelves)
    const counts = new Map([[shelfId, size.count]])
    planLife({ telling, ...size, bottledMs: ms, counts, opened: 0 }, size.count)
    const from = { batchId, fromJarId: extractJarId, shelfId }
    return { kind: 'bottle', at: instant(ms), ...from, ...size }
  })
}

function planLife(standing: Standing, count: number): void {
  const { telling, bottledMs } = standing
  const { clerk, kind, noise } = telling
  const on = (days: number, hour: number, moves: (standing: Standing, ms: number) => Move[]) =>
    clerk.plan(atHour(bottledMs + days * msPerDay, hour), (ms) => moves(standing, ms))
  const ripeDays = 30 * kind.restMonths
  on(noise.between(10, 60), 20, taste)
  on(ripeDays + noise.between(0, 60), 20, taste)
  on(noise.between(60, 400), 11, carry)
  if (noise.happens(0.05)) on(ripeDays + noise.between(0, 900), 9, breakOne)
  if (noise.happens(0.15)) on(ripeDays + noise.between(200, 1500), 10, recount)
  // Most of a lot is drunk in a few years; its last bottles are kept for the children's weddings.
  const patience = noise.between(28, 120)
  const kept = noise.between(0.1, 0.6) * count
  let days = ripeDays
  for (let bottle = 1; bottle <= count; bottle += 1) {
    const isKept = count - bottle < kept
    days += patience * noise.between(0.4, 1.6) * (isKept ? 40 : 1)
    on(days, 20, monthOf(bottledMs + days * msPerDay) === 12 ? give : drink)
  }
}

/** One bottle fewer on the fullest shelf; undefined when none is left. */
function take({ counts }: Standing): string | undefined {
  const [fullest] = [...counts].sort((a, b) => b[1] - a[1])
  if (!fullest) return undefined
  const [shelfId, count] = fullest
  if (count > 1) counts.set(shelfId, count - 1)
  else counts.delete(shelfId)
  return shelfId
}

function drink(standing: Standing, ms: number): Move[] {
  const shelfId = take(standing)
  if (shelfId === undefined) return []
  const { bottleLotId, bottleSizeMl, telling } = standing
  const { clerk, noise } = telling
  const at = instant(ms)
  if (noise.happens(0.75)) return [{ kind: 'drawBottle', at, bottleLotId, count: 1, shelfId }]
  const openedId = `${bottleLotId}-o${(standing.opened += 1)}`
  const glassMl = 40 + 10 * Math.round(noise.between(0, 4))
  const glasses = Math.floor(bottleSizeMl / glassMl) - 1
  const pourings = Math.min(glasses, 4)
  let pouredMs = ms
  for (let glass = 1; glass <= pourings; glass += 1) {
    pouredMs += noise.between(4, 25) * msPerDay
    clerk.plan(pouredMs, (then) => [
      {
        kind: 'pourGlass',
        at: instant(then),
        openedId,
        ...(glass < pourings && { volumeMl: glassMl }),
      },
    ])
  }
  return [
    { kind: 'openBottle', at, bottleLotId, openedId, shelfId },
    { kind: 'pourGlass', at: instant(ms + 60_000), openedId, volumeMl: glassMl },
    ...(noise.happens(0.3) ? taste(standing, ms + 600_000) : []),
  ]
}

function give(standing: Standing, ms: number): Move[] {
  const shelfId = take(standing)
  const { bottleLotId } = standing
  return shelfId === undefined
    ? []
    : [{ kind: 'give', at: instant(ms), bottleLotId, count: 1, shelfId, note: 'Midwinter.' }]
}

function breakOne(standing: Standing, ms: number): Move[] {
  const shelfId = take(standing)
  const { bottleLotId } = standing
  return shelfId === undefined
    ? []
    : [{ kind: 'breakBottle', at: instant(ms), bottleLotId, count: 1, shelfId }]
}

function recount(standing: Standing, ms: number): Move[] {
  const shelfId = take(standing)
  const { bottleLotId, counts } = standing
  if (shelfId === undefined) return []
  const found = { bottleLotId, count: counts.get(shelfId) ?? 0, shelfId }
  return [{ kind: 'correct', at: instant(ms), found }]
}

function carry({ bottleLotId, counts, telling }: Standing, ms: number): Move[] {
  const [from] = [...counts]
  const { id: toShelfId } = telling.noise.pick(shelves)
  if (!from || from[0] === toShelfId) return []
  const [fromShelfId, there] = from
  const count = Math.ceil(there / 2)
  if (there > count) counts.set(fromShelfId, there - count)
  else counts.delete(fromShelfId)
  counts.set(toShelfId, (counts.get(toShelfId) ?? 0) + count)
  return [{ kind: 'shelve', at: instant(ms), bottleLotId, count, fromShelfId, toShelfId }]
}

function taste({ bottleLotId, bottledMs, telling }: Standing, ms: number): Move[] {
  const { batchId, kind, noise } = telling
  const ageMonths = (ms - bottledMs) / (30 * msPerDay)
  const glass = glassTasted(kind, ageMonths, noise)
  return [{ kind: 'taste', at: instant(ms), batchId, bottleLotId, ...glass }]
}
