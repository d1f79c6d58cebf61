import { describe, expect, it } from 'vitest'
import { acidPart, mend, sweeten, waterPart } from '../../../main/engine/index.ts'
import { lpSolver } from '../../../main/service/lp-solver.ts'
import { noMatter } from '../../../shared/matter.ts'
import { exactly, extract, spirit, sugar, vintage } from './blend-samples.ts'

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
    expect(haze).toEqual({
      bentoniteG: { low: expect.closeTo(1, 6), high: expect.closeTo(2, 6) },
      bentoniteWaterMl: { low: expect.closeTo(15, 6), high: expect.closeTo(30, 6) },
    })
  })

  it('tries 100 ml with ml out of an opened bottle, and grams of sugar', () => {
    const old = vintage('old', { count: 3, volumeMl: 500, strengthPctVol: 50 }, { least: 2 })
    const { amounts, trial, liquid } = mend(
      { jar, additions: [old, sugar(3000, { least: 100 })], wishes: {} },
      solve,
    )
    expect(amounts.map(({ place, unit, amount }) => [place, unit, amount])).toEqual([
      ['lot:sugar', 'g', expect.closeTo(100, 3)],
      ['bottles:old', 'bottles', 2],
    ])
    // 2,000 ml are in the jar: a twentieth of each.
    expect(trial).toEqual({
      sampleMl: 100,
      amounts: [
        { place: 'lot:sugar', unit: 'g', amount: expect.closeTo(5, 3) },
        { place: 'bottles:old', unit: 'ml', amount: expect.closeTo(50, 1) },
      ],
      volumeMl: expect.closeTo((liquid?.volumeMl ?? 0) / 20, 6),
    })
    expect(trial.volumeMl).toBeGreaterThan(150)
  })

  it('adds no more than it must, and keeps what is in the jar', () => {
    const { amounts, liquid } = mend(
      { jar, additions: [waterPart()], wishes: { strengthPctVol: { high: 30 } } },
      solve,
    )
    expect(liquid?.strengthPctVol).toBeCloseTo(30, 2)
    expect(amounts).toMatchObject([{ place: 'outside:tap' }])
    expect(mend({ jar, additions: [waterPart()], wishes: {} }, solve).amounts).toEqual([])
  })

  it('has no trial of an empty jar', () => {
    const empty = { ...jar, matter: noMatter }
    expect(mend({ jar: empty, additions: [], wishes: {} }, solve)).toMatchObject({
      amounts: [],
      trial: { sampleMl: 100, amounts: [], volumeMl: 0 },
      haze: { bentoniteG: { low: 0, high: 0 }, bentoniteWaterMl: { low: 0, high: 0 } },
    })
  })
})
