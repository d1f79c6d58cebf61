import { describe, expect, it } from 'vitest'
import { speak } from '../../../../renderer/app/words/i18n.ts'
import {
  daysBetween,
  formatDay,
  formatFromNow,
  formatSpan,
} from '../../../../renderer/parts/time/format-time.ts'
import { instantOf, localInputOf } from '../../../../renderer/parts/time/local-time.ts'

const now = new Date('2026-11-25T12:00:00')
const at = (local: string) => new Date(local).toISOString()

describe('formatFromNow', () => {
  it.each([
    ['2026-11-25T20:00:00', 'today'],
    ['2026-11-26T01:00:00', 'tomorrow'],
    ['2026-11-12T23:00:00', '13 days ago'],
    ['2026-10-21T10:00:00', '5 weeks ago'],
    ['2027-03-01T10:00:00', 'in 3 months'],
    ['2024-11-20T10:00:00', '2 years ago'],
  ])('says of %s: %s', (local, words) => {
    expect(formatFromNow(at(local), 'en-GB', now)).toBe(words)
  })

  it('counts in the plurals of the language', async () => {
    await speak('pl')
    expect(formatFromNow(at('2026-11-28T10:00:00'), 'pl-PL', now)).toBe('za 3 dni')
    expect(formatSpan(at('2026-06-20T10:00:00'), now, 'en-GB')).toBe('5 miesięcy')
    await speak('en')
  })
})

describe('formatDay', () => {
  it('leaves this year out', () => {
    expect(formatDay(at('2026-11-12T10:00:00'), 'en-GB', now)).toBe('12 Nov')
    expect(formatDay(at('2024-11-12T10:00:00'), 'en-GB', now)).toBe('12 Nov 2024')
  })
})

describe('daysBetween', () => {
  it('counts midnights, not hours', () => {
    expect(daysBetween(new Date('2026-11-25T23:59:00'), new Date('2026-11-26T00:01:00'))).toBe(1)
    expect(daysBetween(new Date('2026-11-25T00:01:00'), new Date('2026-11-25T23:59:00'))).toBe(0)
  })

  it('counts a day where the clocks change as one', () => {
    expect(daysBetween(new Date('2026-03-28T12:00:00'), new Date('2026-03-30T12:00:00'))).toBe(2)
  })
})

describe('localInputOf and instantOf', () => {
  it('go there and back to the minute', () => {
    const instant = '2026-11-25T09:41:00.000Z'
    expect(instantOf(localInputOf(instant))).toBe(instant)
  })

  it('read no instant from half a date', () => {
    expect(instantOf('2026-11')).toBeUndefined()
    expect(instantOf('')).toBeUndefined()
    expect(instantOf('2026-13-45T10:00')).toBeUndefined()
  })
})
