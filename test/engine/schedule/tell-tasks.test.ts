import { describe, expect, it } from 'vitest'
import { addDays, byDay, byNeed, dayOf, isHidden, toldTask } from '../../../main/engine/index.ts'
import type { ScheduledTask } from '../../../main/engine/index.ts'

const ms = (instant: string) => Date.parse(instant)

const task = (change: Partial<ScheduledTask> = {}): ScheduledTask => ({
  id: 'plum.drawOff.jar.1',
  kind: 'drawOff',
  batchId: 'plum',
  jarIds: ['jar'],
  ordinal: 1,
  earlyMs: ms('2026-11-20T08:00:00Z'),
  dueMs: ms('2026-11-25T20:00:00Z'),
  lateMs: ms('2026-11-30T08:00:00Z'),
  from: 'fruit',
  loss: 'oversteeps',
  isWaiting: false,
  ...change,
})

const told = (
  now: string,
  change: Partial<ScheduledTask> = {},
  until?: string,
  timeZone = 'Europe/Warsaw',
) => {
  const putOff = new Map(until === undefined ? [] : [[change.id ?? task().id, until]])
  return toldTask(task(change), { nowMs: ms(now), timeZone, putOff })
}

describe('dayOf', () => {
  it('tells the maker’s own day, through both ends of summer time', () => {
    expect(dayOf(ms('2026-10-24T22:30:00Z'), 'Europe/Warsaw')).toBe('2026-10-25')
    expect(dayOf(ms('2026-10-25T22:59:00Z'), 'Europe/Warsaw')).toBe('2026-10-25')
    expect(dayOf(ms('2026-10-25T23:00:00Z'), 'Europe/Warsaw')).toBe('2026-10-26')
    expect(dayOf(ms('2026-03-28T23:30:00Z'), 'Europe/Warsaw')).toBe('2026-03-29')
    expect(dayOf(ms('2026-03-29T22:30:00Z'), 'Europe/Warsaw')).toBe('2026-03-30')
    expect(dayOf(ms('2026-03-29T22:30:00Z'), 'America/Los_Angeles')).toBe('2026-03-29')
    expect(dayOf(ms('2026-12-31T12:00:00Z'), 'Pacific/Kiritimati')).toBe('2027-01-01')
  })

  it('counts on over months, leap days and summer time', () => {
    expect(addDays('2026-10-24', 2)).toBe('2026-10-26')
    expect(addDays('2028-02-28', 1)).toBe('2028-02-29')
    expect(addDays('2027-01-01', -1)).toBe('2026-12-31')
  })
})

describe('toldTask', () => {
  it('goes from coming through open and due to late', () => {
    const states = ['2026-11-18', '2026-11-20', '2026-11-24', '2026-11-25', '2026-11-30'].map(
      (day) => told(`${day}T09:00:00Z`).state,
    )
    expect(states).toEqual(['coming', 'open', 'open', 'due', 'late'])
  })

  it('tells all there is to tell, with instants and what has to be out for it', () => {
    expect(told('2026-11-24T09:00:00Z')).toStrictEqual({
      id: 'plum.drawOff.jar.1',
      kind: 'drawOff',
      batchId: 'plum',
      jarIds: ['jar'],
      ordinal: 1,
      from: 'fruit',
      loss: 'oversteeps',
      isWaiting: false,
      early: '2026-11-20T08:00:00.000Z',
      due: '2026-11-25T20:00:00.000Z',
      late: '2026-11-30T08:00:00.000Z',
      effort: 'funnel',
      state: 'open',
    })
    expect(told('2026-11-24T09:00:00Z', { lateMs: undefined })).not.toHaveProperty('late')
  })

  it('is late from the very instant', () => {
    expect(told('2026-11-30T07:59:59.999Z').state).toBe('due')
    expect(told('2026-11-30T08:00:00Z').state).toBe('late')
  })

  it('counts what is due later today as due, by the maker’s own day', () => {
    const dueMs = ms('2026-11-25T23:30:00Z')
    expect(told('2026-11-25T09:00:00Z', { dueMs }).state).toBe('open')
    expect(told('2026-11-25T09:00:00Z', { dueMs }, undefined, 'UTC').state).toBe('due')
  })

  it('never presses for what loses nothing', () => {
    const taste = { kind: 'taste', loss: 'nothing', lateMs: undefined } as const
    expect(told('2027-11-25T09:00:00Z', taste).state).toBe('open')
  })

  it('leaves a task that waits for another coming, whatever its day', () => {
    expect(told('2026-12-20T09:00:00Z', { isWaiting: true }).state).toBe('coming')
  })
})

describe('a task put off', () => {
  it('is hidden until its day', () => {
    const off = told('2026-11-25T09:00:00Z', {}, '2026-11-28')
    expect(off.putOff).toEqual({ until: '2026-11-28', isBack: false })
    expect(isHidden(off)).toBe(true)
    expect(isHidden(told('2026-11-28T09:00:00Z', {}, '2026-11-28'))).toBe(false)
  })

  it('comes back where it would be late before its day', () => {
    const back = told('2026-12-01T09:00:00Z', {}, '2026-12-24')
    expect(back).toMatchObject({ state: 'late', putOff: { until: '2026-12-24', isBack: true } })
    expect(isHidden(back)).toBe(false)
  })

  it('does not come back while it waits for another', () => {
    const waiting = told('2026-12-01T09:00:00Z', { isWaiting: true }, '2026-12-24')
    expect(waiting.putOff?.isBack).toBe(false)
  })
})

describe('byDay', () => {
  it('tells first what can be begun first, then by name', () => {
    const now = '2026-11-10T09:00:00Z'
    const tasks = [
      told(now, { id: 'b' }),
      told(now, { id: 'a' }),
      told(now, { id: 'c', earlyMs: ms('2026-11-19T08:00:00Z') }),
    ]
    expect(tasks.toSorted(byDay).map(({ id }) => id)).toEqual(['c', 'a', 'b'])
  })
})

describe('byNeed', () => {
  it('goes on with the state, when it is late, when it is due, and the name', () => {
    const now = '2026-11-26T09:00:00Z'
    const order = (...changes: Partial<ScheduledTask>[]) =>
      changes
        .map((change) => told(now, change))
        .toSorted(byNeed)
        .map(({ id }) => id)
    const late = { id: 'late', lateMs: ms('2026-11-26T08:00:00Z') }
    expect(order({ id: 'due' }, late)).toEqual(['late', 'due'])
    const sooner = { id: 'sooner', lateMs: ms('2026-11-28T08:00:00Z') }
    expect(order({ id: 'a' }, sooner)).toEqual(['sooner', 'a'])
    // What is never late is as pressing as its day.
    const never = { id: 'never', lateMs: undefined }
    expect(order({ id: 'a' }, never)).toEqual(['never', 'a'])
    const earlier = { id: 'z', dueMs: ms('2026-11-24T20:00:00Z') }
    expect(order({ id: 'a' }, earlier)).toEqual(['z', 'a'])
    expect(order({ id: 'b' }, { id: 'a' })).toEqual(['a', 'b'])
  })

  it('puts first what is lost worst, before what is only later', () => {
    const now = '2026-11-30T09:00:00Z'
    const tasks = [
      told(now, { id: 'a.bottle.1', kind: 'bottle', loss: 'idle' }),
      told(now, { id: 'b.turn.j.1', kind: 'turn', loss: 'mould', lateMs: undefined }),
      told(now, { id: 'c.addSpirit.j.1', kind: 'addSpirit', loss: 'ferments' }),
      told(now, { id: 'd.drawOff.j.1' }),
      told(now, { id: 'e.drawOff.j.1', loss: 'stones' }),
      told(now, { id: 'f.taste.1', kind: 'taste', loss: 'nothing', lateMs: undefined }),
      told(now, { id: 'g.drinkUp.lot.1', kind: 'drinkUp', loss: 'fades' }),
    ]
    expect(tasks.toSorted(byNeed).map(({ id }) => id.slice(0, 1))).toEqual([
      'c',
      'b',
      'e',
      'd',
      'g',
      'a',
      'f',
    ])
  })

  it('tells what presses before what can only be done already', () => {
    const now = '2026-11-22T09:00:00Z'
    const open = told(now, { id: 'a.drawOff.j.1' })
    const due = told(now, { id: 'b.filter.1', loss: 'idle', dueMs: ms('2026-11-21T08:00:00Z') })
    expect([open, due].toSorted(byNeed).map(({ id }) => id)).toEqual([
      'b.filter.1',
      'a.drawOff.j.1',
    ])
  })
})
