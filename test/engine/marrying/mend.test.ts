import { describe, expect, it } from 'vitest'
import { acidPart, mend, sweeten, waterPart } from '../../../main/engine/index.ts'
import { lpSolver } from '../../../main/service/lp-solver.ts'
import { exactly, extract, spirit, sugar } from './blend-samples.ts'

const solve = await lpSolver()
const jar = extract('jar', {
  volumeMl: 2000,
  strengthPctVol: 32,
  sugarGPerL: 180,
  acidGPerL: 8,
})
const additions = [spirit(3000), sugar(3000), waterPart(), acidPart()]

describe('mend', () => {
  it('sweetens as the instrument for it does', () => {
    const { amounts, liquid } = mend(
      { jar, additions: [sugar(3000)], wishes: { sugarGPerL: exactly(230) } },
      solve,
    )
    const told = sweeten({
      volumeMl: 2000,
      strengthPctVol: 32,
      sugarGPerL: 180,
      acidGPerL: 8,
      targetSugarGPerL: 230,
    })
    expect(amounts[0]?.amount).toBeCloseTo(told.sugarG, 1)
    expect(liquid?.strengthPctVol).toBeCloseTo(told.resultPctVol, 2)
  })

  it('thins a sweet jar and holds its strength with spirit and water', () => {
    const wishes = { sugarGPerL: exactly(150), strengthPctVol: exactly(32) }
    const { amounts, liquid, broken } = mend({ jar, additions, wishes }, solve)
    expect(amounts.map(({ place }) => place).sort()).toEqual(['lot:spirit', 'outside:tap'])
    expect(liquid?.volumeMl).toBeCloseTo((2000 * 180) / 150, 0)
    expect(broken).toEqual([])
  })

  it('adds the least that will do, first to 100 ml', () => {
    const wishes = { strengthPctVol: exactly(36) }
    const { amounts, trial, cost } = mend({ jar, additions, wishes }, solve)
    expect(amounts.map(({ place }) => place)).toEqual(['lot:spirit'])
    expect(trial.amounts[0]?.amount).toBeCloseTo((amounts[0]?.amount ?? 0) / 20, 6)
    expect(cost.isComplete).toBe(true)
  })

  it('gives a flat jar acid by the gram', () => {
    const { amounts, liquid } = mend({ jar, additions, wishes: { acidGPerL: exactly(10) } }, solve)
    expect(amounts.map(({ place }) => place)).toEqual(['outside:acid'])
    expect(liquid?.acidGPerL).toBeCloseTo(10, 2)
  })

  it('says when what may be added cannot do it', () => {
    const { broken } = mend(
      { jar, additions: [waterPart()], wishes: { strengthPctVol: exactly(40) } },
      solve,
    )
    expect(broken).toMatchObject([{ wish: 'strengthPctVol', reason: 'beyondParts' }])
  })

  it('doses bentonite by the litre', () => {
    const { haze } = mend({ jar, additions: [], wishes: {} }, solve)
    expect(haze.bentoniteG).toEqual({ low: expect.closeTo(1, 6), high: expect.closeTo(2, 6) })
  })
})
