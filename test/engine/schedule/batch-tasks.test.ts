import { describe, expect, it } from 'vitest'
import {
  atDay,
  bottled,
  charged,
  cleared,
  covered,
  dayOfMs,
  drawnOff,
  filtered,
  one,
  spirited,
  tasksAt,
  type Lines,
  upToSpirit,
  upToDraw,
  upToCover,
  upToPour,
  upToPress,
  upToMarry,
} from './schedule-of.ts'

const doable = (lines: Lines, day: number) =>
  tasksAt(lines, day)
    .filter(({ isWaiting, kind }) => !isWaiting && kind !== 'turn')
    .map(({ id }) => id)

describe('batchTasks', () => {
  it('asks an empty batch for its fruit, on no day in particular', () => {
    const task = one(tasksAt([], 3), 'charge')
    expect(task).toMatchObject({ id: 'batch.charge.1', loss: 'nothing', lateMs: undefined })
  })

  it('goes the road of the trade, one task after another as the moves are logged', () => {
    expect(doable(charged('quinces', 1, 300), 1.2)).toEqual(['batch.addSpirit.jar.1'])
    expect(doable(upToSpirit, 10)).toEqual(['batch.drawOff.jar.1'])
    expect(doable(upToDraw, 43)).toEqual(['batch.coverWithSugar.jar.1'])
    expect(doable(upToCover, 44)).toEqual(['batch.pourOffSugarDraw.jar.1'])
    expect(doable(upToPour, 51)).toEqual(['batch.press.jar.1'])
    expect(doable(upToPress, 53)).toEqual(['batch.clearJar.jar.1', 'batch.marry.1'])
    // Quince hazes: it is racked off its sediment before any paper sees it.
    expect(doable(upToMarry, 54)).toEqual(['batch.rack.1'])
    const racked = [...upToMarry, ...filtered(64, 'racking')]
    expect(doable(racked, 64)).toEqual(['batch.filter.1'])
    const clear = [...racked, ...filtered(66)]
    expect(doable(clear, 66)).toEqual(['batch.bottle.1'])
  })

  it('has the whole road from the first day, and the same ids when each comes up', () => {
    const ahead = tasksAt(upToSpirit, 10).filter(({ isWaiting }) => isWaiting)
    expect(ahead.map(({ id }) => id)).toEqual([
      'batch.coverWithSugar.jar.1',
      'batch.pourOffSugarDraw.jar.1',
      'batch.press.jar.1',
      'batch.clearJar.jar.1',
      'batch.marry.1',
      'batch.rack.1',
      'batch.filter.1',
      'batch.bottle.1',
      'batch.taste.1',
    ])
    const days = ahead.map(({ dueMs }) => dayOfMs(dueMs))
    const others = days.filter((_, index) => ahead[index]?.kind !== 'clearJar')
    expect(others).toEqual(others.toSorted((a, b) => a - b))
  })

  it('puts what follows an overdue task after today', () => {
    const late = tasksAt(upToSpirit, 300)
    expect(dayOfMs(one(late, 'drawOff').dueMs)).toBeLessThan(100)
    const next = one(late, 'coverWithSugar')
    expect([dayOfMs(next.earlyMs), dayOfMs(next.dueMs)]).toEqual([300, 301])
  })

  it('proposes no sugar for a taste of fruit, instead of none of it', () => {
    const inJar = { batchId: 'batch', jarId: 'jar' }
    const trial = (massG: number): Lines => [
      [0, { kind: 'charge', ...inJar, lotId: 'quinces', massG, cut: 'cut' }],
      [1, { kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl: 2 * massG }],
    ]
    const { log } = one(tasksAt(trial(10), 2), 'coverWithSugar')
    expect(log).toEqual({ kind: 'coverWithSugar', jarIds: ['jar'] })
    // A quarter of what is edible of a kilogram of quinces, 610 g, to the next 10 g.
    expect(one(tasksAt(trial(1000), 2), 'coverWithSugar').log).toMatchObject({ amount: 150 })
  })

  it('keeps the ids of a batch whose moves were amended to other days and amounts', () => {
    const ids = (lines: Lines) =>
      tasksAt(lines, 52).flatMap(({ id, kind }) => (kind === 'turn' ? [] : id))
    const later = [...charged('quinces', 3), ...spirited(4), ...drawnOff(45), ...covered(45.5)]
    expect(ids([...later, ...drawnOff(50, 'second')])).toEqual(ids(upToPour))
  })

  it('calls the second sugar draw the second, and more sugar on the first still the first', () => {
    const twice = [...upToCover, ...covered(45)]
    expect(doable(twice, 46)).toEqual(['batch.pourOffSugarDraw.jar.1'])
    const again = [...upToPour, ...covered(52)]
    expect(doable(again, 53)).toEqual(['batch.pourOffSugarDraw.jar.2'])
  })

  it('takes a single extract straight to the filter', () => {
    const alone: Lines = [
      [
        1,
        { kind: 'charge', batchId: 'batch', jarId: 'jar', lotId: 'plums', massG: 1500, cut: 'cut' },
      ],
      ...spirited(1),
      ...drawnOff(43),
      ...cleared(43),
    ]
    const tasks = tasksAt(alone, 44)
    expect(tasks.some(({ kind }) => kind === 'marry')).toBe(false)
    expect(tasks.find(({ isWaiting }) => !isWaiting)?.jarIds).toEqual(['first'])
  })

  it('asks for nothing but a taste once all is in bottles, and for that only when it has rested', () => {
    const full = [...upToMarry, ...filtered(60), ...bottled(61, 'lot', 4)]
    const emptied: Lines = [
      ...full,
      [61, { kind: 'discard', from: { jarId: 'demijohn', part: 'all' } }],
    ]
    const [task, ...others] = tasksAt(emptied, 62)
    expect(others).toEqual([])
    expect(task).toMatchObject({ id: 'batch.taste.1', bottleLotId: 'lot', from: 'fruit' })
    expect(dayOfMs(task?.dueMs)).toBeGreaterThan(61 + 100)
    const tastedEarly: Lines = [
      ...emptied,
      [62, { kind: 'taste', batchId: 'batch', bottleLotId: 'lot', scores: {} }],
    ]
    const dueDay = dayOfMs(task?.dueMs)
    expect(tasksAt(tastedEarly, dueDay + 1)).toHaveLength(1)
    const tasted: Lines = [
      ...emptied,
      [dueDay + 2, { kind: 'taste', batchId: 'batch', bottleLotId: 'lot', scores: {} }],
    ]
    expect(tasksAt(tasted, dueDay + 3)).toEqual([])
    // Nobody wants to be told for ever.
    expect(tasksAt(emptied, dueDay + 100)).toEqual([])
  })

  it('brings back the very task when its move is undone', () => {
    const before = tasksAt(upToDraw, 44).map(({ id }) => id)
    expect(tasksAt([...upToDraw, ...covered(44)], 44).map(({ id }) => id)).not.toEqual(before)
    expect(tasksAt(upToDraw, 44).map(({ id }) => id)).toEqual(before)
  })
})

describe('the day of drawing off', () => {
  const draw = (lines: Lines, change = {}) => one(tasksAt(lines, 20, change), 'drawOff')
  const forecast = (settled: number, extracted: number, hasReadings = false) => ({
    forecasts: new Map([
      ['jar', { settledMs: atDay(settled), extractedMs: atDay(extracted), hasReadings }],
    ]),
  })

  it('is the fruit’s own, without a forecast', () => {
    const task = draw(upToSpirit)
    expect(task.from).toBe('fruit')
    // Quince: 8 weeks, from 4 to 16.
    expect(dayOfMs(task.earlyMs)).toBeLessThan(dayOfMs(task.dueMs))
    expect(task.loss).toBe('oversteeps')
  })

  it('can come as soon as the strength rests, and waits for a slow extract', () => {
    const usual = dayOfMs(draw(upToSpirit).dueMs)
    const quick = draw(upToSpirit, forecast(9, 15))
    expect(quick.from).toBe('forecast')
    expect([dayOfMs(quick.earlyMs), dayOfMs(quick.dueMs)]).toEqual([9, usual])
    const slow = draw(upToSpirit, forecast(9, usual + 10))
    expect(dayOfMs(slow.dueMs)).toBe(usual + 10)
    expect(dayOfMs(slow.lateMs)).toBeGreaterThanOrEqual(usual + 13)
  })

  it('believes own readings over the usual time, but not under the fruit’s shortest', () => {
    const shortest = dayOfMs(draw(upToSpirit).earlyMs)
    expect(dayOfMs(draw(upToSpirit, forecast(9, shortest + 5, true)).dueMs)).toBe(shortest + 5)
    expect(dayOfMs(draw(upToSpirit, forecast(5, 6, true)).dueMs)).toBe(shortest)
  })

  it('is no later than whole stones allow', () => {
    const task = draw([...charged('plums', 1), ...spirited(1)], forecast(9, 90))
    expect(task.loss).toBe('stones')
    expect(dayOfMs(task.lateMs)).toBe(1 + 56)
    expect(task.dueMs).toBeLessThan(task.lateMs ?? 0)
  })
})
