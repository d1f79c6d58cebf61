/**
 * How high a volume stands in a vessel of a given kind and size. The profile of revolution is
 * integrated, so half the volume of a demijohn is well below half its height.
 */
import { vesselProfiles, type VesselShape } from './vessel-profiles.ts'

export interface VesselGeometry {
  /** Inner height to the brim. */
  readonly heightMm: number
  readonly maxRadiusMm: number
  readonly safeFillMl: number
  /** Inner radius at a height; heights outside the vessel count as its bottom or brim. */
  radiusAtMm(heightMm: number): number
  volumeBelowMl(heightMm: number): number
  heightOfMm(volumeMl: number): number
}

export function vesselGeometry(shape: VesselShape, capacityMl: number): VesselGeometry {
  if (!(capacityMl > 0)) throw new RangeError(`capacityMl is ${capacityMl}, must be above 0`)
  const table = tableOf(shape)
  const profile = vesselProfiles[shape]
  // The shape's volume at radius 1 mm is in mm³; 1 ml is 1000 mm³.
  const maxRadiusMm = Math.cbrt((capacityMl * 1000) / table.volumeAtUnitRadius)
  const heightMm = 2 * maxRadiusMm * profile.heightPerDiameter
  return {
    heightMm,
    maxRadiusMm,
    safeFillMl: capacityMl * profile.safeFill,
    radiusAtMm: (height) => maxRadiusMm * radiusAt(shape, share(height, heightMm)),
    volumeBelowMl: (height) => capacityMl * fractionBelow(table, share(height, heightMm)),
    heightOfMm: (volumeMl) => heightMm * heightOfFraction(table, share(volumeMl, capacityMl)),
  }
}

const share = (part: number, whole: number) => Math.min(1, Math.max(0, part / whole))

const slices = 400

interface Table {
  /** Share of the volume below each slice's top, from 0 to 1. */
  readonly below: readonly number[]
  readonly volumeAtUnitRadius: number
}

const tables = new Map<VesselShape, Table>()

function tableOf(shape: VesselShape): Table {
  const known = tables.get(shape)
  if (known) return known
  const sliceHeight = (2 * vesselProfiles[shape].heightPerDiameter) / slices
  const sums = [0]
  let sum = 0
  for (let slice = 0; slice < slices; slice += 1) {
    sum += Math.PI * radiusAt(shape, (slice + 0.5) / slices) ** 2 * sliceHeight
    sums.push(sum)
  }
  const table = { below: sums.map((part) => part / sum), volumeAtUnitRadius: sum }
  tables.set(shape, table)
  return table
}

function fractionBelow({ below }: Table, height: number): number {
  const slice = Math.min(slices - 1, Math.floor(height * slices))
  const from = below[slice] ?? 0
  const to = below[slice + 1] ?? 1
  return from + (to - from) * (height * slices - slice)
}

function heightOfFraction({ below }: Table, fraction: number): number {
  let low = 0
  let high = slices
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if ((below[middle] ?? 1) <= fraction) low = middle
    else high = middle
  }
  const from = below[low] ?? 0
  const to = below[high] ?? 1
  return (low + (fraction - from) / (to - from)) / slices
}

/** Monotone cubic through the profile's points (Fritsch and Carlson), so that nothing bulges. */
function radiusAt(shape: VesselShape, height: number): number {
  const { points } = vesselProfiles[shape]
  const last = points.length - 2
  let i = 0
  while (i < last && height > (points[i + 1]?.[0] ?? 1)) i += 1
  const [h0, r0] = points[i] ?? [0, 1]
  const [h1, r1] = points[i + 1] ?? [1, 1]
  const step = h1 - h0
  const x = (height - h0) / step
  const from = tangent(points, i) * step
  const to = tangent(points, i + 1) * step
  return (
    r0 * (1 + 2 * x) * (1 - x) ** 2 +
    from * x * (1 - x) ** 2 +
    r1 * x ** 2 * (3 - 2 * x) +
    to * x ** 2 * (x - 1)
  )
}

function tangent(points: readonly (readonly [number, number])[], i: number): number {
  const slope = (j: number) => {
    const [a, b] = [points[j], points[j + 1]]
    return a && b ? (b[1] - a[1]) / (b[0] - a[0]) : 0
  }
  if (i === 0) return slope(0)
  if (i === points.length - 1) return slope(i - 1)
  const before = slope(i - 1)
  const after = slope(i)
  // Zero where the profile turns or runs straight; else the harmonic mean, which cannot overshoot.
  return before * after <= 0 ? 0 : (2 * before * after) / (before + after)
}
