/**
 * How much of everything makes the same liqueur from other fruit, in another jar, or for so many
 * bottles?
 *
 * Everything but times, strengths and sizes is multiplied alike. By fruit: the mass given. By jar:
 * the steeping vessels' highest fill comes to the safe line of the jar. By bottles: just enough.
 */
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import type { DraftSpec, RecipeScale } from '../../../shared/schemas/drafts.ts'
import { outcomeOf } from './outcome.ts'
import type { DraftFacts } from './buying.ts'
import { wishedVolumeMl } from './unmet-wishes.ts'

export function scaledDraft(spec: DraftSpec, scale: RecipeScale, facts: DraftFacts): DraftSpec {
  // Vessels were chosen for the old size: the new one looks for its own.
  return multiplied({ ...spec, vessels: { steep: [], extracts: [] } }, factorOf(spec, scale, facts))
}

function factorOf(spec: DraftSpec, scale: RecipeScale, facts: DraftFacts): number {
  if (scale.by === 'fruit') return scale.massG / fruitMassG(spec)
  const { vessels, bottledMl, remainderMl } = outcomeOf(spec, facts)
  if (scale.by === 'jar') {
    const steeping = vessels.filter(({ role }) => role === 'steep')
    const fillMl = steeping.reduce((sum, { peakFillMl }) => sum + peakFillMl, 0)
    return fillMl === 0 ? 1 : (safeFillFraction * scale.capacityMl) / fillMl
  }
  const wantedMl = wishedVolumeMl({ bottles: scale.count }, spec.bottleSizeMl) as number
  const nowMl = bottledMl + remainderMl
  return nowMl === 0 ? 1 : wantedMl / nowMl
}

export const fruitMassG = ({ fruits }: DraftSpec): number =>
  fruits.reduce((sum, { massG }) => sum + massG, 0)

const multiplied = (spec: DraftSpec, factor: number): DraftSpec => ({
  ...spec,
  fruits: spec.fruits.map((fruit) => ({ ...fruit, massG: factor * fruit.massG })),
  spirits: spec.spirits.map((spirit) => ({ ...spirit, volumeMl: factor * spirit.volumeMl })),
  layeringSugarG: factor * spec.layeringSugarG,
  steepWaterMl: factor * spec.steepWaterMl,
  sugarDraws: spec.sugarDraws.map((draw) => ({ ...draw, sugarG: factor * draw.sugarG })),
  finishWaterMl: factor * spec.finishWaterMl,
  finishSugarG: factor * spec.finishSugarG,
  finishSpiritMl: factor * spec.finishSpiritMl,
})
