import { describe, expect, it } from 'vitest'
import { charged, dayOfMs, drawnOff, one, spirited, tasksAt, type Lines } from './schedule-of.ts'

const steeping = [...charged('quinces', 1), ...spirited(1)]
const inJar = { batchId: 'batch', jarId: 'jar' }
const turned = (day: number, how: 'daily' | 'weekly' | 'never'): Lines => [
  [day, { kind: 'keep', ...inJar, turned: how }],
]
const stirred = (day: number): Lines => [[day, { kind: 'stir', ...inJar }]]
const turn = (lines: Lines, day: number) => {
  const task = one(tasksAt(lines, day), 'turn')
  return { day: dayOfMs(task.dueMs), loss: task.loss, lateMs: task.lateMs }
}

describe('turning', () => {
  it('is daily in the first week, and weekly later', () => {
    expect(turn(steeping, 1.5)).toEqual({ day: 2, loss: 'mould', lateMs: undefined })
    expect(turn(steeping, 4.2).day).toBe(4)
    expect(turn(steeping, 20)).toEqual({ day: 15, loss: 'idle', lateMs: undefined })
  })

  it('is as often as its maker says', () => {
    expect(turn([...steeping, ...turned(1, 'daily')], 20.5).day).toBe(20)
    const never = tasksAt([...steeping, ...turned(1, 'never')], 20)
    expect(never.some(({ kind }) => kind === 'turn')).toBe(false)
    expect(one(never, 'lookIn')).toMatchObject({ log: { kind: 'stir', jarIds: ['jar'] } })
  })

  it('is counted from the last time somebody had hands on the jar', () => {
    expect(turn([...steeping, ...stirred(19)], 20).day).toBe(26)
    expect(turn([...steeping, ...stirred(19)], 27).day).toBe(26)
  })

  it('is not asked for once the liquid is drawn off', () => {
    const tasks = tasksAt([...steeping, ...drawnOff(43)], 44)
    expect(tasks.some(({ kind }) => kind === 'turn' || kind === 'lookIn')).toBe(false)
  })
})

describe('covering', () => {
  it('asks for the spirit that is missing until the fruit is covered', () => {
    const little: Lines = [
      ...charged('quinces', 1),
      [1, { kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl: 500 }],
    ]
    const task = one(tasksAt(little, 1.1), 'coverFruit')
    expect(task.loss).toBe('mould')
    const amount = task.log?.amount ?? 0
    expect(amount).toBeGreaterThan(50)
    const more: Lines = [
      ...little,
      [1.2, { kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl: amount }],
    ]
    expect(tasksAt(more, 1.3).some(({ kind }) => kind === 'coverFruit')).toBe(false)
  })

  it('proposes no more than the jar takes', () => {
    const little: Lines = [
      ...charged('quinces', 1),
      [1, { kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl: 500 }],
    ]
    const task = one(tasksAt(little, 1.1, { capacityMlOf: () => 1500 }), 'coverFruit')
    expect(task.log?.amount).toBeUndefined()
  })
})

describe('strengthening', () => {
  const weak: Lines = [
    ...charged('plums', 1),
    [1, { kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl: 200 }],
    [1, { kind: 'pourWater', ...inJar, volumeMl: 1500 }],
  ]

  it('comes first where a jar may ferment, with enough spirit to be safe', () => {
    const task = one(tasksAt(weak, 1.1, { spiritPctVol: 70 }), 'strengthen')
    expect(task).toMatchObject({ loss: 'ferments', from: 'ledger', isWaiting: false })
    const poured = (volumeMl: number): Lines => [
      ...weak,
      [1.2, { kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl }],
    ]
    const amount = task.log?.amount ?? 0
    const isAsked = (lines: Lines) => tasksAt(lines, 1.3).some(({ kind }) => kind === 'strengthen')
    expect(isAsked(poured(amount))).toBe(false)
    expect(isAsked(poured(amount / 2))).toBe(true)
  })

  it('proposes no amount where no spirit is in the pantry, and nothing for what is strong', () => {
    const task = one(tasksAt(weak, 1.1, { spiritPctVol: undefined }), 'strengthen')
    expect(task.log?.amount).toBeUndefined()
    expect(tasksAt(steeping, 2).some(({ kind }) => kind === 'strengthen')).toBe(false)
  })
})
