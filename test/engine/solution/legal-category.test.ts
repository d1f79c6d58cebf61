import { describe, expect, it } from 'vitest'
import {
  invertSugar,
  isWithinLabelTolerance,
  labelTolerancePctVol,
  legalCategory,
  legalRules,
} from '../../../main/engine/solution/legal-category.ts'
import { labelChecks, labelToleranceCheck, legalChecks } from '../../references/trade-checks.ts'

const verdictOn = (
  category: string,
  liqueur: { strengthPctVol: number; sugarGPerL: number; densityKgPerM3: number },
) => legalCategory(liqueur).find((verdict) => verdict.category === category)

describe('legalRules', () => {
  it('asks for what the law asks for', () => {
    for (const { id, category, source: _source, status: _status, ...asked } of legalChecks)
      expect(legalRules[category], id).toMatchObject(asked)
  })
})

describe('legalCategory', () => {
  it('counts sucrose as invert sugar: 95 g/L make the 100 g/L of a liqueur', () => {
    expect(invertSugar(95)).toBeCloseTo(100, 1)
    const liqueur = { strengthPctVol: 20, densityKgPerM3: 1010 }
    expect(verdictOn('liqueur', { ...liqueur, sugarGPerL: 95.1 })?.isMet).toBe(true)
    const short = verdictOn('liqueur', { ...liqueur, sugarGPerL: 90 })
    expect(short?.isMet).toBe(false)
    expect(short?.missingInvertGPerL).toBeCloseTo(100 - 94.734, 3)
  })

  it('tells what strength is missing and what sugar is too much', () => {
    const verdict = verdictOn('sloeAromatisedSpirit', {
      strengthPctVol: 22,
      sugarGPerL: 300,
      densityKgPerM3: 1080,
    })
    expect(verdict?.missingPctVol).toBe(3)
    expect(verdict?.excessInvertGPerL).toBeCloseTo(300 * 1.0526 - 250, 6)
    expect(verdict?.isMet).toBe(false)
  })

  it('adds up what is missing and what is too much: one never makes good the other', () => {
    // 3 % vol too weak and 3 g/L of invert sugar too much.
    const sloe = { strengthPctVol: 22, sugarGPerL: 253 / 1.0526, densityKgPerM3: 1080 }
    const sweet = verdictOn('sloeAromatisedSpirit', sloe)
    expect([sweet?.missingPctVol, sweet?.isMet]).toEqual([3, false])
    expect(sweet?.excessInvertGPerL).toBeCloseTo(3, 6)
    // 5 % vol and 5 g/L too little: 15 and 100 are asked for.
    const liqueur = { strengthPctVol: 10, sugarGPerL: 95 / 1.0526, densityKgPerM3: 1040 }
    const thin = verdictOn('liqueur', liqueur)
    expect([thin?.missingPctVol, thin?.isMet]).toEqual([5, false])
    expect(thin?.missingInvertGPerL).toBeCloseTo(5, 6)
  })

  it('asks an American liqueur for 2.5 % of its weight', () => {
    const at = (sugarGPerL: number) =>
      verdictOn('americanLiqueur', { strengthPctVol: 30, sugarGPerL, densityKgPerM3: 1000 })
    expect(at(25)?.isMet).toBe(true)
    expect(at(24)?.isMet).toBe(false)
  })

  it('refuses what is no liqueur', () => {
    const liqueur = { strengthPctVol: 30, sugarGPerL: 100, densityKgPerM3: 1000 }
    for (const kind of ['strengthPctVol', 'sugarGPerL', 'densityKgPerM3'] as const)
      expect(() => legalCategory({ ...liqueur, [kind]: Number.NaN }), kind).toThrow(RangeError)
  })
})

describe('isWithinLabelTolerance', () => {
  it('meets the worked labels', () => {
    for (const { id, label, isWithin } of labelChecks)
      expect(isWithinLabelTolerance(label), id).toBe(isWithin)
    expect(labelTolerancePctVol(false)).toBe(labelToleranceCheck.withoutFruitPctVol)
  })

  it('lets the last tenth pass', () => {
    const label = { statedPctVol: 30, hasMaceratedFruit: false }
    expect(isWithinLabelTolerance({ ...label, truePctVol: 30.3 })).toBe(true)
    expect(isWithinLabelTolerance({ ...label, truePctVol: 29.69 })).toBe(false)
  })
})
