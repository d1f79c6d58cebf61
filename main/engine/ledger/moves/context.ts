/** What a move may know besides the cellar: when it happens, and the facts of the fruit library. */
import type { Fruit } from '../../../../shared/schemas/fruits.ts'

/** How the fruit of a replayed batch differs from what the library says of it; 1, 1 and 0 for none. */
export interface Tuning {
  /** Times faster, and times as much liquid held. */
  readonly pace: number
  readonly hold: number
  /** Share by which its own juice is more. */
  readonly juice: number
  /** Pieces that many times their size; 1 when left out. */
  readonly pieceScale?: number
}

export interface MoveContext {
  readonly atMs: number
  readonly fruitOf: (fruitId: string) => Fruit
  readonly tuning?: Tuning | undefined
}
