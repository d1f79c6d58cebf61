/**
 * How dense is water at a temperature?
 *
 * The rational form of Kell (1975) that the ICUMSA sucrose equation (SPS-4) stands on.
 * In: 0 to 100 °C. Out: kg/m³ at normal pressure, within 0.01 of Tanaka (2001) to 40 °C.
 * RangeError outside. Leaves out: dissolved air, minerals of tap water (below 0.5 kg/m³).
 * @example densityOfWater(20) // 998.20
 */
import { requireRange } from '../range.ts'

export function densityOfWater(temperatureC: number): number {
  requireRange('temperature of water', temperatureC, 0, 100, '°C')
  return waterDensityKgPerM3(temperatureC)
}

/** Unchecked. */
export function waterDensityKgPerM3(t: number): number {
  const rising =
    999.83952 +
    t *
      (16.952577 +
        t * (-7.9905127e-3 + t * (-46.241757e-6 + t * (105.84601e-9 + t * -281.03006e-12))))
  return rising / (1 + 16.887236e-3 * t)
}
