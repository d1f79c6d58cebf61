/** The Bench's instruments for density: a hydrometer, and a flask on a scale; and what it means. */
import type {
  BenchLiquid,
  BenchNote,
  BenchReply,
  BenchRequestOf,
  BenchResult,
  Explanation,
} from '../../../shared/schemas/bench.ts'
import { usualFineness } from '../../../shared/fineness.ts'
import { strengthOfDensityExplained } from '../alcoholometry/strength-of-density.ts'
import { glassGrowth } from '../alcoholometry/true-strength.ts'
import {
  densityByWeighing,
  densityByWeighingExplained,
  flaskByWater,
} from '../readings/density-by-weighing.ts'
import { densityOfHydrometer, densityOfHydrometerExplained } from '../readings/hydrometer.ts'
import {
  rootSumSquare,
  spiritDensityKgPerM3,
  syrupDensityErrorKgPerM3,
} from '../readings/instruments.ts'
import { exactly, measured, propagate, type Measured } from '../readings/propagate.ts'
import { densityOfSucrose, densityOfSucroseExplained } from '../solution/density-of-sucrose.ts'
import { massFractionOfSyrup } from '../solution/syrup-of-density.ts'
import { answer, detail, strongSpirit, taken } from './answer.ts'
import { strengthAndShare, sugarMisleads, thermometer } from './spirit.ts'

export function benchHydrometer(request: BenchRequestOf<'hydrometer'>): BenchReply {
  const { densityKgPerM3, temperatureC, graduatedAtC = 20, liquid, fineness } = request
  const inputs = {
    densityKgPerM3: measured(
      densityKgPerM3,
      fineness?.densityKgPerM3 ?? usualFineness.hydrometerKgPerM3,
    ),
    temperatureC: thermometer(temperatureC, fineness),
    graduatedAtC: exactly(graduatedAtC),
  }
  const { density } = propagate(inputs, (shown) => ({
    density: densityOfHydrometer({ ...shown, readingKgPerM3: shown.densityKgPerM3 }),
  }))
  const meaning = meaningOf(density, inputs.temperatureC, liquid)
  return {
    inputs: taken(inputs),
    results: [toldDensity(density, liquid), ...meaning.results],
    notes: meaning.notes,
    explanations: [densityOfHydrometerExplained, ...meaning.explanations],
    reading: {
      instrument: 'hydrometer',
      // As one graduated at 20 °C would show it: the book knows no other.
      densityKgPerM3: density.value * glassGrowth(temperatureC, 20),
      temperatureC,
    },
  }
}

export function benchWeighing(request: BenchRequestOf<'weighing'>): BenchReply {
  const { massG, volumeMl, temperatureC, liquid, fineness } = request
  const scaleStepG = fineness?.scaleStepG ?? usualFineness.scaleStepG
  const flask = measured(volumeMl, fineness?.volumeMl ?? volumeMl * usualFineness.flaskShare)
  const temperature = thermometer(temperatureC, fineness)
  return {
    ...weighed(massG, flask, scaleStepG, temperature, liquid),
    inputs: taken({
      massG: exactly(massG),
      volumeMl: flask,
      temperatureC: temperature,
      scaleStepG: exactly(scaleStepG),
    }),
  }
}

export function benchWeighingByWater(request: BenchRequestOf<'weighingByWater'>): BenchReply {
  const { massG, waterG, waterTemperatureC, temperatureC, liquid, fineness } = request
  const scaleStepG = fineness?.scaleStepG ?? usualFineness.scaleStepG
  const water = measured(
    waterTemperatureC,
    fineness?.waterTemperatureC ?? usualFineness.thermometerC,
  )
  const { uncertaintyMl } = flaskByWater({
    massG: waterG,
    scaleStepG,
    temperatureC: waterTemperatureC,
  })
  const { volumeMl } = propagate(
    { temperatureC: water },
    (known) => ({ volumeMl: flaskByWater({ massG: waterG, scaleStepG, ...known }).volumeMl }),
    () => ({ volumeMl: uncertaintyMl }),
  )
  const temperature = thermometer(temperatureC, fineness)
  const told = weighed(massG, volumeMl, scaleStepG, temperature, liquid)
  return {
    ...told,
    results: [...told.results, detail('flask', 'volume', volumeMl)],
    inputs: taken({
      massG: exactly(massG),
      waterG: exactly(waterG),
      waterTemperatureC: water,
      temperatureC: temperature,
      scaleStepG: exactly(scaleStepG),
    }),
  }
}

function weighed(
  massG: number,
  flask: Measured,
  scaleStepG: number,
  temperature: Measured,
  liquid: BenchLiquid,
): Omit<BenchReply, 'inputs'> {
  const found = densityByWeighing({
    massG,
    volumeMl: flask.value,
    scaleStepG,
    volumeUncertaintyMl: flask.uncertainty,
  })
  const density = measured(found.densityKgPerM3, found.uncertaintyKgPerM3)
  const meaning = meaningOf(density, temperature, liquid)
  return {
    results: [toldDensity(density, liquid), ...meaning.results],
    notes: meaning.notes.filter(({ code }) => code !== 'glassOnly'),
    explanations: [densityByWeighingExplained, ...meaning.explanations],
  }
}

/** The density is the answer where nothing more can be said. */
const toldDensity = (density: Measured, liquid: BenchLiquid): BenchResult =>
  liquid === 'other' ? answer('density', 'density', density) : detail('density', 'density', density)

interface Meaning {
  readonly results: BenchResult[]
  readonly notes: BenchNote[]
  readonly explanations: Explanation[]
}

/** What a density tells of a liquid of which it is known what is in it. */
function meaningOf(density: Measured, temperatureC: Measured, liquid: BenchLiquid): Meaning {
  switch (liquid) {
    case 'other':
      return { results: [], notes: [{ code: 'glassOnly' }], explanations: [] }
    case 'spirit':
      return ofSpirit(density, temperatureC)
    case 'syrup':
      return { ...syrupOf(density, temperatureC), notes: [] }
  }
}

function ofSpirit({ value, uncertainty }: Measured, temperatureC: Measured): Meaning {
  const densityKgPerM3 = measured(value, rootSumSquare(uncertainty, spiritDensityKgPerM3))
  const found = propagate({ densityKgPerM3, temperatureC }, strengthAndShare)
  const strengthPctVol = found.strengthPctVol.value
  return {
    results: [
      answer('strength', 'strength', found.strengthPctVol),
      detail('densityAt20', 'density', found.densityAt20),
    ],
    notes: [...strongSpirit(strengthPctVol), ...sugarMisleads(strengthPctVol)],
    explanations: [strengthOfDensityExplained],
  }
}

/** Sugar, degrees Brix and density at 20 °C of a liquid that is only sugar and water. */
export function syrupOf(
  { value, uncertainty }: Measured,
  temperatureC: Measured,
): Omit<Meaning, 'notes'> {
  const measure = { densityKgPerM3: value, temperatureC: temperatureC.value }
  const own = syrupDensityErrorKgPerM3(massFractionOfSyrup(measure))
  const densityKgPerM3 = measured(value, rootSumSquare(uncertainty, own))
  const found = propagate({ densityKgPerM3, temperatureC }, (shown) => {
    const massFraction = massFractionOfSyrup(shown)
    const densityAt20 = densityOfSucrose({ massFraction, temperatureC: 20 })
    return { brix: 100 * massFraction, densityAt20, sugarGPerL: massFraction * densityAt20 }
  })
  return {
    results: [
      answer('sugar', 'sugar', found.sugarGPerL),
      detail('brix', 'brix', found.brix),
      detail('densityAt20', 'density', found.densityAt20),
    ],
    explanations: [densityOfSucroseExplained],
  }
}
