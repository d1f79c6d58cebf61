/**
 * How much sugar does the water in a liquid hold dissolved?
 *
 * In water alone: Vavrinecz's polynomial for the saturated mass fraction of sucrose. With ethanol
 * only a guide (engineering estimate; no table was found): each gram of water keeps its share up to
 * 20 % of ethanol by mass, then loses it in a straight line to nothing in pure ethanol.
 * In: mass fraction of ethanol in the ethanol and water, 0 to 1; 0 to 90 °C. Out: grams of sucrose
 * per gram of water. RangeError outside. Leaves out: fruit sugars, which dissolve better.
 * @example sucroseSolubility({ ethanolMassFraction: 0, temperatureC: 20 }) // 2.00
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { requireRange } from '../range.ts'

/** Mass percent in rising powers of °C; Vavrinecz, from memory. */
const saturation = [64.447, 0.08222, 1.6169e-3, -1.558e-6, -4.63e-8] as const

const undisturbedFraction = 0.2

export function sucroseSolubility(liquid: {
  ethanolMassFraction: number
  temperatureC: number
}): number {
  const { ethanolMassFraction, temperatureC } = liquid
  requireRange('mass fraction of ethanol', ethanolMassFraction, 0, 1, 'of 1')
  requireRange('temperature', temperatureC, 0, 90, '°C')
  const percent = saturation.reduceRight((sum, term) => sum * temperatureC + term, 0)
  const kept = Math.min(1, (1 - ethanolMassFraction) / (1 - undisturbedFraction))
  return (kept * percent) / (100 - percent)
}

export const sucroseSolubilityExplained: Explanation = {
  id: 'sucroseSolubility',
  method:
    'The water holds as much sugar as it would alone, up to a fifth of ethanol by mass; beyond, less and less, to nothing in pure ethanol.',
  source:
    'Vavrinecz (1962, from memory) for water; with ethanol an engineering estimate, for no table was found',
  limits: '0 to 90 °C. A guide: it warns, it does not forbid.',
  uncertainty: 'Within 0.2 % of the sugar in water; unknown with ethanol, perhaps a fifth.',
}
