/** What becomes of the bottles: opened as they ripen, given at midwinter, broken, counted wrong. */
import { msPerDay } from '../../shared/spans-of-time.ts'
import type { Move } from '../../shared/schemas/moves.ts'
import type { CellarHand } from './cellar-hand.ts'
import { atHour, instant, lastTime, monthOf } from './days.ts'
import type { Diary } from './diary.ts'
import type { Mishap } from './mishap.ts'
import type { Noise } from './seeded-noise.ts'

/** What is known of a batch that goes into bottles. */
export interface Bottling {
  readonly hand: CellarHand
  readonly diary: Diary
  readonly noise: Noise
  readonly batchId: string
  readonly restMonths: number
  readonly mishaps: readonly Mishap[]
}

interface Shelved {
  readonly bottleLotId: string
  count: number
}

/** Days between two bottles of the same lot, and of those that are kept for later years. */
const quickDays = [25, 170] as const
const slowDays = [180, 700] as const
const keptFrom = 0.6

export function planBottleYears(
  bottling: Bottling,
  filled: { readonly bottleLotId: string; readonly count: number },
  bottledMs: number,
): void {
  const { restMonths, mishaps, diary, noise } = bottling
  const shelved: Shelved = { ...filled }
  const ripeMs = bottledMs + restMonths * 30 * msPerDay
  // A first one never waits until it is ripe.
  diary.at(atHour(bottledMs + noise.between(20, 60) * msPerDay, 19.5), (ms) =>
    open(bottling, shelved, ms),
  )
  let ms = ripeMs
  for (let bottle = 2; bottle <= filled.count; bottle += 1) {
    const isKept = bottle > keptFrom * filled.count
    ms += (isKept ? noise.between(...slowDays) : noise.between(...quickDays)) * msPerDay
    const isGift = monthOf(ms) === 12 || noise.happens(0.12)
    diary.at(atHour(ms, isGift ? 11 : 20), (then) =>
      isGift ? giveAway(bottling, shelved, then) : open(bottling, shelved, then),
    )
  }
  const isMain = filled.bottleLotId.endsWith('-bottles')
  if (isMain && mishaps.includes('bottleBroken'))
    diary.at(atHour(ripeMs + 12 * msPerDay, 9), (then) => breakOne(bottling, shelved, then))
  if (isMain && mishaps.includes('bottlesMiscounted'))
    diary.at(lastTime([1, 2], ripeMs + 366 * msPerDay, 0), (then) => count(bottling, shelved, then))
}

const leave = async (bottling: Bottling, shelved: Shelved, move: Move): Promise<string[]> => {
  shelved.count -= 1
  return bottling.hand.record(move)
}

async function open(bottling: Bottling, shelved: Shelved, atMs: number): Promise<void> {
  if (shelved.count < 1) return
  const { bottleLotId } = shelved
  const move: Move = { kind: 'drawBottle', at: instant(atMs), bottleLotId, count: 1 }
  await leave(bottling, shelved, move)
  if (bottling.mishaps.includes('drawnTwice') && shelved.count === 1) {
    const [moveId] = await bottling.hand.record({ ...move, at: instant(atMs + 60_000) })
    if (moveId) await bottling.hand.amend(moveId, null)
  }
}

async function giveAway(bottling: Bottling, shelved: Shelved, atMs: number): Promise<void> {
  if (shelved.count < 1) return
  const { bottleLotId } = shelved
  const notes = ['For next door.', 'Taken to the wedding.', 'For the beekeeper.'] as const
  const note = monthOf(atMs) === 12 ? 'Midwinter.' : bottling.noise.pick(notes)
  await leave(bottling, shelved, {
    kind: 'give',
    at: instant(atMs),
    bottleLotId,
    count: 1,
    note,
  })
}

async function breakOne(bottling: Bottling, shelved: Shelved, atMs: number): Promise<void> {
  if (shelved.count < 1) return
  await leave(bottling, shelved, {
    kind: 'discard',
    at: instant(atMs),
    from: { bottleLotId: shelved.bottleLotId, count: 1 },
    note: 'The shelf by the door. Swept up.',
  })
}

async function count(bottling: Bottling, shelved: Shelved, atMs: number): Promise<void> {
  if (shelved.count < 1) return
  shelved.count -= 1
  await bottling.hand.record({
    kind: 'correct',
    at: instant(atMs),
    found: { bottleLotId: shelved.bottleLotId, count: shelved.count },
    note: 'Counted the shelf: one fewer than the book says.',
  })
}
