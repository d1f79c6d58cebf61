import { describe, expect, it } from 'vitest'
import { dueState, inOrderOfNeed } from '../../../renderer/screens/today/due.ts'
import { batch, next, summary } from '../cellar-fixture.ts'

const now = new Date('2026-11-25T12:00:00Z')
const day = (date: string) => `${date}T08:00:00Z`
const dates = (early: string, due: string, late: string) => ({
  early: day(early),
  due: day(due),
  late: day(late),
})

describe('dueState', () => {
  it('goes from coming through ready and due to late', () => {
    const state = (early: string, due: string, late: string) =>
      dueState(next(dates(early, due, late)), now)
    expect(state('2026-12-01', '2026-12-10', '2027-01-01')).toBe('coming')
    expect(state('2026-11-01', '2026-12-10', '2027-01-01')).toBe('ready')
    expect(state('2026-11-01', '2026-11-20', '2027-01-01')).toBe('due')
    expect(state('2026-10-01', '2026-10-20', '2026-11-01')).toBe('late')
  })

  it('never calls a resting bottle late', () => {
    const tasting = { action: 'taste' as const, ...dates('2024-09-01', '2024-12-01', '2025-01-01') }
    expect(dueState(next(tasting), now)).toBe('ripe')
    const young = { action: 'taste' as const, ...dates('2026-10-01', '2026-12-24', '2027-06-01') }
    expect(dueState(next(young), now)).toBe('coming')
  })

  it('counts what is due later today as due', () => {
    const evening = new Date(now.getFullYear(), now.getMonth(), now.getDate(), 23, 30)
    const step = { ...dates('2026-11-20', '2026-11-25', '2027-01-01'), due: evening.toISOString() }
    expect(dueState(next(step), now)).toBe('due')
  })

  it('leaves a step without dates to its maker', () => {
    expect(dueState({ action: 'charge', jarIds: [] }, now)).toBe('ready')
  })
})

describe('inOrderOfNeed', () => {
  it('puts first what is lost first, and leaves out what needs nothing', () => {
    const named = (name: string, step: ReturnType<typeof next>) =>
      summary({ batch: batch({ id: name, name }), next: step })
    const ordered = inOrderOfNeed(
      [
        named('coming', next(dates('2026-12-01', '2026-12-10', '2027-01-01'))),
        named('due later', next(dates('2026-11-01', '2026-11-20', '2027-03-01'))),
        named('done', next({ action: 'none', jarIds: [] })),
        named('due sooner', next(dates('2026-11-01', '2026-11-21', '2026-11-27'))),
        named('late', next(dates('2026-10-01', '2026-10-20', '2026-11-01'))),
      ],
      now,
    )
    expect(ordered.map((one) => one.summary.batch.name)).toEqual([
      'late',
      'due sooner',
      'due later',
      'coming',
    ])
  })
})
