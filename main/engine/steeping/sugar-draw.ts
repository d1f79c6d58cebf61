/**
 * What does covering spirit-soaked fruit with sugar draw out of it?
 *
 * Method: the dead tissue mixes with the syrup that forms and shrinks; a share of the volume it
 * held before stays in it (0.55, 0.45, 0.40 for the first, second, third draw, each ± 0.15), at the
 * composition of all the liquid. Craft reference, section 2.4: engineering estimates, nothing
 * published was found on this step.
 * In: liquid held by the drained fruit (grams), sugar in grams, which draw it is (1, 2, …).
 * Out: matter that comes out and that stays, sugar that does not dissolve, and the share of the
 * held ethanol recovered, once it has come to rest. RangeError on a draw below 1.
 * Leaves out: how long it takes (steep does), and temperature.
 * @example sugarDraw({ held: matterOf({ ethanolG: 170, waterG: 380, sugarG: 110 }), sugarG: 250, draw: 1 }).recoveredFraction // 0.56
 */
import { addMatter, matterOf, noMatter, splitMatter, type Matter } from '../../../shared/matter.ts'
import { liquidVolumeMl } from '../solution/liquid-volume.ts'
import { requireRange } from '../range.ts'
import { restingBedG } from './bodies.ts'

const staysOfDraw = [0.55, 0.45, 0.4] as const

/** Share of the held volume that stays in the fruit; the third draw's serves for all after it. */
export function staysAfterDraw(draw: number): number {
  requireRange('sugar draw', draw, 1, Infinity, '(count)')
  return staysOfDraw[Math.min(Math.floor(draw), staysOfDraw.length) - 1] as number
}

export interface SugarDrawResult {
  readonly out: Matter
  readonly left: Matter
  readonly undissolvedG: number
  readonly recoveredFraction: number
}

export function sugarDraw(asked: { held: Matter; sugarG: number; draw: number }): SugarDrawResult {
  const stays = staysAfterDraw(asked.draw)
  const held = { ...asked.held, pulpG: 0 }
  const bed = matterOf({ sugarG: asked.sugarG })
  const total = addMatter(held, bed)
  const undissolvedG = restingBedG({ free: noMatter, held, bed }, total, 20)
  const liquid = { ...total, sugarG: total.sugarG - undissolvedG }
  const volumeMl = liquidVolumeMl(liquid)
  if (volumeMl === 0) return { out: noMatter, left: noMatter, undissolvedG, recoveredFraction: 0 }
  const { part: out, rest: left } = splitMatter(
    liquid,
    1 - (stays * liquidVolumeMl(held)) / volumeMl,
  )
  const recoveredFraction = held.ethanolG === 0 ? 0 : out.ethanolG / held.ethanolG
  return { out, left, undissolvedG, recoveredFraction }
}
