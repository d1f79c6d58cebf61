/** A question put together piece by piece: what is left as it is does not stand in it. */
import type { BatchCurve, WhatIf } from '../../../../shared/schemas/steeping.ts'

export type Part = { [Key in keyof WhatIf]?: WhatIf[Key] | undefined }

/** Pieces that are undefined go; with nothing asked any more there is no question. */
export function withChange(
  asked: WhatIf | undefined,
  since: WhatIf['since'],
  part: Part,
): WhatIf | undefined {
  const said = Object.entries({ ...asked, ...part, since }).filter(
    ([, value]) => value !== undefined,
  )
  return said.length > 1 ? (Object.fromEntries(said) as WhatIf) : undefined
}

/** From now on nothing can be drawn off before now. */
export const withoutPast = (asked: WhatIf | undefined, now: string): Part =>
  asked?.drawOffAt !== undefined && asked.drawOffAt < now ? { drawOffAt: undefined } : {}

export interface DrawOffRange {
  readonly fromMs: number
  readonly toMs: number
}

/**
 * When it could be drawn off: from the first spirit, or from now, until the curve ends; of liquid
 * that is off the fruit already, until it was.
 */
export function drawOffRange(
  curve: BatchCurve,
  since: WhatIf['since'],
  drawnOffAt: string | undefined,
): DrawOffRange {
  const points = curve.series.find(({ key }) => key === 'whole')?.points ?? []
  const spirit = points.find(({ strengthPctVol }) => strengthPctVol > 0)?.at ?? curve.now
  const first = Date.parse(since === 'now' ? curve.now : spirit)
  const last = Date.parse(drawnOffAt ?? points.at(-1)?.at ?? curve.now)
  return { fromMs: first, toMs: Math.max(first, last) }
}
