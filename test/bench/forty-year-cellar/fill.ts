/**
 * A cellar kept for forty years, for benches and for scrolling: 2,400 batches of every kind that
 * the demo's house makes, through the service's door alone. The same seed gives the same book.
 */
import type { Jar } from '../../../shared/schemas/cellar.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import { lastTime, yearOf } from '../../../main/demo/days.ts'
import { houseKinds, type HouseKind } from '../../../main/demo/house-kinds.ts'
import { seededNoise } from '../../../main/demo/seeded-noise.ts'
import type { Dispatch } from '../../../main/service/service.ts'
import { rhythm, tellBatch, type BatchAsked } from './batch.ts'
import { shelves } from './bottles.ts'
import { openClerk } from './clerk.ts'

export interface Size {
  readonly years: number
  readonly batchesPerYear: number
}

export const fortyYears: Size = { years: 40, batchesPerYear: 60 }

export async function fillCellar(
  dispatch: Dispatch,
  now: Date,
  { years, batchesPerYear }: Size,
  onYear: (year: number, moves: number) => void = () => undefined,
): Promise<number> {
  const nowMs = now.getTime()
  const clerk = openClerk(dispatch, nowMs)
  // Long chosen: a first guess of it would be written while the bench looks.
  await clerk.ask('cellar.changeSettings', { language: 'en', locale: 'en-GB' })
  for (const shelf of shelves) await clerk.ask('shelves.add', shelf)
  const asked = Array.from({ length: years }, (_, yearsBefore) =>
    batchesOfYear(nowMs, yearsBefore, batchesPerYear),
  )
    .flat()
    .sort((a, b) => a.startMs - b.startMs)
  const jars = jarKeeper()
  const tellings = asked.map((batch) => ({ batch, jars: jars.lend(batch) }))
  for (let from = 0; from < jars.all.length; from += 50)
    await clerk.ask('jars.add', { jars: jars.all.slice(from, from + 50) })
  for (const { batch, jars: lent } of tellings)
    clerk.plan(batch.startMs, async () => {
      await tellBatch(clerk, batch, lent)
      return []
    })
  let year = 0
  return clerk.live((dayMs, moves) => {
    if (yearOf(dayMs) !== year) onYear((year = yearOf(dayMs)), moves)
  })
}

function batchesOfYear(nowMs: number, yearsBefore: number, count: number): BatchAsked[] {
  const kinds: readonly HouseKind[] = Object.values(houseKinds)
  return Array.from({ length: count }, (_, index): BatchAsked => {
    const noise = seededNoise(`year ${yearsBefore} ${index}`)
    const kind = kinds[index % kinds.length] as HouseKind
    const picked = lastTime(kind.pickedOn, nowMs, yearsBefore)
    const startMs = picked + (Math.round(noise.around(6)) - 8) * msPerDay
    return { kind, startMs, batchId: `${kind.id}-${yearOf(startMs)}-${yearsBefore}-${index}` }
  })
}

/** Lends two vessels to each batch for as long as it needs them, and owns as many as that takes. */
function jarKeeper() {
  const all: Jar[] = []
  const freeFrom = new Map<string, number>()
  const lendOne = (fromMs: number, untilMs: number): string => {
    const free = all.find(({ id }) => (freeFrom.get(id) ?? 0) < fromMs)
    const jar = free ?? vessel(all.length + 1)
    if (!free) all.push(jar)
    freeFrom.set(jar.id, untilMs)
    return jar.id
  }
  return {
    all,
    lend: ({ kind, startMs }: BatchAsked) => {
      const days = rhythm(kind)
      const until = (day: number) => startMs + (day + 1) * msPerDay
      return {
        jarId: lendOne(startMs, until(days.press)),
        extractJarId: lendOne(startMs + (days.first - 1) * msPerDay, until(days.bottle)),
      }
    },
  }
}

const vessel = (number: number): Jar => ({
  id: `vessel-${number}`,
  name: `Vessel ${number}`,
  shape: number % 2 === 0 ? 'demijohn' : 'crock',
  capacityMl: 30_000,
  isRetired: false,
})
