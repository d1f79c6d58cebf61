/**
 * What strength, or what sugar, makes an instrument show what it showed, the other being known?
 *
 * The root of what the instrument would see in a litre of that make. Density falls with strength;
 * refraction rises up to its maximum near 85 % vol, and the weaker of two answers is taken.
 * In: g/L or % vol at 20 °C; a function that sees as the instrument does, and what it saw; the
 * margin of noise within which the nearest liquid is taken. Out: % vol or g/L at 20 °C.
 * DomainError `noSuchMixture` with how far off the nearest is. Leaves out: doubt about the other.
 * @example sugarAtStrength({ strengthPctVol: 0, see: (liquid) => liquid.sugarG, seen: 80, margin: 0 }) // 80
 */
import { DomainError } from '../domain-error.ts'
import { requireRange } from '../range.ts'
import { rootBetween } from '../root.ts'
import {
  composeLitre,
  greatestStrengthPctVol,
  greatestSugarGPerL,
} from '../solution/compose-solution.ts'
import type { Solution } from '../solution/liquid-volume.ts'

interface Sighting {
  readonly see: (liquid: Solution) => number
  readonly seen: number
  readonly margin: number
}

export function strengthAtSugar(known: Sighting & { readonly sugarGPerL: number }): number {
  const { sugarGPerL } = known
  requireRange('sugar', sugarGPerL, 0, 1600, 'g/L')
  const litreOf = (strengthPctVol: number) => composeLitre({ strengthPctVol, sugarGPerL })
  return firstSuch(known, litreOf, greatestStrengthPctVol(sugarGPerL))
}

export function sugarAtStrength(known: Sighting & { readonly strengthPctVol: number }): number {
  const { strengthPctVol } = known
  requireRange('strength', strengthPctVol, 0, 100, '% vol')
  const litreOf = (sugarGPerL: number) => composeLitre({ strengthPctVol, sugarGPerL })
  return firstSuch(known, litreOf, greatestSugarGPerL(strengthPctVol))
}

const steps = 20

/** Looks in steps, so that of two answers the lower is found. */
function firstSuch(
  { see, seen, margin }: Sighting,
  litreOf: (amount: number) => Solution,
  greatest: number,
): number {
  const excess = (amount: number) => see(litreOf(amount)) - seen
  let [low, atLow] = [0, excess(0)]
  let [nearest, atNearest] = [low, atLow]
  for (let step = 1; step <= steps && atLow !== 0; step++) {
    const high = (greatest * step) / steps
    const atHigh = excess(high)
    if (atLow < 0 !== atHigh < 0) return rootBetween(excess, low, high, 1e-10)
    if (Math.abs(atHigh) < Math.abs(atNearest)) [nearest, atNearest] = [high, atHigh]
    ;[low, atLow] = [high, atHigh]
  }
  if (Math.abs(atNearest) <= margin) return nearest
  throw new DomainError(
    'noSuchMixture',
    `no such liquid shows ${seen}: the nearest shows ${(seen + atNearest).toFixed(2)}`,
    { seen, nearest: seen + atNearest },
  )
}
