/**
 * How strong and how sweet is a liqueur, from its density and its refraction?
 *
 * Both rise with sugar, but spirit makes a liquid lighter and refract more: two equations in two
 * unknowns. Along all liquids of one density refraction only rises with spirit, so there is one
 * answer or none. In: kg/m³ at 0 to 40 °C; °Bx from −5 to 85 shown at 20 °C, or by a compensated
 * refractometer at brixTemperatureC. Out: % vol and g/L at 20 °C with standard uncertainties, and
 * the °Bx that no mixture explains (0 unless within the noise of the edge of what can be).
 * RangeError outside; DomainError `noSuchMixture` with the °Bx too many or few. Leaves out: fruit
 * acids and solubles count as sugar.
 * @example strengthByTwoInstruments({ densityKgPerM3: 1000.47, brixReading: 20.41 }).strengthPctVol // 30.0
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import {
  densityOn,
  densityProfile,
  type DensityProfile,
} from '../alcoholometry/density-of-spirit.ts'
import { massFractionOfDensity } from '../alcoholometry/strength-of-density.ts'
import { DomainError } from '../domain-error.ts'
import { requirePositive, requireRange } from '../range.ts'
import { rootBetween } from '../root.ts'
import { sucroseMlPerG } from '../solution/density-of-sucrose.ts'
import { describeSolution } from '../solution/describe-solution.ts'
import { solutionVolumeMl, type Solution } from '../solution/liquid-volume.ts'
import { brixShownAt, highestBrix, lowestBrix } from '../solution/refraction.ts'
import {
  hydrometerKgPerM3,
  modelDensityKgPerM3,
  refractionBrix,
  refractometerBrix,
  rootSumSquare,
} from './instruments.ts'
import type { MeasuredLiquor } from './measured-liquor.ts'

interface Conditions {
  readonly temperatureC: number
  readonly profile: DensityProfile
  readonly brixTemperatureC: number
  readonly brixProfile: DensityProfile
}

/** Mass fractions: of ethanol in the spirit, of sugar in the whole. */
interface Make {
  readonly ethanol: number
  readonly sugar: number
}

export function strengthByTwoInstruments(measured: {
  readonly densityKgPerM3: number
  readonly brixReading: number
  readonly temperatureC?: number
  readonly brixTemperatureC?: number
  readonly densityUncertaintyKgPerM3?: number
  readonly brixUncertainty?: number
}): MeasuredLiquor & { readonly residualBrix: number } {
  const { densityKgPerM3, brixReading, temperatureC = 20, brixTemperatureC = 20 } = measured
  const { densityUncertaintyKgPerM3 = hydrometerKgPerM3 } = measured
  const { brixUncertainty = refractometerBrix } = measured
  requireRange('temperature', temperatureC, 0, 40, '°C')
  requireRange('temperature of the prism', brixTemperatureC, 0, 40, '°C')
  requireRange('density', densityKgPerM3, 700, 1450, 'kg/m³')
  requireRange('refractometer reading', brixReading, lowestBrix, highestBrix, '°Bx')
  requirePositive('density uncertainty', densityUncertaintyKgPerM3, 100, 'kg/m³')
  requirePositive('refractometer uncertainty', brixUncertainty, 20, '°Bx')
  const conditions = {
    temperatureC,
    profile: densityProfile(temperatureC),
    brixTemperatureC,
    brixProfile: densityProfile(brixTemperatureC),
  }
  const brixDoubt = rootSumSquare(brixUncertainty, refractionBrix)
  const doubt = { density: densityUncertaintyKgPerM3, brix: brixDoubt }
  const make = solve(densityKgPerM3, brixReading, conditions, doubt)
  const { strengthPctVol, sugarGPerL } = describeSolution(kilogram(make))
  const model = modelDensityKgPerM3(densityKgPerM3, sugarGPerL)
  const density = rootSumSquare(densityUncertaintyKgPerM3, model)
  return {
    strengthPctVol,
    sugarGPerL,
    ...uncertainties(make, conditions, { density, brix: brixDoubt }),
    residualBrix: make.residualBrix,
  }
}

interface Doubt {
  readonly density: number
  readonly brix: number
}

/** Walks along all liquids of the density, from the one with least spirit to pure ethanol. */
function solve(
  density: number,
  brixReading: number,
  conditions: Conditions,
  doubt: Doubt,
): Make & { residualBrix: number } {
  const makeOf = (ethanol: number) => ({
    ethanol,
    sugar: sugarAtDensity(ethanol, density, conditions),
  })
  const excessBrix = (ethanol: number) => brixOf(makeOf(ethanol), conditions) - brixReading
  const least = leastEthanol(density, conditions)
  const [lowest, highest] = [excessBrix(least), excessBrix(1)]
  if (lowest <= 0 && highest >= 0)
    return { ...makeOf(rootBetween(excessBrix, least, 1)), residualBrix: 0 }
  const edge = lowest > 0 ? least : 1
  const excess = lowest > 0 ? lowest : highest
  const margin = 2 * rootSumSquare(doubt.brix, brixPerDensity * doubt.density)
  if (Math.abs(excess) <= margin) return { ...makeOf(edge), residualBrix: -excess }
  throw noSuchMixture(density, brixReading, excess)
}

/** °Bx per kg/m³ along the sugar-free and the spirit-free edge: about 0.2 and 0.25. */
const brixPerDensity = 0.25

function noSuchMixture(density: number, brixReading: number, excess: number): DomainError {
  const how = excess > 0 ? 'too few' : 'too many'
  const by = `${Math.abs(excess).toFixed(1)} °Bx ${how}`
  const message = `density ${density} kg/m³ with ${brixReading} °Bx is no mixture: ${by}`
  return new DomainError('noSuchMixture', message, {
    densityKgPerM3: density,
    brixReading,
    nearestBrix: brixReading + excess,
  })
}

/** The ethanol in the spirit of the sugar-free liquid of that density; none where it is denser. */
function leastEthanol(densityKgPerM3: number, { temperatureC, profile }: Conditions): number {
  if (densityKgPerM3 >= densityOn(profile, 0)) return 0
  return massFractionOfDensity({ densityKgPerM3, temperatureC })
}

/** The sugar that brings spirit up to a density. Its room hardly changes, so rounds are few. */
function sugarAtDensity(ethanol: number, density: number, conditions: Conditions): number {
  const spiritRoom = 1000 / densityOn(conditions.profile, ethanol)
  const excessRoom = spiritRoom - 1000 / density
  if (excessRoom <= 0) return 0
  let sugar = excessRoom / (spiritRoom - 0.62)
  for (let round = 0; round < 60; round++) {
    const water = (1 - sugar) * (1 - ethanol)
    const sugarRoom = sucroseMlPerG(sugar / (sugar + water), conditions.temperatureC)
    const next = excessRoom / (spiritRoom - sugarRoom)
    if (Math.abs(next - sugar) < 1e-14) return next
    sugar = next
  }
  return sugar
}

const kilogram = ({ ethanol, sugar }: Make): Solution => ({
  ethanolG: 1000 * (1 - sugar) * ethanol,
  waterG: 1000 * (1 - sugar) * (1 - ethanol),
  sugarG: 1000 * sugar,
  acidG: 0,
  solublesG: 0,
})

function brixOf(make: Make, { brixTemperatureC, brixProfile }: Conditions): number {
  const solution = kilogram(make)
  const volumeMl = solutionVolumeMl(solution, brixTemperatureC, brixProfile)
  return brixShownAt(solution, volumeMl, brixTemperatureC)
}

const densityOf = (make: Make, { temperatureC, profile }: Conditions): number =>
  1e6 / solutionVolumeMl(kilogram(make), temperatureC, profile)

/** How the two answers follow the two instruments: the slopes of each by the make, inverted. */
function uncertainties(
  make: Make,
  conditions: Conditions,
  doubt: Doubt,
): { uncertaintyPctVol: number; uncertaintyGPerL: number } {
  const step = 1e-5
  // Away from the edges of what can be.
  const ethanolStep = make.ethanol > 0.5 ? -step : step
  const look = (at: Make) => {
    const { strengthPctVol, sugarGPerL } = describeSolution(kilogram(at))
    const [density, brix] = [densityOf(at, conditions), brixOf(at, conditions)]
    return { density, brix, strengthPctVol, sugarGPerL }
  }
  const here = look(make)
  const stronger = look({ ...make, ethanol: make.ethanol + ethanolStep })
  const sweeter = look({ ...make, sugar: make.sugar + step })
  type Seen = keyof typeof here
  const byEthanol = (seen: Seen) => (stronger[seen] - here[seen]) / ethanolStep
  const bySugar = (seen: Seen) => (sweeter[seen] - here[seen]) / step
  const determinant =
    byEthanol('density') * bySugar('brix') - bySugar('density') * byEthanol('brix')
  const effect = (seen: Seen) =>
    rootSumSquare(
      (byEthanol(seen) * bySugar('brix') - bySugar(seen) * byEthanol('brix')) * doubt.density,
      (bySugar(seen) * byEthanol('density') - byEthanol(seen) * bySugar('density')) * doubt.brix,
    ) / Math.abs(determinant)
  return { uncertaintyPctVol: effect('strengthPctVol'), uncertaintyGPerL: effect('sugarGPerL') }
}

export const strengthByTwoInstrumentsExplained: Explanation = {
  id: 'strengthByTwoInstruments',
  method:
    'Sugar makes a liquid denser and refract more; spirit makes it lighter and refract more. Only one strength and sweetness shows both numbers: where the two lines cross.',
  source:
    'OIML R 22 (1975), ICUMSA (SPS-4), refraction after the tables of the CRC Handbook, put together by specific refraction (Lorentz and Lorenz, 1880)',
  limits:
    '0 to 40 °C, −5 to 85 °Bx, a refractometer that corrects for temperature. Fruit acids and other solubles count as sugar.',
  uncertainty:
    'From both instruments’ and the thermometer’s; the refraction of spirit with sugar is itself known only to 0.2 °Bx, about 0.4 % vol.',
}
