import { describe, expect, it } from 'vitest'
import { nextTask, type ScheduledTask } from '../../../main/engine/index.ts'
import {
  batchId,
  bottled,
  charged,
  cleared,
  covered,
  dayOfMs,
  drawnOff,
  filtered,
  married,
  spirited,
  tasksAt,
  type Lines,
} from './schedule-of.ts'

const next = (lines: Lines, day: number) => nextTask(tasksAt(lines, day))
const idAt = (lines: Lines, day: number) => next(lines, day)?.id

const fromB = ([day, deed]: Lines[number]): Lines[number] => [
  day,
  deed.kind === 'drawOff' ? { ...deed, fromJarId: 'b' } : deed,
]

const steeping: Lines = [...charged('quinces', 0), ...spirited(1)]
const drawn: Lines = [...steeping, ...drawnOff(43)]

describe('nextTask', () => {
  it('is the draw-off while fruit steeps, whatever turning goes on beside', () => {
    expect(tasksAt(steeping, 5).map(({ kind }) => kind)).toContain('turn')
    expect(idAt(steeping, 5)).toBe('batch.drawOff.jar.1')
  })

  it('is the first one due of those that can be done, in whichever jar', () => {
    const beside: Lines = [
      [0, { kind: 'charge', batchId, jarId: 'b', lotId: 'cherries', massG: 900, cut: 'cut' }],
      [1, { kind: 'pourSpirit', batchId, jarId: 'b', lotId: 'spirit', volumeMl: 900 }],
    ]
    const two = [...drawn, ...beside].toSorted(([a], [b]) => a - b)
    expect(dayOfMs(next(two, 43)?.dueMs)).toBe(43)
    expect(idAt(two, 43)).toBe('batch.drawOff.b.1')
    expect(idAt([...two, ...drawnOff(43.5, 'second').map(fromB)], 44)).toBe(
      'batch.coverWithSugar.jar.1',
    )
  })

  it('goes from the sugar draw to bottles, and on to the tasting of those', () => {
    const all: Lines = [
      ...drawn,
      ...covered(44),
      ...drawnOff(51, 'second'),
      ...cleared(52),
      ...married(53, 'first', 'second'),
      ...filtered(60, 'racking'),
      ...filtered(63),
      ...bottled(65, 'lot', 4),
    ]
    const upTo = (day: number) =>
      idAt(
        all.filter(([at]) => at <= day),
        day,
      )
    expect([44, 51, 52, 53, 60, 63, 65].map(upTo)).toEqual([
      'batch.pourOffSugarDraw.jar.1',
      'batch.press.jar.1',
      'batch.marry.1',
      'batch.rack.1',
      'batch.filter.1',
      'batch.bottle.1',
      'batch.taste.1',
    ])
  })

  const task = (id: string, dueMs: number, isWaiting: boolean): ScheduledTask => ({
    id,
    kind: 'filter',
    batchId,
    jarIds: [],
    ordinal: 1,
    earlyMs: dueMs,
    dueMs,
    lateMs: undefined,
    from: 'trade',
    loss: 'idle',
    isWaiting,
  })

  it('is what can be done before what waits, though that were due sooner', () => {
    expect(nextTask([task('a', 1, true), task('b', 9, false)])?.id).toBe('b')
    expect(nextTask([task('a', 2, true), task('b', 1, true)])?.id).toBe('b')
  })

  it('is the first by name of those due at once', () => {
    expect(nextTask([task('b', 1, false), task('a', 1, false)])?.id).toBe('a')
    expect(nextTask([task('a', 1, false), task('b', 1, false)])?.id).toBe('a')
  })

  it('is nothing for a batch that wants nothing', () => {
    expect(nextTask([])).toBeUndefined()
  })
})
