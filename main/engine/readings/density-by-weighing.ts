/**
 * How dense is a liquid, from the weight of a known volume on a kitchen scale?
 *
 * Mass over volume, and 1.05 kg/m³ more for the air that carries part of the liquid and of the
 * scale's weights (air 1.2, weights 8000 kg/m³). The uncertainty: twice the scale's rounding (empty
 * and full) and the flask. Better: learn the flask's volume by weighing it full of water.
 * In: g net, mL, g of the scale's last digit. Out: kg/m³ at the liquid's temperature, and its standard
 * uncertainty. RangeError outside. Leaves out: drops on the neck, a bent scale.
 * @example densityByWeighing({ massG: 98.54, volumeMl: 100 }).densityKgPerM3 // 986.5
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { requirePositive, requireRange } from '../range.ts'
import { densityOfWater } from '../solution/density-of-water.ts'
import { flaskShare, rootSumSquare } from './instruments.ts'

const airKgPerM3 = 1.2
const weightsKgPerM3 = 8000

interface Weighing {
  /** Full less empty. */
  readonly massG: number
  /** The step of the scale's last digit; 0.1 g if left out. */
  readonly scaleStepG?: number
}

export function densityByWeighing(
  weighed: Weighing & { readonly volumeMl: number; readonly volumeUncertaintyMl?: number },
): { densityKgPerM3: number; uncertaintyKgPerM3: number } {
  const { massG, volumeMl, scaleStepG = 0.1 } = weighed
  const { volumeUncertaintyMl = volumeMl * flaskShare } = weighed
  requirePositive('volume', volumeMl, 1e6, 'mL')
  requireRange('volume uncertainty', volumeUncertaintyMl, 0, volumeMl, 'mL')
  requireWeighing(weighed)
  const inAir = (1000 * massG) / volumeMl
  requireRange('density', inAir, 600, 2000, 'kg/m³')
  return {
    densityKgPerM3: inAir * (1 - airKgPerM3 / weightsKgPerM3) + airKgPerM3,
    uncertaintyKgPerM3:
      inAir *
      rootSumSquare(weighingUncertaintyG(scaleStepG) / massG, volumeUncertaintyMl / volumeMl),
  }
}

/** The volume of a flask, from the weight of the water that fills it to the mark. */
export function flaskByWater(weighed: Weighing & { readonly temperatureC: number }): {
  volumeMl: number
  uncertaintyMl: number
} {
  const { massG, temperatureC, scaleStepG = 0.1 } = weighed
  requireWeighing(weighed)
  const inAir = (densityOfWater(temperatureC) - airKgPerM3) / (1 - airKgPerM3 / weightsKgPerM3)
  return {
    volumeMl: (1000 * massG) / inAir,
    uncertaintyMl: (1000 * weighingUncertaintyG(scaleStepG)) / inAir,
  }
}

function requireWeighing({ massG, scaleStepG = 0.1 }: Weighing): void {
  requirePositive('mass', massG, 1e6, 'g')
  requirePositive('scale step', scaleStepG, 1000, 'g')
}

/** Two roundings to the last digit, each even between half a step up and down. */
const weighingUncertaintyG = (scaleStepG: number): number => scaleStepG * Math.sqrt(2 / 12)

export const densityByWeighingExplained: Explanation = {
  id: 'densityByWeighing',
  method:
    'Weight over volume, and a little more for the air that carries part of the liquid. A flask’s own volume is best learnt by weighing it full of water.',
  source:
    'Buoyancy of weighing in air (air 1.2, weights 8000 kg/m³; OIML R 111); water by Kell (1975)',
  limits: '600 to 2000 kg/m³. Drops on the neck and air bubbles are not allowed for.',
  uncertainty:
    'From the scale’s last digit, twice rounded (empty and full), and from the flask’s volume.',
}
