/** What the service and its planning process say to each other. */
import type { SeasonPlan } from '../../shared/schemas/season.ts'
import type { Progress, SeasonFacts } from '../engine/index.ts'

export interface ToPlan {
  readonly facts: SeasonFacts
  readonly isExplained: boolean
  readonly timeLimitSeconds: number
}

export type FromWorker =
  | { readonly kind: 'progress'; readonly progress: Progress }
  | { readonly kind: 'done'; readonly plan: SeasonPlan }
