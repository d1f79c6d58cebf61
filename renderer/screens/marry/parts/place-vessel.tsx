/** A place drawn to the scale of those beside it. */
import { Vessel } from '../../../parts/vessel/vessel.tsx'
import { vesselGeometry } from '../../../parts/vessel/vessel-geometry.ts'
import type { Drawn } from '../places.ts'

export const PlaceVessel = ({ drawn, mmPerPixel }: { drawn: Drawn; mmPerPixel: number }) => (
  <Vessel {...drawn} mmPerPixel={mmPerPixel} isDecorative />
)

/** The scale at which the tallest of these stands so high. */
export function scaleFor(drawn: readonly (Drawn | undefined)[], heightPx: number): number {
  const tallest = Math.max(
    1,
    ...drawn.map((one) => (one ? vesselGeometry(one.shape, one.capacityMl).heightMm : 0)),
  )
  return tallest / heightPx
}
