/** Random wishes for bottles: filled, carried, opened, poured, topped up, tasted, counted, broken. */
import { liquidVolumeMl, type BottleState, type CellarState } from '../../../main/engine/index.ts'
import { buySpirit, type Deed } from './book-of-moves.ts'

/** A wish, made into a move by what stands in the cellar when its turn comes. */
export interface Wish {
  readonly kind: number
  readonly jar: number
  readonly other: number
  readonly share: number
  readonly waitDays: number
}

export const shelfKinds = 12

const shelfIds = [null, 'rack', 'sill', 'pantry'] as const

export const pick = <T>(from: readonly T[], index: number): T => from[index % from.length] as T

export const shelfOf = ({ jar }: Wish) => pick(shelfIds, jar)

/** In half of the wishes, from one named shelf. */
export function fromShelf(wish: Wish): { shelfId?: string } {
  const shelfId = shelfOf(wish)
  return shelfId !== null && wish.share < 0.5 ? { shelfId } : {}
}

/** The deed of the wish's kind, counted from 0 to `shelfKinds` - 1. */
export function shelfDeedOf(kind: number, wish: Wish, cellar: CellarState, id: string): Deed {
  const found = pick([...cellar.bottles], wish.other)
  return found ? deedWith(kind, wish, cellar, id, found) : bottling(wish, cellar, id)
}

/** Whatever jar has most to pour goes into bottles, so that there is a shelf to play with. */
function bottling(wish: Wish, { jars }: CellarState, id: string): Deed {
  const [fullest] = [...jars]
    .map(([jarId, jar]) => ({ jarId, jar, volumeMl: liquidVolumeMl(jar.bodies.free) }))
    .sort((a, b) => b.volumeMl - a.volumeMl)
  if (!fullest) return buySpirit(id, 3000, 95)
  const bottleSizeMl = pick([100, 200, 500] as const, wish.other)
  return {
    kind: 'bottle',
    batchId: fullest.jar.batchId,
    fromJarId: fullest.jarId,
    bottleLotId: id,
    bottleSizeMl,
    count: Math.max(1, Math.floor(fullest.volumeMl / bottleSizeMl)),
  }
}

function deedWith(
  kind: number,
  wish: Wish,
  cellar: CellarState,
  id: string,
  [bottleLotId, lot]: [string, BottleState],
): Deed {
  const { jar, other, share } = wish
  const opened = [...cellar.opened.keys()]
  const openedId = pick(opened, other)
  const count = Math.max(1, Math.round(lot.filledCount * share))
  const open: Deed = { kind: 'openBottle', bottleLotId, openedId: id, ...fromShelf(wish) }
  const some = share < 0.7 ? { volumeMl: Math.max(1, 0.5 * lot.bottleSizeMl * share) } : {}
  switch (kind) {
    case 0:
      return bottling(wish, cellar, id)
    case 1:
      return {
        kind: 'shelve',
        bottleLotId,
        count,
        fromShelfId: pick([...lot.shelves.keys()], other) ?? null,
        toShelfId: shelfOf(wish),
      }
    case 2:
      return {
        kind: 'correct',
        found: { bottleLotId, count: count - 1, ...(share < 0.5 && { shelfId: shelfOf(wish) }) },
      }
    case 3:
      return { kind: 'taste', batchId: lot.batchId, bottleLotId, scores: { fruit: 10 * share } }
    case 4:
      return openedId ? { kind: 'pourGlass', openedId, ...some } : open
    case 5:
    case 6:
      return openedId && opened.length > 1
        ? { kind: 'topUp', openedId, fromOpenedId: pick(opened, jar), ...some }
        : open
    case 7:
      return openedId && share > 0.7 ? { kind: 'discard', from: { openedId } } : open
    case 8:
      return openedId
        ? { kind: 'correct', found: { openedId, volumeMl: lot.bottleSizeMl * share } }
        : open
    case 9:
      return {
        kind: pick(['drawBottle', 'give', 'breakBottle'] as const, other),
        bottleLotId,
        count: Math.min(count, 2),
        ...fromShelf(wish),
      }
    case 10:
      return {
        kind: 'bringIn',
        batchId: lot.batchId,
        bottleLotId: id,
        bottleSizeMl: pick([100, 500] as const, jar),
        count,
        strengthPctVol: 20 + 20 * share,
        sugarGPerL: 300 * share,
      }
    default:
      return open
  }
}
