/**
 * How fast does this fruit, cut like this, give and take?
 *
 * Method: the half-times of its kinetic class (fruit/half-times.ts) are anchored on the piece as
 * the trade steeps it and an alpha of 1.5; from there they follow the size of the pieces, with its
 * square where diffusion inside the piece is slowest and in proportion where the skin is (craft
 * reference, sections 2.1 and 2.2). That makes diffusivity an effective one, layers of still
 * liquid included. Where a piece has no geometry of its own the way is plain first order.
 * In: the tissue's facts, the cut, the size of the pieces. Out: way and half-times in days at 20 °C.
 * Leaves out: what differs inside a lot, such as ripeness.
 */
import type { FruitTissue } from '../../../shared/schemas/fruits.ts'
import type { Cut } from '../../../shared/schemas/moves.ts'
import { halfTimeRowOf } from '../fruit/half-times.ts'
import type { PieceShape } from './uptake-roots.ts'

/** What holds the liquid up: the way through the piece, its skin, or something unknown. */
export type Way = PieceShape | 'skin' | 'firstOrder'

export interface HalfTimeDays {
  readonly ethanol: number
  /** Sugar, acid and what tastes. */
  readonly extract: number
  readonly colour: number
  /** Juice leaving raw fruit under sugar. */
  readonly osmosis: number
}

export interface Pace {
  readonly way: Way
  readonly halfTimeDays: HalfTimeDays
}

/** Halving a round fruit leaves half its radius to cross; crushing leaves small crumbs. Estimates. */
const sizeOfCut: Record<Cut, number> = { whole: 1, pricked: 1, frozen: 1, cut: 0.5, crushed: 0.25 }

export interface PieceQuestion {
  readonly facts: FruitTissue
  readonly cut: Cut
  /** Thickness of slices or diameter of pieces; the trade's usual when left out. */
  readonly pieceMm?: number | undefined
  /** Pieces this many times that size. */
  readonly pieceScale?: number
}

export function paceOf({ facts, cut, pieceMm, pieceScale = 1 }: PieceQuestion): Pace {
  const row = halfTimeRowOf(facts.kineticClass, cut)
  const way = wayOf(facts, cut)
  const size = way === 'firstOrder' ? 1 : pieceScale * relativeSize(facts, cut, pieceMm)
  const slower = (way === 'skin' ? size : size * size) / (facts.pace ?? 1)
  return {
    way,
    halfTimeDays: {
      ethanol: slower * row.ethanol.typical,
      extract: slower * row.extract.typical,
      colour: slower * row.colour.typical,
      osmosis: row.osmosis.typical / (facts.pace ?? 1),
    },
  }
}

function wayOf({ kineticClass, piece }: FruitTissue, cut: Cut): Way {
  if (!piece) return 'firstOrder'
  const hasSkin = kineticClass === 'thinSkin' || kineticClass === 'waxySkin'
  return hasSkin && (cut === 'whole' || cut === 'pricked') ? 'skin' : piece.shape
}

function relativeSize({ kineticClass, piece }: FruitTissue, cut: Cut, pieceMm?: number): number {
  if (!piece || pieceMm === undefined) return 1
  // Hard fruit is sliced in the library's own row already.
  const usual = kineticClass === 'hardSlice' && cut === 'cut' ? 1 : sizeOfCut[cut]
  return pieceMm / 2 / (usual * piece.halfSizeMm)
}

/** Kinds of fruit in one jar: their paces averaged by mass, and a way only where all share it. */
export function averagePace(parts: readonly { pace: Pace; edibleG: number }[]): Pace {
  const first = parts[0]
  if (!first) throw new Error('no fruit to average')
  if (parts.length === 1) return first.pace
  const wholeG = parts.reduce((sum, part) => sum + part.edibleG, 0)
  const mean = (of: keyof HalfTimeDays) =>
    parts.reduce((sum, { pace, edibleG }) => sum + (edibleG / wholeG) * pace.halfTimeDays[of], 0)
  return {
    way: parts.every(({ pace }) => pace.way === first.pace.way) ? first.pace.way : 'firstOrder',
    halfTimeDays: {
      ethanol: mean('ethanol'),
      extract: mean('extract'),
      colour: mean('colour'),
      osmosis: mean('osmosis'),
    },
  }
}
