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
import { sweeten } from '../../../main/engine/solution/sweeten.ts'
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

  it('tells how much 10 g/L of sugar would hide: about 0.27 % vol for each g/L', () => {
    const [, note] = measure({ ...alcoholometer, temperatureC: 20 }).notes
    expect(note).toEqual({
      code: 'sugarMisleads',
      value: expect.closeTo(2.7, 0),
      dimension: 'strength',
    })
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

describe('a glass', () => {
  const { glass } = sampleRequests
  // 35 ml of 40 % vol and 200 g/L: 14 ml of ethanol at 0.78924 g/ml, and 7 g of sugar.
  const ethanolG = 14 * 0.78924

  it('is told in grams, energy and drinks', () => {
    const value = (quantity: BenchQuantity) => found(glass, quantity).value
    expect(value('ethanolMass')).toBeCloseTo(ethanolG, 4)
    expect(value('energyKj')).toBeCloseTo(29 * ethanolG + 17 * 7, 2)
    expect(value('energyKcal')).toBeCloseTo(7 * ethanolG + 4 * 7, 3)
    expect(value('drinksUnitedKingdom')).toBeCloseTo(1.4, 9)
    expect(value('drinksUnitedStates')).toBeCloseTo(ethanolG / 14, 5)
    expect(value('drinksAustralia')).toBeCloseTo(ethanolG / 10, 5)
  })

  it('is as sure as jug, label and the sugar that went in', () => {
    const share = Math.hypot(0.01, 0.2 / 40)
    expect(found(glass, 'ethanolMass').uncertainty).toBeCloseTo(ethanolG * share, 5)
    const whole = 29 * ethanolG + 17 * 7
    const parts = [0.01 * whole, (29 * ethanolG * 0.2) / 40, (17 * 35 * 5) / 1000]
    expect(found(glass, 'energyKj').uncertainty).toBeCloseTo(Math.hypot(...parts), 3)
    const fineness = { volumeMl: 3.5, strengthPctVol: 1e-9, sugarGPerL: 1e-9 }
    expect(found({ ...glass, fineness }, 'energyKj').uncertainty).toBeCloseTo(0.1 * whole, 3)
  })

  it('tells each name of the law, what it lacks, and how far the rule was read', () => {
    const categories = measure({ ...glass, strengthPctVol: 14, sugarGPerL: 95 }).categories ?? []
    // 95 g/L of sucrose are 100 g/L of invert sugar.
    expect(categories[0]).toEqual({
      category: 'liqueur',
      isMet: false,
      missingPctVol: expect.closeTo(1, 9),
      missingInvertGPerL: expect.closeTo(100 - 95 * 1.0526, 9),
      excessInvertGPerL: 0,
      standing: 'read',
    })
    const standings = Object.fromEntries(
      categories.map(({ category, standing }) => [category, standing]),
    )
    expect(standings).toMatchObject({ cremeDe: 'secondHand', nocino: 'remembered' })
  })
})

describe('sweetening, of the doubt about the room of sugar', () => {
  const { sweeten: request } = sampleRequests
  const fine = { volumeMl: 1e-9, strengthPctVol: 1e-9 }

  it('is 0.005 ml for each gram, and what follows from it', () => {
    const at = { ...request, fineness: fine }
    const { value: sugarG, uncertainty } = found(at, 'sugarToAdd')
    const { value: resultMl } = found(at, 'result')
    const roomMl = 0.005 * sugarG
    expect(sugarG / resultMl).toBeCloseTo(0.2, 6)
    expect(uncertainty).toBeCloseTo(0.2 * roomMl, 6)
    expect(found(at, 'result').uncertainty).toBeCloseTo(roomMl, 6)
    expect(found(at, 'sugarRoom').uncertainty).toBeCloseTo(roomMl, 6)
    expect(found(at, 'sugarRoom').value).toBeCloseTo(resultMl - 1000, 6)
    const after = found(at, 'strengthAfter')
    expect(after.value).toBeCloseTo((40 * 1000) / resultMl, 6)
    expect(after.uncertainty).toBeCloseTo((after.value * roomMl) / resultMl, 6)
  })

  it('knows the sugar that was in it to 5 g/L, and that nothing was in it exactly', () => {
    const sweet = measure({ ...request, sugarGPerL: 50 })
    expect(sweet.inputs).toContainEqual({ name: 'sugarGPerL', value: 50, uncertainty: 5 })
    expect(measure(request).inputs).toContainEqual({ name: 'sugarGPerL', value: 0 })
    // (1000 + 0.62 m) · 0.2 = S + m, of sugar that takes 0.62 ml/g: m falls by 1/(1 − 0.124) of S.
    const { uncertainty } = found({ ...request, sugarGPerL: 50, fineness: fine }, 'sugarToAdd')
    expect(uncertainty).toBeCloseTo(5 / (1 - 0.2 * 0.62), 1)
  })

  it('tells the grams that do not dissolve, sugar that was there among them', () => {
    const strong = { ...request, strengthPctVol: 60, targetSugarGPerL: 500 }
    for (const sugarGPerL of [0, 100]) {
      const { undissolvedG } = sweeten({ ...strong, sugarGPerL })
      expect(measure({ ...strong, sugarGPerL }).notes).toEqual([
        { code: 'undissolved', value: expect.closeTo(undissolvedG, 6), dimension: 'mass' },
        { code: 'strongSpirit', value: 40, dimension: 'strength' },
      ])
    }
  })
})

describe('a refractometer', () => {
  const { refractometer } = sampleRequests

  it('tells how much 10 % vol of spirit alone would show, and what the book is to keep', () => {
    const { notes: said, reading } = measure(refractometer)
    // 8 % of ethanol by mass refracts as 3.5 % of sugar, both 1.338 (CRC Handbook).
    expect(said).toEqual([
      { code: 'spiritMisleads', value: expect.closeTo(3.5, 1), dimension: 'brix' },
    ])
    const { value } = found(refractometer, 'brix')
    expect(reading).toEqual({ instrument: 'refractometer', brix: value, temperatureC: 25 })
  })

  it('is no surer than the correction, where it makes one', () => {
    const fine = { ...refractometer, fineness: { brix: 1e-9, temperatureC: 1e-9 } }
    expect(found(fine, 'brix').uncertainty).toBeCloseTo(0.02, 6)
    expect(found({ ...fine, isCompensated: true }, 'brix').uncertainty).toBeCloseTo(0, 6)
  })

  it('gives the sugar of a syrup of that degree at 20 °C', () => {
    const request = { ...refractometer, brix: 50, isCompensated: true }
    // ICUMSA: 50 °Bx is 1229.65 kg/m³ at 20 °C.
    expect(found(request, 'densityAt20').value).toBeCloseTo(1229.65, 2)
    expect(found(request, 'sugar').value).toBeCloseTo(614.825, 2)
    const fine = { ...request, fineness: { brix: 1e-9 } }
    expect(found(fine, 'densityAt20').uncertainty).toBeCloseTo(0.1, 6)
    expect(found(fine, 'sugar').uncertainty).toBeCloseTo(0.05, 6)
  })

  it.each([
    [{ brix: 86 }, 'refractometer reading', 86, 85, '°Bx'],
    [{ temperatureC: 41 }, 'temperature of the prism', 41, 40, '°C'],
  ])('that compensates refuses %o', (shown, quantity, value, high, unit) => {
    const request = { ...refractometer, ...shown, isCompensated: true }
    expect(() => measure(request)).toThrowError(
      expect.objectContaining({
        details: expect.objectContaining({ quantity, value, low: 0, high, unit }),
      }),
    )
  })
})

describe('syrup by its sugar', () => {
  it('is what syrup of 50 °Bx is', () => {
    const request = sampleRequests.syrupOfSugar
    expect(found(request, 'brix').value).toBeCloseTo(50, 2)
    expect(found(request, 'density').value).toBeCloseTo(1229.65, 1)
    expect(found(request, 'densityAt20').value).toBeCloseTo(1229.65, 1)
    expect(found({ ...request, sugarGPerL: 0 }, 'brix').value).toBeCloseTo(0, 9)
  })
})

describe('a reduction drawn', () => {
  const { reduceByVolume, reduceByWeight: weighed, reduceToVolume: filled } = sampleRequests

  it.each([reduceByVolume, weighed, filled])('$instrument has the amounts it tells', (request) => {
    const { picture } = measure(request)
    const value = (quantity: BenchQuantity) => found(request, quantity).value
    const result = quantities(request).includes('result') ? value('result') : filled.resultMl
    const spiritMl = {
      reduceByVolume: 1000,
      reduceByWeight: 807 / 0.80742,
      reduceToVolume: filled.resultMl - value('water') + value('contraction'),
    }
    expect(picture).toEqual({
      kind: 'dilution',
      spiritMl: expect.closeTo(spiritMl[request.instrument], 1),
      spiritPctVol: 96,
      waterMl: value('water'),
      resultMl: result,
      resultPctVol: 40,
      contractionMl: value('contraction'),
    })
    expect(value('waterMass')).toBeCloseTo(value('water') * 0.9982, 1)
    expect(value('strengthReached')).toBeCloseTo(40, 2)
  })

  it('is told with what the straight rule would make, where that is 0.1 % vol off', () => {
    expect(measure(reduceByVolume).notes).toEqual([
      { code: 'strongSpirit', value: 40, dimension: 'strength' },
      { code: 'straightRule', value: expect.closeTo(41.19, 1), dimension: 'strength' },
    ])
    // Hardly any water hardly contracts.
    const little = { ...reduceByVolume, strengthPctVol: 30, targetPctVol: 29.5 }
    expect(measure(little).notes).toEqual([])
  })

  it('may be off by 0.15 ml a litre of what it makes, however fine the jug', () => {
    const fineness = { volumeMl: 1e-9, strengthPctVol: 1e-9 }
    const fine = { ...reduceByVolume, fineness }
    const ownMl = 0.00015 * found(fine, 'result').value
    for (const quantity of ['water', 'waterMass', 'result', 'contraction'] as const)
      expect(found(fine, quantity).uncertainty, quantity).toBeCloseTo(ownMl, 6)
  })
})

describe('what an alcoholometer makes of a sweet liquid', () => {
  const { apparentStrength: request } = sampleRequests
  const noted = (at: Partial<typeof request>) => measure({ ...request, ...at }).notes

  it('is as sure as the density is, by the slope of the spirit table there', () => {
    for (const [strengthPctVol, sugarGPerL] of [
      [40, 100],
      [80, 20],
    ] as const) {
      const at = { ...request, strengthPctVol, sugarGPerL }
      const shown = found(at, 'shownStrength')
      const perPctVol = slope(
        (pctVol) =>
          densityOfSpirit({ massFraction: massFractionOfStrength(pctVol), temperatureC: 20 }),
        shown.value,
        0.1,
      )
      const byDensity = found(at, 'density').uncertainty / Math.abs(perPctVol)
      expect(shown.uncertainty / byDensity).toBeCloseTo(1, 1)
    }
  })

  it('has 0.005 ml of doubt for each gram of sugar in its density', () => {
    const fineness = { strengthPctVol: 1e-9, sugarGPerL: 1e-9, temperatureC: 1e-9 }
    const { value, uncertainty } = found({ ...request, fineness }, 'density')
    expect(uncertainty).toBeCloseTo(value * 0.1 * 0.005, 6)
  })

  it('is on the scale where that reaches, and nothing is said of it', () => {
    expect(noted({ strengthPctVol: 30, sugarGPerL: 20 })).toEqual([])
    expect(measure(request).results[0]).toMatchObject({
      quantity: 'shownStrength',
      dimension: 'strength',
    })
  })

  it('is off the scale of what is denser than water or lighter than ethanol', () => {
    const dense = { strengthPctVol: 30, sugarGPerL: 250 }
    const off = found({ ...request, ...dense }, 'offScale')
    expect(off.uncertainty).toBe(found({ ...request, ...dense }, 'density').uncertainty)
    expect(measure({ ...request, ...dense }).results[0]?.dimension).toBe('density')
    expect(noted(dense)).toEqual([
      { code: 'floatsOffScale', value: off.value, dimension: 'density' },
    ])
    const warm = { strengthPctVol: 99.5, sugarGPerL: 0, temperatureC: 30 }
    const massFraction = massFractionOfStrength(99.5)
    // The glass has grown by 250 millionths, and its scale ends at 100 % vol.
    const shown = 1.00025 * densityOfSpirit({ massFraction, temperatureC: 30 })
    const lightKgPerM3 = densityOfSpirit({ massFraction: 1, temperatureC: 20 }) - shown
    expect(lightKgPerM3).toBeGreaterThan(0)
    expect(found({ ...request, ...warm }, 'offScale').value).toBeCloseTo(lightKgPerM3, 6)
    expect(noted(warm)).toEqual([
      { code: 'sinksOffScale', value: expect.closeTo(lightKgPerM3, 6), dimension: 'density' },
      { code: 'strongSpirit', value: 40, dimension: 'strength' },
    ])
  })
})

describe('a sweet liquid by two instruments', () => {
  const { hydrometerAndRefractometer: request, boilOff } = sampleRequests

  it('counts the thermometer besides the instruments', () => {
    for (const sample of [request, boilOff]) {
      const at = (temperatureC: number) =>
        found({ ...sample, fineness: { temperatureC } }, 'strength').uncertainty
      const own = at(1e-9)
      const { value: warm } = found({ ...sample, temperatureC: 22 }, 'strength')
      const { value: cold } = found({ ...sample, temperatureC: 18 }, 'strength')
      expect(at(2)).toBeCloseTo(Math.hypot(own, (warm - cold) / 2), 6)
    }
  })

  it('has a band about each line as wide as the instrument is coarse', () => {
    const bands = (fineness: { densityKgPerM3: number; brix: number }) => {
      const { picture } = measure({ ...request, fineness })
      if (picture?.kind !== 'crossing') throw new Error('no crossing lines')
      return [picture.density, picture.refraction].map((line) => {
        const { lowGPerL, highGPerL } = line[7]!
        return highGPerL - lowGPerL
      })
    }
    const [usualDensity, usualBrix] = bands({ densityKgPerM3: 4, brix: 4 })
    const [twiceDensity, twiceBrix] = bands({ densityKgPerM3: 8, brix: 8 })
    // What the model itself may be off hardly counts beside instruments so coarse.
    expect(twiceDensity! / usualDensity!).toBeCloseTo(2, 0)
    expect(twiceBrix! / usualBrix!).toBeCloseTo(2, 0)
    // A gram of sugar in a litre makes it denser by about 0.38 kg/m³.
    expect(usualDensity!).toBeGreaterThan(8 / 0.42)
    expect(usualDensity!).toBeLessThan(8 / 0.34)
    const fine = bands({ densityKgPerM3: 1e-9, brix: 1e-9 })
    // 0.2 °Bx of the method's own to either side, of about 0.08 °Bx for each g/L.
    expect(fine[1]!).toBeGreaterThan(0.4 / 0.1)
    expect(fine[1]!).toBeLessThan(0.4 / 0.06)
  })

  it('draws strengths from 10 below to 10 % vol above the answer', () => {
    const { picture } = measure(request)
    if (picture?.kind !== 'crossing') throw new Error('no crossing lines')
    const { value } = found(request, 'strength')
    const strengths = picture.density.map((point) => point.strengthPctVol)
    expect(strengths).toHaveLength(15)
    expect(strengths[0]).toBeCloseTo(value - 10, 6)
    expect(strengths[14]).toBeCloseTo(value + 10, 6)
    expect(measure(request).reading).toEqual(request)
  })

  it('says by how much the readings miss every liquid, at the edge of what can be', () => {
    expect(notes(request)).not.toContain('atTheEdge')
    // Water shows 0 °Bx and 998.2 kg/m³; half a tenth of a degree less is noise.
    const edge = { ...request, densityKgPerM3: 998.2, brix: -0.05 }
    const note = measure(edge).notes.find(({ code }) => code === 'atTheEdge')
    expect(note?.dimension).toBe('brix')
    expect(note?.value).toBeCloseTo(0.05, 2)
  })
})
