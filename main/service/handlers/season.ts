/** The fruit year, wishes, and plans of a season: made in a thread, kept, compared. */
import {
  addSeasonPlan,
  keepRegion,
  keepWishes,
  keptSeasonPlans,
  newestSeasonPlan,
  seasonPlanById,
  seasonRegion,
} from '../../cellar/season-store.ts'
import { compareSeasons, freshPurchases, fruitCalendar, seasonBefore } from '../../engine/index.ts'
import { pantryLot } from '../describe.ts'
import { learnBefore, seasonFacts, wishesOf } from '../season-facts.ts'
import { cancelJob, jobState, planOfJob, startJob } from '../season-jobs.ts'
import { notFound } from '../service-error.ts'
import type { Session } from '../session.ts'
import { nowMs, type ChannelsOf, type Handlers } from './handler.ts'

function calendar(session: Session, from: string | undefined) {
  const { book, fruits, ledger } = session
  const { cellar, steps } = ledger.folded
  const pantryG = new Map<string, number>()
  for (const [id, lot] of cellar.lots) {
    const { goods, massG } = pantryLot(id, lot)
    if (goods.kind === 'fruit' && massG > 1)
      pantryG.set(goods.fruitId, (pantryG.get(goods.fruitId) ?? 0) + massG)
  }
  return fruitCalendar({
    fromMs: from === undefined ? nowMs(session) : Date.parse(from),
    region: seasonRegion(book),
    fruits: fruits.all,
    fresh: freshPurchases(steps),
    pantryG,
    ownKindIds: new Set([...cellar.batches.values()].flatMap(({ fruitIds }) => fruitIds)),
  })
}

export const seasonHandlers: Handlers<ChannelsOf<'season'>> = {
  'season.calendar': (session, { from }) => calendar(session, from),
  'season.changeRegion': ({ book }, region) => {
    book.transaction(() => keepRegion(book, region)).immediate()
    return seasonRegion(book)
  },
  'season.wishes': (session) => wishesOf(session),
  'season.keepWishes': (session, wishes) => {
    for (const { kindId } of wishes.wishes)
      if (!session.fruits.find(kindId)) throw notFound('fruit', kindId)
    session.book.transaction(() => keepWishes(session.book, wishes)).immediate()
    return wishesOf(session)
  },
  'season.startPlan': async (session, { jobId, wishes, startAt, ...how }) => {
    const asked = { wishes, startAt }
    await learnBefore(session, asked)
    return startJob(session, jobId, () => ({ facts: seasonFacts(session, asked), ...how }))
  },
  'season.planState': (session, { jobId }) => jobState(session, jobId),
  'season.cancelPlan': (session, { jobId }) => cancelJob(session, jobId),
  'season.keepPlan': (session, { id, jobId }) => {
    const { book, options } = session
    const before = seasonPlanById(book, id)
    if (before) return before
    const kept = { id, keptAt: options.now().toISOString(), plan: planOfJob(session, jobId) }
    book.transaction(() => addSeasonPlan(book, kept)).immediate()
    return kept
  },
  'season.lastPlan': ({ book }) => newestSeasonPlan(book) ?? null,
  'season.compare': (session, { jobId }) => {
    const { book, ledger } = session
    const plans = keptSeasonPlans(book)
    const now = jobId === undefined ? plans[0]?.plan : planOfJob(session, jobId)
    const startAt = now?.startAt ?? session.options.now().toISOString()
    const { cellar, steps } = ledger.folded
    const earlier = seasonBefore(plans, startAt)
    return compareSeasons({ now, earlier, cellar, steps, nowMs: nowMs(session) })
  },
}
