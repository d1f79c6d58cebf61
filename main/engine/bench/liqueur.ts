/** The Bench's ways to the strength of a sweet liquid, and what an alcoholometer makes of it. */
import type { BenchNote, BenchReply, BenchRequestOf } from '../../../shared/schemas/bench.ts'
import { usualFineness } from '../../../shared/fineness.ts'
import { strengthByBoilOff, strengthByBoilOffExplained } from '../readings/boil-off.ts'
import { densityOfHydrometer, densityOfHydrometerExplained } from '../readings/hydrometer.ts'
import { modelDensityKgPerM3, refractionBrix, rootSumSquare } from '../readings/instruments.ts'
import { measured, propagate, type Measured } from '../readings/propagate.ts'
import {
  strengthByTwoInstruments,
  strengthByTwoInstrumentsExplained,
} from '../readings/two-instruments.ts'
import { apparentStrength, apparentStrengthExplained } from '../solution/apparent-strength.ts'
import { liquidVolumeExplained } from '../solution/liquid-volume.ts'
import { answer, detail, strongSpirit, taken } from './answer.ts'
import { brixSight, densitySight, sightLine, strengthsAround } from './sight-line.ts'
import { thermometer } from './spirit.ts'

export function benchBoilOff(request: BenchRequestOf<'boilOff'>): BenchReply {
  const { densityBeforeKgPerM3, densityAfterKgPerM3, temperatureC, fineness } = request
  const fine = fineness?.densityBeforeKgPerM3 ?? usualFineness.hydrometerKgPerM3
  const temperature = thermometer(temperatureC, fineness)
  const at = (thereC: number) =>
    strengthByBoilOff({
      densityBeforeKgPerM3: trueDensity(densityBeforeKgPerM3, thereC),
      densityAfterKgPerM3: trueDensity(densityAfterKgPerM3, thereC),
      temperatureC: thereC,
      densityUncertaintyKgPerM3: fine,
    })
  const here = at(temperatureC)
  const found = withThermometer(temperature, here, at)
  return {
    inputs: taken({
      densityBeforeKgPerM3: measured(densityBeforeKgPerM3, fine),
      densityAfterKgPerM3: measured(densityAfterKgPerM3, fine),
      temperatureC: temperature,
    }),
    results: [
      answer('strength', 'strength', found.strengthPctVol),
      answer('sugar', 'sugar', found.sugarGPerL),
    ],
    notes: [{ code: 'boilOffCare' }, ...shortcutErrs(here)],
    explanations: [strengthByBoilOffExplained, liquidVolumeExplained, densityOfHydrometerExplained],
    reading: { instrument: 'boilOff', densityBeforeKgPerM3, densityAfterKgPerM3, temperatureC },
  }
}

const trueDensity = (readingKgPerM3: number, temperatureC: number): number =>
  densityOfHydrometer({ readingKgPerM3, temperatureC })

/** % vol; the old rule is worth a word where it errs by more. */
const noticeablePctVol = 0.3

function shortcutErrs({
  strengthPctVol,
  shortcutPctVol,
}: {
  strengthPctVol: number
  shortcutPctVol: number | undefined
}): BenchNote[] {
  if (shortcutPctVol === undefined) return []
  if (Math.abs(shortcutPctVol - strengthPctVol) < noticeablePctVol) return []
  return [{ code: 'shortcutErrs', value: shortcutPctVol, dimension: 'strength' }]
}

interface Liquor {
  readonly strengthPctVol: number
  readonly sugarGPerL: number
  readonly uncertaintyPctVol: number
  readonly uncertaintyGPerL: number
}

/** The method's own uncertainty knows the instruments; the thermometer's comes on top. */
function withThermometer(temperatureC: Measured, here: Liquor, at: (thereC: number) => Liquor) {
  return propagate(
    { temperatureC },
    (known) => {
      const { strengthPctVol, sugarGPerL } = at(known.temperatureC)
      return { strengthPctVol, sugarGPerL }
    },
    () => ({ strengthPctVol: here.uncertaintyPctVol, sugarGPerL: here.uncertaintyGPerL }),
  )
}

export function benchTwoInstruments(
  request: BenchRequestOf<'hydrometerAndRefractometer'>,
): BenchReply {
  const { densityKgPerM3, brix, temperatureC, fineness } = request
  const fineDensity = fineness?.densityKgPerM3 ?? usualFineness.hydrometerKgPerM3
  const fineBrix = fineness?.brix ?? usualFineness.refractometerBrix
  const temperature = thermometer(temperatureC, fineness)
  const at = (thereC: number) =>
    strengthByTwoInstruments({
      densityKgPerM3: trueDensity(densityKgPerM3, thereC),
      brixReading: brix,
      temperatureC: thereC,
      brixTemperatureC: thereC,
      densityUncertaintyKgPerM3: fineDensity,
      brixUncertainty: fineBrix,
    })
  const here = at(temperatureC)
  const found = withThermometer(temperature, here, at)
  const seen = trueDensity(densityKgPerM3, temperatureC)
  const model = modelDensityKgPerM3(seen, here.sugarGPerL)
  const strengths = strengthsAround(here.strengthPctVol, 10, 15)
  const edge: BenchNote[] =
    here.residualBrix === 0
      ? []
      : [{ code: 'atTheEdge', value: Math.abs(here.residualBrix), dimension: 'brix' }]
  return {
    inputs: taken({
      densityKgPerM3: measured(densityKgPerM3, fineDensity),
      brix: measured(brix, fineBrix),
      temperatureC: temperature,
    }),
    results: [
      answer('strength', 'strength', found.strengthPctVol),
      answer('sugar', 'sugar', found.sugarGPerL),
    ],
    notes: [...edge, ...strongSpirit(here.strengthPctVol)],
    explanations: [strengthByTwoInstrumentsExplained, liquidVolumeExplained],
    picture: {
      kind: 'crossing',
      density: sightLine(
        {
          see: densitySight(temperatureC),
          seen,
          uncertainty: rootSumSquare(fineDensity, model),
        },
        strengths,
      ),
      refraction: sightLine(
        {
          see: brixSight(temperatureC),
          seen: brix,
          uncertainty: rootSumSquare(fineBrix, refractionBrix),
        },
        strengths,
      ),
    },
    reading: { instrument: 'hydrometerAndRefractometer', densityKgPerM3, brix, temperatureC },
  }
}

export function benchApparentStrength(request: BenchRequestOf<'apparentStrength'>): BenchReply {
  const { strengthPctVol, sugarGPerL, temperatureC, fineness } = request
  const inputs = {
    strengthPctVol: measured(strengthPctVol, fineness?.strengthPctVol ?? usualFineness.labelPctVol),
    sugarGPerL: measured(sugarGPerL, fineness?.sugarGPerL ?? usualFineness.sugarGPerL),
    temperatureC: thermometer(temperatureC, fineness),
  }
  const { readingPctVol, offScaleKgPerM3 } = apparentStrength({
    strengthPctVol,
    sugarGPerL,
    temperatureC,
  })
  const { density } = propagate(
    inputs,
    (known) => ({ density: apparentStrength(known).densityKgPerM3 }),
    (found) => ({ density: modelDensityKgPerM3(found.density, sugarGPerL) }),
  )
  return {
    inputs: taken(inputs),
    results: [
      ...(readingPctVol === undefined
        ? [answer('offScale', 'density', measured(Math.abs(offScaleKgPerM3), density.uncertainty))]
        : [answer('shownStrength', 'strength', shownStrength(readingPctVol, density.uncertainty))]),
      detail('density', 'density', density),
    ],
    notes: [...offScale(offScaleKgPerM3), ...strongSpirit(strengthPctVol)],
    explanations: [apparentStrengthExplained, liquidVolumeExplained],
  }
}

/** What is shown follows from the density alone, and so does its uncertainty. */
function shownStrength(readingPctVol: number, densityUncertainty: number): Measured {
  const step = readingPctVol < 50 ? 0.5 : -0.5
  const slope = (spiritDensity(readingPctVol + step) - spiritDensity(readingPctVol)) / step
  return measured(readingPctVol, densityUncertainty / Math.abs(slope))
}

const spiritDensity = (strengthPctVol: number): number =>
  apparentStrength({ strengthPctVol, sugarGPerL: 0 }).densityKgPerM3

function offScale(offScaleKgPerM3: number): BenchNote[] {
  if (offScaleKgPerM3 === 0) return []
  const code = offScaleKgPerM3 > 0 ? 'floatsOffScale' : 'sinksOffScale'
  return [{ code, value: Math.abs(offScaleKgPerM3), dimension: 'density' }]
}
