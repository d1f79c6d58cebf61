import { describe, expect, it } from 'vitest'
import { bestByOnceOpened } from '../../../main/engine/index.ts'

const monthMs = (365.25 / 12) * 86_400_000

describe('bestByOnceOpened', () => {
  const full = { openedAtMs: 0, strengthPctVol: 30, fillFraction: 0.97 }

  it('is three to six months after it was opened', () => {
    const { early, likely, late } = bestByOnceOpened(full)
    expect(early / monthMs).toBeCloseTo(3, 9)
    expect(likely / monthMs).toBeCloseTo(4.24, 2)
    expect(late / monthMs).toBeCloseTo(6, 9)
  })

  it('is half as long with a quarter left, and no shorter with a drop', () => {
    expect(bestByOnceOpened({ ...full, fillFraction: 0.25 }).late / monthMs).toBeCloseTo(3, 9)
    expect(bestByOnceOpened({ ...full, fillFraction: 0 }).late / monthMs).toBeCloseTo(3, 9)
    expect(bestByOnceOpened({ ...full, fillFraction: 0.6 }).late / monthMs).toBeCloseTo(4.5, 9)
  })

  it('is shorter when weak, and no longer when strong', () => {
    expect(bestByOnceOpened({ ...full, strengthPctVol: 10 }).late / monthMs).toBeCloseTo(2.4, 9)
    expect(bestByOnceOpened({ ...full, strengthPctVol: 60 })).toEqual(bestByOnceOpened(full))
  })
})
