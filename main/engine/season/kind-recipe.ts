/**
 * What does a kilogram of a kind take: jar room in which weeks, spirit, sugar, and what does it give?
 *
 * Method: the recipe is run once through the forward model at a kitchen's size, and read off: the
 * highest fill of what steeps and of what settles, when it is drawn off, emptied and bottled, and
 * the litres bottled. Everything but time grows with the fruit (test/engine/season shows it).
 * In: a draft of the kind, and the fruits. Out: amounts per kg of fruit as bought, days from start.
 * Leaves out: the jars it will stand in; undefined when the draft gives nothing, or is refused.
 */
import type { DraftSpec } from '../../../shared/schemas/drafts.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { DraftFacts } from '../drafting/buying.ts'
import { outcomeOf } from '../drafting/outcome.ts'
import { fruitMassG, scaledDraft } from '../drafting/scale-draft.ts'
import { solveDraft } from '../drafting/solve-draft.ts'
import { usualDraft } from '../drafting/usual-draft.ts'
import { usualYieldLPerKg } from '../fruit/usual-yield.ts'

export interface KindRecipe {
  readonly spec: DraftSpec
  readonly lPerKg: number
  readonly steepMlPerKg: number
  readonly settleMlPerKg: number
  readonly sweetener: { readonly id: DraftSpec['sweetenerId']; readonly gPerKg: number }
  readonly spirits: readonly { readonly strengthPctVol: number; readonly mlPerKg: number }[]
  /** Shares of the fruits of the recipe, as bought. */
  readonly fruits: readonly { readonly fruitId: string; readonly share: number }[]
  /** Days from the start until the first drawing off, the empty steeping jar, the bottles. */
  readonly drawnDay: number
  readonly emptiedDay: number
  readonly bottledDay: number
}

/** Large enough that a lost glass does not count, small enough for one jar. */
const referenceMl = 3000

/** The library's usual way, made as strong and as sweet as the trade finishes it. */
export function usualRecipe(
  fruit: Fruit,
  spiritPctVol: number,
  startAt: string,
  facts: DraftFacts,
): KindRecipe | undefined {
  const edibleKg = referenceMl / 1000 / usualYieldLPerKg(fruit)
  const fruitG = (1000 * edibleKg) / fruit.composition.edibleFraction
  const begun = usualDraft({ fruit, fruitG, spiritPctVol, startAt })
  const { finishedStrengthPctVol, finishedSugarGPerL } = fruit
  const wishes = {
    ...(finishedStrengthPctVol && { strengthPctVol: finishedStrengthPctVol.typical }),
    ...(finishedSugarGPerL && { sugarGPerL: finishedSugarGPerL.typical }),
  }
  return recipeOf(solveDraft({ spec: begun, pins: ['fruit'], wishes }, facts).spec, facts)
}

/** A draft of any size, read per kilogram. */
export function recipeOf(given: DraftSpec, facts: DraftFacts): KindRecipe | undefined {
  const spec = scaledDraft(given, { by: 'fruit', massG: fruitMassG(given) }, facts)
  const { moves, vessels, warnings, bottledMl, remainderMl } = outcomeOf(spec, facts)
  const outMl = bottledMl + remainderMl
  if (outMl <= 0 || warnings.some(({ code }) => code === 'refused')) return undefined
  const kg = fruitMassG(spec) / 1000
  const startMs = Date.parse(spec.startAt)
  const dayOf = (kind: (typeof moves)[number]['kind'], pick: (...days: number[]) => number) =>
    pick(
      ...moves.flatMap((move) =>
        move.kind === kind ? (Date.parse(move.at) - startMs) / msPerDay : [],
      ),
    )
  const fills = (isSteeping: boolean) =>
    vessels.filter(({ role }) => (role === 'steep') === isSteeping).map((v) => v.peakFillMl)
  const steepMl = fills(true).reduce((sum, fillMl) => sum + fillMl, 0)
  const { finishSpiritMl, finishSugarG, layeringSugarG, sugarDraws } = spec
  const sugarG = sugarDraws.reduce((sum, draw) => sum + draw.sugarG, layeringSugarG + finishSugarG)
  return {
    spec,
    lPerKg: outMl / 1000 / kg,
    steepMlPerKg: steepMl / kg,
    settleMlPerKg: Math.max(...fills(false)) / kg,
    sweetener: { id: spec.sweetenerId, gPerKg: sugarG / kg },
    spirits: spec.spirits.map(({ strengthPctVol, volumeMl }, index) => ({
      strengthPctVol,
      mlPerKg: (volumeMl + (index === 0 ? finishSpiritMl : 0)) / kg,
    })),
    fruits: spec.fruits.map(({ fruitId, massG }) => ({ fruitId, share: massG / 1000 / kg })),
    drawnDay: dayOf('drawOff', Math.min),
    emptiedDay: dayOf('discard', Math.max),
    bottledDay: dayOf('bottle', Math.max),
  }
}
