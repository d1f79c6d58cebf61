/** An opened bottle drawn with the level that is left in it. */
import type { OpenedBottle } from '../../../../shared/schemas/shelf.ts'
import { useBatches } from '../../../parts/names/use-names.ts'
import { bottleBrimMl } from '../../../parts/vessel/bottle-brim.ts'
import { Vessel, vesselScale } from '../../../parts/vessel/vessel.tsx'

export interface OpenedVesselProps {
  opened: OpenedBottle
  mmPerPixel?: number
}

export function OpenedVessel({ opened, mmPerPixel = vesselScale.shelf }: OpenedVesselProps) {
  const colour = useBatches().get(opened.batchId)?.batch.colour
  const left = opened.liquid?.volumeMl ?? 0
  return (
    <Vessel
      shape="bottle"
      capacityMl={bottleBrimMl(opened.bottleSizeMl)}
      fillMl={left}
      liquidMl={left}
      colour={left > 0 ? colour : undefined}
      mmPerPixel={mmPerPixel}
    />
  )
}
