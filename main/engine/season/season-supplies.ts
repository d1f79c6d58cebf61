/**
 * Spirits and sweeteners that the recipes of a season pour, and what the pantry has of each.
 *
 * A lot of spirit serves the strongest recipe that it can be cut down to; 1 L at 96 % vol stands for
 * 96/70 L at 70 % vol, by its ethanol.
 */
import type { KindRecipe } from './kind-recipe.ts'
import type { SeasonFacts } from './season-facts.ts'

export interface SpiritSupply {
  readonly strengthPctVol: number
  readonly atHandMl: number
}

export interface SweetenerSupply {
  readonly id: 'sugar' | 'honey'
  readonly atHandG: number
}

/** A label's strength and the one in a recipe may differ by so much. */
const slackPct = 0.5

export const isSameStrength = (a: number, b: number): boolean => Math.abs(a - b) <= slackPct

/** The strongest first. */
export function spiritSupplies(
  recipes: readonly KindRecipe[],
  { spirits }: SeasonFacts['pantry'],
): SpiritSupply[] {
  const strengths = recipes
    .flatMap((recipe) => recipe.spirits.map(({ strengthPctVol }) => strengthPctVol))
    .sort((a, b) => b - a)
    .reduce<number[]>(
      (kept, next) => (kept.some((one) => isSameStrength(one, next)) ? kept : [...kept, next]),
      [],
    )
  return strengths.map((strengthPctVol) => ({
    strengthPctVol,
    atHandMl: spirits
      .filter((lot) => strengths.find((s) => s <= lot.strengthPctVol + slackPct) === strengthPctVol)
      .reduce((sum, lot) => sum + (lot.volumeMl * lot.strengthPctVol) / strengthPctVol, 0),
  }))
}

export function sweetenerSupplies(
  recipes: readonly KindRecipe[],
  { sweeteners }: SeasonFacts['pantry'],
): SweetenerSupply[] {
  return (['sugar', 'honey'] as const)
    .filter((id) => recipes.some(({ sweetener }) => sweetener.id === id))
    .map((id) => ({
      id,
      atHandG: sweeteners.filter((lot) => lot.id === id).reduce((sum, { massG }) => sum + massG, 0),
    }))
}
