import { describe, expect, it } from 'vitest'
import { alongLedger, stepsOf, type Step } from '../../../main/engine/index.ts'
import { buySugar, folded } from './book-of-moves.ts'

const stepsWith = (count: number): readonly Step[] =>
  folded(Array.from({ length: count }, (_, day) => [day, buySugar(`lot${day}`, 100)] as const))
    .steps

/** Counts how often a step was taken, and lists the ids of those in the state. */
function counting() {
  let taken = 0
  const idsAfter = alongLedger<string[]>({
    start: () => [],
    take: (ids, { recorded }) => {
      taken += 1
      ids.push(recorded.id)
    },
  })
  return { idsAfter, taken: () => taken }
}

describe('alongLedger', () => {
  it('goes on from where it stood when the ledger has only grown', () => {
    const { idsAfter, taken } = counting()
    const steps = stepsWith(5)
    expect(idsAfter(steps.slice(0, 3))).toEqual(['m0', 'm1', 'm2'])
    expect(idsAfter(steps)).toEqual(['m0', 'm1', 'm2', 'm3', 'm4'])
    expect(idsAfter(steps)).toHaveLength(5)
    expect(taken()).toBe(5)
  })

  it('starts anew when the ledger is shorter, or has other steps at its end', () => {
    const { idsAfter } = counting()
    const steps = stepsWith(4)
    const otherEnd = [...steps.slice(0, 3), ...stepsWith(6).slice(5)]
    expect(idsAfter(steps)).toEqual(['m0', 'm1', 'm2', 'm3'])
    expect(idsAfter(steps.slice(0, 2))).toEqual(['m0', 'm1'])
    expect(idsAfter(otherEnd)).toEqual(['m0', 'm1', 'm2', 'm5'])
    expect(idsAfter(steps)).toEqual(['m0', 'm1', 'm2', 'm3'])
  })

  it('keeps two ledgers apart, and knows an empty one', () => {
    const { idsAfter } = counting()
    const [one, other] = [stepsWith(2), stepsWith(3)]
    expect(idsAfter(one)).toHaveLength(2)
    expect(idsAfter(other)).toHaveLength(3)
    expect(idsAfter(one)).toHaveLength(2)
    expect(idsAfter([])).toEqual([])
  })
})

describe('stepsOf', () => {
  it('gives a batch the same array while it is left alone', () => {
    const steps = folded([
      [0, { kind: 'pourWater', batchId: 'a', jarId: 'one', volumeMl: 100 }],
      [1, { kind: 'pourWater', batchId: 'b', jarId: 'two', volumeMl: 100 }],
      [2, { kind: 'remark', batchId: 'b' }],
    ]).steps
    const before = stepsOf(steps.slice(0, 2), 'a')
    const ofB = stepsOf(steps.slice(0, 2), 'b')
    expect(stepsOf(steps, 'a')).toBe(before)
    expect(stepsOf(steps, 'b')).toHaveLength(2)
    expect(ofB).toHaveLength(1)
    expect(stepsOf(steps, 'nobody')).toEqual([])
  })
})
