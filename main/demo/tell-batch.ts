/** Opens one batch of the demo and puts its whole life in the diary. */
import { msPerHour } from '../../shared/spans-of-time.ts'
import { begin } from './batch-beginning.ts'
import { planExtracts } from './batch-extracts.ts'
import { planFinishing } from './batch-finishing.ts'
import type { BatchPlan, BatchStory } from './batch-plan.ts'
import type { Laid } from './bottle-years.ts'
import type { CellarHand } from './cellar-hand.ts'
import { instant, yearOf } from './days.ts'
import type { Diary } from './diary.ts'
import type { HouseBlend } from './house-blend.ts'
import type { OpenedBottles } from './opened-bottles.ts'
import type { PantryKeeper } from './pantry-keeper.ts'
import { seededNoise } from './seeded-noise.ts'

export interface House {
  readonly hand: CellarHand
  readonly diary: Diary
  readonly pantry: PantryKeeper
  readonly blend: HouseBlend
  readonly opened: OpenedBottles
  readonly laid: Laid[]
  /** Ids in use, so that a second batch of a kind in one year is told apart. */
  readonly batchIds: Set<string>
}

export function tellBatch(house: House, plan: BatchPlan): void {
  const { hand, diary, pantry, blend, opened, laid } = house
  const { id, title, colour } = plan.kind
  const year = yearOf(plan.startMs)
  const isSecond = house.batchIds.has(`${id}-${year}`)
  const batchId = `${id}-${year}${isSecond ? '-ii' : ''}`
  house.batchIds.add(batchId)
  const story: BatchStory = {
    plan,
    batchId,
    hand,
    diary,
    pantry,
    blend,
    opened,
    laid,
    noise: seededNoise(batchId),
    isOver: false,
    fruitKg: plan.fruitKg,
    fruitJarId: '',
    extractJarId: '',
    extractRoomMl: 0,
    secondJarId: '',
  }
  diary.at(plan.startMs, async (ms) => {
    await hand.ask('batches.open', {
      id: batchId,
      name: `${title} ${year}${isSecond ? ' II' : ''}`,
      colour,
      note: plan.isSparse ? 'A busy year: little was written down.' : '',
      openedAt: instant(ms - 3 * msPerHour),
    })
    await begin(story, ms)
  })
  planExtracts(story)
  planFinishing(story)
}
