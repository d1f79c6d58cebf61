/** The Bench's instruments for sugar in water: a refractometer, and the tables of syrup. */
import type { BenchReply, BenchRequestOf } from '../../../shared/schemas/bench.ts'
import { usualFineness } from '../../../shared/fineness.ts'
import { requireRange } from '../range.ts'
import { brixCorrection, rootSumSquare, syrupDensityErrorKgPerM3 } from '../readings/instruments.ts'
import { measured, propagate, type Measured } from '../readings/propagate.ts'
import { brixAt20, brixAt20Explained } from '../readings/refractometer.ts'
import { rootBetween } from '../root.ts'
import { composeLitre } from '../solution/compose-solution.ts'
import {
  densityOfSucrose,
  densityOfSucroseExplained,
  richestMassFraction,
} from '../solution/density-of-sucrose.ts'
import { describeSolution } from '../solution/describe-solution.ts'
import { highestBrix } from '../solution/refraction.ts'
import { answer, detail, taken } from './answer.ts'
import { syrupOf } from './density.ts'
import { thermometer } from './spirit.ts'

/** What spirit without any sugar shows, as a warning: at 10 % vol. */
const spiritBrix = describeSolution(
  composeLitre({ strengthPctVol: 10, sugarGPerL: 0 }),
).apparentBrix

export function benchRefractometer(request: BenchRequestOf<'refractometer'>): BenchReply {
  const { brix, temperatureC, isCompensated, fineness } = request
  const inputs = {
    brix: measured(brix, fineness?.brix ?? usualFineness.refractometerBrix),
    temperatureC: thermometer(temperatureC, fineness),
  }
  const correct = (shown: { brix: number; temperatureC: number }) => {
    if (!isCompensated)
      return { brix: brixAt20({ brixReading: shown.brix, temperatureC: shown.temperatureC }) }
    requireRange('refractometer reading', shown.brix, 0, highestBrix, '°Bx')
    requireRange('temperature of the prism', shown.temperatureC, 0, 40, '°C')
    return { brix: shown.brix }
  }
  const own = isCompensated ? 0 : brixCorrection
  const corrected = propagate(inputs, correct, () => ({ brix: own })).brix
  const syrup = ofBrix(corrected, measured(20, 0))
  return {
    inputs: taken(inputs),
    results: [
      answer('brix', 'brix', corrected),
      detail('sugar', 'sugar', syrup.sugarGPerL),
      detail('densityAt20', 'density', syrup.densityAt20),
    ],
    notes: [{ code: 'spiritMisleads', value: spiritBrix, dimension: 'brix' }],
    explanations: [brixAt20Explained, densityOfSucroseExplained],
    // A compensated one shows what this correction gives.
    reading: { instrument: 'refractometer', brix: corrected.value, temperatureC },
  }
}

export function benchSyrupOfBrix(request: BenchRequestOf<'syrupOfBrix'>): BenchReply {
  const { brix, temperatureC, fineness } = request
  const inputs = {
    brix: measured(brix, fineness?.brix ?? usualFineness.refractometerBrix),
    temperatureC: thermometer(temperatureC, fineness),
  }
  return {
    inputs: taken(inputs),
    results: syrupResults(ofBrix(inputs.brix, inputs.temperatureC)),
    notes: [],
    explanations: [densityOfSucroseExplained],
  }
}

export function benchSyrupOfDensity(request: BenchRequestOf<'syrupOfDensity'>): BenchReply {
  const { densityKgPerM3, temperatureC, fineness } = request
  const inputs = {
    densityKgPerM3: measured(
      densityKgPerM3,
      fineness?.densityKgPerM3 ?? usualFineness.hydrometerKgPerM3,
    ),
    temperatureC: thermometer(temperatureC, fineness),
  }
  const { results, explanations } = syrupOf(inputs.densityKgPerM3, inputs.temperatureC)
  return { inputs: taken(inputs), results, notes: [], explanations }
}

export function benchSyrupOfSugar(request: BenchRequestOf<'syrupOfSugar'>): BenchReply {
  const { sugarGPerL, temperatureC, fineness } = request
  const inputs = {
    sugarGPerL: measured(sugarGPerL, fineness?.sugarGPerL ?? usualFineness.sugarGPerL),
    temperatureC: thermometer(temperatureC, fineness),
  }
  const brix = propagate({ sugarGPerL: inputs.sugarGPerL }, (known) => ({
    brix: 100 * massFractionOfSugar(known.sugarGPerL),
  })).brix
  const syrup = ofBrix(brix, inputs.temperatureC)
  return {
    inputs: taken(inputs),
    results: [
      answer('brix', 'brix', brix),
      answer('density', 'density', syrup.density),
      detail('densityAt20', 'density', syrup.densityAt20),
    ],
    notes: [],
    explanations: [densityOfSucroseExplained],
  }
}

const sugarOf = (massFraction: number): number =>
  massFraction * densityOfSucrose({ massFraction, temperatureC: 20 })

const richestGPerL = sugarOf(richestMassFraction)

/** The syrup that has so much sugar in a litre at 20 °C. */
function massFractionOfSugar(sugarGPerL: number): number {
  requireRange('sugar', sugarGPerL, 0, richestGPerL, 'g/L')
  return rootBetween((fraction) => sugarOf(fraction) - sugarGPerL, 0, richestMassFraction)
}

type Syrup = Readonly<Record<'density' | 'densityAt20' | 'sugarGPerL' | 'brix', Measured>>

function ofBrix(brix: Measured, temperatureC: Measured): Syrup {
  const own = syrupDensityErrorKgPerM3(brix.value / 100)
  return propagate(
    { brix, temperatureC },
    (known) => {
      const massFraction = known.brix / 100
      return {
        brix: known.brix,
        density: densityOfSucrose({ massFraction, temperatureC: known.temperatureC }),
        densityAt20: densityOfSucrose({ massFraction, temperatureC: 20 }),
        sugarGPerL: sugarOf(massFraction),
      }
    },
    () => ({ density: own, densityAt20: own, sugarGPerL: rootSumSquare((own * brix.value) / 100) }),
  )
}

const syrupResults = ({ density, densityAt20, sugarGPerL }: Syrup) => [
  answer('sugar', 'sugar', sugarGPerL),
  answer('density', 'density', density),
  detail('densityAt20', 'density', densityAt20),
]
