/**
 * The inside of each kind of vessel as a profile of revolution, drawn for Ratafia: radius over
 * height, both as shares (of the greatest radius, of the inner height), bottom to brim.
 */
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import type { JarShape } from '../../../shared/schemas/cellar.ts'

export type VesselShape = JarShape | 'bottle'

export interface Profile {
  /** Inner height over greatest diameter. */
  readonly heightPerDiameter: number
  readonly points: readonly (readonly [height: number, radius: number])[]
  /** Share of the capacity up to which it is safe to fill. */
  readonly safeFill: number
  readonly closure: 'lid' | 'cork' | 'stoneLid'
}

export const vesselProfiles: Readonly<Record<VesselShape, Profile>> = {
  jar: {
    heightPerDiameter: 1.42,
    points: [
      [0, 0.86],
      [0.05, 0.97],
      [0.12, 1],
      [0.78, 1],
      [0.87, 0.92],
      [0.93, 0.8],
      [1, 0.78],
    ],
    safeFill: safeFillFraction,
    closure: 'lid',
  },
  demijohn: {
    heightPerDiameter: 1.36,
    points: [
      [0, 0.62],
      [0.05, 0.83],
      [0.16, 0.97],
      [0.32, 1],
      [0.48, 0.93],
      [0.62, 0.72],
      [0.74, 0.4],
      [0.82, 0.23],
      [0.92, 0.19],
      [1, 0.2],
    ],
    safeFill: safeFillFraction,
    closure: 'cork',
  },
  crock: {
    heightPerDiameter: 1.12,
    points: [
      [0, 0.84],
      [0.06, 0.9],
      [0.5, 1],
      [0.86, 0.97],
      [0.94, 0.92],
      [1, 0.94],
    ],
    safeFill: safeFillFraction,
    closure: 'stoneLid',
  },
  flask: {
    heightPerDiameter: 1.5,
    points: [
      [0, 0.9],
      [0.05, 1],
      [0.14, 0.98],
      [0.66, 0.36],
      [0.76, 0.27],
      [0.94, 0.27],
      [1, 0.32],
    ],
    safeFill: safeFillFraction,
    closure: 'cork',
  },
  bottle: {
    heightPerDiameter: 3.75,
    points: [
      [0, 0.9],
      [0.02, 0.98],
      [0.05, 1],
      [0.58, 1],
      [0.66, 0.88],
      [0.74, 0.5],
      [0.8, 0.36],
      [0.94, 0.33],
      [1, 0.35],
    ],
    safeFill: 0.97,
    closure: 'cork',
  },
}
