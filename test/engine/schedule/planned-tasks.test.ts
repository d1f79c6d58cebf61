import { describe, expect, it } from 'vitest'
import type { Plan } from '../../../shared/schemas/drafts.ts'
import type { Move } from '../../../shared/schemas/moves.ts'
import { batchTasks, fold, outcomeOf, settledJar, stepsOf } from '../../../main/engine/index.ts'
import { facts, plainDraft } from '../drafting/seeded-drafts.ts'

const spec = plainDraft('sour_cherry')
const { moves } = outcomeOf(spec, facts)
const plan: Plan = { batchId: 'draft', startedAt: spec.startAt, spec, moves }

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
    plan,
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
