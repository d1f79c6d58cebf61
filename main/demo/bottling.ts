/** Into bottles: as many full ones as it gives, small ones for the rest, the dregs thrown out. */
import type { Move } from '../../shared/schemas/moves.ts'
import { planBottleYears, type Bottling } from './bottle-years.ts'
import { instant } from './days.ts'
import { laidDown, type ShelfId } from './shelves.ts'

const bottleMl = 500
const smallBottleMl = 200

export async function fillBottles(
  bottling: Bottling,
  fromJarId: string,
  atMs: number,
): Promise<void> {
  const { hand, batchId } = bottling
  const { liquid } = await hand.look(batchId, fromJarId, atMs)
  const availableMl = liquid?.volumeMl ?? 0
  const count = Math.floor(availableMl / bottleMl)
  const smallCount = Math.floor((availableMl - count * bottleMl) / smallBottleMl)
  const lots = [
    { bottleLotId: `${batchId}-bottles`, bottleSizeMl: bottleMl, count },
    { bottleLotId: `${batchId}-small`, bottleSizeMl: smallBottleMl, count: smallCount },
  ].filter((lot) => lot.count > 0)
  const filled = lots.map((lot): Move => {
    const shelfId = shelfFor(bottling, lot.bottleSizeMl)
    const shelf = shelfId === null ? {} : { shelfId }
    return { kind: 'bottle', at: instant(atMs), batchId, fromJarId, ...lot, ...shelf }
  })
  const dregsMl = availableMl - count * bottleMl - smallCount * smallBottleMl
  const at = instant(atMs + 30 * 60_000)
  await hand.record(
    ...filled,
    // A wet glass is rinsed out by itself.
    ...(dregsMl > 3
      ? [{ kind: 'discard', at, from: { jarId: fromJarId, part: 'all' } } as const]
      : []),
  )
  for (const lot of lots)
    planBottleYears(bottling, laidDown(lot, shelfFor(bottling, lot.bottleSizeMl)), atMs)
}

/** Half litres go down to the cellar, small ones stay at hand; in a busy year nobody wrote it down. */
function shelfFor({ isSparse }: Bottling, sizeMl: number): ShelfId | null {
  if (isSparse) return null
  return sizeMl === bottleMl ? 'rack' : 'pantry'
}
