/**
 * Days to keep, as a calendar any program can read: iCalendar (RFC 5545), whole days only.
 *
 * A day is the maker's own: `VALUE=DATE` knows no time zone and no summer time. The same thing keeps
 * its UID; its SEQUENCE tells a newer version from an older one; what is no more is told as
 * cancelled, because a program that has it already does not forget it by itself.
 */
import { addDays } from '../engine/index.ts'

/** Something to be done on a day; whatever makes one chooses a UID that stays. */
export interface CalendarEntry {
  readonly uid: string
  readonly firstDay: string
  /** The last day, itself included. */
  readonly lastDay: string
  readonly summary: string
  readonly description: string
}

export interface CalendarEvent extends CalendarEntry {
  readonly sequence: number
  readonly changedAt: string
  readonly isCancelled: boolean
}

export interface CalendarPaper {
  readonly name: string
  readonly events: readonly CalendarEvent[]
  /** When this text is made. */
  readonly madeAt: string
}

/** How often a subscriber may look again. */
const refreshEvery = 'PT2H'

export function calendarText({ name, events, madeAt }: CalendarPaper): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Ratafia//Cellar book//EN',
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    `NAME:${escaped(name)}`,
    `X-WR-CALNAME:${escaped(name)}`,
    `REFRESH-INTERVAL;VALUE=DURATION:${refreshEvery}`,
    `X-PUBLISHED-TTL:${refreshEvery}`,
    ...events.flatMap((event) => eventLines(event, madeAt)),
    'END:VCALENDAR',
  ]
  return lines.map((line) => `${folded(line)}\r\n`).join('')
}

const eventLines = (event: CalendarEvent, madeAt: string): string[] => [
  'BEGIN:VEVENT',
  `UID:${escaped(event.uid)}`,
  `DTSTAMP:${stamp(madeAt)}`,
  `LAST-MODIFIED:${stamp(event.changedAt)}`,
  `SEQUENCE:${event.sequence}`,
  `DTSTART;VALUE=DATE:${date(event.firstDay)}`,
  // The end is the first day that is free again.
  `DTEND;VALUE=DATE:${date(addDays(event.lastDay, 1))}`,
  `SUMMARY:${escaped(event.summary)}`,
  ...(event.description === '' ? [] : [`DESCRIPTION:${escaped(event.description)}`]),
  `STATUS:${event.isCancelled ? 'CANCELLED' : 'CONFIRMED'}`,
  // A jar to be looked at is no meeting: the day stays free.
  'TRANSP:TRANSPARENT',
  'END:VEVENT',
]

const date = (day: string): string => day.replaceAll('-', '')

/** `2026-11-25T19:00:00.123Z` as `20261125T190000Z`. */
const stamp = (instant: string): string => `${instant.slice(0, 19).replaceAll(/[-:]/g, '')}Z`

/** RFC 5545, 3.3.11: a backslash before backslash, comma and semicolon; a line break as `\n`. */
function escaped(text: string): string {
  return (
    text
      .replaceAll(/[\\;,]/g, (letter) => `\\${letter}`)
      .replaceAll(/\r\n|\r|\n|\u2028|\u2029/g, '\\n')
      // What is left of control characters no calendar may carry.
      // oxlint-disable-next-line no-control-regex -- they are what is looked for
      .replaceAll(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '')
      .toWellFormed()
  )
}

const lineOctets = 75
const octetsOf = (text: string) => new TextEncoder().encode(text).length

/** RFC 5545, 3.1: no line longer than 75 octets, and no letter cut in two. */
function folded(line: string): string {
  if (octetsOf(line) <= lineOctets) return line
  const lines: string[] = []
  let current = ''
  let octets = 0
  for (const letter of line) {
    const size = octetsOf(letter)
    if (octets + size > lineOctets) {
      lines.push(current)
      // The blank that marks a continued line counts.
      current = ' '
      octets = 1
    }
    current += letter
    octets += size
  }
  return [...lines, current].join('\r\n')
}
