/** Bottles that are not drunk in one evening: opened, poured by the glass, now and then put together. */
import { msPerDay, msPerHour } from '../../shared/spans-of-time.ts'
import type { CellarHand } from './cellar-hand.ts'
import { atHour, instant } from './days.ts'
import type { Diary } from './diary.ts'
import type { Noise } from './seeded-noise.ts'
import type { ShelfId } from './shelves.ts'

export interface OpenedBottles {
  /** Uncorks one; what is poured from it later is in the diary by then. */
  open: (bottle: Uncorked, atMs: number) => Promise<void>
}

export interface Uncorked {
  readonly bottleLotId: string
  readonly bottleSizeMl: number
  readonly from: { readonly shelfId?: ShelfId }
  readonly noise: Noise
}

interface Opened {
  readonly openedId: string
  readonly bottleSizeMl: number
  leftMl: number
}

/** The last of a bottle goes into another one only where it is worth the washing up. */
const worthKeepingMl = 30

export function openedBottles(hand: CellarHand, diary: Diary): OpenedBottles {
  const standing: Opened[] = []
  const openedOfLot = new Map<string, number>()

  const leave = (bottle: Opened) => void standing.splice(standing.indexOf(bottle), 1)

  async function pour(bottle: Opened, volumeMl: number, atMs: number) {
    bottle.leftMl -= volumeMl
    const { openedId } = bottle
    await hand.record({ kind: 'pourGlass', at: instant(atMs), openedId, volumeMl })
  }

  async function finish(bottle: Opened, noise: Noise, atMs: number) {
    const { openedId, leftMl } = bottle
    leave(bottle)
    const at = instant(atMs)
    const other = standing.find((one) => one.bottleSizeMl - one.leftMl > leftMl + 10)
    if (other && leftMl >= worthKeepingMl) {
      other.leftMl += leftMl
      const into = { openedId: other.openedId, fromOpenedId: openedId }
      await hand.record({ kind: 'topUp', at, ...into, note: 'Two halves make a whole.' })
    } else if (noise.happens(0.12)) {
      const note = 'Stood open too long: flat. Down the sink.'
      await hand.record({ kind: 'discard', at, from: { openedId }, note })
    } else await hand.record({ kind: 'pourGlass', at, openedId })
  }

  return {
    open: async ({ bottleLotId, bottleSizeMl, from, noise }, atMs) => {
      const number = (openedOfLot.get(bottleLotId) ?? 0) + 1
      openedOfLot.set(bottleLotId, number)
      const openedId = `${bottleLotId}-open-${number}`
      await hand.record({
        kind: 'openBottle',
        at: instant(atMs),
        bottleLotId,
        openedId,
        ...from,
      })
      const bottle = { openedId, bottleSizeMl, leftMl: bottleSizeMl }
      standing.push(bottle)
      const glasses = Math.max(2, Math.min(5, Math.floor(bottleSizeMl / 90)))
      let ms = atMs + msPerHour / 4
      for (let glass = 1; glass <= glasses; glass += 1) {
        const volumeMl = 10 * Math.round(noise.between(0.1, 0.18) * (bottleSizeMl / 10))
        diary.at(ms, (then) => pour(bottle, volumeMl, then))
        ms = atHour(ms + noise.between(3, 16) * msPerDay, noise.between(19, 22))
      }
      diary.at(ms, (then) => finish(bottle, noise, then))
    },
  }
}
