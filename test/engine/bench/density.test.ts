/** The density instruments of the Bench, each result beside its arithmetic. */
import { describe, expect, it } from 'vitest'
import { measure } from '../../../main/engine/bench/measure.ts'
import { densityOfSucrose } from '../../../main/engine/solution/density-of-sucrose.ts'
import { densityOfWater } from '../../../main/engine/solution/density-of-water.ts'
import type { BenchLiquid, BenchRequest } from '../../../shared/schemas/bench.ts'
import { sampleRequests } from './sample-requests.ts'

const told = (request: BenchRequest) => {
  const { results, notes, explanations } = measure(request)
  return {
    results: results.map(({ quantity, isAnswer }) => [quantity, isAnswer]),
    notes: notes.map(({ code }) => code),
    explanations: explanations.map(({ id }) => id),
  }
}
const found = (request: BenchRequest, quantity: string) => {
  const result = measure(request).results.find((one) => one.quantity === quantity)
  if (!result) throw new Error(`${request.instrument} says nothing of ${quantity}`)
  return result
}

const asSyrup = [
  ['density', false],
  ['sugar', true],
  ['brix', false],
  ['densityAt20', false],
]
const asSpirit = [
  ['density', false],
  ['strength', true],
  ['densityAt20', false],
]

describe('a hydrometer', () => {
  const { hydrometer } = sampleRequests
  const of = (liquid: BenchLiquid, densityKgPerM3 = 948.05) => ({
    ...hydrometer,
    liquid,
    densityKgPerM3,
  })

  it('tells of each liquid what its density means', () => {
    expect(told(of('other'))).toEqual({
      results: [['density', true]],
      notes: ['glassOnly'],
      explanations: ['densityOfHydrometer'],
    })
    expect(told(of('spirit', 940))).toEqual({
      results: asSpirit,
      notes: ['strongSpirit', 'sugarMisleads'],
      explanations: ['densityOfHydrometer', 'strengthOfDensity'],
    })
    expect(told(of('syrup', 1081))).toEqual({
      results: asSyrup,
      notes: [],
      explanations: ['densityOfHydrometer', 'densityOfSucrose'],
    })
  })

  it('graduated at 15 °C is larger by 5 · 25 millionths at 20 °C', () => {
    const request = { ...of('other', 1000), graduatedAtC: 15 }
    expect(found(request, 'density').value).toBeCloseTo(1000 / 1.000125, 9)
    expect(found(request, 'density').uncertainty).toBeCloseTo(1, 3)
    expect(measure(request).reading).toEqual({
      instrument: 'hydrometer',
      densityKgPerM3: expect.closeTo(1000 / 1.000125, 9),
      temperatureC: 20,
    })
    const cold = { ...request, temperatureC: 15 }
    expect(found(cold, 'density').value).toBe(1000)
    expect(measure(cold).reading).toMatchObject({
      densityKgPerM3: expect.closeTo(1000 * (1 - 0.000125), 9),
    })
  })

  it('tells the sugar of a syrup: 20 °Bx has 20 % of its density', () => {
    const at20 = densityOfSucrose({ massFraction: 0.2, temperatureC: 20 })
    const warm = densityOfSucrose({ massFraction: 0.2, temperatureC: 30 })
    const { syrupOfDensity } = sampleRequests
    const request = { ...syrupOfDensity, densityKgPerM3: warm, temperatureC: 30 }
    expect(found(request, 'brix').value).toBeCloseTo(20, 6)
    expect(found(request, 'sugar').value).toBeCloseTo(0.2 * at20, 5)
    expect(found(request, 'densityAt20').value).toBeCloseTo(at20, 5)
    // What the equation may be off, 0.1 kg/m³, counts however fine the instruments.
    const fine = { densityKgPerM3: 1e-9, temperatureC: 1e-9 }
    expect(found({ ...request, fineness: fine }, 'densityAt20').uncertainty).toBeCloseTo(0.1, 2)
  })

  it('of spirit is no surer than OIML R 22', () => {
    const fineness = { densityKgPerM3: 1e-9, temperatureC: 1e-9 }
    expect(found({ ...of('spirit'), fineness }, 'densityAt20').uncertainty).toBeCloseTo(0.05, 6)
    const { densityToStrength } = sampleRequests
    const { uncertainty } = found({ ...densityToStrength, fineness }, 'densityAt20')
    expect(uncertainty).toBeCloseTo(0.05, 6)
  })
})

describe('a flask on a scale', () => {
  const { weighing, weighingByWater } = sampleRequests
  /** Of what weighs 1.2 kg/m³ in air against weights of 8000 kg/m³. */
  const inVacuo = (inAirKgPerM3: number) => inAirKgPerM3 * (1 - 1.2 / 8000) + 1.2
  /** Two roundings to 0.1 g. */
  const scaleG = 0.1 / Math.sqrt(6)

  it('tells the density with the air that carries it', () => {
    const { value, uncertainty } = found(weighing, 'density')
    expect(value).toBeCloseTo(inVacuo(985.4), 9)
    const flask = 0.002 / Math.sqrt(6)
    expect(uncertainty).toBeCloseTo(985.4 * Math.hypot(scaleG / 98.54, flask), 6)
    const coarse = { ...weighing, fineness: { scaleStepG: 1, volumeMl: 0.5 } }
    expect(found(coarse, 'density').uncertainty).toBeCloseTo(
      985.4 * Math.hypot((10 * scaleG) / 98.54, 0.005),
      6,
    )
    expect(measure(coarse).inputs).toEqual([
      { name: 'massG', value: 98.54 },
      { name: 'volumeMl', value: 100, uncertainty: 0.5 },
      { name: 'temperatureC', value: 20, uncertainty: 0.5 },
      { name: 'scaleStepG', value: 1 },
    ])
  })

  it('of known water is measured by it, and the thermometer counts', () => {
    const inAir = (t: number) => (densityOfWater(t) - 1.2) / (1 - 1.2 / 8000)
    const volumeMl = (t: number) => (1000 * 99.72) / inAir(t)
    const flask = found(weighingByWater, 'flask')
    expect(flask.value).toBeCloseTo(volumeMl(20), 9)
    const byWarmth = (volumeMl(20.5) - volumeMl(19.5)) / 2
    const byScale = (1000 * scaleG) / inAir(20)
    expect(flask.uncertainty).toBeCloseTo(Math.hypot(byWarmth, byScale), 6)
    const density = found(weighingByWater, 'density')
    const inFlask = (1000 * 98.54) / volumeMl(20)
    expect(density.value).toBeCloseTo(inVacuo(inFlask), 9)
    const parts = [scaleG / 98.54, Math.hypot(byWarmth, byScale) / volumeMl(20)]
    expect(density.uncertainty).toBeCloseTo(inFlask * Math.hypot(...parts), 6)
    const fineness = { scaleStepG: 1e-6, waterTemperatureC: 2 }
    expect(found({ ...weighingByWater, fineness }, 'flask').uncertainty).toBeCloseTo(
      (volumeMl(22) - volumeMl(18)) / 2,
      6,
    )
  })

  it('says what the density means, and nothing of glass', () => {
    expect(told({ ...weighing, liquid: 'other' })).toEqual({
      results: [['density', true]],
      notes: [],
      explanations: ['densityByWeighing'],
    })
    expect(told({ ...weighing, massG: 94, liquid: 'spirit' })).toEqual({
      results: asSpirit,
      notes: ['strongSpirit', 'sugarMisleads'],
      explanations: ['densityByWeighing', 'strengthOfDensity'],
    })
    expect(told({ ...weighingByWater, massG: 108, liquid: 'syrup' })).toEqual({
      results: [...asSyrup, ['flask', false]],
      notes: [],
      explanations: ['densityByWeighing', 'densityOfSucrose'],
    })
  })
})
