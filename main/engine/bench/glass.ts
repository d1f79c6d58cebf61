/** What is in a glass: standard drinks, energy, and which names the law would allow it. */
import type { BenchReply, BenchRequestOf } from '../../../shared/schemas/bench.ts'
import { usualFineness } from '../../../shared/fineness.ts'
import { measured, propagate } from '../readings/propagate.ts'
import { composeLitre } from '../solution/compose-solution.ts'
import { describeSolution } from '../solution/describe-solution.ts'
import { energyOf, energyOfExplained } from '../solution/energy.ts'
import { legalCategory, legalCategoryExplained, legalRules } from '../solution/legal-category.ts'
import { standardDrinks, standardDrinksExplained } from '../solution/standard-drinks.ts'
import { answer, detail, jugMl, taken } from './answer.ts'

export function benchGlass(request: BenchRequestOf<'glass'>): BenchReply {
  const { volumeMl, strengthPctVol, sugarGPerL, fineness } = request
  const inputs = {
    volumeMl: jugMl(volumeMl, fineness?.volumeMl),
    strengthPctVol: measured(strengthPctVol, fineness?.strengthPctVol ?? usualFineness.labelPctVol),
    sugarGPerL: measured(sugarGPerL, fineness?.sugarGPerL ?? usualFineness.sugarGPerL),
  }
  const found = propagate(inputs, (glass) => ({ ...standardDrinks(glass), ...energyOf(glass) }))
  const { densityKgPerM3 } = describeSolution(composeLitre(request))
  return {
    inputs: taken(inputs),
    results: [
      answer('ethanolMass', 'mass', found.ethanolG),
      answer('energyKj', 'energyKj', found.kJ),
      detail('energyKcal', 'energyKcal', found.kcal),
      detail('drinksUnitedKingdom', 'drinks', found.unitedKingdom),
      detail('drinksUnitedStates', 'drinks', found.unitedStates),
      detail('drinksAustralia', 'drinks', found.australia),
    ],
    notes: [{ code: 'notLegalAdvice' }],
    explanations: [standardDrinksExplained, energyOfExplained, legalCategoryExplained],
    categories: legalCategory({ strengthPctVol, sugarGPerL, densityKgPerM3 }).map((verdict) => ({
      ...verdict,
      standing: legalRules[verdict.category].standing,
    })),
  }
}
