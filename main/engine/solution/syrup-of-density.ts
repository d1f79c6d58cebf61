/**
 * How much sugar is in a spirit-free liquid of a given density and temperature?
 *
 * The inverse of the ICUMSA equation (SPS-4), which rises with sugar throughout: Newton's method.
 * In: kg/m³ between water's and that of 85 % syrup, 0 to 80 °C. Out: mass fraction, or g/L at that
 * temperature. RangeError outside.
 * Leaves out: acid and other solubles, which count as sugar (the trade's total extract).
 * @example extractOfDensity({ densityKgPerM3: 1036.65, temperatureC: 20 }) // 100.0
 */
import { requireRange } from '../range.ts'
import { richestMassFraction, syrupDensityKgPerM3 } from './density-of-sucrose.ts'

export function massFractionOfSyrup(measured: {
  densityKgPerM3: number
  temperatureC: number
}): number {
  const { densityKgPerM3, temperatureC } = measured
  requireRange('temperature of syrup', temperatureC, 0, 80, '°C')
  const densityAt = (fraction: number) => syrupDensityKgPerM3(fraction, temperatureC)
  const [water, richest] = [densityAt(0), densityAt(richestMassFraction)]
  requireRange('density of syrup', densityKgPerM3, water, richest, 'kg/m³')
  let fraction = (densityKgPerM3 - water) / 480
  let slopeWidth = 1e-4
  for (let round = 0; round < 20; round++) {
    const density = densityAt(fraction)
    const slope = (densityAt(fraction + slopeWidth) - density) / slopeWidth
    const step = (density - densityKgPerM3) / slope
    fraction -= step
    if (Math.abs(step) < 1e-13) break
    slopeWidth = Math.max(Math.abs(step), 1e-7)
  }
  return Math.max(fraction, 0)
}

/** Grams of sugar in a litre at that temperature. */
export const extractOfDensity = (measured: {
  densityKgPerM3: number
  temperatureC: number
}): number => measured.densityKgPerM3 * massFractionOfSyrup(measured)
