import { describe, expect, it } from 'vitest'
import {
  ProgramBuilder,
  solveInOrder,
  valueOf,
  type LinearProgram,
} from '../../../main/engine/marrying/linear-program.ts'
import { lpSolver } from '../../../main/service/lp-solver.ts'

const solve = await lpSolver()

describe('ProgramBuilder', () => {
  it('settles a number of bottles that rounding shaved', () => {
    const builder = new ProgramBuilder()
    const bottles = builder.variable(0, 10, true)
    builder.settle(bottles, 3 - 1e-9)
    expect(builder.variables).toEqual([{ low: 3, high: 3, isWhole: false }])
    builder.settle(bottles, 3.9)
    expect(builder.variables).toEqual([{ low: 3, high: 3, isWhole: false }])
  })

  it('keeps a program as it was when it goes on building', () => {
    const builder = new ProgramBuilder()
    const x = builder.variable(1, 2)
    const program = builder.minimising([[x, 1]])
    builder.atMost([[x, 1]], 1.5)
    builder.variable()
    expect(program).toEqual({
      variables: [{ low: 1, high: 2, isWhole: false }],
      rows: [],
      minimise: [[x, 1]],
    })
  })
})

describe('solveInOrder', () => {
  /** x + y = 10, both at least nothing. */
  const sharing = () => {
    const builder = new ProgramBuilder()
    const [x, y] = [builder.variable(), builder.variable()]
    builder.equal(
      [
        [x, 1],
        [y, 1],
      ],
      10,
    )
    return { builder, x, y }
  }

  it('lets a later aim choose only among what the earlier ones leave', () => {
    const { builder, x, y } = sharing()
    builder.atLeast([[x, 1]], 4)
    const values = solveInOrder(builder, [{ aim: [[x, 1]] }, { aim: [[y, 1]] }], solve, 1e-9)
    expect(values?.[x]).toBeCloseTo(4, 6)
    expect(values?.[y]).toBeCloseTo(6, 6)
  })

  it('keeps what a stage asks for instead of its aim', () => {
    const { builder, x, y } = sharing()
    // The first aim drives x to nothing, but only y at most 10 is kept: the second has its way.
    const stages = [
      { aim: [[x, 1]] as const, keeps: [[[y, 1]] as const] },
      { aim: [[y, 1]] as const },
    ]
    expect(solveInOrder(builder, stages, solve, 1e-9)?.[y]).toBeCloseTo(0, 6)
  })

  it('settles whole numbers as the stage left them', () => {
    const { builder, x, y } = sharing()
    builder.atLeast([[x, 1]], 3.2)
    const stages = [
      { aim: [[x, 1]] as const, keeps: [], settles: [x] },
      { aim: [[y, -1]] as const },
    ]
    // 3.2 is settled to 3, which the row does not allow: the first answer stands.
    expect(solveInOrder(builder, stages, solve, 1e-9)?.[x]).toBeCloseTo(3.2, 6)
  })

  it('finds nothing where nothing fits, and asks no further', () => {
    const asked: LinearProgram[] = []
    const { builder, x } = sharing()
    builder.atLeast([[x, 1]], 11)
    const values = solveInOrder(
      builder,
      [{ aim: [[x, 1]] }, { aim: [[x, -1]] }],
      (program) => {
        asked.push(program)
        return solve(program)
      },
      1e-9,
    )
    expect(values).toBeUndefined()
    expect(asked).toHaveLength(1)
  })
})

describe('valueOf', () => {
  it('is the sum of what each variable brings; one without a value brings nothing', () => {
    const terms = [
      [0, 2],
      [1, -3],
      [5, 7],
    ] as const
    expect(valueOf(terms, [4, 0.5])).toBe(6.5)
  })
})
