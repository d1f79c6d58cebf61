/** A service that shows what a host hands over and takes back, with no book behind it. */
import type { Reply } from '../../shared/schemas/errors.ts'
import type { Service } from '../../main/service/service.ts'

export interface FakeService extends Service {
  /** Pretends that the book was written to. */
  change: () => void
  readonly listenerCount: number
}

export function fakeService(): FakeService {
  const listeners = new Set<() => void>()
  return {
    dispatch: async (name, request) => {
      if (name === 'echo') return { ok: true, value: request }
      if (name === 'refuse')
        return {
          ok: false,
          error: { code: 'notEnough', message: 'too much', details: { available: 3 } },
        }
      if (name === 'calendar.serve') return servedCalendar(request)
      if (name === 'break') throw new Error('secret path /home/maker/cellar.ratafia')
      return { ok: false, error: { code: 'unknownChannel', message: name, details: { name } } }
    },
    onChange: (listener) => {
      listeners.add(listener)
      return () => void listeners.delete(listener)
    },
    close: () => {},
    change: () => {
      for (const listener of listeners) listener()
    },
    get listenerCount() {
      return listeners.size
    },
  }
}

export const calendarSecret = 'C'.repeat(43)

function servedCalendar(request: unknown): Reply<unknown> {
  const { secret } = request as { secret: string }
  if (secret === calendarSecret) return { ok: true, value: { ics: 'BEGIN:VCALENDAR\r\n' } }
  const code = secret === 'busy' ? 'bookBusy' : 'notFound'
  return { ok: false, error: { code, message: code, details: {} } }
}
