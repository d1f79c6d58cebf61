/** What stands in the maker's calendar. Whoever has more days to keep adds a source of entries here. */
import { allJars } from '../cellar/jar-store.ts'
import { readSettings } from '../cellar/setting-store.ts'
import { addDays, dayOf } from '../engine/index.ts'
import type { CalendarEntry } from '../papers/calendar.ts'
import { taskDescription, taskSummary } from '../papers/task-words.ts'
import { paperWords } from '../papers/words/paper-words.ts'
import { wordsLocaleOf } from '../../shared/language.ts'
import type { Task } from '../../shared/schemas/tasks.ts'
import { purchaseEntries } from './purchase-entries.ts'
import { batchesInHand, scheduledTasks, timeZoneOf, todayOf, toldTasks } from './schedule.ts'
import type { Session } from './session.ts'

export type EntrySource = (session: Session) => CalendarEntry[]

const sources: readonly EntrySource[] = [taskEntries, purchaseEntries]

export const calendarEntries = (session: Session): CalendarEntry[] =>
  sources.flatMap((source) => source(session))

/** Further off than this nothing is certain enough for a calendar. */
const horizonDays = 400

function taskEntries(session: Session): CalendarEntry[] {
  const timeZone = timeZoneOf(session)
  const horizon = addDays(todayOf(session), horizonDays)
  const settings = readSettings(session.book)
  const words = paperWords(settings)
  const locale = wordsLocaleOf(settings.language ?? 'en', settings.locale)
  const format = new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone })
  const batchNames = new Map(batchesInHand(session).map(({ id, name }) => [id, name]))
  const jarNames = new Map(allJars(session.book).map(({ id, name }) => [id, name]))
  return toldTasks(session, scheduledTasks(session))
    .filter(belongsInCalendar)
    .map((task) => ({ task, day: dayInCalendar(task, timeZone) }))
    .filter(({ day }) => day <= horizon)
    .map(({ task, day }) => {
      const told = {
        task,
        batchName: batchNames.get(task.batchId) ?? '',
        jarNames: task.jarIds.flatMap((id) => jarNames.get(id) ?? []),
        day: (instant: string) => format.format(new Date(instant)),
      }
      return {
        uid: `${task.id}@ratafia`,
        firstDay: day,
        lastDay: day,
        summary: taskSummary(told, words),
        description: taskDescription(told, words),
      }
    })
}

/** The daily turning would drown all else, and an empty batch has no day. */
const belongsInCalendar = ({ kind, from }: Task): boolean =>
  kind !== 'turn' && kind !== 'lookIn' && !(kind === 'charge' && from === 'ledger')

function dayInCalendar({ due, putOff }: Task, timeZone: string): string {
  const day = dayOf(Date.parse(due), timeZone)
  return putOff && putOff.until > day ? putOff.until : day
}
