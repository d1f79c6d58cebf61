/**
 * How much water brings a spirit down to a strength, and how much does that make?
 *
 * A balance of ethanol: water = mass · (p1 / p2 − 1), with volumes by OIML R 22 at 20 °C. Strong
 * spirit and water contract as they mix (weak spirit swells a little), so the result is less than
 * both together; the linear rule V1 · C1 = V2 · C2 leaves it up to 1.8 % vol too strong.
 * In: mL at 20 °C or g, % vol with the target from 0.1 up to the strength. Out: mL at 20 °C, g.
 * RangeError outside. Leaves out: sugar; a sweet liquid is a case for marrying.
 * @example reduce({ volumeMl: 1000, strengthPctVol: 96, targetPctVol: 40 }).waterMl // 1470.5
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { greatestMassG, greatestVolumeMl, requirePositive, requireRange } from '../range.ts'
import { densityOn, profileAtTwenty } from './density-of-spirit.ts'
import { massFractionOfStrength } from './strength.ts'

/** Weaker than this is water: the amount of it grows without bound. */
const weakestTargetPctVol = 0.1

const waterDensity = densityOn(profileAtTwenty, 0)

export interface Reduction {
  readonly waterMl: number
  readonly waterG: number
  readonly resultMl: number
  readonly contractionMl: number
}

interface Strengths {
  readonly strengthPctVol: number
  readonly targetPctVol: number
}

export function reduce(spirit: Strengths & { readonly volumeMl: number }): Reduction {
  requirePositive('volume', spirit.volumeMl, greatestVolumeMl, 'mL')
  const { from, to } = massesPerMl(spirit)
  return reduction(spirit.volumeMl, (spirit.volumeMl * from.ethanolG) / to.ethanolG, from, to)
}

/** The same for a spirit on a scale. */
export function reduceByWeight(
  spirit: Strengths & { readonly massG: number },
): Reduction & { readonly spiritMl: number; readonly resultG: number } {
  requirePositive('mass', spirit.massG, greatestMassG, 'g')
  const { from, to } = massesPerMl(spirit)
  const spiritMl = spirit.massG / from.massG
  const reduced = reduction(spiritMl, (spiritMl * from.ethanolG) / to.ethanolG, from, to)
  return { spiritMl, resultG: spirit.massG + reduced.waterG, ...reduced }
}

/** The same for a volume wanted: how much spirit and how much water make it. */
export function reduceToVolume(
  wanted: Strengths & { readonly resultMl: number },
): Reduction & { readonly spiritMl: number } {
  requirePositive('volume', wanted.resultMl, greatestVolumeMl, 'mL')
  const { from, to } = massesPerMl(wanted)
  const spiritMl = (wanted.resultMl * to.ethanolG) / from.ethanolG
  return { spiritMl, ...reduction(spiritMl, wanted.resultMl, from, to) }
}

interface PerMl {
  readonly massG: number
  readonly ethanolG: number
}

function massesPerMl({ strengthPctVol, targetPctVol }: Strengths): { from: PerMl; to: PerMl } {
  requireRange('strength', strengthPctVol, weakestTargetPctVol, 100, '% vol')
  requireRange('target strength', targetPctVol, weakestTargetPctVol, strengthPctVol, '% vol')
  return { from: perMl(strengthPctVol), to: perMl(targetPctVol) }
}

function perMl(strengthPctVol: number): PerMl {
  const massFraction = massFractionOfStrength(strengthPctVol)
  const massG = densityOn(profileAtTwenty, massFraction) / 1000
  return { massG, ethanolG: massG * massFraction }
}

function reduction(spiritMl: number, resultMl: number, from: PerMl, to: PerMl): Reduction {
  const waterG = Math.max(resultMl * to.massG - spiritMl * from.massG, 0)
  const waterMl = (1000 * waterG) / waterDensity
  return { waterMl, waterG, resultMl, contractionMl: spiritMl + waterMl - resultMl }
}

export const reduceExplained: Explanation = {
  id: 'reduce',
  method:
    'Ethanol is kept by weight: what is in the spirit must be in the result. Weights are turned into volumes at 20 °C by the density of each strength, so the shrinking that happens on mixing is counted.',
  source: 'OIML R 22 (1975) densities; checked against a pharmacopoeia’s dilution table',
  limits: 'Spirit without sugar, measured at 20 °C, from 0.1 % vol to its own strength.',
  uncertainty:
    'From how fine the jug or scale and the strength are known, and 0.15 ml a litre of the method’s own (its worst against the printed table).',
}
