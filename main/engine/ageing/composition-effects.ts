/**
 * What strength, sugar and acid do to the window of a lot: logarithms of the factors on the time
 * until it is ready, and until it fades. Common practice, no source: weak liqueurs fade early,
 * strong and sweet ones keep, heat and sourness take time to round off. Where each begins is the
 * typical finished liqueur of the craft reference (20 to 45 % vol, 200 g/L sugar).
 */
export type Effect = 'weak' | 'strong' | 'sweet' | 'tart'

interface EffectRule {
  /** Where it begins, and where it is as large as it gets. */
  readonly from: number
  readonly to: number
  /** Factors at `to`. */
  readonly ready: number
  readonly fading: number
}

export const effectRules: Record<Effect, EffectRule> = {
  weak: { from: 20, to: 10, ready: 1, fading: 0.4 },
  strong: { from: 35, to: 60, ready: 1.4, fading: 1.6 },
  sweet: { from: 220, to: 500, ready: 1, fading: 1.4 },
  tart: { from: 10, to: 25, ready: 1.4, fading: 1.15 },
}

export interface LnFactors {
  readonly lnReady: number
  readonly lnFading: number
}

/** Of one effect at a strength in % vol, a sugar or an acid in g/L. */
export function effectOf(effect: Effect, value: number): LnFactors {
  const { from, to, ready, fading } = effectRules[effect]
  const share = Math.min(1, Math.max(0, (value - from) / (to - from)))
  return { lnReady: share * Math.log(ready), lnFading: share * Math.log(fading) }
}

export const effectsOf = ({
  strengthPctVol,
  sugarGPerL,
  acidGPerL,
}: {
  readonly strengthPctVol: number
  readonly sugarGPerL: number
  readonly acidGPerL: number
}): Record<Effect, LnFactors> => ({
  weak: effectOf('weak', strengthPctVol),
  strong: effectOf('strong', strengthPctVol),
  sweet: effectOf('sweet', sugarGPerL),
  tart: effectOf('tart', acidGPerL),
})
