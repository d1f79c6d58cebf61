import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { reminderText, remindDaily } from '../../main/hosts/electron/daily-reminder.ts'

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

const serviceTelling = (...values: unknown[]) => {
  const asked: string[] = []
  return {
    asked,
    dispatch: async (name: string) => {
      asked.push(name)
      return { ok: true as const, value: values.shift() ?? null }
    },
  }
}

describe('remindDaily', () => {
  it('asks at the start and every hour, shows what there is, and stops', async () => {
    const service = serviceTelling(null, { count: 2, batchNames: ['Plum', 'Sloe'] })
    const shown: unknown[] = []
    const stop = remindDaily(service, (text) => shown.push(text))
    await vi.advanceTimersByTimeAsync(0)
    expect(service.asked).toEqual(['today.remind'])
    expect(shown).toEqual([])
    await vi.advanceTimersByTimeAsync(3_600_000)
    expect(shown).toEqual([{ title: '2 things want your hands', body: 'Plum, Sloe' }])
    stop()
    await vi.advanceTimersByTimeAsync(86_400_000)
    expect(service.asked).toHaveLength(2)
  })

  it('keeps quiet when the service fails', async () => {
    const log = vi.spyOn(console, 'error').mockImplementation(() => {})
    const failing = { dispatch: () => Promise.reject(new Error('closed')) }
    const shown: unknown[] = []
    const stop = remindDaily(failing, (text) => shown.push(text))
    await vi.advanceTimersByTimeAsync(3_600_000)
    stop()
    expect(shown).toEqual([])
    expect(log).toHaveBeenCalledTimes(2)
    log.mockRestore()
  })
})

describe('reminderText', () => {
  it('names three batches at most', () => {
    const batchNames = ['Plum', 'Sloe', 'Quince', 'Damson', 'Walnut']
    expect(reminderText({ count: 7, batchNames }).body).toBe('Plum, Sloe, Quince and 2 more')
    expect(reminderText({ count: 1, batchNames: ['Plum'] })).toEqual({
      title: 'One thing wants your hands',
      body: 'Plum',
    })
  })

  it('counts in Polish', () => {
    const title = (count: number) => reminderText({ count, batchNames: [], language: 'pl' }).title
    expect([1, 2, 5, 22, 25].map(title)).toEqual([
      'Jedna rzecz potrzebuje twoich rąk',
      '2 rzeczy potrzebują twoich rąk',
      '5 rzeczy potrzebuje twoich rąk',
      '22 rzeczy potrzebują twoich rąk',
      '25 rzeczy potrzebuje twoich rąk',
    ])
  })
})
