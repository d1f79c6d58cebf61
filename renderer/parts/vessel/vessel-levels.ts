/** Where sugar, fruit and liquid stand in a vessel, as volumes from the bottom up. */

export interface VesselContents {
  /** Liquid, fruit and sugar together. */
  readonly fillMl: number
  /** Liquid that pours. */
  readonly liquidMl: number
  /** The fruit with the liquid it holds. */
  readonly pulpMl: number
  /** Undissolved sugar at the bottom. */
  readonly bedMl: number
}

export interface VesselLevels {
  readonly bedTopMl: number
  readonly fruitTopMl: number
  readonly liquidTopMl: number
}

/** Share of a heap of fruit that is fruit; the rest is the gaps, which liquid fills first. */
const packing = 0.62

export function vesselLevels(contents: VesselContents, capacityMl: number): VesselLevels {
  const bedMl = Math.max(0, contents.bedMl)
  const pulpMl = Math.max(0, contents.pulpMl)
  const liquidMl = Math.max(0, contents.liquidMl)
  const heapMl = pulpMl / packing
  const gapsMl = heapMl - pulpMl
  const isCovered = liquidMl >= gapsMl
  const liquidTopMl = isCovered
    ? Math.max(contents.fillMl, bedMl + pulpMl + liquidMl)
    : bedMl + liquidMl / (1 - packing)
  const within = (volumeMl: number) => Math.min(capacityMl, volumeMl)
  return {
    bedTopMl: within(bedMl),
    fruitTopMl: within(bedMl + heapMl),
    liquidTopMl: within(liquidMl > 0 ? liquidTopMl : bedMl),
  }
}
