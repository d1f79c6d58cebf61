/** A vessel's drawing in words. */
import { useWords } from '../../app/words/use-words.ts'
import { useSettings } from '../../app/settings.tsx'
import { useQuantities } from '../quantity/use-quantities.ts'
import type { VesselContents } from './vessel-levels.ts'
import { bottleSizeMl } from './bottle-brim.ts'
import { vesselProfiles, type VesselShape } from './vessel-profiles.ts'
import { listFormat } from '../formatters/formatters.ts'

interface DescribedVessel extends VesselContents {
  shape: VesselShape
  capacityMl: number
}

export function useVesselWords(): (vessel: DescribedVessel) => string {
  const t = useWords()
  const { locale } = useSettings()
  const quantities = useQuantities()
  return ({ shape, capacityMl, fillMl, liquidMl, pulpMl, bedMl }) => {
    const isBottle = shape === 'bottle'
    const kind = isBottle ? t('parts.vessel.bottle') : t(`codes.shape.${shape}`)
    const capacity = quantities.size(
      isBottle ? bottleSizeMl(capacityMl) : capacityMl,
      'volume',
    ).text
    if (fillMl <= 0) return t('parts.vessel.empty', { kind, capacity })
    const filled = t('parts.vessel.filled', {
      kind,
      capacity,
      fill: quantities.text(fillMl, 'volume'),
    })
    const seen = [
      filled,
      liquidMl > 0 && t('parts.vessel.liquid', { liquid: quantities.text(liquidMl, 'volume') }),
      pulpMl > 0 && t('parts.vessel.fruit'),
      bedMl > 0 && t('parts.vessel.bed'),
      // A bottle is filled into its neck, and what it may hold is its size.
      !isBottle &&
        fillMl > capacityMl * vesselProfiles[shape].safeFill &&
        t('parts.vessel.overfull'),
    ].filter((part) => part !== false)
    return listFormat(locale, { type: 'unit' }).format(seen)
  }
}
