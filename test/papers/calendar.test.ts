import fc from 'fast-check'
import ICAL from 'ical.js'
import { describe, expect, it } from 'vitest'
import { calendarText, type CalendarEvent } from '../../main/papers/calendar.ts'

const event = (change: Partial<CalendarEvent> = {}): CalendarEvent => ({
  uid: 'plum.drawOff.jar.1@ratafia',
  firstDay: '2026-12-03',
  lastDay: '2026-12-03',
  summary: 'Draw off: Plum',
  description: '',
  sequence: 0,
  changedAt: '2026-11-25T19:00:00.123Z',
  isCancelled: false,
  ...change,
})

const textOf = (...events: CalendarEvent[]) =>
  calendarText({ name: 'Cellar', events, madeAt: '2026-11-25T20:00:00.000Z' })

/** Read by a parser that is not ours, which throws on what is no iCalendar. */
function parsed(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text) as string)
  return {
    calendar,
    events: calendar.getAllSubcomponents('vevent').map((found) => new ICAL.Event(found)),
  }
}

const hostile = [
  'Plum\nBEGIN:VEVENT\nUID:evil',
  'a, b; c \\ d "e" \\n f: g',
  'Śliwka węgierka 梅酒 🍒👩‍🌾 e\u0301',
  'x'.repeat(300),
  '🍒'.repeat(100),
  ' leading and trailing ',
  'END:VEVENT\r\nEND:VCALENDAR',
  '%0d%0a;VALUE=X:,',
]

describe('calendarText', () => {
  it('is a calendar of whole days, the end being the first free one', () => {
    const { calendar, events } = parsed(textOf(event({ lastDay: '2026-12-05' })))
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0')
    expect(calendar.getFirstPropertyValue('method')).toBe('PUBLISH')
    expect(String(calendar.getFirstPropertyValue('refresh-interval'))).toBe('PT2H')
    const [found] = events
    expect(found?.startDate.isDate).toBe(true)
    expect(found?.startDate.toString()).toBe('2026-12-03')
    expect(found?.endDate.toString()).toBe('2026-12-06')
    expect(found?.duration.toString()).toBe('P3D')
  })

  it('has ends over months, leap days and both ends of summer time', () => {
    const ends = ['2026-12-31', '2028-02-28', '2026-03-28', '2026-10-24', '2026-10-25'].map((day) =>
      parsed(textOf(event({ firstDay: day, lastDay: day }))).events[0]?.endDate.toString(),
    )
    expect(ends).toEqual(['2027-01-01', '2028-02-29', '2026-03-29', '2026-10-25', '2026-10-26'])
  })

  it('tells versions and cancellations', () => {
    const [found] = parsed(textOf(event({ sequence: 7, isCancelled: true }))).events
    expect(found?.sequence).toBe(7)
    expect(found?.component.getFirstPropertyValue('status')).toBe('CANCELLED')
    expect(String(found?.component.getFirstPropertyValue('last-modified'))).toBe(
      '2026-11-25T19:00:00Z',
    )
    expect(String(found?.component.getFirstPropertyValue('dtstamp'))).toBe('2026-11-25T20:00:00Z')
  })

  it.each(hostile)('carries %j unchanged, in one event', (name) => {
    const { events } = parsed(textOf(event({ summary: name, description: `In ${name}.` })))
    expect(events).toHaveLength(1)
    const plain = name.replaceAll('\r\n', '\n')
    expect(events[0]?.summary).toBe(plain)
    expect(events[0]?.description).toBe(`In ${plain}.`)
    expect(events[0]?.uid).toBe(event().uid)
  })

  it('has lines of 75 octets at most, ended by CR LF, no letter cut in two', () => {
    const text = textOf(...hostile.map((summary, index) => event({ uid: `${index}`, summary })))
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true)
    const lines = text.split('\r\n')
    expect(lines.every((line) => Buffer.byteLength(line) <= 75)).toBe(true)
    expect(lines.every((line) => !/[\r\n\ufffd]/.test(line) && line.isWellFormed())).toBe(true)
  })

  it('carries any text at all', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (summary) => {
        const { events } = parsed(textOf(event({ summary })))
        expect(events).toHaveLength(1)
        // Control characters have no place in a calendar; line breaks are all one.
        const kept = summary
          .replaceAll(/\r\n|\r|\u2028|\u2029/g, '\n')
          // oxlint-disable-next-line no-control-regex -- they are what is left out
          .replaceAll(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '')
        expect(events[0]?.summary ?? '').toBe(kept)
      }),
    )
  })

  it('is a calendar with nothing in it, too', () => {
    expect(parsed(textOf()).events).toEqual([])
  })
})
