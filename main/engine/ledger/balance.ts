/**
 * The cellar's books: everything that ever came in is in some place, drunk, given or thrown away.
 * What fails to add up is `missing`; only rounding may stand there.
 */
import { scaleMatter, subtractMatter, sumMatter, type Matter } from '../../../shared/matter.ts'
import type { Balance } from '../../../shared/schemas/cellar.ts'
import { matterInBottles, type Boundary, type CellarState } from './cellar-state.ts'
import { wholeMatter } from './moves/jar-access.ts'

export function balance(cellar: CellarState): Balance {
  const outside = (...places: Boundary[]): Matter =>
    sumMatter(places.map((place) => cellar.outside.get(place) as Matter))
  const bought = scaleMatter(outside('outside:supplier'), -1)
  const tap = scaleMatter(outside('outside:tap'), -1)
  const broughtIn = scaleMatter(outside('outside:elsewhere'), -1)
  const corrected = scaleMatter(outside('outside:correction'), -1)
  const inPantry = sumMatter([...cellar.lots.values()].map((lot) => lot.matter))
  const inJars = sumMatter([...cellar.jars.values()].map(wholeMatter))
  const inBottles = sumMatter([
    ...[...cellar.bottles.values()].map(matterInBottles),
    ...[...cellar.opened.values()].map(({ matter }) => matter),
  ])
  const drunk = outside('outside:glass')
  const given = outside('outside:gift')
  const wasted = outside('outside:waste', 'outside:filter')
  const missing = subtractMatter(
    sumMatter([bought, tap, broughtIn, corrected]),
    sumMatter([inPantry, inJars, inBottles, drunk, given, wasted]),
  )
  return {
    bought,
    tap,
    broughtIn,
    inPantry,
    inJars,
    inBottles,
    drunk,
    given,
    wasted,
    corrected,
    missing,
  }
}
