/**
 * How much of each bottle lot came from which fruit?
 *
 * Method: as in lineage.ts, but for all lots at once and by fruit instead of purchase: each transfer
 * takes the same share of every fruit's part, for each kind of matter by itself.
 * Bottles brought in from
 * elsewhere are of the fruits their maker named. In: the folded ledger. Out: grams in all bottles ever filled, pulp aside, by the fruit's id or
 * `honey`, the most first; lots without either are left out.
 * Leaves out: spirit, water, sugar and acid powder; corrections of bottles; what spices are apart
 * from their water, sugar and acid, which counts as pulp.
 * @example fruitsInBottles({ steps: [], cellar: fold([], { fruitOf }).cellar }).size // 0
 */
import {
  addMatter,
  massOf,
  scaleMatter,
  subtractMatter,
  type Matter,
} from '../../../shared/matter.ts'
import type { Goods } from '../../../shared/schemas/goods.ts'
import { bottlesPlace, lotPlace } from './cellar-state.ts'
import type { Folded, Step } from './fold.ts'
import type { FruitInBottles } from './lineage-found.ts'
import { hopsOfSteps, isOutside, isPurchase } from './matter-hops.ts'
import { partOf, sharesOf } from './matter-shares.ts'

type Fruits = ReadonlyMap<string, Matter>

const bottles = 'bottles:'

export function fruitsInBottles({
  steps,
  cellar,
}: Pick<Folded, 'steps' | 'cellar'>): ReadonlyMap<string, readonly FruitInBottles[]> {
  const fruitOfLot = new Map(
    [...cellar.lots].flatMap(([lotId, { goods }]) => {
      const fruitId = fruitIdOf(goods)
      return fruitId === undefined ? [] : [[lotPlace(lotId), fruitId] as const]
    }),
  )
  const places = new Map<string, Fruits>()
  const filled = new Map<string, Fruits>()
  const told = fruitsTold(steps)
  for (const { hop, taken } of sharesOf(hopsOfSteps(steps, changesMixtures))) {
    const { from, to, matter } = hop
    const known = told.get(to)
    if (known && from === 'outside:elsewhere')
      filled.set(to, new Map(known.map((id) => [id, scaleMatter(matter, 1 / known.length)])))
    const bought = isPurchase(hop) ? fruitOfLot.get(to) : undefined
    if (bought !== undefined) places.set(to, added(places.get(to), new Map([[bought, matter]])))
    const there = places.get(from)
    if (!there) continue
    const leaving = new Map([...there].map(([id, amount]) => [id, partOf(amount, taken)]))
    places.set(from, without(there, leaving))
    if (isOutside(to)) continue
    places.set(to, added(places.get(to), leaving))
    if (to.startsWith(bottles)) filled.set(to, added(filled.get(to), leaving))
  }
  return new Map(
    [...filled].map(([place, fruits]) => [place.slice(bottles.length), mostFirst(fruits)]),
  )
}

/**
 * What is taken out of a bottle lot is like what stays: only what comes into jars, bottles and
 * pantry lots changes what they are a mixture of.
 */
const changesMixtures = ({ effect, recorded }: Step): boolean =>
  effect.jars !== undefined || effect.lots !== undefined || recorded.move.kind === 'bringIn'

/** Where no lineage leads back to fruit, its maker's word stands. */
const fruitsTold = (steps: readonly Step[]): ReadonlyMap<string, readonly string[]> =>
  new Map(
    steps.flatMap(({ recorded: { move } }) =>
      move.kind === 'bringIn' && move.fruitIds && move.fruitIds.length > 0
        ? [[bottlesPlace(move.bottleLotId), move.fruitIds]]
        : [],
    ),
  )

function fruitIdOf(goods: Goods): string | undefined {
  if (goods.kind === 'fruit') return goods.fruitId
  return goods.kind === 'sweetener' && goods.sweetenerId === 'honey' ? 'honey' : undefined
}

function added(there: Fruits | undefined, more: Fruits): Fruits {
  if (!there) return more
  const sum = new Map(there)
  for (const [id, matter] of more) {
    const known = sum.get(id)
    sum.set(id, known ? addMatter(known, matter) : matter)
  }
  return sum
}

/** Fruits of which nothing is left there are forgotten: a jar is used for decades. */
function without(there: Fruits, leaving: Fruits): Fruits {
  const left = new Map<string, Matter>()
  for (const [id, matter] of there) {
    const gone = leaving.get(id)
    const rest = gone ? subtractMatter(matter, gone) : matter
    if (massOf(rest) > 0) left.set(id, rest)
  }
  return left
}

const mostFirst = (fruits: Fruits): FruitInBottles[] =>
  [...fruits]
    .map(([fruitId, matter]) => ({ fruitId, massG: massOf(matter) - matter.pulpG }))
    .filter(({ massG }) => massG > 0)
    .sort((a, b) => b.massG - a.massG)
