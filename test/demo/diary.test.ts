import { describe, expect, it } from 'vitest'
import { isWithin, lastTime } from '../../main/demo/days.ts'
import { openDiary } from '../../main/demo/diary.ts'
import { seededNoise } from '../../main/demo/seeded-noise.ts'

describe('openDiary', () => {
  it('does deeds in the order of time, and of entry where the time is the same', async () => {
    const done: string[] = []
    const diary = openDiary(100)
    const note = (name: string) => async () => void done.push(name)
    diary.at(30, note('c'))
    diary.at(10, async () => {
      done.push('a')
      diary.at(20, note('b'))
      diary.at(30, note('d'))
    })
    diary.at(100, note('e'))
    diary.at(101, note('tomorrow'))
    await diary.live()
    expect(done).toEqual(['a', 'b', 'c', 'd', 'e'])
  })
})

describe('lastTime', () => {
  const day = (iso: string) => Date.parse(iso)

  it('is this year when the day has come, else last year', () => {
    expect(lastTime([7, 9], day('2026-11-25T18:00:00Z'), 0)).toBe(day('2026-07-09T00:00:00Z'))
    expect(lastTime([12, 9], day('2026-11-25T18:00:00Z'), 0)).toBe(day('2025-12-09T00:00:00Z'))
  })

  it('goes back by years', () => {
    expect(lastTime([7, 9], day('2026-07-09T00:00:00Z'), 3)).toBe(day('2023-07-09T00:00:00Z'))
  })
})

describe('isWithin', () => {
  it('knows seasons that run over the turn of the year', () => {
    const winter = { startMonth: 11, endMonth: 3 }
    expect([10, 11, 1, 3, 4].map((month) => isWithin(month, winter))).toEqual([
      false,
      true,
      true,
      true,
      false,
    ])
  })
})

describe('seededNoise', () => {
  const stream = (name: string) => {
    const noise = seededNoise(name)
    return Array.from({ length: 2000 }, () => noise.between(0, 1))
  }

  it('is the same for a name, and another for another name', () => {
    expect(stream('quince')).toEqual(stream('quince'))
    expect(stream('quince')).not.toEqual(stream('sloe'))
  })

  it('is even between its ends, and bell-shaped around zero', () => {
    const even = stream('even')
    expect(even.reduce((sum, value) => sum + value) / 2000).toBeCloseTo(0.5, 1)
    const noise = seededNoise('bell')
    const around = Array.from({ length: 2000 }, () => noise.around(2))
    const mean = around.reduce((sum, value) => sum + value) / 2000
    const deviation = Math.sqrt(around.reduce((sum, value) => sum + value ** 2) / 2000)
    expect(Math.abs(mean)).toBeLessThan(0.2)
    expect(deviation).toBeGreaterThan(1.8)
    expect(deviation).toBeLessThan(2.2)
  })
})
