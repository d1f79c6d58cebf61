/** What is asked about stock by kind, and what is found: instants in milliseconds. */
import type { KindStock, ShelfLots } from '../../../shared/schemas/shelf.ts'
import type { Banded } from '../../../shared/schemas/steeping.ts'
import type { AgeingWindowFound, MsBand } from './ageing-lot.ts'

/** A change of stock of one kind: bottled, drunk, given, broken, poured back, counted otherwise. */
export interface StockChange {
  readonly atMs: number
  readonly kindId: string
  /** Above zero where stock came in. */
  readonly changeMl: number
  /** Only what the maker drank or gave is forecast. */
  readonly way: 'drunk' | 'given' | 'other'
}

/** What stands there now, opened bottles with what is left in them. */
export interface StockNow {
  readonly kindId: string
  readonly bottleCount: number
  readonly volumeMl: number
}

export interface StockQuestion {
  readonly kinds: readonly StockNow[]
  /** All that ever happened to the kinds, in any order. */
  readonly changes: readonly StockChange[]
  readonly nowMs: number
  /** How many months to come; 36 when left out. */
  readonly months?: number
}

/** As the contract's `KindStock`, with instants in milliseconds. */
export interface KindStockFound extends Pick<
  KindStock,
  'kindId' | 'bottleCount' | 'volumeMl' | 'perYearMl' | 'givenShare' | 'isOwnHistory'
> {
  readonly past: readonly { readonly atMs: number; readonly volumeMl: number }[]
  readonly forecast: readonly { readonly atMs: number; readonly volumeMl: Banded }[]
  readonly runsOutMs?: {
    readonly early: number
    readonly likely: number | null
    readonly late: number | null
  }
}

export interface StockFound {
  readonly kinds: readonly KindStockFound[]
  /** Everything together; its kind is called `all`. */
  readonly all: KindStockFound
}

/** One lot with bottles left, or with an opened one, for the question what to drink first. */
export interface WaitingLot {
  readonly bottleLotId: string
  readonly window: AgeingWindowFound
  /** Of its opened bottles that are not empty. */
  readonly openedBestByMs: readonly MsBand[]
  /** Share of its colour left now and a quarter of a year on; absent where it fades little. */
  readonly colour?: { readonly now: number; readonly inAQuarter: number }
}

export interface FirstToDrink {
  readonly bottleLotId: string
  readonly because: ShelfLots['drinkFirst'][number]['because']
  readonly byMs?: number
}
