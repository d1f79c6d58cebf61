/** A full bottle of a lot, or an empty one where all are gone. */
import type { BottleLot } from '../../../shared/schemas/cellar.ts'
import { bottleBrimMl } from './bottle-brim.ts'
import { Vessel, type VesselProps } from './vessel.tsx'

export interface LotVesselProps extends Pick<
  VesselProps,
  'mmPerPixel' | 'heightPx' | 'isDecorative'
> {
  lot: Pick<BottleLot, 'bottleSizeMl' | 'count'>
  /** Of its batch. */
  colour: string | undefined
}

export function LotVessel({ lot, colour, ...rest }: LotVesselProps) {
  const filledMl = lot.count === 0 ? 0 : lot.bottleSizeMl
  return (
    <Vessel
      {...rest}
      shape="bottle"
      capacityMl={bottleBrimMl(lot.bottleSizeMl)}
      fillMl={filledMl}
      liquidMl={filledMl}
      colour={filledMl === 0 ? undefined : colour}
    />
  )
}
