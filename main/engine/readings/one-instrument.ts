/** What one instrument alone tells, with the rest taken from what the ledger expects. */
import { coldestC, densityProfile, warmestC } from '../alcoholometry/density-of-spirit.ts'
import { trueStrength } from '../alcoholometry/true-strength.ts'
import { requireRange } from '../range.ts'
import { composeLitre, greatestStrengthPctVol } from '../solution/compose-solution.ts'
import { describeSolution } from '../solution/describe-solution.ts'
import { solutionVolumeMl, type Solution } from '../solution/liquid-volume.ts'
import { brixShownAt, highestBrix, lowestBrix } from '../solution/refraction.ts'
import { densityOfHydrometer } from './hydrometer.ts'
import {
  alcoholometerPctVol,
  hydrometerKgPerM3,
  ledgerSugarGPerL,
  ledgerPctVol,
  modelDensityKgPerM3,
  obscurationPctVolPerGPerL,
  refractionBrix,
  refractometerBrix,
  rootSumSquare,
  thermometerC,
} from './instruments.ts'
import { strengthAtSugar, sugarAtStrength } from './solve-one.ts'

export interface Expectation {
  readonly expectedSugarGPerL?: number | undefined
  readonly expectedStrengthPctVol?: number | undefined
}

export type Told = StrengthTold | SugarTold | Record<string, never>

interface StrengthTold {
  readonly strengthPctVol: number
  readonly strengthUncertaintyPctVol: number
}

interface SugarTold {
  readonly sugarGPerL: number
  readonly sugarUncertaintyGPerL: number
}

/** The spirit that would show this if it were free of sugar; sugar only widens the uncertainty. */
export function readAlcoholometer(
  shown: { readingPctVol: number; temperatureC: number },
  { expectedSugarGPerL = 0 }: Expectation,
): StrengthTold {
  const strengthPctVol = trueStrength(shown)
  const ofTemperature = trueStrength(halfADegreeAway(shown)) - strengthPctVol
  const ofSugar = obscurationPctVolPerGPerL * expectedSugarGPerL
  return {
    strengthPctVol,
    strengthUncertaintyPctVol: rootSumSquare(alcoholometerPctVol, ofTemperature, ofSugar),
  }
}

/** Weak spirit is looked at colder and strong spirit warmer: the other way may leave the scale. */
function halfADegreeAway(shown: { readingPctVol: number; temperatureC: number }) {
  const colder = shown.temperatureC - thermometerC
  const warmer = shown.temperatureC + thermometerC
  const temperatureC =
    shown.readingPctVol < 50
      ? colder < coldestC
        ? warmer
        : colder
      : warmer > warmestC
        ? colder
        : warmer
  return { ...shown, temperatureC }
}

export function readHydrometer(
  shown: { densityKgPerM3: number; temperatureC: number },
  expectation: Expectation,
): Told {
  const { temperatureC } = shown
  requireRange('temperature', temperatureC, coldestC, warmestC, '°C')
  const seen = densityOfHydrometer({ readingKgPerM3: shown.densityKgPerM3, temperatureC })
  const see = (liquid: Solution) => describeSolution({ ...liquid, temperatureC }).densityKgPerM3
  const uncertaintyAt = (sugarGPerL: number) =>
    rootSumSquare(hydrometerKgPerM3, modelDensityKgPerM3(seen, sugarGPerL))
  return completed({ see, seen, uncertaintyAt }, expectation)
}

export function readRefractometer(
  shown: { brix: number; temperatureC: number },
  expectation: Expectation,
): Told {
  const { brix, temperatureC } = shown
  requireRange('temperature', temperatureC, 0, warmestC, '°C')
  requireRange('refractometer reading', brix, lowestBrix, highestBrix, '°Bx')
  const profile = densityProfile(temperatureC)
  const see = (liquid: Solution) =>
    brixShownAt(liquid, solutionVolumeMl(liquid, temperatureC, profile), temperatureC)
  return completed({ see, seen: brix, uncertaintyAt: refractometerUncertainty }, expectation)
}

const refractometerUncertainty = (): number => rootSumSquare(refractometerBrix, refractionBrix)

/** What an instrument would show in a liquid, what it showed, and how sure that is. */
interface Sight {
  readonly see: (liquid: Solution) => number
  readonly seen: number
  readonly uncertaintyAt: (sugarGPerL: number) => number
}

function completed(sight: Sight, expectation: Expectation): Told {
  const { expectedSugarGPerL, expectedStrengthPctVol } = expectation
  if (expectedSugarGPerL !== undefined) return strengthTold(sight, expectedSugarGPerL)
  if (expectedStrengthPctVol !== undefined) return sugarTold(sight, expectedStrengthPctVol)
  return {}
}

function strengthTold({ see, seen, uncertaintyAt }: Sight, sugarGPerL: number): StrengthTold {
  const ofSight = uncertaintyAt(sugarGPerL)
  const strengthPctVol = strengthAtSugar({ sugarGPerL, see, seen, margin: 2 * ofSight })
  const slopes = slopesAt(see, strengthPctVol, sugarGPerL)
  const ofSugar = slopes.perGPerL * ledgerSugarGPerL(sugarGPerL)
  return {
    strengthPctVol,
    strengthUncertaintyPctVol: bounded(rootSumSquare(ofSight, ofSugar) / slopes.perPctVol, 100),
  }
}

function sugarTold({ see, seen, uncertaintyAt }: Sight, strengthPctVol: number): SugarTold {
  const margin = 2 * uncertaintyAt(0)
  const sugarGPerL = sugarAtStrength({ strengthPctVol, see, seen, margin })
  const slopes = slopesAt(see, strengthPctVol, sugarGPerL)
  const ofStrength = slopes.perPctVol * ledgerPctVol
  const uncertainty = rootSumSquare(uncertaintyAt(sugarGPerL), ofStrength) / slopes.perGPerL
  return { sugarGPerL, sugarUncertaintyGPerL: bounded(uncertainty, 1600) }
}

/** Where refraction is at its maximum the instrument tells nothing: then all is possible. */
const bounded = (uncertainty: number, most: number): number => Math.min(uncertainty, most)

function slopesAt(see: Sight['see'], strengthPctVol: number, sugarGPerL: number) {
  const step = 0.01
  const seeAt = (strength: number, sugar: number) =>
    see(composeLitre({ strengthPctVol: strength, sugarGPerL: sugar }))
  // Towards water, where there is room for it.
  const weaker = strengthPctVol < step ? step : -step
  const drier = sugarGPerL < step ? step : -step
  const roomy = Math.min(strengthPctVol, greatestStrengthPctVol(sugarGPerL) - step)
  const here = seeAt(roomy, sugarGPerL)
  return {
    perPctVol: Math.abs(seeAt(roomy + weaker, sugarGPerL) - here) / step,
    perGPerL: Math.abs(seeAt(roomy, sugarGPerL + drier) - here) / step,
  }
}
