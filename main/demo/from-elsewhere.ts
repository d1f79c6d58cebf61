/** Bottles that no jar of the house filled: what a neighbour brought one Christmas. */
import { msPerDay } from '../../shared/spans-of-time.ts'
import type { CellarHand } from './cellar-hand.ts'
import { atHour, instant, lastTime, yearOf } from './days.ts'
import type { Diary } from './diary.ts'
import type { ShelfId } from './shelves.ts'

const shelfId: ShelfId = 'rack'

export function planFromElsewhere(hand: CellarHand, diary: Diary, nowMs: number): void {
  diary.at(atHour(lastTime([12, 24], nowMs - 300 * msPerDay, 0), 17), async (ms) => {
    const batchId = 'neighbours-quince'
    const name = `Neighbour’s quince ${yearOf(ms)}`
    const at = instant(ms)
    await hand.ask('batches.open', { id: batchId, name, colour: '#d8a33a', note: '', openedAt: at })
    await hand.record({
      kind: 'bringIn',
      at,
      batchId,
      bottleLotId: `${batchId}-bottles`,
      bottleSizeMl: 500,
      count: 2,
      strengthPctVol: 34,
      sugarGPerL: 190,
      fruitIds: ['quince'],
      shelfId,
      note: 'Strength and sugar as the neighbour wrote them on the label.',
    })
  })
}
