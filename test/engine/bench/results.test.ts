/**
 * Each result of the Bench beside its definition, and each uncertainty beside the squares of its
 * parts as JCGM 100:2008, 5.1.2 adds them, with the slopes taken here by a step of another size.
 */
import { describe, expect, it } from 'vitest'
import { densityOfSpirit } from '../../../main/engine/alcoholometry/density-of-spirit.ts'
import { reduceByWeight, reduceToVolume } from '../../../main/engine/alcoholometry/reduce.ts'
import { massFractionOfStrength } from '../../../main/engine/alcoholometry/strength.ts'
import { trueStrength } from '../../../main/engine/alcoholometry/true-strength.ts'
import { measure } from '../../../main/engine/bench/measure.ts'
import { volumeAt20 } from '../../../main/engine/solution/volume-at-20.ts'
import type { BenchQuantity, BenchRequest } from '../../../shared/schemas/bench.ts'
import { sampleRequests } from './sample-requests.ts'

const found = (request: BenchRequest, quantity: BenchQuantity) => {
  const result = measure(request).results.find((one) => one.quantity === quantity)
  if (result?.uncertainty === undefined)
    throw new Error(`${request.instrument} does not say how sure it is of ${quantity}`)
  return { value: result.value, uncertainty: result.uncertainty }
}
const quantities = (request: BenchRequest) => measure(request).results.map((one) => one.quantity)
const notes = (request: BenchRequest) => measure(request).notes.map(({ code }) => code)

const slope = (of: (x: number) => number, at: number, step: number) =>
  (of(at + step) - of(at - step)) / (2 * step)

/** kg/m³ of ethanol at 20 °C, by which strength by volume is defined (OIML R 22, 1975). */
const ethanolKgPerM3 = 789.24

/** The standard uncertainties that an instrument of a home is taken to have. */
const usual = { thermometerC: 0.5, jugShare: 0.01, labelPctVol: 0.2, scaleG: 1 }

describe('the share by mass', () => {
  const { alcoholometer, densityToStrength, strengthToDensity } = sampleRequests

  it.each([alcoholometer, densityToStrength])(
    '$instrument gives what the definition of strength by volume makes of it',
    (request) => {
      const byDefinition =
        (found(request, 'strength').value * ethanolKgPerM3) / found(request, 'densityAt20').value
      expect(found(request, 'massShare').value).toBeCloseTo(byDefinition, 2)
    },
  )

  it('of 40 % vol is 33.30 %, and its density 948.05 kg/m³ (OIML R 22)', () => {
    expect(found(strengthToDensity, 'massShare').value).toBeCloseTo(33.3, 2)
    expect(found(strengthToDensity, 'density').value).toBeCloseTo(948.05, 1)
    expect(found(sampleRequests.strengthToProof, 'massShare').value).toBeCloseTo(33.3, 2)
    const proof = found(sampleRequests.strengthToProof, 'proof').value
    const back = { ...sampleRequests.proofToStrength, proof }
    expect(found(back, 'strength').value).toBeCloseTo(40, 6)
    expect(found(back, 'massShare').value).toBeCloseTo(33.3, 2)
  })
})

describe('a volume at 20 °C', () => {
  const { volumeAt20: request } = sampleRequests
  const { volumeMl, temperatureC, strengthPctVol = 0 } = request
  const at20 = (jug: { volumeMl?: number; temperatureC?: number }) =>
    volumeAt20({ volumeMl, temperatureC, ...jug, strengthPctVol, sugarGPerL: 0 })
  const byThermometer =
    slope((t) => at20({ temperatureC: t }), temperatureC, 1) * usual.thermometerC

  it('is as sure as jug, thermometer and the equation of expansion are', () => {
    const { value, uncertainty } = found(request, 'volumeAt20')
    const byJug = slope((v) => at20({ volumeMl: v }), volumeMl, 1) * usual.jugShare * volumeMl
    expect(uncertainty).toBeCloseTo(Math.hypot(byJug, byThermometer, 0.0002 * value), 3)
  })

  it('tells by how much it grew, which hardly depends on the jug', () => {
    const { value, uncertainty } = found(request, 'volumeChange')
    const whole = found(request, 'volumeAt20').value
    expect(value).toBeCloseTo(whole - volumeMl, 9)
    const byJug = (whole / volumeMl - 1) * usual.jugShare * volumeMl
    expect(uncertainty).toBeCloseTo(Math.hypot(byJug, byThermometer, 0.0002 * whole), 3)
  })

  it('at 60 °F weighs the same, and is told of spirit alone', () => {
    const massFraction = massFractionOfStrength(strengthPctVol)
    const density = (t: number) => densityOfSpirit({ massFraction, temperatureC: t })
    const sixty = found(request, 'volumeAt60F')
    const ofTwenty = found(request, 'volumeAt20').value * density(20)
    expect(sixty.value * density((60 - 32) / 1.8)).toBeCloseTo(ofTwenty, -2)
    expect(sixty.uncertainty / found(request, 'volumeAt20').uncertainty).toBeCloseTo(1, 1)
    const sweet = { ...request, sugarGPerL: 100 }
    expect(quantities(sweet)).toEqual(['volumeAt20', 'volumeChange'])
    expect(quantities(request)).toEqual(['volumeAt20', 'volumeChange', 'volumeAt60F'])
    // What the equation of expansion may be off counts, however fine the instruments.
    const fine = { ...request, fineness: { volumeMl: 1e-6, temperatureC: 1e-6 } }
    expect(found(fine, 'volumeAt60F').uncertainty).toBeCloseTo(0.0002 * sixty.value, 4)
  })
})

describe('what an alcoholometer shows', () => {
  const { alcoholometer } = sampleRequests

  it('is as sure as its scale, the thermometer and the correction are', () => {
    const { readingPctVol, temperatureC } = alcoholometer
    const byScale = slope((r) => trueStrength({ readingPctVol: r, temperatureC }), readingPctVol, 1)
    const byWarmth = slope((t) => trueStrength({ readingPctVol, temperatureC: t }), temperatureC, 1)
    const parts = [byScale * 0.5, byWarmth * usual.thermometerC, 0.03]
    expect(found(alcoholometer, 'strength').uncertainty).toBeCloseTo(Math.hypot(...parts), 3)
    const fine = { ...alcoholometer, fineness: { readingPctVol: 1e-9, temperatureC: 1e-9 } }
    expect(found(fine, 'strength').uncertainty).toBeCloseTo(0.03, 6)
    const proof = {
      ...sampleRequests.proofHydrometer,
      fineness: { proof: 1e-9, temperatureC: 1e-9 },
    }
    expect(found(proof, 'strength').uncertainty).toBeCloseTo(0.03, 6)
    expect(found(proof, 'proof').uncertainty).toBeCloseTo(0.06, 6)
  })

  it.each([
    [4.9, []],
    [5, ['sugarMisleads']],
    [30, ['sugarMisleads']],
    [95, ['strongSpirit', 'sugarMisleads']],
    [95.1, ['strongSpirit']],
  ])('of %f % vol at 20 °C warns of sugar where makers have it', (readingPctVol, codes) => {
    expect(notes({ ...alcoholometer, readingPctVol, temperatureC: 20 })).toEqual(codes)
  })

  it('warns of strong spirit by the proof hydrometer too', () => {
    const request = { ...sampleRequests.proofHydrometer, proof: 120, temperatureC: 15 }
    expect(notes(request)).toEqual(['strongSpirit', 'sugarMisleads'])
  })
})

describe('a density and a strength of spirit', () => {
  it('cannot be surer than OIML R 22 is', () => {
    const { strengthToDensity } = sampleRequests
    const fine = { ...strengthToDensity, fineness: { strengthPctVol: 1e-9, temperatureC: 1e-9 } }
    expect(found(fine, 'density').uncertainty).toBeCloseTo(0.05, 6)
    expect(found(fine, 'densityAt20').uncertainty).toBeCloseTo(0.05, 6)
  })

  it('off a label is as sure as the label is, by proof twice that', () => {
    expect(found(sampleRequests.strengthToProof, 'proof').uncertainty).toBeCloseTo(0.4, 2)
    expect(found(sampleRequests.proofToStrength, 'strength').uncertainty).toBeCloseTo(0.2, 2)
  })
})

describe('a reduction', () => {
  const { reduceByWeight: weighed, reduceToVolume: filled } = sampleRequests

  it('by weight makes a strength as sure as the scale and the label are', () => {
    // Of what is weighed twice by a gram, 1/807 of the spirit each, and of 96 ± 0.2 % vol.
    const { uncertainty } = found(weighed, 'strengthReached')
    const byLabel = (40 / 96) * usual.labelPctVol
    const share = (2274 - 807) / 2274
    const byScale = 40 * share * (usual.scaleG / weighed.massG) * Math.SQRT2
    const asParts = uncertainty / Math.hypot(byLabel, byScale)
    expect(asParts).toBeGreaterThan(0.9)
    expect(asParts).toBeLessThan(1.15)
    const coarse = { ...weighed, fineness: { massG: 8 } }
    expect(found(coarse, 'strengthReached').uncertainty).toBeGreaterThan(2 * uncertainty)
    const fine = { ...weighed, fineness: { massG: 1e-6 } }
    expect(found(fine, 'strengthReached').uncertainty).toBeLessThan(uncertainty)
    expect(found(weighed, 'water').value).toBeCloseTo(reduceByWeight(weighed).waterMl, 9)
  })

  it('to a volume makes a strength as sure as the jug and the label are', () => {
    const { uncertainty } = found(filled, 'strengthReached')
    const coarse = { ...filled, fineness: { resultMl: 100 } }
    expect(found(coarse, 'strengthReached').uncertainty / uncertainty).toBeGreaterThan(5)
    const fine = { ...filled, fineness: { resultMl: 1e-6 } }
    const byLabel = found(fine, 'strengthReached').uncertainty
    // Twice the jug, of two independent pours; in quadrature with the label.
    const byJug = Math.sqrt(uncertainty ** 2 - byLabel ** 2)
    const twice = { ...filled, fineness: { resultMl: 20 } }
    const whole = found(twice, 'strengthReached').uncertainty
    expect(whole).toBeCloseTo(Math.hypot(byLabel, 2 * byJug), 2)
    expect(found(filled, 'spirit').value).toBeCloseTo(reduceToVolume(filled).spiritMl, 9)
  })
})

describe('a boil-off', () => {
  const { boilOff } = sampleRequests

  it('says what the old rule makes of it, where that is noticeably off', () => {
    const note = measure(boilOff).notes.find(({ code }) => code === 'shortcutErrs')
    expect(note?.value).toBeCloseTo(40.66, 2)
    const weak = { ...boilOff, densityBeforeKgPerM3: 1009.5, densityAfterKgPerM3: 1015 }
    expect(notes(weak)).toEqual(['boilOffCare'])
  })
})

describe('sweetening', () => {
  it('says nothing of sugar left over where all dissolves', () => {
    expect(notes({ ...sampleRequests.sweeten, strengthPctVol: 20 })).toEqual([])
  })
})

describe('a syrup', () => {
  it('of so much sugar is refused beyond what dissolves, in its own words', () => {
    const request = { ...sampleRequests.syrupOfSugar, sugarGPerL: 5000 }
    expect(() => measure(request)).toThrowError(
      expect.objectContaining({
        details: expect.objectContaining({ quantity: 'sugar', value: 5000, unit: 'g/L' }),
      }),
    )
  })

  it('is surer where the equation meets the printed tables better', () => {
    const fine = { brix: 1e-9, temperatureC: 1e-9 }
    const at = (brix: number) =>
      found({ ...sampleRequests.syrupOfBrix, brix, fineness: fine }, 'density')
    expect(at(50).uncertainty).toBeCloseTo(0.1, 6)
    expect(at(60).uncertainty).toBeCloseTo(0.2, 6)
    expect(at(70).uncertainty).toBeCloseTo(0.8, 6)
  })
})
