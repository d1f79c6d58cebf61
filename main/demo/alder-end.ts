/**
 * Alder End: an invented house at the edge of an orchard, whose cellar book is the demo. Six
 * seasons are lived through day by day, by the same requests that a screen makes. The same day
 * gives the same book.
 */
import { msPerDay } from '../../shared/spans-of-time.ts'
import type { Dispatch } from '../service/service.ts'
import type { Laid } from './bottle-years.ts'
import { cellarHand } from './cellar-hand.ts'
import { atHour, lastTime, yearOf } from './days.ts'
import { openDiary } from './diary.ts'
import { planFromElsewhere } from './from-elsewhere.ts'
import { houseBlend } from './house-blend.ts'
import { pantryKeeper } from './pantry-keeper.ts'
import { planLately } from './lately.ts'
import { openedBottles } from './opened-bottles.ts'
import { pastBatches } from './past-seasons.ts'
import { shelves } from './shelves.ts'
import { tellBatch } from './tell-batch.ts'
import { batchesUnderWay } from './this-season.ts'
import { vessels } from './vessels.ts'

export async function fillDemo(dispatch: Dispatch, now: Date): Promise<void> {
  const nowMs = now.getTime()
  const hand = cellarHand(dispatch)
  await hand.ask('cellar.changeSettings', { currency: 'EUR', units: 'metric' })
  await hand.ask('jars.add', { jars: [...vessels] })
  for (const shelf of shelves) await hand.ask('shelves.add', shelf)

  const plans = [...pastBatches(nowMs), ...batchesUnderWay(nowMs)]
  const firstMs = Math.min(...plans.map(({ startMs }) => startMs))
  const pantry = pantryKeeper(hand, yearOf(firstMs))
  const diary = openDiary(nowMs)
  const opened = openedBottles(hand, diary)
  const laid: Laid[] = []
  const blend = houseBlend(hand, diary, opened, laid)
  const house = { hand, diary, pantry, blend, opened, laid, batchIds: new Set<string>() }
  for (const plan of plans.sort((a, b) => a.startMs - b.startMs)) tellBatch(house, plan)
  // Spring cleaning, two years back.
  diary.at(atHour(lastTime([3, 20], nowMs - 400 * msPerDay, 0), 11), (ms) =>
    pantry.weighSugar(230, ms),
  )
  planFromElsewhere(hand, diary, nowMs)
  planLately(diary, laid, nowMs)
  await diary.live()
}
