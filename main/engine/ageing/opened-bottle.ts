/**
 * Until when is an uncorked bottle at its best?
 *
 * Method: three to six months (craft reference, practice), shortened where it is weak, by the same
 * factor as a closed one, and where much air stands above it: by half when a quarter is left
 * (estimate; up to a twentieth of air counts as full).
 * In: ms, % vol, and how full it is, 0 to 1. Out: instants in ms. Leaves out: fridge or sideboard,
 * and what the lot itself has become by then.
 * @example bestByOnceOpened({ openedAtMs: 0, strengthPctVol: 30, fillFraction: 1 }).early // 7889400000
 */
import type { MsBand } from './ageing-lot.ts'
import { msPerMonth } from './storage.ts'
import { effectOf } from './composition-effects.ts'

const openMonths = { early: 3, likely: Math.sqrt(3 * 6), late: 6 } as const
const fullFrom = 0.95
const [airyAt, airyFactor] = [0.25, 0.5]

export function bestByOnceOpened({
  openedAtMs,
  strengthPctVol,
  fillFraction,
}: {
  readonly openedAtMs: number
  readonly strengthPctVol: number
  readonly fillFraction: number
}): MsBand {
  const air = Math.min(1, Math.max(0, (fullFrom - fillFraction) / (fullFrom - airyAt)))
  const shorter = (1 - (1 - airyFactor) * air) * Math.exp(effectOf('weak', strengthPctVol).lnFading)
  const after = (months: number) => openedAtMs + months * shorter * msPerMonth
  return {
    early: after(openMonths.early),
    likely: after(openMonths.likely),
    late: after(openMonths.late),
  }
}
