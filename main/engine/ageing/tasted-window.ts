/**
 * What do the maker's own tastings say about when a lot is ready, and when it fades?
 *
 * Method: Bayes on a grid. Ready and fading are log-normal ages by two clocks, ready before fading;
 * a verdict at age t is the likelier the more clearly t lies on its side: young before ready, ready
 * between, fading after, each as a normal step of a tenth of the age. A maker in doubt gives no
 * verdict, so that one given means a step's width beyond the border. Both ages meet only in their
 * order, so that each needs one pass over the grid. In and out: days, instants in ms.
 * Leaves out: that two glasses of one evening are not two opinions.
 */
import type { Verdict } from '../../../shared/schemas/moves.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { MsBand, TastedVerdict } from './ageing-lot.ts'
import { lnNormalCdf } from './normal-distribution.ts'
import type { Clock } from './storage.ts'
import type { LogNormal } from './usual-window.ts'

/** When something comes, by its own clock. */
export interface Coming {
  readonly age: LogNormal
  readonly clock: Clock
}

const nodes = 201
/** How far the grid goes: standard deviations, and beyond the ages at which it was tasted. */
const outSigmas = 5
const beyondTasted = 1
/** Of the logarithm of age. */
const stepWidth = 0.1
/** Before it has stood for a day, a lot has no age of its own. */
const leastAgeDays = 1
const bandShares = [0.05, 0.5, 0.95]

/** Instants that rise, and the logarithm of how likely it comes at each, up to a common factor. */
interface Grid {
  readonly atMs: Float64Array
  readonly ln: Float64Array
}

/** Whether it comes after the tasting or before it, as a verdict says; undefined where it does not. */
type SideOf = Record<Verdict, 'after' | 'before' | undefined>
const readySide: SideOf = { young: 'after', ready: 'before', fading: undefined }
const fadingSide: SideOf = { young: undefined, ready: 'after', fading: 'before' }

export function tastedWindow(
  ready: Coming,
  fading: Coming,
  verdicts: readonly TastedVerdict[],
): { readyAtMs: MsBand; fadingAtMs: MsBand } {
  const span = spanOf([ready, fading], verdicts)
  const readyGrid = gridOf(ready, span, verdicts, readySide)
  const fadingGrid = gridOf(fading, span, verdicts, fadingSide)
  const readyAtMs = bandOf(readyGrid, lnShares(fadingGrid, 'after'), fadingGrid.atMs)
  const fadingAtMs = bandOf(fadingGrid, lnShares(readyGrid, 'before'), readyGrid.atMs)
  return { readyAtMs, fadingAtMs: after(readyAtMs, fadingAtMs) }
}

/** The grid's rounding must not turn their order where verdicts leave hardly any time between. */
const after = (first: MsBand, then: MsBand): MsBand => ({
  early: Math.max(then.early, first.early + msPerDay),
  likely: Math.max(then.likely, first.likely + msPerDay),
  late: Math.max(then.late, first.late + msPerDay),
})

const lnAge = (clock: Clock, atMs: number) => Math.log(Math.max(leastAgeDays, clock.ageDays(atMs)))

/** All that either may come to, in ms, so that both grids have the same ends. */
function spanOf(comings: readonly Coming[], verdicts: readonly TastedVerdict[]) {
  const ends = comings.map(({ age, clock }) => {
    const tasted = verdicts.map(({ atMs }) => lnAge(clock, atMs))
    const low = Math.min(age.ln - outSigmas * age.sigma, ...tasted.map((ln) => ln - beyondTasted))
    const high = Math.max(age.ln + outSigmas * age.sigma, ...tasted.map((ln) => ln + beyondTasted))
    return [clock.atAgeMs(Math.exp(low)), clock.atAgeMs(Math.exp(high))] as const
  })
  return {
    lowMs: Math.min(...ends.map(([low]) => low)),
    highMs: Math.max(...ends.map(([, high]) => high)),
  }
}

function gridOf(
  { age, clock }: Coming,
  { lowMs, highMs }: ReturnType<typeof spanOf>,
  verdicts: readonly TastedVerdict[],
  sideOf: SideOf,
): Grid {
  const told = verdicts.flatMap(({ atMs, verdict }) => {
    const side = sideOf[verdict]
    return side ? [{ sign: side === 'after' ? 1 : -1, ln: lnAge(clock, atMs) }] : []
  })
  const [low, high] = [Math.log(clock.ageDays(lowMs)), Math.log(clock.ageDays(highMs))]
  const ln = new Float64Array(nodes)
  const atMs = new Float64Array(nodes)
  for (let i = 0; i < nodes; i++) {
    const at = low + ((high - low) * i) / (nodes - 1)
    let sum = -0.5 * ((at - age.ln) / age.sigma) ** 2
    for (const verdict of told)
      sum += lnNormalCdf((verdict.sign * (at - verdict.ln)) / stepWidth - 1)
    ln[i] = sum
    atMs[i] = clock.atAgeMs(Math.exp(at))
  }
  return { atMs, ln }
}

/** At each node: the logarithm of all that comes before it, or after it, and of half its own. */
function lnShares({ ln }: Grid, side: 'before' | 'after'): Float64Array {
  const found = new Float64Array(nodes)
  let beyond = -Infinity
  for (let step = 0; step < nodes; step++) {
    const i = side === 'before' ? step : nodes - 1 - step
    const own = ln[i] as number
    found[i] = lnSum(beyond, own - Math.LN2)
    beyond = lnSum(beyond, own)
  }
  return found
}

/** Differences of logarithms beyond this are lost in rounding. */
const nothingBeside = 37

/** ln(e^a + e^b), for any a and b. */
function lnSum(a: number, b: number): number {
  const apart = a - b
  if (apart > nothingBeside) return a
  if (apart < -nothingBeside) return b
  return apart > 0 ? a + Math.log1p(Math.exp(-apart)) : b + Math.log1p(Math.exp(apart))
}

/** The band of what a grid says, each node weighed by what the other grid leaves to it. */
function bandOf({ atMs, ln }: Grid, lnWeights: Float64Array, weightsAtMs: Float64Array): MsBand {
  const weighed = read(weightsAtMs, lnWeights, atMs)
  let greatest = -Infinity
  for (let i = 0; i < nodes; i++) {
    weighed[i] = (weighed[i] as number) + (ln[i] as number)
    greatest = Math.max(greatest, weighed[i] as number)
  }
  const upTo = new Float64Array(nodes)
  let all = 0
  for (let i = 0; i < nodes; i++) {
    const mass = Math.exp((weighed[i] as number) - greatest)
    upTo[i] = all + mass / 2
    all += mass
  }
  const [early, likely, late] = read(
    upTo,
    atMs,
    bandShares.map((share) => share * all),
  )
  return { early: early as number, likely: likely as number, late: late as number }
}

/** The values at `at` of the broken line through the points; all rise. Flat beyond the ends. */
function read(xs: Float64Array, ys: Float64Array, at: ArrayLike<number>): Float64Array {
  const found = new Float64Array(at.length)
  let next = 1
  for (let i = 0; i < at.length; i++) {
    const x = at[i] as number
    while (next < xs.length - 1 && (xs[next] as number) < x) next += 1
    const [x0, x1] = [xs[next - 1] as number, xs[next] as number]
    const [y0, y1] = [ys[next - 1] as number, ys[next] as number]
    const share = x1 > x0 ? Math.min(1, Math.max(0, (x - x0) / (x1 - x0))) : 1
    found[i] = y0 + share * (y1 - y0)
  }
  return found
}
