/** The midwinter blend: a little of several clear batches, married in a jar of its own. */
import { msPerDay, msPerHour } from '../../shared/spans-of-time.ts'
import { fillBottles } from './bottling.ts'
import type { Laid } from './bottle-years.ts'
import type { CellarHand } from './cellar-hand.ts'
import { atHour, instant, yearOf } from './days.ts'
import type { Diary } from './diary.ts'
import type { OpenedBottles } from './opened-bottles.ts'
import { seededNoise } from './seeded-noise.ts'
import { emptyVessel } from './vessels.ts'

/** What a batch gives to the house blend before it is bottled. */
export interface BlendGift {
  readonly volumeMl: number
}

export interface HouseBlend {
  /** Pours part of a clear batch to the blend; the first one opens it. */
  add: (fromJarId: string, gift: BlendGift, atMs: number) => Promise<void>
}

const clearingDays = 21

/** With so many gifts the blend is whole. */
const giftCount = 2

export function houseBlend(
  hand: CellarHand,
  diary: Diary,
  opened: OpenedBottles,
  laid: Laid[],
): HouseBlend {
  let batchId = ''
  let jarId = ''
  let gifts = 0

  /** A small bottle set aside for a visitor, and opened again. */
  const taster = () => `${batchId}-taster`

  async function open(atMs: number) {
    const year = yearOf(atMs)
    batchId = `midwinter-blend-${year}`
    await hand.ask('batches.open', {
      id: batchId,
      name: `Midwinter blend ${year}`,
      colour: '#5e1f2f',
      note: 'No fruit of its own.',
      openedAt: instant(atMs),
    })
    jarId = (await emptyVessel(hand, 'fruit', { wishMl: 1300 })).jarId
  }

  async function finish(atMs: number) {
    await hand.record({
      kind: 'unbottle',
      at: instant(atMs - msPerHour),
      batchId,
      bottleLotId: taster(),
      count: 1,
      toJarId: jarId,
      note: 'Nobody came to taste it: back with the rest.',
    })
    const { jarId: clearJarId } = await emptyVessel(hand, 'liquid', { wishMl: 1300 })
    const filtered = { fromJarId: jarId, toJarId: clearJarId, medium: 'paper' } as const
    await hand.record({ kind: 'filter', at: instant(atMs), batchId, ...filtered })
    await fillBottles(
      {
        hand,
        diary,
        opened,
        laid,
        noise: seededNoise(batchId),
        batchId,
        restMonths: 4,
        isSparse: false,
        mishaps: [],
      },
      clearJarId,
      atMs + msPerDay,
    )
  }

  return {
    add: async (fromJarId, { volumeMl }, atMs) => {
      if (jarId === '') await open(atMs)
      const parts = [{ jarId: fromJarId, volumeMl }]
      await hand.record({ kind: 'marry', at: instant(atMs), batchId, parts, toJarId: jarId })
      gifts += 1
      if (gifts < giftCount) return
      const small = { bottleLotId: taster(), bottleSizeMl: 200, count: 1, name: 'Taster' }
      const filledAt = instant(atMs + msPerHour)
      await hand.record({ kind: 'bottle', at: filledAt, batchId, fromJarId: jarId, ...small })
      diary.at(atHour(atMs + clearingDays * msPerDay, 16), finish)
    },
  }
}
