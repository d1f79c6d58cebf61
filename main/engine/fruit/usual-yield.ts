/**
 * How many litres of finished liqueur does a kilogram of this fruit usually give?
 *
 * Method: the ethanol of the spirit that the trade takes for the fruit, at its usual steeping
 * strength, of which four fifths reach a bottle, thinned to the usual finished strength. The four
 * fifths are set so that 1 kg under 1 L of 67.5 % vol, finished at 31.7 % vol, gives the craft
 * reference's planning yield of 1.7 L/kg (1.3 to 2.1); an estimate. A fruit whose facts say nothing
 * of spirit and strength gets that 1.7 as it is.
 * In: the fruit's facts. Out: L of liqueur per kg of edible fruit.
 * Leaves out: sugar, juice and filtering of the one batch, which move it by a quarter either way.
 * @example usualYieldLPerKg(fruitOf('sour_cherry')) // 1.354
 */
import type { Fruit } from '../../../shared/schemas/fruits.ts'

const planningYieldLPerKg = 1.7
const bottledShareOfEthanol = 0.8

export function usualYieldLPerKg(fruit: Fruit): number {
  const { fruitKgPerLSpirit, steepingStrengthPctVol, finishedStrengthPctVol } = fruit
  if (!fruitKgPerLSpirit?.typical || !steepingStrengthPctVol || !finishedStrengthPctVol?.typical)
    return planningYieldLPerKg
  return (
    (bottledShareOfEthanol * steepingStrengthPctVol.typical) /
    (fruitKgPerLSpirit.typical * finishedStrengthPctVol.typical)
  )
}
