/** One of the maker's jars as it stands: the drawing, fed from the contract's own shapes. */
import type { Jar, JarContents } from '../../../shared/schemas/cellar.ts'
import { Vessel, type VesselProps } from './vessel.tsx'

export interface JarVesselProps extends Pick<
  VesselProps,
  'mmPerPixel' | 'heightPx' | 'label' | 'isDecorative'
> {
  jar: Pick<Jar, 'shape' | 'capacityMl'>
  /** Absent when the jar is empty. */
  contents?: JarContents | undefined
  /** Of the batch in it. */
  colour?: string | undefined
}

export function JarVessel({ jar, contents, colour, ...rest }: JarVesselProps) {
  const filled = contents && {
    fillMl: contents.fillMl,
    liquidMl: contents.liquid?.volumeMl ?? 0,
    pulpMl: contents.heldMl + contents.pulpMl,
    bedMl: contents.bedMl,
    colour,
  }
  return <Vessel {...rest} shape={jar.shape} capacityMl={jar.capacityMl} {...filled} />
}
