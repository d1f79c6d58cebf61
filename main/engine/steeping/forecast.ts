/**
 * Where is a jar going, and is it worth waiting for?
 *
 * Method: the jar's own clock run on (steep), at the best unknowns and along the axes of what is
 * not known of them (banded-curve.ts). Settled is within 0.5 % vol of the resting strength; drawn
 * out is 95 % of the acid and other solubles that the free liquid ever gets.
 * In: the ensemble of one batch, now. Out: one forecast for each jar with fruit under spirit.
 * Leaves out: moves that the maker has yet to make, and arrivals later than five years.
 */
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { Banded } from '../../../shared/schemas/steeping.ts'
import { liquidVolumeMl } from '../solution/liquid-volume.ts'
import { settledJar, type JarState } from '../ledger/cellar-state.ts'
import { ethanolMl } from '../ledger/batch-curve.ts'
import type { Step } from '../ledger/fold.ts'
import { describeLiquid } from '../ledger/jar-liquid.ts'
import { bandOf, type Ensemble } from './banded-curve.ts'
import { sugarDraw } from './sugar-draw.ts'

export interface Arrival {
  readonly earlyMs?: number
  readonly typicalMs?: number
  readonly lateMs?: number
}

export interface LiquidForecast {
  readonly strengthPctVol: Banded
  readonly sugarGPerL: Banded
  readonly volumeMl: Banded
}

export interface SugarDrawForecast {
  readonly sugarG: number
  readonly draw: number
  readonly heldMl: number
  readonly heldEthanolMl: number
  readonly outMl: number
  readonly outStrengthPctVol: number
  readonly recoveredEthanolMl: number
}

export interface JarForecastFound {
  readonly jarId: string
  readonly now: LiquidForecast
  readonly resting: LiquidForecast
  readonly settled: Arrival
  readonly isSettled: boolean
  readonly weekChange: { readonly strengthPctVol: number; readonly sugarGPerL: number }
  readonly extractFraction: Banded
  readonly colourFraction: number
  readonly extracted: Arrival
  readonly sugarDraw: SugarDrawForecast | undefined
}

const settledWithinPctVol = 0.5
const drawnOutFraction = 0.95
const horizonMs = 5 * 365 * msPerDay
/** After so long every jar is at rest. */
export const restAfterMs = 100 * horizonMs
/** Sugar that covers a kilogram of spent fruit; craft reference, section 2.4, common practice. */
const sugarPerFruit = 0.25
/** More draws than this bring next to nothing; craft reference, section 6, common practice. */
const usualDraws = 3

/** The jars of a batch after the last of its steps. */
export function jarsAfter(steps: readonly Step[], batchId: string): Map<string, JarState> {
  const jars = new Map<string, JarState>()
  for (const { effect } of steps)
    for (const [id, jar] of effect.jars ?? []) {
      if (jar?.batchId === batchId) jars.set(id, jar)
      else jars.delete(id)
    }
  return jars
}

export const isSteeping = (jar: JarState): boolean =>
  jar.fruit?.cells === 'dead' && jar.bodies.free.ethanolG + jar.bodies.held.ethanolG > 0

export function forecastJars(
  ensemble: Ensemble,
  batchId: string,
  nowMs: number,
): JarForecastFound[] {
  const outer = ensemble.outer.map(
    ([a, b]) => [jarsAfter(a, batchId), jarsAfter(b, batchId)] as const,
  )
  return [...jarsAfter(ensemble.middle, batchId)].flatMap(([jarId, jar]) => {
    if (!isSteeping(jar)) return []
    const pairs = outer.flatMap(([a, b]) => {
      const [one, other] = [a.get(jarId), b.get(jarId)]
      return one && other ? [[one, other] as const] : []
    })
    const found = forecastJar(jarId, jar, pairs, Math.max(nowMs, jar.atMs))
    return found ? [found] : []
  })
}

type Outer = readonly (readonly [JarState, JarState])[]

function forecastJar(
  jarId: string,
  jar: JarState,
  outer: Outer,
  nowMs: number,
): JarForecastFound | undefined {
  const now = liquidBand(jar, outer, liquidAt(nowMs))
  const restMs = nowMs + restAfterMs
  const resting = liquidBand(jar, outer, liquidAt(restMs))
  const week = liquidAt(nowMs + 7 * msPerDay)(jar)
  if (!now || !resting || !week) return undefined
  const settled = arrivalBand(jar, outer, (state) => settledMs(state, nowMs, restMs))
  return {
    jarId,
    now,
    resting,
    settled,
    isSettled: settled.typicalMs === nowMs,
    weekChange: {
      strengthPctVol: week.strengthPctVol - now.strengthPctVol.value,
      sugarGPerL: week.sugarGPerL - now.sugarGPerL.value,
    },
    extractFraction: band(jar, outer, (state) => extractOut(state, nowMs, restMs)),
    colourFraction: settledJar(jar, nowMs).colourFraction,
    extracted: arrivalBand(jar, outer, (state) =>
      firstMs(nowMs, (ms) => extractOut(state, ms, restMs) >= drawnOutFraction),
    ),
    sugarDraw: sugarDrawOf(settledJar(jar, nowMs)),
  }
}

const liquidAt = (ms: number) => (jar: JarState) => describeLiquid(settledJar(jar, ms).bodies.free)

function band(jar: JarState, outer: Outer, of: (state: JarState) => number): Banded {
  const value = of(jar)
  return {
    value,
    ...bandOf(
      value,
      outer.map(([a, b]) => [of(a), of(b)] as const),
    ),
  }
}

function liquidBand(
  jar: JarState,
  outer: Outer,
  describe: (state: JarState) => ReturnType<typeof describeLiquid>,
): LiquidForecast | undefined {
  if (!describe(jar)) return undefined
  const of = (quantity: 'strengthPctVol' | 'sugarGPerL' | 'volumeMl') =>
    band(jar, outer, (state) => describe(state)?.[quantity] ?? 0)
  return {
    strengthPctVol: of('strengthPctVol'),
    sugarGPerL: of('sugarGPerL'),
    volumeMl: of('volumeMl'),
  }
}

/** Share of the acid and other solubles that the free liquid ever gets. */
export function extractOut(jar: JarState, atMs: number, restMs: number): number {
  const extractG = (ms: number) => {
    const { acidG, solublesG } = settledJar(jar, ms).bodies.free
    return acidG + solublesG
  }
  const restG = extractG(restMs)
  return restG <= 0 ? 1 : extractG(atMs) / restG
}

function settledMs(jar: JarState, nowMs: number, restMs: number): number | undefined {
  const strength = (ms: number) =>
    describeLiquid(settledJar(jar, ms).bodies.free)?.strengthPctVol ?? 0
  const rest = strength(restMs)
  return firstMs(nowMs, (ms) => Math.abs(strength(ms) - rest) <= settledWithinPctVol)
}

/** The first instant, to the hour, from which on it holds; undefined beyond the horizon. */
function firstMs(nowMs: number, holds: (ms: number) => boolean): number | undefined {
  if (holds(nowMs)) return nowMs
  let before = 0
  let after = msPerDay
  while (!holds(nowMs + after)) {
    if (after >= horizonMs) return undefined
    before = after
    after *= 1.5
  }
  while (after - before > msPerDay / 24) {
    const middle = (before + after) / 2
    if (holds(nowMs + middle)) after = middle
    else before = middle
  }
  return nowMs + Math.round(after)
}

function arrivalBand(
  jar: JarState,
  outer: Outer,
  arrivalMs: (state: JarState) => number | undefined,
): Arrival {
  const typicalMs = arrivalMs(jar)
  const others = outer.flatMap(([a, b]) => [arrivalMs(a), arrivalMs(b)])
  const known = [typicalMs, ...others].filter((ms) => ms !== undefined)
  const isOpen = known.length < others.length + 1
  return {
    ...(known.length > 0 && { earlyMs: Math.min(...known) }),
    ...(typicalMs !== undefined && { typicalMs }),
    ...(!isOpen && { lateMs: Math.max(...known) }),
  }
}

/** What would come out if the jar were drained now and its fruit covered with sugar. */
function sugarDrawOf({ fruit, bodies }: JarState): SugarDrawForecast | undefined {
  if (!fruit || fruit.isUnderSugar || fruit.sugarDraws >= usualDraws) return undefined
  const heldMl = liquidVolumeMl(bodies.held)
  if (heldMl < 1) return undefined
  const sugarG = sugarPerFruit * fruit.edibleG
  const draw = fruit.sugarDraws + 1
  const { out } = sugarDraw({ held: bodies.held, sugarG, draw })
  const liquid = describeLiquid(out)
  if (!liquid) return undefined
  return {
    sugarG,
    draw,
    heldMl,
    heldEthanolMl: ethanolMl(bodies.held.ethanolG),
    outMl: liquid.volumeMl,
    outStrengthPctVol: liquid.strengthPctVol,
    recoveredEthanolMl: ethanolMl(out.ethanolG),
  }
}
