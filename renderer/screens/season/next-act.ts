/** The one thing to do next about the season. */
import type { SeasonPlan } from '../../../shared/schemas/season.ts'

export type NextAct = 'addJars' | 'make' | 'makeAnew' | 'keep' | 'wish' | 'buy' | 'none'

export interface SeasonStands {
  hasJars: boolean
  isMaking: boolean
  /** The plan that is shown, the one just made before the one kept. */
  plan: SeasonPlan | undefined
  isKept: boolean
  /** The wishes are others than those it was made from. */
  isChanged: boolean
  /** Lines of the purchase list that want to be bought this week. */
  dueCount: number
}

export function nextAct(stands: SeasonStands): NextAct {
  const { hasJars, isMaking, plan, isKept, isChanged, dueCount } = stands
  if (!hasJars) return 'addJars'
  if (isMaking) return 'none'
  if (!plan) return 'make'
  if (isChanged) return 'makeAnew'
  if (plan.notices.some(({ code }) => code === 'nothingWanted')) return 'wish'
  if (!isKept) return 'keep'
  return dueCount > 0 ? 'buy' : 'none'
}
