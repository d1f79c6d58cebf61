import { describe, expect, it } from 'vitest'
import type { Plan } from '../../../shared/schemas/drafts.ts'
import type { Move, MoveOf } from '../../../shared/schemas/moves.ts'
import { batchTasks, fold, outcomeOf, settledJar, stepsOf } from '../../../main/engine/index.ts'
import { doneMoves } from '../../../main/engine/schedule/done-moves.ts'
import { plannedTasks } from '../../../main/engine/schedule/planned-tasks.ts'
import type { BatchToSchedule, ScheduledTask } from '../../../main/engine/index.ts'
import { facts, plainDraft } from '../drafting/seeded-drafts.ts'

const spec = plainDraft('sour_cherry')
const { moves } = outcomeOf(spec, facts)
const plan = (): Plan => ({ batchId: 'draft', startedAt: spec.startAt, spec, moves })

function tasksAfter(real: readonly Move[], laterMs = 0) {
  const recorded = real.map((move, index) => ({
    id: `m${index}`,
    seq: index + 1,
    groupId: 'g',
    recordedAt: move.at,
    version: 1,
    move,
  }))
  const { cellar, steps } = fold(recorded, facts)
  const nowMs = Date.parse(real.at(-1)?.at ?? spec.startAt) + laterMs
  return batchTasks({
    batchId: 'draft',
    openedAtMs: Date.parse(spec.startAt),
    progress: cellar.batches.get('draft'),
    steps: stepsOf(steps, 'draft'),
    jars: new Map([...cellar.jars].map(([id, jar]) => [id, settledJar(jar, nowMs)])),
    lots: [],
    forecasts: new Map(),
    plan: plan(),
    fruitOf: facts.fruitOf,
    capacityMlOf: () => 8000,
    spiritPctVol: undefined,
    nowMs,
  }).filter(({ kind }) => kind !== 'turn')
}

const before = (kind: Move['kind'], nth = 1) => {
  let seen = 0
  const index = moves.findIndex((move) => move.kind === kind && (seen += 1) === nth)
  return moves.slice(0, index)
}

describe('plannedTasks', () => {
  it('has each planned move on its own day, those after the first waiting', () => {
    const [first, ...others] = tasksAfter([])
    expect(first).toMatchObject({ kind: 'charge', from: 'plan', isWaiting: false })
    expect(first?.log).toMatchObject({ kind: 'charge', cut: 'whole' })
    expect(others.every(({ isWaiting }) => isWaiting)).toBe(true)
    const filter = others.find(({ kind }) => kind === 'filter')
    expect(filter?.dueMs).toBe(Date.parse(moves.find(({ kind }) => kind === 'filter')?.at ?? ''))
  })

  it('tells a sugar draw from the first drawing off', () => {
    const kinds = tasksAfter(before('drawOff')).map(({ kind }) => kind)
    expect(kinds.slice(0, 3)).toEqual(['drawOff', 'coverWithSugar', 'pourOffSugarDraw'])
    const [next] = tasksAfter(before('drawOff', 2))
    expect(next).toMatchObject({ kind: 'pourOffSugarDraw', isWaiting: false })
  })

  it('proposes the planned amount', () => {
    const [next] = tasksAfter(before('pourSpirit'))
    const planned = moves.find(({ kind }) => kind === 'pourSpirit')
    expect(next?.kind).toBe('addSpirit')
    expect(planned && 'volumeMl' in planned && planned.volumeMl).toBe(next?.log?.amount)
  })

  it('is one task for the sieve, cloth and paper of one afternoon', () => {
    const filters = moves.filter(({ kind }) => kind === 'filter')
    expect(filters.length).toBeGreaterThan(1)
    expect(tasksAfter([]).filter(({ kind }) => kind === 'filter')).toHaveLength(1)
    // The first of them logged, the others are still to be done.
    const [first] = filters
    const next = tasksAfter([...before('filter'), first as Move])
    expect(next[0]).toMatchObject({ kind: 'filter', ordinal: 2, isWaiting: false })
  })

  it('leaves the batch to the trade’s intervals once all is done', () => {
    expect(tasksAfter(moves).some(({ from }) => from === 'plan')).toBe(false)
  })

  it('puts what follows an overdue move as much later', () => {
    const [next, , pour] = tasksAfter(before('drawOff'))
    const lateMs = 100 * 86_400_000
    const [same, , later] = tasksAfter(before('drawOff'), lateMs)
    const overdueMs = Date.parse(before('drawOff').at(-1)?.at ?? '') + lateMs - (next?.dueMs ?? 0)
    expect(same?.dueMs).toBe(next?.dueMs)
    expect(later?.dueMs).toBe((pour?.dueMs ?? 0) + overdueMs)
  })

  it('never gives two tasks one id', () => {
    for (let index = 0; index <= moves.length; index += 1) {
      const ids = tasksAfter(moves.slice(0, index)).map(({ id }) => id)
      expect(new Set(ids).size).toBe(ids.length)
    }
  })
})

describe('each planned move', () => {
  const at = (day: number, hour = 12) => new Date(Date.UTC(2026, 0, day, hour)).toISOString()
  const inJar = { batchId: 'draft', jarId: 'jar' }
  const from = { batchId: 'draft', fromJarId: 'jar' }
  const planned: Move[] = [
    {
      kind: 'charge',
      at: at(1),
      ...inJar,
      lotId: 'fruit',
      massG: 1500,
      refuseG: 40,
      cut: 'cut',
    },
    { kind: 'pourSpirit', at: at(2), ...inJar, lotId: 'spirit', volumeMl: 900 },
    { kind: 'drawOff', at: at(30), ...from, toJarId: 'first' },
    { kind: 'coverWithSugar', at: at(31), ...inJar, lotId: 'sugar', massG: 300 },
    { kind: 'drawOff', at: at(38), ...from, toJarId: 'second' },
    { kind: 'press', at: at(39), ...from, toJarId: 'second' },
    { kind: 'discard', at: at(40), from: { jarId: 'jar', part: 'pulp' } },
    {
      kind: 'marry',
      at: at(41),
      batchId: 'draft',
      parts: [{ jarId: 'first' }, { jarId: 'second' }],
      toJarId: 'paper',
    },
    { kind: 'pourWater', at: at(41), batchId: 'draft', jarId: 'paper', volumeMl: 100 },
    {
      kind: 'filter',
      at: at(50),
      batchId: 'draft',
      fromJarId: 'paper',
      toJarId: 'paper',
      medium: 'racking',
    },
    {
      kind: 'filter',
      at: at(60),
      batchId: 'draft',
      fromJarId: 'paper',
      toJarId: 'paper',
      medium: 'cloth',
    },
    {
      kind: 'filter',
      at: at(60, 15),
      batchId: 'draft',
      fromJarId: 'paper',
      toJarId: 'paper',
      medium: 'paper',
    },
    {
      kind: 'filter',
      at: at(60, 24 + 12),
      batchId: 'draft',
      fromJarId: 'paper',
      toJarId: 'paper',
      medium: 'paper',
    },
    {
      kind: 'bottle',
      at: at(70),
      batchId: 'draft',
      fromJarId: 'paper',
      bottleLotId: 'lot',
      bottleSizeMl: 500,
      count: 4,
    },
  ]
  const nowMs = Date.parse(at(1))

  const tasks = (change: { jars?: BatchToSchedule['jars']; nowMs?: number; moves?: Move[] } = {}) =>
    plannedTasks(
      {
        batchId: 'draft',
        openedAtMs: nowMs,
        progress: undefined,
        steps: [],
        jars: change.jars ?? new Map(),
        lots: [],
        forecasts: new Map(),
        plan: { ...plan(), moves: change.moves ?? planned },
        fruitOf: facts.fruitOf,
        // The jar of the marriage is only on paper yet.
        capacityMlOf: (jarId) => (jarId === 'paper' ? undefined : 8000),
        spiritPctVol: undefined,
        nowMs: change.nowMs ?? nowMs,
      },
      doneMoves([], 'draft'),
    )

  const days = (moveAt: string, ahead: number, grace: number) => ({
    earlyMs: Date.parse(moveAt) - ahead * 86_400_000,
    dueMs: Date.parse(moveAt),
    lateMs: Date.parse(moveAt) + grace * 86_400_000,
  })
  const task = (
    kind: ScheduledTask['kind'],
    moveAt: string,
    rest: Partial<ScheduledTask>,
    [ahead, grace] = [1, 7],
  ) => ({
    id: `draft.${kind}.1`,
    kind,
    batchId: 'draft',
    jarIds: ['jar'],
    ordinal: 1,
    ...days(moveAt, ahead ?? 1, grace ?? 7),
    from: 'plan',
    loss: 'idle',
    isWaiting: true,
    ...rest,
  })
  const ofJar = (kind: ScheduledTask['kind'], nth = 1) => ({ id: `draft.${kind}.jar.${nth}` })
  const jarIds = ['jar']

  it('is a task on its day with what it would log, in jars that are there', () => {
    expect(tasks()).toEqual([
      task('charge', at(1), {
        loss: 'nothing',
        isWaiting: false,
        log: { kind: 'charge', jarIds, amount: 1500, cut: 'cut', refuseG: 40 },
      }),
      // A sugar night slips by 8 hours at the most.
      task(
        'addSpirit',
        at(2),
        {
          ...ofJar('addSpirit'),
          loss: 'ferments',
          log: { kind: 'pourSpirit', jarIds, amount: 900 },
        },
        [1 / 3, 1 / 3],
      ),
      task('drawOff', at(30), {
        ...ofJar('drawOff'),
        loss: 'oversteeps',
        log: { kind: 'drawOff', jarIds },
      }),
      task('coverWithSugar', at(31), {
        ...ofJar('coverWithSugar'),
        log: { kind: 'coverWithSugar', jarIds, amount: 300 },
      }),
      task('pourOffSugarDraw', at(38), {
        ...ofJar('pourOffSugarDraw'),
        loss: 'oversteeps',
        log: { kind: 'drawOff', jarIds },
      }),
      task('press', at(39), { ...ofJar('press'), log: { kind: 'press', jarIds } }),
      task('clearJar', at(40), { ...ofJar('clearJar'), log: { kind: 'discard', jarIds } }),
      task('marry', at(41), {
        jarIds: ['first', 'second'],
        log: { kind: 'marry', jarIds: ['first', 'second'] },
      }),
      task('rack', at(50), { jarIds: [], log: { kind: 'filter', jarIds: [], medium: 'racking' } }),
      // Cloth and paper of one afternoon are one task; the next day's paper is another.
      task('filter', at(60), { jarIds: [], log: { kind: 'filter', jarIds: [], medium: 'cloth' } }),
      task('filter', at(61), {
        id: 'draft.filter.2',
        ordinal: 2,
        jarIds: [],
        log: { kind: 'filter', jarIds: [], medium: 'paper' },
      }),
      task('bottle', at(70), {
        jarIds: [],
        log: { kind: 'bottle', jarIds: [], bottleSizeMl: 500, count: 4 },
      }),
    ])
  })

  it('names no refuse that was not planned, and no task for fruit thrown out of the pantry', () => {
    const [charge, ...rest] = planned
    const { refuseG: _, ...plain } = charge as MoveOf<'charge'>
    const fromPantry: Move = { kind: 'discard', at: at(2), from: { lotId: 'fruit', massG: 100 } }
    const [first, second] = tasks({ moves: [plain, fromPantry, ...rest] })
    expect(first?.log).toStrictEqual({ kind: 'charge', jarIds, amount: 1500, cut: 'cut' })
    expect(second?.kind).toBe('addSpirit')
  })

  it('can be done as long as it is of the first kind, and waits behind any other', () => {
    const [charge, pour] = planned as [Move, Move]
    const other = { ...charge, at: at(1, 18), jarId: 'other' } as Move
    const inOther = { ...pour, jarId: 'other' } as Move
    const found = tasks({ moves: [charge, other, pour, inOther] })
    expect(found.map(({ id, isWaiting }) => [id, isWaiting])).toEqual([
      ['draft.charge.1', false],
      ['draft.charge.2', false],
      ['draft.addSpirit.jar.1', true],
      ['draft.addSpirit.other.1', true],
    ])
  })

  it('knows a sugar draw from what is planned, or from the fruit under sugar now', () => {
    const draw = planned.slice(4, 5)
    expect(tasks({ moves: draw }).map(({ kind }) => kind)).toEqual(['drawOff'])
    const second = { ...draw[0], at: at(45) } as Move
    const kinds = tasks({ moves: [...planned.slice(3, 5), second] }).map(({ kind }) => kind)
    expect(kinds).toEqual(['coverWithSugar', 'pourOffSugarDraw', 'drawOff'])
  })

  it('moves what waits as far as what is overdue, its whole window', () => {
    const lateBy = 5 * 86_400_000
    const [first, second, ...others] = tasks({ nowMs: nowMs + lateBy })
    expect(first).toEqual(tasks()[0])
    const [, onTime] = tasks()
    expect(second).toEqual({
      ...onTime,
      earlyMs: (onTime?.earlyMs ?? 0) + lateBy,
      dueMs: (onTime?.dueMs ?? 0) + lateBy,
      lateMs: (onTime?.lateMs ?? 0) + lateBy,
    })
    expect(others).toHaveLength(tasks().length - 2)
    // Before its day nothing is moved forward.
    expect(tasks({ nowMs: nowMs - lateBy })).toEqual(tasks())
  })
})
