/** The plans that batches were started with, beside what was really done. */
import { allPlans, planOfBatch } from '../../cellar/plan-store.ts'
import { followPlan, nextPlanned, stepsOf } from '../../engine/index.ts'
import { draftFacts } from '../draft-facts.ts'
import { batchOf } from '../one-batch.ts'
import { nowMs, type ChannelsOf, type Handlers } from './handler.ts'

export const planHandlers: Handlers<ChannelsOf<'plans'>> = {
  'plans.follow': (session, { batchId }) => {
    batchOf(session, batchId)
    const plan = planOfBatch(session.book, batchId)
    if (!plan) return null
    const { cellar, steps } = session.ledger.folded
    const own = stepsOf(steps, batchId)
    const following = { plan, steps: own, cellar, nowMs: nowMs(session) }
    const followed = followPlan(following, draftFacts(session))
    const { next, planned, expected, moves, stages, taken } = followed
    return {
      plan,
      moves: [...moves],
      stages: [...stages],
      taken: [...taken],
      ...(next && { next }),
      ...(planned && { planned }),
      ...(expected && { expected }),
    }
  },
  'plans.next': (session) =>
    allPlans(session.book).flatMap((plan) => {
      const own = stepsOf(session.ledger.folded.steps, plan.batchId)
      const next = nextPlanned(
        plan,
        own.map(({ recorded }) => recorded),
      )
      return next ? [{ batchId: plan.batchId, next }] : []
    }),
}
