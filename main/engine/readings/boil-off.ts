/**
 * How strong and how sweet is a liqueur, from its density before and after its spirit is boiled off?
 *
 * What is left, made up with water to the same volume, tells the sugar (ICUMSA); the strength is
 * that at which sugar and spirit together have the first density (the ternary of liquidVolumeMl).
 * Tabarié's rule (ρ − ρ after + ρ water, then OIML) is given beside it as a cross-check only: it is
 * 2 % vol too strong at 40 % vol and 250 g/L. In: kg/m³ at one temperature, 0 to 40 °C. Out: % vol
 * and g/L at 20 °C with standard uncertainties. RangeError outside; DomainError `noSuchMixture`
 * with the kg/m³ too many where no liqueur has both. Leaves out: errors in making up the volume.
 * @example strengthByBoilOff({ densityBeforeKgPerM3: 985.42, densityAfterKgPerM3: 1036.65 }).strengthPctVol // 40.0
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { densityOn, densityProfile } from '../alcoholometry/density-of-spirit.ts'
import { strengthOfDensity } from '../alcoholometry/strength-of-density.ts'
import { DomainError } from '../domain-error.ts'
import { requirePositive, requireRange } from '../range.ts'
import { rootBetween } from '../root.ts'
import { waterDensityKgPerM3 } from '../solution/density-of-water.ts'
import { describeSolution } from '../solution/describe-solution.ts'
import { solutionVolumeMl, type Solution } from '../solution/liquid-volume.ts'
import { extractOfDensity } from '../solution/syrup-of-density.ts'
import { hydrometerKgPerM3, modelDensityKgPerM3, rootSumSquare } from './instruments.ts'
import type { MeasuredLiquor } from './measured-liquor.ts'

interface Densities {
  readonly before: number
  readonly after: number
  readonly temperatureC: number
}

export function strengthByBoilOff(measured: {
  readonly densityBeforeKgPerM3: number
  readonly densityAfterKgPerM3: number
  readonly temperatureC?: number
  readonly densityUncertaintyKgPerM3?: number
}): MeasuredLiquor & { readonly shortcutPctVol: number | undefined } {
  const { temperatureC = 20, densityUncertaintyKgPerM3 = hydrometerKgPerM3 } = measured
  const { densityBeforeKgPerM3: before, densityAfterKgPerM3: after } = measured
  requireRange('temperature', temperatureC, 0, 40, '°C')
  requirePositive('density uncertainty', densityUncertaintyKgPerM3, 100, 'kg/m³')
  requireRange('density before', before, 700, 1450, 'kg/m³')
  requireRange('density after', after, 700, 1450, 'kg/m³')
  const read = { before, after, temperatureC }
  const possible = nearestPossible(read, 2 * densityUncertaintyKgPerM3)
  const found = solve(possible)
  return {
    ...found,
    ...uncertainties(possible, found, densityUncertaintyKgPerM3),
    shortcutPctVol: shortcutPctVol(read),
  }
}

/** A misreading within the margin is moved to the nearest pair that can be; beyond, refused. */
function nearestPossible(read: Densities, margin: number): Densities {
  const water = waterDensityKgPerM3(read.temperatureC)
  if (read.after < water - margin)
    throw noSuchMixture(read, water - read.after, 'what is left is lighter than water')
  const after = Math.max(read.after, water)
  if (read.before > after + margin)
    throw noSuchMixture(read, read.before - after, 'the liqueur is denser than what is left')
  const before = Math.min(read.before, after)
  const lightest = lightestKgPerM3(after, read.temperatureC)
  if (before < lightest - margin)
    throw noSuchMixture(read, lightest - before, 'the liqueur is lighter than pure spirit')
  return { ...read, before: Math.max(before, lightest), after }
}

function noSuchMixture(read: Densities, excess: number, reason: string): DomainError {
  const by = `${reason}, by ${excess.toFixed(1)} kg/m³`
  return new DomainError(
    'noSuchMixture',
    `${read.before} kg/m³ before, ${read.after} after: ${by}`,
    {
      densityBeforeKgPerM3: read.before,
      densityAfterKgPerM3: read.after,
      excessKgPerM3: excess,
    },
  )
}

/** The liquid with that sugar in which all the rest is ethanol. */
function lightestKgPerM3(after: number, temperatureC: number): number {
  const sugarG = extractOfDensity({ densityKgPerM3: after, temperatureC })
  const profile = densityProfile(temperatureC)
  const sugarMl = solutionVolumeMl({ ...nothing, sugarG }, temperatureC, profile)
  return sugarG + ((1000 - sugarMl) / 1000) * densityOn(profile, 1)
}

const nothing: Solution = { ethanolG: 0, waterG: 0, sugarG: 0, acidG: 0, solublesG: 0 }

/** A litre at that temperature: its sugar is known, its mass is, and so its spirit's strength. */
function solve(densities: Densities): { strengthPctVol: number; sugarGPerL: number } {
  const { before, after, temperatureC } = densities
  const profile = densityProfile(temperatureC)
  const sugarG = extractOfDensity({ densityKgPerM3: after, temperatureC })
  const litreOf = (ethanolFraction: number): Solution => ({
    ...nothing,
    ethanolG: (before - sugarG) * ethanolFraction,
    waterG: (before - sugarG) * (1 - ethanolFraction),
    sugarG,
  })
  const overfull = (ethanolFraction: number) =>
    solutionVolumeMl(litreOf(ethanolFraction), temperatureC, profile) - 1000
  const { strengthPctVol, sugarGPerL } = describeSolution(litreOf(rootWithin(overfull)))
  return { strengthPctVol, sugarGPerL }
}

/** Volume rises with the share of ethanol; at the limits of what can be, the limit is the answer. */
function rootWithin(overfull: (ethanolFraction: number) => number): number {
  if (overfull(0) >= 0) return 0
  if (overfull(1) <= 0) return 1
  return rootBetween(overfull, 0, 1)
}

function uncertainties(
  densities: Densities,
  found: { strengthPctVol: number; sugarGPerL: number },
  densityUncertainty: number,
): { uncertaintyPctVol: number; uncertaintyGPerL: number } {
  const step = 0.01
  const lighter = solve({ ...densities, before: densities.before - step })
  const sweeter = solve({ ...densities, after: densities.after + step })
  const perStep = (moved: number, from: number, uncertainty: number) =>
    ((moved - from) / step) * uncertainty
  const model = modelDensityKgPerM3(densities.before, found.sugarGPerL)
  const beforeUncertainty = rootSumSquare(densityUncertainty, model)
  const effect = (quantity: 'strengthPctVol' | 'sugarGPerL') =>
    rootSumSquare(
      perStep(lighter[quantity], found[quantity], beforeUncertainty),
      perStep(sweeter[quantity], found[quantity], densityUncertainty),
    )
  return { uncertaintyPctVol: effect('strengthPctVol'), uncertaintyGPerL: effect('sugarGPerL') }
}

/** Tabarié's rule; undefined where it leaves the range of spirit. */
function shortcutPctVol({ before, after, temperatureC }: Densities): number | undefined {
  const profile = densityProfile(temperatureC)
  const densityKgPerM3 = before - after + waterDensityKgPerM3(temperatureC)
  if (densityKgPerM3 < densityOn(profile, 1) || densityKgPerM3 > densityOn(profile, 0))
    return undefined
  return strengthOfDensity({ densityKgPerM3, temperatureC })
}

export const strengthByBoilOffExplained: Explanation = {
  id: 'strengthByBoilOff',
  method:
    'What is left when the spirit is boiled off, made up with water to the first volume, tells the sugar by its density. The strength is then the one at which that sugar and spirit together have the density measured before. The old rule of taking one density from the other is shown beside it: it errs by up to 2 % vol in strong, sweet liqueurs.',
  source: 'Sucrose by ICUMSA (SPS-4), spirit by OIML R 22 (1975); the old rule is Tabarié’s',
  limits:
    '0 to 40 °C, both measured at the same temperature and made up to exactly the same volume. Fruit acids and other solubles count as sugar.',
  uncertainty:
    'From the hydrometer’s and the thermometer’s, and from what no table tells: how ethanol changes the room sugar takes (0.005 ml a gram).',
}
