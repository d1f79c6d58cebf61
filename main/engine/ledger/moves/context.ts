/** What a move may know besides the cellar: when it happens, and the facts of the fruit library. */
import type { Fruit } from '../../../../shared/schemas/fruits.ts'

export interface MoveContext {
  readonly atMs: number
  readonly fruitOf: (fruitId: string) => Fruit
}
