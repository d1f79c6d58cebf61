/** All that a season plan is made from, as plain data: it is handed to another thread. */
import type { Jar } from '../../../shared/schemas/cellar.ts'
import type { DraftSpec } from '../../../shared/schemas/drafts.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { Region, SeasonPrices, SeasonWishes } from '../../../shared/schemas/season.ts'
import type { KindStock } from '../../../shared/schemas/shelf.ts'
import type { BoughtFresh } from './learned-dates.ts'
import type { Standing } from './standing.ts'

export type StockOfKind = Pick<
  KindStock,
  'kindId' | 'volumeMl' | 'perYearMl' | 'givenShare' | 'isOwnHistory'
>

/** How a kind is made: a house recipe, or as it was made last time. */
export interface KnownRecipe {
  readonly kindId: string
  readonly spec: DraftSpec
  readonly recipeId?: string
  readonly batchId?: string
}

export interface SeasonFacts {
  readonly nowMs: number
  /** Any day of week 0. */
  readonly startMs: number
  readonly wishes: SeasonWishes
  readonly region: Region
  /** With what the cellar's own batches taught of their tissue. */
  readonly fruits: readonly Fruit[]
  readonly fresh: readonly BoughtFresh[]
  readonly stocks: readonly StockOfKind[]
  /** Litres per kg of edible fruit, over the cellar's finished batches. */
  readonly ownYields: readonly {
    readonly fruitId: string
    readonly own: number
    readonly batchIds: string[]
  }[]
  readonly recipes: readonly KnownRecipe[]
  /** Those in use. */
  readonly jars: readonly Jar[]
  readonly standing: Standing
  readonly pantry: {
    readonly fruits: readonly { readonly fruitId: string; readonly massG: number }[]
    readonly spirits: readonly { readonly strengthPctVol: number; readonly volumeMl: number }[]
    readonly sweeteners: readonly { readonly id: 'sugar' | 'honey'; readonly massG: number }[]
  }
  /** What was paid last. */
  readonly lastPaid: SeasonPrices
}

/** The same season, asked otherwise: a limit eased, or another harvest. */
export interface Otherwise {
  readonly moreJarMl?: number
  readonly moreMoneyMinor?: number
  readonly moreBottles?: number
  readonly moreSpiritMl?: number
  /** Weeks by which seasons begin earlier and end later; below zero, shorter. */
  readonly seasonWeeks?: number
  readonly fruitPrice?: number
  readonly yield?: number
}
