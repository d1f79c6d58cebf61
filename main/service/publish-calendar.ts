/** The calendar as it is handed out: each entry's version told against what was handed out before. */
import { allPublished, putPublished, type PublishedRow } from '../cellar/calendar-store.ts'
import { addDays, dayOf } from '../engine/index.ts'
import { calendarText, type CalendarEntry, type CalendarEvent } from '../papers/calendar.ts'
import { calendarEntries } from './calendar-entries.ts'
import { timeZoneOf, todayOf } from './schedule.ts'
import type { Session } from './session.ts'

/** A calendar that has not asked for so long will not ask for a cancellation any more. */
const cancelledDays = 60

export function publishCalendar(session: Session): string {
  const { book, options } = session
  const madeAt = options.now().toISOString()
  const before = allPublished(book)
  const changed = changedRows(before, calendarEntries(session), madeAt)
  if (changed.length > 0) book.transaction(() => putPublished(book, changed)).immediate()
  const rows = new Map([...before, ...changed].map((row) => [row.uid, row]))
  const oldest = addDays(todayOf(session), -cancelledDays)
  const events = [...rows.values()]
    .filter(
      ({ isCancelled, changedAt }) =>
        !isCancelled || dayOf(Date.parse(changedAt), timeZoneOf(session)) >= oldest,
    )
    .map(eventOf)
    .sort((a, b) => a.firstDay.localeCompare(b.firstDay) || a.uid.localeCompare(b.uid))
  return calendarText({ name: session.isDemo ? 'Ratafia demo' : 'Ratafia', events, madeAt })
}

/** The rows that are new, moved, reworded, cancelled or back: each a version further. */
export function changedRows(
  before: readonly PublishedRow[],
  entries: readonly CalendarEntry[],
  at: string,
): PublishedRow[] {
  const known = new Map(before.map((row) => [row.uid, row]))
  const current = new Set(entries.map(({ uid }) => uid))
  const told = entries.flatMap((entry): PublishedRow[] => {
    const was = known.get(entry.uid)
    const content = JSON.stringify(entry)
    if (was && !was.isCancelled && was.entry === content) return []
    const sequence = was ? was.sequence + 1 : 0
    return [{ uid: entry.uid, entry: content, sequence, isCancelled: false, changedAt: at }]
  })
  const gone = before
    .filter(({ uid, isCancelled }) => !isCancelled && !current.has(uid))
    .map((row) => ({ ...row, sequence: row.sequence + 1, isCancelled: true, changedAt: at }))
  return [...told, ...gone]
}

const eventOf = ({ entry, sequence, isCancelled, changedAt }: PublishedRow): CalendarEvent => ({
  // Written by `changedRows` and by nothing else.
  ...(JSON.parse(entry) as CalendarEntry),
  sequence,
  isCancelled,
  changedAt,
})
