/**
 * Alder End: an invented house at the edge of an orchard, whose cellar book is the demo. Six
 * seasons are lived through day by day, by the same requests that a screen makes. The same day
 * gives the same book.
 */
import { msPerDay } from '../../shared/spans-of-time.ts'
import type { Dispatch } from '../service/service.ts'
import { cellarHand } from './cellar-hand.ts'
import { atHour, lastTime, yearOf } from './days.ts'
import { openDiary } from './diary.ts'
import { houseBlend } from './house-blend.ts'
import { pantryKeeper } from './pantry-keeper.ts'
import { pastBatches } from './past-seasons.ts'
import { tellBatch } from './tell-batch.ts'
import { batchesUnderWay } from './this-season.ts'
import { vessels } from './vessels.ts'

export async function fillDemo(dispatch: Dispatch, now: Date): Promise<void> {
  const nowMs = now.getTime()
  const hand = cellarHand(dispatch)
  await hand.ask('cellar.changeSettings', { currency: 'EUR', units: 'metric' })
  await hand.ask('jars.add', { jars: [...vessels] })

  const plans = [...pastBatches(nowMs), ...batchesUnderWay(nowMs)]
  const firstMs = Math.min(...plans.map(({ startMs }) => startMs))
  const pantry = pantryKeeper(hand, yearOf(firstMs))
  const diary = openDiary(nowMs)
  const blend = houseBlend(hand, diary)
  const house = { hand, diary, pantry, blend, batchIds: new Set<string>() }
  for (const plan of plans.sort((a, b) => a.startMs - b.startMs)) tellBatch(house, plan)
  // Spring cleaning, two years back.
  diary.at(atHour(lastTime([3, 20], nowMs - 400 * msPerDay, 0), 11), (ms) =>
    pantry.weighSugar(230, ms),
  )
  await diary.live()
}
