/**
 * What fruit and sweeteners are made of: fifty fruits and botanicals with their sources.
 *
 * Method: the tables of `library/` joined; how their numbers add up to 100 is told in fruit-row.ts,
 * what the source codes mean in sources.ts. Compositions are percent of the edible mass.
 * Leaves out: ripeness, variety and year, which move sugar and acid by a third either way.
 * @example fruitOf('sour_cherry').composition.waterPct // 86.13
 */
import { matterOf, scaleMatter, type Matter } from '../../../shared/matter.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { Composition } from '../../../shared/schemas/goods.ts'
import { berries } from './library/berries.ts'
import { botanicals } from './library/botanicals.ts'
import { citrus } from './library/citrus.ts'
import { otherFruit } from './library/other-fruit.ts'
import { pomes } from './library/pomes.ts'
import { stoneFruit } from './library/stone-fruit.ts'
import { sweeteners, type SweetenerId } from './library/sweeteners.ts'

const allFruit = [...berries, ...stoneFruit, ...pomes, ...citrus, ...otherFruit, ...botanicals]

export const fruitLibrary: ReadonlyMap<string, Fruit> = new Map(
  allFruit.map((fruit) => [fruit.id, fruit]),
)
if (fruitLibrary.size !== allFruit.length) throw new Error('two fruits share an id')

/** The fruit of that id. Throws RangeError when the library has none. */
export function fruitOf(id: string): Fruit {
  const fruit = fruitLibrary.get(id)
  if (!fruit) throw new RangeError(`fruit is ${id}, not in the library`)
  return fruit
}

export const sweetenerComposition = (id: SweetenerId): Composition => sweeteners[id]

/** Grams of each kind of matter in a bought mass; stones, cores and the like are `inertG`. */
export function matterOfGoods(
  composition: Composition,
  massG: number,
): { edible: Matter; inertG: number } {
  const { edibleFraction, waterPct, sugarPct, acidPct, solublesPct, pulpPct } = composition
  const edibleG = massG * edibleFraction
  const perHundred = matterOf({
    waterG: waterPct,
    sugarG: sugarPct,
    acidG: acidPct,
    solublesG: solublesPct,
    pulpG: pulpPct,
  })
  return { edible: scaleMatter(perHundred, edibleG / 100), inertG: massG - edibleG }
}
