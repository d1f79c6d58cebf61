/** What becomes of the bottles: opened as they ripen, given at midwinter, tasted, broken, counted. */
import { msPerDay, msPerHour } from '../../shared/spans-of-time.ts'
import type { Move } from '../../shared/schemas/moves.ts'
import type { CellarHand } from './cellar-hand.ts'
import { atHour, instant, lastTime, monthOf } from './days.ts'
import type { Diary } from './diary.ts'
import { glassTasted } from './glass-tasted.ts'
import type { HouseKind } from './house-kinds.ts'
import type { Mishap } from './mishap.ts'
import type { OpenedBottles } from './opened-bottles.ts'
import type { Noise } from './seeded-noise.ts'
import { countOf, put, takeOne, type ShelfId, type Shelved } from './shelves.ts'

/** What is known of a batch that goes into bottles. */
export interface Bottling {
  readonly hand: CellarHand
  readonly diary: Diary
  readonly opened: OpenedBottles
  /** Every lot of the house, in the order of bottling. */
  readonly laid: Laid[]
  readonly noise: Noise
  readonly batchId: string
  /** Undefined for a blend: it has no kind to be measured by. */
  readonly kind?: HouseKind | undefined
  readonly restMonths: number
  readonly isSparse: boolean
  readonly mishaps: readonly Mishap[]
}

export interface Laid {
  readonly bottling: Bottling
  readonly shelved: Shelved
}

/** Days between two bottles of the same lot, and of those that are kept for later years. */
const quickDays = [25, 170] as const
const slowDays = [180, 700] as const
const keptFrom = 0.6

export function planBottleYears(bottling: Bottling, shelved: Shelved, bottledMs: number): void {
  const { restMonths, diary, laid, noise } = bottling
  laid.push({ bottling, shelved })
  const filledCount = countOf(shelved)
  const ripeMs = bottledMs + restMonths * 30 * msPerDay
  // A first one never waits until it is ripe.
  const firstMs = atHour(bottledMs + noise.between(20, 60) * msPerDay, 19.5)
  diary.at(firstMs, (ms) => drink(bottling, shelved, ms))
  let ms = ripeMs
  for (let bottle = 2; bottle <= filledCount; bottle += 1) {
    const isKept = bottle > keptFrom * filledCount
    ms += (isKept ? noise.between(...slowDays) : noise.between(...quickDays)) * msPerDay
    const isGift = monthOf(ms) === 12 || noise.happens(0.12)
    const isByTheGlass = noise.happens(0.22)
    diary.at(atHour(ms, isGift ? 11 : 20), (then) => {
      if (isGift) return giveAway(bottling, shelved, then)
      return isByTheGlass ? uncork(bottling, shelved, then) : drink(bottling, shelved, then)
    })
  }
  if (!shelved.bottleLotId.endsWith('-bottles')) return
  planTastings(bottling, shelved, { firstMs, ripeMs })
  planShelf(bottling, shelved, ripeMs)
}

/** The lot by itself: carried nearer, broken, counted. */
function planShelf(bottling: Bottling, shelved: Shelved, ripeMs: number): void {
  const { diary, mishaps, noise, isSparse } = bottling
  const carried = noise.happens(0.5)
  const to: ShelfId = noise.happens(0.3) ? 'sill' : 'pantry'
  if (isSparse)
    diary.at(atHour(ripeMs - 20 * msPerDay, 10), (ms) => carry(bottling, shelved, ms, 'rack'))
  else if (carried)
    diary.at(atHour(ripeMs + 5 * msPerDay, 10), (ms) => carry(bottling, shelved, ms, to))
  if (mishaps.includes('bottleBroken'))
    diary.at(atHour(ripeMs + 12 * msPerDay, 9), (ms) => breakOne(bottling, shelved, ms))
  if (mishaps.includes('bottlesMiscounted'))
    diary.at(lastTime([1, 2], ripeMs + 366 * msPerDay, 0), (ms) => count(bottling, shelved, ms))
}

async function drink(bottling: Bottling, shelved: Shelved, atMs: number): Promise<void> {
  const from = takeOne(shelved)
  if (!from) return
  const { bottleLotId } = shelved
  const move: Move = { kind: 'drawBottle', at: instant(atMs), bottleLotId, count: 1, ...from }
  await bottling.hand.record(move)
  if (bottling.mishaps.includes('drawnTwice') && countOf(shelved) === 1) {
    const again = takeOne(shelved) ?? {}
    put(shelved, again.shelfId ?? null, 1)
    const [moveId] = await bottling.hand.record({
      ...move,
      at: instant(atMs + 60_000),
      ...again,
    })
    if (moveId) await bottling.hand.amend(moveId, null)
  }
}

export async function uncork(
  { opened, noise }: Bottling,
  shelved: Shelved,
  atMs: number,
): Promise<void> {
  const from = takeOne(shelved)
  const { bottleLotId, bottleSizeMl } = shelved
  if (from) await opened.open({ bottleLotId, bottleSizeMl, from, noise }, atMs)
}

async function giveAway(bottling: Bottling, shelved: Shelved, atMs: number): Promise<void> {
  const from = takeOne(shelved)
  if (!from) return
  const { bottleLotId } = shelved
  const notes = ['For next door.', 'Taken to the wedding.', 'For the beekeeper.'] as const
  const note = monthOf(atMs) === 12 ? 'Midwinter.' : bottling.noise.pick(notes)
  const gift = { bottleLotId, count: 1, ...from, note }
  await bottling.hand.record({ kind: 'give', at: instant(atMs), ...gift })
}

async function breakOne({ hand }: Bottling, shelved: Shelved, atMs: number): Promise<void> {
  const from = takeOne(shelved)
  if (!from) return
  const { bottleLotId } = shelved
  const broken = { bottleLotId, count: 1, ...from, note: 'The shelf by the door. Swept up.' }
  await hand.record({ kind: 'breakBottle', at: instant(atMs), ...broken })
}

async function count({ hand }: Bottling, shelved: Shelved, atMs: number): Promise<void> {
  const from = takeOne(shelved)
  if (!from) return
  const shelfId = from.shelfId ?? null
  const { bottleLotId, counts } = shelved
  await hand.record({
    kind: 'correct',
    at: instant(atMs),
    found: { bottleLotId, count: counts.get(shelfId) ?? 0, shelfId },
    note: 'Counted the shelf: one fewer than the book says.',
  })
}

/** Half of what stands together is carried elsewhere; what never had a place is given one whole. */
export async function carry({ hand }: Bottling, shelved: Shelved, atMs: number, to: ShelfId) {
  const [from] = shelved.counts
  if (!from || from[0] === to) return
  const [fromShelfId, there] = from
  const moved = fromShelfId === null ? there : Math.min(4, Math.ceil(there / 2))
  put(shelved, fromShelfId, -moved)
  put(shelved, to, moved)
  const carried = { bottleLotId: shelved.bottleLotId, count: moved, fromShelfId, toShelfId: to }
  await hand.record({ kind: 'shelve', at: instant(atMs), ...carried })
}

/** The first bottle is tasted, the ripe one, and in some years another. */
function planTastings(
  bottling: Bottling,
  { bottleLotId }: Shelved,
  { firstMs, ripeMs }: { readonly firstMs: number; readonly ripeMs: number },
): void {
  const { kind, isSparse, batchId, diary, hand, noise, restMonths } = bottling
  if (!kind) return
  const bottledMs = ripeMs - restMonths * 30 * msPerDay
  const taste = async (ms: number) => {
    const glass = glassTasted(kind, (ms - bottledMs) / (30 * msPerDay), noise)
    await hand.record({ kind: 'taste', at: instant(ms), batchId, bottleLotId, ...glass })
  }
  if (isSparse || noise.happens(0.3)) diary.at(firstMs + msPerHour / 2, taste)
  diary.at(atHour(ripeMs + noise.between(3, 30) * msPerDay, 21), taste)
  for (let year = 1; year <= 5; year += 1)
    if (noise.happens(0.2))
      diary.at(atHour(ripeMs + (365 * year + noise.between(-40, 40)) * msPerDay, 21), taste)
}
