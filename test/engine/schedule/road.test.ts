/** Every task of the trade's road, whole: what, where, when, why, and what it would log. */
import { describe, expect, it } from 'vitest'
import { hourOf } from '../../../main/engine/index.ts'
import type { ScheduledTask } from '../../../main/engine/index.ts'
import {
  atDay,
  batchId,
  bottled,
  charged,
  cleared,
  covered,
  dayOfMs,
  drawnOff,
  filtered,
  married,
  one,
  spirited,
  tasksAt,
  type Lines,
  upToSpirit,
  upToCover,
  upToPour,
  upToPress,
  upToMarry,
} from './schedule-of.ts'

type Days = readonly [early: number, due: number, late: number | undefined]

const daysOf = ({ earlyMs, dueMs, lateMs }: ScheduledTask) =>
  [dayOfMs(earlyMs), dayOfMs(dueMs), ...(lateMs === undefined ? [] : [dayOfMs(lateMs)])].map(
    (day) => Number(day.toFixed(3)),
  )

/** A task without its window, which is told in days. */
const told = (task: ScheduledTask) => {
  const { earlyMs: _, dueMs: __, lateMs: ___, ...rest } = task
  return { ...rest, days: daysOf(task) }
}

const task = (
  kind: ScheduledTask['kind'],
  days: Days,
  rest: Partial<ScheduledTask> = {},
  isOfJar = false,
) => ({
  id: [batchId, kind, ...(isOfJar ? ['jar'] : []), 1].join('.'),
  kind,
  batchId,
  jarIds: isOfJar ? ['jar'] : [],
  ordinal: 1,
  days: days.filter((day) => day !== undefined),
  from: 'trade',
  loss: 'idle',
  isWaiting: true,
  ...rest,
})

const ofJar = (kind: ScheduledTask['kind'], days: Days, rest: Partial<ScheduledTask> = {}) =>
  task(kind, days, rest, true)

const jarIds = ['jar']
const now = { isWaiting: false }
const oversteeps = { loss: 'oversteeps' } as const

/** Of the liquid, from the day on which the last extract is there; quince is racked first. */
const liquid = (from: number, inJars: readonly string[]) => [
  task('marry', [from, from + 1, from + 14], {
    jarIds: inJars,
    log: { kind: 'marry', jarIds: [...inJars] },
  }),
  task('rack', [from + 3, from + 8, from + 31], {
    log: { kind: 'filter', jarIds: [], medium: 'racking' },
  }),
  task('filter', [from + 8, from + 10, from + 38], {
    log: { kind: 'filter', jarIds: [], medium: 'paper' },
  }),
  task('bottle', [from + 10, from + 12, from + 40], { log: { kind: 'bottle', jarIds: [] } }),
]

/** Quince rests 6 months of 30.44 days from the day it is to be bottled. */
const tasting = (bottledDay: number) =>
  task('taste', [bottledDay + 182.64, bottledDay + 182.64, undefined], {
    from: 'fruit',
    loss: 'nothing',
  })

const turning = (kind: 'turn' | 'lookIn', nth: number, day: number, rest = {}) =>
  ofJar(kind, [day, day, undefined], {
    id: `${batchId}.${kind}.jar.${nth}`,
    ordinal: nth,
    ...now,
    log: { kind: 'stir', jarIds },
    ...rest,
  })

describe('the road of the trade', () => {
  it('begins with spirit 8 to 24 hours after the sugar night began', () => {
    const [first, ...others] = tasksAt(charged('quinces', 1, 300), 1.2)
    // 1.5 kg by a kilogram to the litre is 1,500 ml.
    expect(first && told(first)).toEqual(
      ofJar('addSpirit', [1.333, 1.667, 2], {
        ...now,
        loss: 'ferments',
        log: { kind: 'pourSpirit', jarIds, amount: 1500 },
      }),
    )
    // Quince steeps 8 weeks, from 4 to 12, counted from the spirit.
    expect(others[0] && told(others[0])).toMatchObject({
      days: [29.667, 57.667, 85.667],
      from: 'fruit',
      isWaiting: true,
    })
  })

  it('is all told from the day the spirit is on the fruit', () => {
    expect(tasksAt(upToSpirit, 10).map(told)).toEqual([
      ofJar('drawOff', [29, 57, 85], {
        ...now,
        ...oversteeps,
        from: 'fruit',
        log: { kind: 'drawOff', jarIds },
      }),
      ofJar('coverWithSugar', [57, 58, 60], {
        // A quarter of the 915 g that are edible of 1.5 kg of quinces.
        log: { kind: 'coverWithSugar', jarIds, amount: 230 },
      }),
      ofJar('pourOffSugarDraw', [61, 65, 79], { ...oversteeps, log: { kind: 'drawOff', jarIds } }),
      ofJar('press', [65, 67, 72], { log: { kind: 'press', jarIds } }),
      ofJar('clearJar', [67, 70, 81], { log: { kind: 'discard', jarIds } }),
      ...liquid(67, []),
      turning('turn', 8, 8),
      tasting(79),
    ])
  })

  it('goes on with the fruit after each extract, and gathers the extracts', () => {
    const clear = (from: number, rest = {}) =>
      ofJar('clearJar', [from, from + 3, from + 14], {
        log: { kind: 'discard', jarIds },
        ...rest,
      })
    expect(tasksAt(upToCover, 44).map(told)).toEqual([
      ofJar('pourOffSugarDraw', [47, 51, 65], {
        ...now,
        ...oversteeps,
        log: { kind: 'drawOff', jarIds },
      }),
      ofJar('press', [51, 53, 58], { log: { kind: 'press', jarIds } }),
      clear(53),
      ...liquid(53, ['first']),
      turning('turn', 2, 45),
      tasting(65),
    ])
    expect(tasksAt(upToPress, 53).map(told)).toEqual([
      clear(53, now),
      ...liquid(53, ['first', 'second', 'third']).map((each, index) =>
        index === 0 ? { ...each, ...now } : each,
      ),
      turning('turn', 2, 54),
      tasting(65),
    ])
  })

  it('racks, filters and bottles the married liquid where it stands', () => {
    const demijohn = ['demijohn']
    const inDemijohn = { jarIds: demijohn }
    expect(tasksAt(upToMarry, 54).map(told)).toEqual([
      task('rack', [56, 61, 84], {
        ...inDemijohn,
        ...now,
        log: { kind: 'filter', jarIds: demijohn, medium: 'racking' },
      }),
      task('filter', [61, 63, 91], {
        ...inDemijohn,
        log: { kind: 'filter', jarIds: demijohn, medium: 'paper' },
      }),
      task('bottle', [63, 65, 93], { log: { kind: 'bottle', jarIds: [] } }),
      tasting(65),
    ])
    const racked = [...upToMarry, ...filtered(64, 'racking')]
    expect(tasksAt(racked, 64).map(told)).toEqual([
      task('filter', [64, 66, 94], {
        ...inDemijohn,
        ...now,
        log: { kind: 'filter', jarIds: demijohn, medium: 'paper' },
      }),
      task('bottle', [66, 68, 96], { ...inDemijohn, log: { kind: 'bottle', jarIds: demijohn } }),
      tasting(68),
    ])
    expect(tasksAt([...racked, ...filtered(66)], 66).map(told)).toEqual([
      task('bottle', [64, 66, 94], {
        ...inDemijohn,
        ...now,
        log: { kind: 'bottle', jarIds: demijohn },
      }),
      tasting(66),
    ])
  })

  it('filters what does not haze after a week, without racking', () => {
    const alone: Lines = [
      ...charged('cherries', 1),
      ...spirited(1),
      ...drawnOff(43),
      ...cleared(43),
    ]
    const tasks = tasksAt(alone, 44)
    expect(tasks.map(({ kind }) => kind)).toEqual(['filter', 'bottle', 'taste'])
    expect(told(one(tasks, 'filter'))).toEqual(
      task('filter', [45, 50, 73], {
        jarIds: ['first'],
        ...now,
        log: { kind: 'filter', jarIds: ['first'], medium: 'paper' },
      }),
    )
  })

  it('throws out fruit that is left once its extracts are together', () => {
    const left = [...upToCover, ...drawnOff(51, 'second'), ...married(54, 'first', 'second')]
    const kinds = tasksAt(left, 54).map(({ id }) => id)
    expect(kinds).toContain('batch.clearJar.jar.1')
    expect(kinds).not.toContain('batch.press.jar.1')
    expect(kinds).toContain('batch.rack.1')
  })

  it('counts each kind of work as often as it was done', () => {
    const twice = [...upToMarry, ...filtered(64, 'racking'), ...filtered(65), ...filtered(66)]
    expect(one(tasksAt(twice, 66), 'bottle').ordinal).toBe(1)
    const again = tasksAt([...twice, ...bottled(67, 'lot', 1)], 67)
    expect(one(again, 'bottle')).toMatchObject({ id: 'batch.bottle.2', ordinal: 2 })
    const secondDraw = [...upToPour, ...covered(52), ...drawnOff(58, 'third')]
    expect(one(tasksAt(secondDraw, 58), 'press').id).toBe('batch.press.jar.1')
    expect(one(tasksAt([...upToPress, ...covered(54)], 54), 'press').id).toBe('batch.press.jar.2')
  })

  it('asks nothing of a batch whose fruit was thrown away', () => {
    const [charge] = charged('quinces', 1)
    expect(tasksAt([...(charge ? [charge] : []), ...cleared(2)], 3)).toEqual([])
  })

  it('asks an empty batch for its fruit since it was opened', () => {
    expect(tasksAt([], 3).map(told)).toEqual([
      task('charge', [0, 0, undefined], {
        from: 'ledger',
        loss: 'nothing',
        ...now,
        log: { kind: 'charge', jarIds: [] },
      }),
    ])
  })
})

describe('tasting', () => {
  const resting: Lines = [
    ...upToMarry,
    ...filtered(60),
    ...bottled(61, 'lot', 4),
    [61, { kind: 'discard', from: { jarId: 'demijohn', part: 'all' } }],
  ]
  const lots = [
    { id: 'lot', bottledAtMs: atDay(61), count: 4, readyAtMs: atDay(200) },
    { id: 'gone', bottledAtMs: atDay(61), count: 0, readyAtMs: atDay(200) },
    { id: 'third', bottledAtMs: atDay(62), count: 1, readyAtMs: atDay(300) },
  ]
  const asked = (lines: Lines, day: number) => tasksAt(lines, day, { lots }).map(({ id }) => id)

  it('is told by the place of the lot in its batch, from when the shelf has it ready', () => {
    const due = (nth: number, day: number, bottleLotId: string) =>
      task('taste', [day, day, undefined], {
        id: `batch.taste.${nth}`,
        ordinal: nth,
        bottleLotId,
        from: 'shelf',
        loss: 'nothing',
        ...now,
        log: { kind: 'taste', jarIds: [], bottleLotId },
      })
    expect(tasksAt(resting, 62, { lots }).map(told)).toEqual([
      due(1, 200, 'lot'),
      due(3, 300, 'third'),
    ])
  })

  it('is let go of a season after its day', () => {
    expect(asked(resting, 289.9)).toEqual(['batch.taste.1', 'batch.taste.3'])
    expect(asked(resting, 290)).toEqual(['batch.taste.3'])
  })

  it.each([
    ['a bottle drawn', { kind: 'drawBottle', bottleLotId: 'lot', count: 1 }],
    ['a bottle opened', { kind: 'openBottle', bottleLotId: 'lot', openedId: 'opened' }],
    ['a tasting noted', { kind: 'taste', batchId, bottleLotId: 'lot', scores: {} }],
  ] as const)('is done by %s since it is ready, and of that lot only', (_, deed) => {
    expect(asked([...resting, [200, deed]], 201)).toEqual(['batch.taste.3'])
    expect(asked([...resting, [199, deed]], 201)).toEqual(['batch.taste.1', 'batch.taste.3'])
  })

  it('is not done by what is given away', () => {
    const given: Lines = [...resting, [200, { kind: 'give', bottleLotId: 'lot', count: 1 }]]
    expect(asked(given, 201)).toEqual(['batch.taste.1', 'batch.taste.3'])
  })
})

describe('tending', () => {
  const inJar = { batchId, jarId: 'jar' }

  it('turns daily for the whole first week, and weekly from then on', () => {
    const turns = (day: number) => told(one(tasksAt(upToSpirit, day), 'turn'))
    expect(turns(7.99)).toEqual(turning('turn', 7, 7, { loss: 'mould' }))
    expect(turns(8)).toEqual(turning('turn', 8, 8))
    expect(turns(16.5)).toEqual(turning('turn', 15, 15))
  })

  it('is not reminded of by a taste, but by anything that moves the jar', () => {
    const dueDay = (lines: Lines) => dayOfMs(one(tasksAt(lines, 20), 'turn').dueMs)
    expect(dueDay([...upToSpirit, [18, { kind: 'taste', ...inJar, scores: {} }]])).toBe(15)
    expect(dueDay([...upToSpirit, [18, { kind: 'keep', ...inJar, turned: 'weekly' }]])).toBe(15)
    expect(dueDay([...upToSpirit, [18, { kind: 'pourWater', ...inJar, volumeMl: 10 }]])).toBe(25)
  })

  it('looks into a jar that is never turned, as the trade would', () => {
    const never: Lines = [...upToSpirit, [1, { kind: 'keep', ...inJar, turned: 'never' }]]
    expect(told(one(tasksAt(never, 20), 'lookIn'))).toEqual(
      turning('lookIn', 15, 15, { loss: 'mould' }),
    )
    const drawn: Lines = [...never, ...drawnOff(43), ...covered(44)]
    expect(tasksAt(drawn, 45).some(({ kind }) => kind === 'turn' || kind === 'lookIn')).toBe(false)
  })

  it('covers what is bare within three days, and no more than the jar takes', () => {
    const little: Lines = [
      ...charged('quinces', 1),
      [1, { kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl: 500 }],
    ]
    const asked = (capacityMl: number | undefined) =>
      one(tasksAt(little, 1, { capacityMlOf: () => capacityMl }), 'coverFruit')
    const bare = asked(undefined)
    expect(told(bare)).toEqual(
      ofJar('coverFruit', [1, 2, 4], {
        ...now,
        from: 'ledger',
        loss: 'mould',
        log: { kind: 'pourSpirit', jarIds, amount: bare.log?.amount },
      }),
    )
    const amount = bare.log?.amount ?? 0
    expect(asked(8000).log?.amount).toBe(amount)
    // 20 ml more of jar are 19 ml more of room, told to the next 10 ml.
    const tight = [1920, 1900, 1880].map((ml) => asked(ml).log?.amount ?? 0)
    expect(tight).toEqual([tight[0], (tight[0] ?? 0) - 20, (tight[0] ?? 0) - 40])
    expect(tight[2]).toBeGreaterThan(0)
    expect(tight[0]).toBeLessThan(amount)
  })

  it('makes strong enough at once what may ferment', () => {
    const weak: Lines = [
      ...charged('plums', 1),
      [1, { kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl: 200 }],
      [1, { kind: 'pourWater', ...inJar, volumeMl: 1500 }],
    ]
    const asked = one(tasksAt(weak, 1.1, { spiritPctVol: 70 }), 'strengthen')
    expect(told(asked)).toEqual(
      ofJar('strengthen', [1, 1, 3], {
        ...now,
        from: 'ledger',
        loss: 'ferments',
        log: { kind: 'pourSpirit', jarIds, amount: asked.log?.amount },
      }),
    )
    expect((asked.log?.amount ?? 0) % 10).toBe(0)
    // Stronger spirit needs less; too weak a spirit never gets there, and is not divided by.
    const stronger = one(tasksAt(weak, 1.1, { spiritPctVol: 96 }), 'strengthen')
    expect(stronger.log?.amount ?? 0).toBeLessThan(asked.log?.amount ?? 0)
    const weaker = one(tasksAt(weak, 1.1, { spiritPctVol: 15 }), 'strengthen')
    expect(weaker.log?.amount).toBeGreaterThan(0)
  })

  it('has nothing to strengthen in fruit alone', () => {
    const dry = tasksAt(charged('plums', 1), 1.1)
    expect(dry.some(({ kind }) => kind === 'strengthen')).toBe(false)
  })
})

describe('hourOf', () => {
  it('is the hour on the wall there, from 0 to 23', () => {
    const hours = (instant: string, zone: string) => hourOf(Date.parse(instant), zone)
    expect(hours('2026-07-01T22:15:00Z', 'Europe/Warsaw')).toBe(0)
    expect(hours('2026-12-01T22:15:00Z', 'Europe/Warsaw')).toBe(23)
    expect(hours('2026-12-01T22:15:00Z', 'Asia/Kolkata')).toBe(3)
  })
})
