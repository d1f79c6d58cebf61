/** What is asked about the age of a bottle lot, and what is found: instants in milliseconds. */
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { Verdict } from '../../../shared/schemas/moves.ts'
import type { AgeingWindow, ShelfLight } from '../../../shared/schemas/shelf.ts'

/** One fruit of the lot. Shares are weights on any scale, such as the grams it brought. */
export interface AgeingFruit {
  readonly fruit: Pick<Fruit, 'id' | 'kind' | 'restMonths' | 'drinkByYears'>
  readonly share: number
}

/** Where the lot stood from an instant on, until the next stay; the last one goes on. */
export interface Stay {
  readonly fromMs: number
  readonly temperatureC: number
  readonly light: ShelfLight
}

export interface TastedVerdict {
  readonly atMs: number
  readonly verdict: Verdict
}

export interface AgeingLot {
  /** None at all where spirit was only sweetened. */
  readonly fruits: readonly AgeingFruit[]
  /** Honey's weight beside the fruits, on the same scale; none when left out. */
  readonly honeyShare?: number
  readonly strengthPctVol: number
  readonly sugarGPerL: number
  readonly acidGPerL: number
  readonly bottledAtMs: number
  /** In any order; before the first of them, and with none, it stood as the trade advises. */
  readonly stays: readonly Stay[]
  /** Of the lot, and of its jars before it was bottled, in any order. */
  readonly verdicts: readonly TastedVerdict[]
  readonly nowMs: number
}

/** The likeliest instant, and the band that holds the true one nine times in ten. */
export interface MsBand {
  readonly early: number
  readonly likely: number
  readonly late: number
}

export interface AgeingWindowFound {
  readonly phase: Verdict
  readonly readyAtMs: MsBand
  readonly fadingAtMs: MsBand
  /**
   * What moved the window away from the usual one of its fruit, the strongest first. `noHistory`
   * comes last: it was neither tasted with a verdict nor ever given a place.
   */
  readonly because: AgeingWindow['because']
}
