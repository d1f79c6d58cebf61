import { describe, expect, it } from 'vitest'
import { mainLimit } from '../../../renderer/screens/season/main-limit.ts'
import { nextAct, type SeasonStands } from '../../../renderer/screens/season/next-act.ts'
import { weekRanges } from '../../../renderer/screens/season/plan/week-ranges.ts'
import { sameWishes } from '../../../renderer/screens/season/same-wishes.ts'
import { kind, seasonPlan, wishes } from './season-fixture.ts'

const stands = (changed: Partial<SeasonStands> = {}): SeasonStands => ({
  hasJars: true,
  isMaking: false,
  plan: seasonPlan(),
  isKept: true,
  isChanged: false,
  dueCount: 0,
  ...changed,
})

describe('nextAct', () => {
  it('is to get jars, then a plan, then to keep it, then to buy', () => {
    expect(nextAct(stands({ hasJars: false, plan: undefined }))).toBe('addJars')
    expect(nextAct(stands({ plan: undefined }))).toBe('make')
    expect(nextAct(stands({ isKept: false, dueCount: 2 }))).toBe('keep')
    expect(nextAct(stands({ dueCount: 2 }))).toBe('buy')
    expect(nextAct(stands())).toBe('none')
  })

  it('waits while a plan is made, and makes one anew for other wishes', () => {
    expect(nextAct(stands({ isMaking: true, isKept: false }))).toBe('none')
    expect(nextAct(stands({ isChanged: true, isKept: false }))).toBe('makeAnew')
  })

  it('is to wish where nothing is wanted', () => {
    const plan = seasonPlan({ notices: [{ code: 'nothingWanted' }] })
    expect(nextAct(stands({ plan, isKept: false }))).toBe('wish')
  })
})

describe('mainLimit', () => {
  it('is what most litres were cut for', () => {
    const kinds = [
      kind({ shortMl: 500, cutBy: ['money'] }),
      kind({ kindId: 'quince', shortMl: 900, cutBy: ['jars', 'money'] }),
      kind({ kindId: 'sloe', shortMl: 300, cutBy: ['money'] }),
    ]
    expect(mainLimit({ kinds })).toBe('jars')
    expect(mainLimit({ kinds: [kind()] })).toBeUndefined()
  })
})

describe('sameWishes', () => {
  it('does not look at the order of fields, nor at fields left undefined', () => {
    const { cleaningWeeks, ...rest } = wishes()
    expect(sameWishes(wishes(), { cleaningWeeks, ...rest })).toBe(true)
    expect(
      sameWishes(
        wishes(),
        wishes({ limits: { isSpiritAtHandOnly: false, moneyMinor: undefined } }),
      ),
    ).toBe(true)
  })

  it('sees a changed number', () => {
    expect(sameWishes(wishes(), wishes({ reserveMonths: 7 }))).toBe(false)
  })
})

describe('weekRanges', () => {
  it('joins weeks in a row, in order, each once', () => {
    expect(weekRanges([41, 40, 45, 46, 40])).toEqual([
      { from: 40, to: 42 },
      { from: 45, to: 47 },
    ])
    expect(weekRanges([])).toEqual([])
  })
})
