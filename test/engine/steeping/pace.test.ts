import { describe, expect, it } from 'vitest'
import { halfTimeTable } from '../../../main/engine/fruit/half-times.ts'
import { fruitOf, fruitTissue } from '../../../main/engine/index.ts'
import { arrhenius, fasterThanAt20C } from '../../../main/engine/steeping/keeping.ts'
import { averagePace, paceOf } from '../../../main/engine/steeping/pace.ts'
import type { Cut } from '../../../shared/schemas/moves.ts'
import { activationChecks, skinChecks } from '../../references/steeping-checks.ts'

const cherry = fruitTissue(fruitOf('sour_cherry'))
const quince = fruitTissue(fruitOf('quince'))

describe('paceOf', () => {
  it('takes the half-times of the class for the piece as the trade steeps it', () => {
    const { halfTimeDays, way } = paceOf({ facts: cherry, cut: 'whole' })
    expect(way).toBe('skin')
    expect(halfTimeDays.ethanol).toBe(halfTimeTable.thinSkin.ethanol.typical)
    expect(halfTimeDays.colour).toBe(halfTimeTable.thinSkin.colour.typical)
  })

  it('goes with the square of the size inside a piece, in proportion through a skin', () => {
    const slice = paceOf({ facts: quince, cut: 'cut' })
    const half = paceOf({ facts: quince, cut: 'cut', pieceScale: 0.5 })
    expect(half.halfTimeDays.ethanol).toBeCloseTo(slice.halfTimeDays.ethanol / 4, 12)
    const whole = paceOf({ facts: cherry, cut: 'whole' })
    const small = paceOf({ facts: cherry, cut: 'whole', pieceScale: 0.5 })
    expect(small.halfTimeDays.ethanol).toBeCloseTo(whole.halfTimeDays.ethanol / 2, 12)
  })

  it('reads a measured thickness against the usual piece', () => {
    const usualMm = 2 * (quince.piece?.halfSizeMm ?? 0)
    const usual = paceOf({ facts: quince, cut: 'cut' })
    expect(paceOf({ facts: quince, cut: 'cut', pieceMm: usualMm })).toEqual(usual)
    const thick = paceOf({ facts: quince, cut: 'cut', pieceMm: 2 * usualMm })
    expect(thick.halfTimeDays.extract).toBeCloseTo(4 * usual.halfTimeDays.extract, 12)
  })

  it('is plain first order, whatever the size, where a fruit has no geometry', () => {
    const { piece: _, ...shapeless } = cherry
    const pace = paceOf({ facts: shapeless, cut: 'cut', pieceScale: 0.5 })
    expect(pace.way).toBe('firstOrder')
    expect(pace.halfTimeDays.ethanol).toBe(halfTimeTable.cutSoft.ethanol.typical)
  })

  it('goes through a skin while that is whole, and through the piece in all other cases', () => {
    const wayOf = (kineticClass: (typeof cherry)['kineticClass'], cut: Cut) =>
      paceOf({ facts: { ...cherry, kineticClass }, cut }).way
    for (const kineticClass of ['thinSkin', 'waxySkin'] as const)
      expect(
        (['whole', 'pricked', 'cut', 'crushed', 'frozen'] as const).map((cut) =>
          wayOf(kineticClass, cut),
        ),
      ).toEqual(['skin', 'skin', 'sphere', 'sphere', 'sphere'])
    expect([wayOf('softWhole', 'whole'), wayOf('hardSlice', 'pricked')]).toEqual([
      'sphere',
      'sphere',
    ])
  })

  it('takes half a fruit for the usual piece where it is cut, but for slices of hard fruit', () => {
    const usualMm = 2 * cherry.piece!.halfSizeMm
    const facts = { ...cherry, kineticClass: 'softWhole' } as const
    const of = (cut: Cut, pieceMm?: number) =>
      paceOf({ facts, cut, pieceMm }).halfTimeDays.extract /
      paceOf({ facts, cut }).halfTimeDays.extract
    expect(of('whole', usualMm)).toBeCloseTo(1, 12)
    expect(of('cut', usualMm / 2)).toBeCloseTo(1, 12)
    expect(of('cut', usualMm)).toBeCloseTo(4, 12)
    expect(of('crushed', usualMm / 4)).toBeCloseTo(1, 12)
    const hard = (cut: Cut, pieceMm?: number) =>
      paceOf({ facts: quince, cut, pieceMm }).halfTimeDays.extract
    const sliceMm = 2 * quince.piece!.halfSizeMm
    expect(hard('crushed', sliceMm / 4) / hard('crushed')).toBeCloseTo(1, 12)
    expect(hard('cut', sliceMm) / hard('cut')).toBeCloseTo(1, 12)
  })

  it('is as many times faster as a fruit was learned to be', () => {
    const fast = paceOf({ facts: { ...cherry, pace: 2 }, cut: 'whole' })
    const usual = paceOf({ facts: cherry, cut: 'whole' })
    expect(fast.halfTimeDays.ethanol).toBe(usual.halfTimeDays.ethanol / 2)
    expect(fast.halfTimeDays.osmosis).toBe(usual.halfTimeDays.osmosis / 2)
  })

  it.each(skinChecks)(
    'has a class range that holds a $kineticClass skin of that permeability',
    (skin) => {
      const perSecond = skin.permeability * (3 / (skin.radiusMm / 1000)) * (1 + 1 / skin.alpha)
      const days = Math.LN2 / perSecond / 86_400
      expect(Math.abs(days / skin.halfTimeDays - 1)).toBeLessThan(0.02)
      const { low, high } = halfTimeTable[skin.kineticClass].ethanol
      expect(days).toBeGreaterThan(low)
      expect(days).toBeLessThan(high)
    },
  )
})

describe('averagePace', () => {
  it('weighs by mass, and keeps a way only where all share it', () => {
    const [a, b] = [paceOf({ facts: cherry, cut: 'whole' }), paceOf({ facts: quince, cut: 'cut' })]
    const mixed = averagePace([
      { pace: a, edibleG: 300 },
      { pace: b, edibleG: 100 },
    ])
    expect(mixed.way).toBe('firstOrder')
    expect(mixed.halfTimeDays.ethanol).toBeCloseTo(
      0.75 * a.halfTimeDays.ethanol + 0.25 * b.halfTimeDays.ethanol,
      12,
    )
  })

  it('averages every half-time, keeps a way that all share, and leaves one fruit as it is', () => {
    const paced = (way: 'skin' | 'sphere', days: number) => ({
      way,
      halfTimeDays: { ethanol: days, extract: 2 * days, colour: 3 * days, osmosis: 4 * days },
    })
    const [one, other] = [paced('skin', 1), paced('skin', 5)]
    const mixed = averagePace([
      { pace: one, edibleG: 300 },
      { pace: other, edibleG: 100 },
    ])
    // Three parts of 1 and one of 5.
    expect(mixed).toEqual(paced('skin', 2))
    expect(averagePace([{ pace: one, edibleG: 0 }])).toEqual(one)
    const unlike = averagePace([
      { pace: one, edibleG: 1 },
      { pace: one, edibleG: 1 },
      { pace: paced('sphere', 1), edibleG: 1 },
    ])
    expect(unlike.way).toBe('firstOrder')
    expect(() => averagePace([])).toThrow('no fruit to average')
  })
})

describe('warmth', () => {
  it.each(activationChecks)('goes by Arrhenius: $source', ({ rates, temperaturesC, expected }) => {
    const [colder, warmer] = [
      arrhenius(expected, temperaturesC[0]),
      arrhenius(expected, temperaturesC[1]),
    ]
    // The activation energy is published to a tenth: 0.4 kJ/mol is its tolerance in the reference.
    const slack = 0.02
    expect(Math.abs(warmer / colder / (rates[1] / rates[0]) - 1)).toBeLessThan(slack)
  })

  it('runs at 0.647 of 20 °C when it is 10 °C', () => {
    expect(fasterThanAt20C(10)).toBeCloseTo(0.647, 3)
    expect(fasterThanAt20C(20)).toBe(1)
  })
})
