/** What needs hands now, what comes within the week, and what a careful maker should see. */
import { allJars } from '../../cellar/jar-store.ts'
import { readSettings } from '../../cellar/setting-store.ts'
import { remindedFirst } from '../../cellar/task-store.ts'
import {
  addDays,
  byDay,
  byNeed,
  dayOf,
  hourOf,
  isHidden,
  settledJar,
  type ScheduledTask,
} from '../../engine/index.ts'
import type { Today } from '../../../shared/schemas/schedule.ts'
import type { Task } from '../../../shared/schemas/tasks.ts'
import { batchSummary, bottleLot, cautionsOf } from '../describe.ts'
import { nextTasks } from '../next-tasks.ts'
import { spiritCautions } from '../opened-spirit.ts'
import { batchesInHand, scheduledTasks, timeZoneOf, todayOf, toldTasks } from '../schedule.ts'
import type { Session } from '../session.ts'
import { shelfNews } from '../shelf-news.ts'
import { nowMs, type ChannelsOf, type Handlers } from './handler.ts'

const weekDays = 7

/** A program left open overnight wakes nobody. */
const earliestHour = 8

interface Tasks extends Pick<Today, 'now' | 'week' | 'putOff' | 'after'> {
  readonly bottles: readonly Task[]
}

function tasksOfToday(
  session: Session,
  scheduled: readonly ScheduledTask[] = scheduledTasks(session),
): Tasks {
  const timeZone = timeZoneOf(session)
  const endOfWeek = addDays(todayOf(session), weekDays)
  const tasks = toldTasks(session, scheduled).filter(({ isWaiting }) => !isWaiting)
  const shown = tasks.filter((task) => !isHidden(task))
  const work = shown.filter((task) => !isOfBottles(task))
  const coming = work.filter(({ state }) => state === 'coming').sort(byDay)
  const isSoon = ({ early }: Task) => dayOf(Date.parse(early), timeZone) <= endOfWeek
  const after = coming.find((task) => !isSoon(task))
  return {
    now: work.filter(({ state }) => state !== 'coming').sort(byNeed),
    bottles: shown.filter((task) => task.state !== 'coming' && isOfBottles(task)).sort(byDay),
    week: coming.filter(isSoon),
    putOff: tasks.filter(isHidden).sort(byPutOff),
    ...(after && { after }),
  }
}

/** Bottles that came ready, or fade, are news and no work. */
const isOfBottles = ({ bottleLotId }: Task): boolean => bottleLotId !== undefined

const byPutOff = (a: Task, b: Task): number =>
  (a.putOff?.until ?? '').localeCompare(b.putOff?.until ?? '') || byNeed(a, b)

export const todayHandlers: Handlers<ChannelsOf<'today'>> = {
  'today.list': (session) => {
    const now = nowMs(session)
    const jars = allJars(session.book)
    const { fruits, ledger } = session
    const scheduled = scheduledTasks(session)
    const next = nextTasks(session, scheduled)
    const { bottles, ...tasks } = tasksOfToday(session, scheduled)
    const inHand = batchesInHand(session)
    const names = new Map(inHand.map(({ id, name }) => [id, name]))
    const ofLots = bottles.flatMap((task) => {
      const id = task.bottleLotId ?? ''
      const lot = ledger.folded.cellar.bottles.get(id)
      return lot ? [{ task, lot: bottleLot(id, lot, names.get(lot.batchId) ?? '') }] : []
    })
    const ofJars = [...ledger.folded.cellar.jars].flatMap(([id, jar]) =>
      cautionsOf(id, settledJar(jar, Math.max(now, jar.atMs)), { jars, fruits }, now),
    )
    const cautions = [...ofJars, ...spiritCautions(session)]
    const named = new Set<string | undefined>([
      ...[...tasks.now, ...tasks.week, ...tasks.putOff].map(({ batchId }) => batchId),
      ...cautions.map(({ batchId }) => batchId),
      tasks.after?.batchId,
    ])
    return {
      day: todayOf(session),
      ...tasks,
      cameReady: ofLots.filter(({ task }) => task.kind === 'taste'),
      fading: ofLots.filter(({ task }) => task.kind !== 'taste'),
      runningLow: [...shelfNews(session).runningLow],
      cautions,
      batches: inHand
        .filter(({ id }) => named.has(id))
        .map((batch) => batchSummary(session, batch, { nowMs: now, next: next.get(batch.id) })),
    }
  },
  'today.remind': (session) => {
    const { book } = session
    const { reminders, language } = readSettings(book)
    if (!reminders) return null
    if (hourOf(nowMs(session), timeZoneOf(session)) < earliestHour) return null
    const pressing = tasksOfToday(session).now.filter(({ state }) => state !== 'open')
    if (pressing.length === 0) return null
    const isFirst = book.transaction(() => remindedFirst(book, todayOf(session))).immediate()
    if (!isFirst) return null
    const ids = new Set(pressing.map(({ batchId }) => batchId))
    const names = new Map(batchesInHand(session).map(({ id, name }) => [id, name]))
    // A round of turning is one thing to do, however many jars it takes.
    const turning = pressing.filter(({ kind }) => kind === 'turn').length
    const count = pressing.length - Math.max(0, turning - 1)
    return { count, batchNames: [...ids].flatMap((id) => names.get(id) ?? []), language }
  },
}
