import { describe, expect, it } from 'vitest'
import { answer, detail, jugMl, strongSpirit, taken } from '../../../main/engine/bench/answer.ts'
import { measure } from '../../../main/engine/bench/measure.ts'
import type { BenchInputName, BenchInstrument } from '../../../shared/schemas/bench.ts'
import { sampleRequests } from './sample-requests.ts'

describe('the pieces of an answer', () => {
  it('tell what was taken, the exact without an uncertainty', () => {
    const inputs = {
      massG: { value: 98.5, uncertainty: 0 },
      temperatureC: { value: 20, uncertainty: 0.5 },
    }
    expect(taken(inputs)).toEqual([
      { name: 'massG', value: 98.5 },
      { name: 'temperatureC', value: 20, uncertainty: 0.5 },
    ])
  })

  it('leave out an uncertainty that is not known', () => {
    const known = { value: 40, uncertainty: 0.2 }
    const told = { quantity: 'strength', dimension: 'strength', value: 40 }
    expect(answer('strength', 'strength', known)).toEqual({
      ...told,
      uncertainty: 0.2,
      isAnswer: true,
    })
    expect(detail('strength', 'strength', { value: 40, uncertainty: Infinity })).toEqual({
      ...told,
      isAnswer: false,
    })
  })

  it('take a jug to be read to a hundredth where nothing else is said', () => {
    expect(jugMl(700, undefined)).toEqual({ value: 700, uncertainty: 7 })
    expect(jugMl(700, 2)).toEqual({ value: 700, uncertainty: 2 })
  })

  it('warn of vapour from 40 % vol on', () => {
    const burns = [{ code: 'strongSpirit', value: 40, dimension: 'strength' }]
    expect(strongSpirit(39.9)).toEqual([])
    expect(strongSpirit(40)).toEqual(burns)
    expect(strongSpirit(96)).toEqual(burns)
  })
})

interface Form {
  readonly answers: readonly string[]
  readonly details: readonly string[]
  /** What is taken, in the order asked; the uncertainty of a home, 0 where it is exact. */
  readonly inputs: Partial<Record<BenchInputName, number>>
  readonly explanations: readonly string[]
}

const strengthAndTarget = { strengthPctVol: 0.2, targetPctVol: 0 }
const density = { densityKgPerM3: 1, temperatureC: 0.5 }
const forms: Record<BenchInstrument, Form> = {
  reduceByVolume: {
    answers: ['water'],
    details: ['waterMass', 'result', 'contraction', 'strengthReached'],
    inputs: { volumeMl: 10, ...strengthAndTarget },
    explanations: ['reduce', 'densityOfSpirit'],
  },
  reduceByWeight: {
    answers: ['waterMass'],
    details: ['water', 'result', 'resultMass', 'contraction', 'strengthReached'],
    inputs: { massG: 1, ...strengthAndTarget },
    explanations: ['reduce', 'densityOfSpirit'],
  },
  reduceToVolume: {
    answers: ['spirit', 'water'],
    details: ['waterMass', 'contraction', 'strengthReached'],
    inputs: { resultMl: 10, ...strengthAndTarget },
    explanations: ['reduce', 'densityOfSpirit'],
  },
  alcoholometer: {
    answers: ['strength'],
    details: ['densityAt20', 'massShare'],
    inputs: { readingPctVol: 0.5, temperatureC: 0.5 },
    explanations: ['trueStrength', 'densityOfSpirit'],
  },
  hydrometer: {
    answers: ['strength'],
    details: ['density', 'densityAt20'],
    inputs: { ...density, graduatedAtC: 0 },
    explanations: ['densityOfHydrometer', 'strengthOfDensity'],
  },
  refractometer: {
    answers: ['brix'],
    details: ['sugar', 'densityAt20'],
    inputs: { brix: 0.2, temperatureC: 0.5 },
    explanations: ['brixAt20', 'densityOfSucrose'],
  },
  volumeAt20: {
    answers: ['volumeAt20'],
    details: ['volumeChange', 'volumeAt60F'],
    inputs: { volumeMl: 10, temperatureC: 0.5, strengthPctVol: 0, sugarGPerL: 0 },
    explanations: ['volumeAt20', 'liquidVolume'],
  },
  proofToStrength: {
    answers: ['strength'],
    details: ['massShare'],
    inputs: { proof: 0.4 },
    explanations: ['proof'],
  },
  strengthToProof: {
    answers: ['proof'],
    details: ['massShare'],
    inputs: { strengthPctVol: 0.2 },
    explanations: ['proof'],
  },
  proofHydrometer: {
    answers: ['proof', 'strength'],
    details: [],
    inputs: { proof: 1, temperatureC: 0.5 },
    explanations: ['proof', 'trueStrength'],
  },
  densityToStrength: {
    answers: ['strength'],
    details: ['massShare', 'densityAt20'],
    inputs: density,
    explanations: ['strengthOfDensity', 'densityOfSpirit'],
  },
  strengthToDensity: {
    answers: ['density'],
    details: ['densityAt20', 'massShare'],
    inputs: { strengthPctVol: 0.2, temperatureC: 0.5 },
    explanations: ['densityOfSpirit'],
  },
  syrupOfBrix: {
    answers: ['sugar', 'density'],
    details: ['densityAt20'],
    inputs: { brix: 0.2, temperatureC: 0.5 },
    explanations: ['densityOfSucrose'],
  },
  syrupOfDensity: {
    answers: ['sugar'],
    details: ['brix', 'densityAt20'],
    inputs: density,
    explanations: ['densityOfSucrose'],
  },
  syrupOfSugar: {
    answers: ['brix', 'density'],
    details: ['densityAt20'],
    inputs: { sugarGPerL: 5, temperatureC: 0.5 },
    explanations: ['densityOfSucrose'],
  },
  apparentStrength: {
    answers: ['shownStrength'],
    details: ['density'],
    inputs: { strengthPctVol: 0.2, sugarGPerL: 5, temperatureC: 0.5 },
    explanations: ['apparentStrength', 'liquidVolume'],
  },
  boilOff: {
    answers: ['strength', 'sugar'],
    details: [],
    inputs: { densityBeforeKgPerM3: 1, densityAfterKgPerM3: 1, temperatureC: 0.5 },
    explanations: ['strengthByBoilOff', 'liquidVolume', 'densityOfHydrometer'],
  },
  hydrometerAndRefractometer: {
    answers: ['strength', 'sugar'],
    details: [],
    inputs: { densityKgPerM3: 1, brix: 0.2, temperatureC: 0.5 },
    explanations: ['strengthByTwoInstruments', 'liquidVolume'],
  },
  weighing: {
    answers: ['density'],
    details: [],
    // ±0.2 % of 100 ml in a triangle: 0.2 / √6.
    inputs: { massG: 0, volumeMl: 0.2 / Math.sqrt(6), temperatureC: 0.5, scaleStepG: 0 },
    explanations: ['densityByWeighing'],
  },
  weighingByWater: {
    answers: ['density'],
    details: ['flask'],
    inputs: { massG: 0, waterG: 0, waterTemperatureC: 0.5, temperatureC: 0.5, scaleStepG: 0 },
    explanations: ['densityByWeighing'],
  },
  sweeten: {
    answers: ['sugarToAdd'],
    details: ['result', 'strengthAfter', 'sugarRoom'],
    inputs: {
      volumeMl: 10,
      strengthPctVol: 0.2,
      sugarGPerL: 0,
      targetSugarGPerL: 0,
      temperatureC: 0,
    },
    explanations: ['sweeten', 'sucroseSolubility', 'liquidVolume'],
  },
  glass: {
    answers: ['ethanolMass', 'energyKj'],
    details: ['energyKcal', 'drinksUnitedKingdom', 'drinksUnitedStates', 'drinksAustralia'],
    inputs: { volumeMl: 0.35, strengthPctVol: 0.2, sugarGPerL: 5 },
    explanations: ['standardDrinks', 'energyOf', 'legalCategory'],
  },
}

describe('every instrument', () => {
  it.each(Object.values(sampleRequests))(
    '$instrument tells its answers and the details, and by which methods',
    (request) => {
      const { results, explanations } = measure(request)
      const { answers, details, explanations: methods } = forms[request.instrument]
      expect(results.map(({ quantity, isAnswer }) => [quantity, isAnswer])).toEqual(
        expect.arrayContaining([
          ...answers.map((quantity) => [quantity, true]),
          ...details.map((quantity) => [quantity, false]),
        ]),
      )
      expect(results).toHaveLength(answers.length + details.length)
      expect(explanations.map(({ id }) => id)).toEqual(methods)
    },
  )

  it.each(Object.values(sampleRequests))(
    '$instrument takes the instruments of a home where nothing is said of them',
    (request) => {
      const { inputs } = measure(request)
      const usual = Object.entries(forms[request.instrument].inputs)
      expect(inputs.map(({ name, uncertainty = 0 }) => [name, uncertainty])).toEqual(
        usual.map(([name, uncertainty]) => [name, expect.closeTo(uncertainty, 9)]),
      )
    },
  )
})
