/** A place drawn to the scale of those beside it. */
import { memo } from 'react'
import { Vessel } from '../../../parts/vessel/vessel.tsx'
import { vesselGeometry } from '../../../parts/vessel/vessel-geometry.ts'
import type { Drawn } from '../places.ts'

interface PlaceVesselProps {
  drawn: Drawn
  mmPerPixel: number
}

/** Forty vessels drawn anew at every stroke of a key would keep the answer waiting. */
export const PlaceVessel = memo(
  ({ drawn, mmPerPixel }: PlaceVesselProps) => (
    <Vessel {...drawn} mmPerPixel={mmPerPixel} isDecorative />
  ),
  (was, is) => was.mmPerPixel === is.mmPerPixel && isSame(was.drawn, is.drawn),
)
PlaceVessel.displayName = 'PlaceVessel'

const isSame = (a: Drawn, b: Drawn): boolean =>
  a.shape === b.shape &&
  a.capacityMl === b.capacityMl &&
  a.fillMl === b.fillMl &&
  a.liquidMl === b.liquidMl &&
  a.pulpMl === b.pulpMl &&
  a.bedMl === b.bedMl &&
  a.colour === b.colour

/** The scale at which the tallest of these stands so high. */
export function scaleFor(drawn: readonly (Drawn | undefined)[], heightPx: number): number {
  const tallest = Math.max(
    1,
    ...drawn.map((one) => (one ? vesselGeometry(one.shape, one.capacityMl).heightMm : 0)),
  )
  return tallest / heightPx
}
