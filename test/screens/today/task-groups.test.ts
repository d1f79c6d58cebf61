import { describe, expect, it } from 'vitest'
import {
  byBatch,
  byEffort,
  linesOf,
  placesOf,
  worthTogether,
} from '../../../renderer/screens/today/task-groups.ts'
import { spiritTask, task } from '../task-fixture.ts'

const filter = (batchId: string, state: 'due' | 'open' = 'open') =>
  task({
    id: `${batchId}.filter.1`,
    batchId,
    jarIds: [batchId],
    kind: 'filter',
    effort: 'filters',
    state,
  })
const turn = (batchId: string) =>
  task({ id: `${batchId}.turn.j.1`, batchId, jarIds: [batchId], kind: 'turn', effort: 'turning' })

describe('the ways of telling tasks', () => {
  it('keep the order of need within a group', () => {
    const tasks = [spiritTask(), filter('b'), filter('a'), task({ batchId: 'b' })]
    expect(byBatch(tasks).map(([id, own]) => [id, own.length])).toEqual([
      ['quince', 1],
      ['b', 2],
      ['a', 1],
    ])
    const [spirit, funnel, filters] = byEffort(tasks)
    expect([spirit?.[0], funnel?.[0], filters?.[0]]).toEqual(['spirit', 'funnel', 'filters'])
    expect(filters?.[1].map(({ batchId }) => batchId)).toEqual(['b', 'a'])
  })

  it('find what is worth doing in one go: out for one that presses, and good for others', () => {
    const efforts = (tasks: Parameters<typeof worthTogether>[0]) =>
      worthTogether(tasks).map(([effort]) => effort)
    expect(efforts([filter('a', 'due'), filter('b'), filter('c')])).toEqual(['filters'])
    expect(efforts([filter('a'), filter('b')])).toEqual([])
    expect(efforts([filter('a', 'due'), spiritTask()])).toEqual([])
  })

  it('make one line of all the turning, at the place of the first', () => {
    const lines = linesOf([turn('a'), spiritTask(), turn('b'), turn('c')])
    expect(lines.map((line) => line.length)).toEqual([3, 1])
    expect(linesOf([turn('a'), spiritTask()]).map((line) => line.length)).toEqual([1, 1])
  })

  it('count jars once, and batches and lots where there is no jar', () => {
    const lot = task({ jarIds: [], bottleLotId: 'lot' })
    expect(placesOf([turn('a'), filter('a'), turn('b'), lot, lot])).toBe(3)
  })
})
