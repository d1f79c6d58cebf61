/**
 * Is a lot still young, ready, or fading, and when does that change?
 *
 * Method: the usual window of its fruits (usual-window.ts), moved by strength, sugar and acid
 * (composition-effects.ts), told by clocks that run by Arrhenius on the warmth of its stays, the
 * fading one also by light (storage.ts), and bent by the maker's own verdicts (tasted-window.ts).
 * In: an AgeingLot, ms, °C, % vol and g/L. Out: phase, bands of 90 % in ms, and why it differs.
 * Leaves out: rest in the jar, swings of temperature, and what the cork does.
 * @example ageingWindow({ fruits: [], strengthPctVol: 30, sugarGPerL: 200, acidGPerL: 8, bottledAtMs: 0, stays: [], verdicts: [], nowMs: 0 }).phase // "young"
 */
import type { Verdict } from '../../../shared/schemas/moves.ts'
import type { AgeingLot, AgeingWindowFound } from './ageing-lot.ts'
import { effectsOf, type LnFactors } from './composition-effects.ts'
import { clockOf, fasterInLight, fasterThanUsual, type Clock } from './storage.ts'
import { tastedWindow, type Coming } from './tasted-window.ts'
import { usualWindow } from './usual-window.ts'

type Reason = AgeingWindowFound['because'][number]
type Window = Pick<AgeingWindowFound, 'readyAtMs' | 'fadingAtMs'>

/** Factors nearer to one than this are not worth a word. */
const leastFactor = 1.05

export function ageingWindow(lot: AgeingLot): AgeingWindowFound {
  const warmth = clockOf(lot.bottledAtMs, lot.stays, fasterThanUsual)
  const warmthAndLight = clockOf(
    lot.bottledAtMs,
    lot.stays,
    (stay) => fasterThanUsual(stay) * fasterInLight[stay.light].typical,
  )
  const usual = usualWindow(lot)
  const effects = effectsOf(lot)
  const moved = (of: (factors: LnFactors) => number) =>
    Object.values(effects).reduce((sum, factors) => sum + of(factors), 0)
  const ready: Coming = {
    age: { ...usual.ready, ln: usual.ready.ln + moved(({ lnReady }) => lnReady) },
    clock: warmth,
  }
  const fading: Coming = {
    age: { ...usual.fading, ln: usual.fading.ln + moved(({ lnFading }) => lnFading) },
    clock: warmthAndLight,
  }
  // Sums are the same to the bit only in the same order.
  const verdicts = lot.verdicts.toSorted(
    (a, b) => a.atMs - b.atMs || (a.verdict < b.verdict ? -1 : 1),
  )
  const window = tastedWindow(ready, fading, verdicts)
  const reasons = (): Reason[] => {
    const sized = [
      ...Object.entries(effects).map(([name, { lnReady, lnFading }]) =>
        reason(name as keyof typeof effects, Math.max(Math.abs(lnReady), Math.abs(lnFading))),
      ),
      ...storageReasons(lot.bottledAtMs, window.fadingAtMs.likely, warmth, warmthAndLight),
      ...verdictReasons({ ...lot, verdicts }, window, ready, fading),
    ].filter(({ size }) => size > Math.log(leastFactor))
    const because = sized.toSorted((a, b) => b.size - a.size).map(({ name }) => name)
    const hasHistory = lot.verdicts.length > 0 || lot.stays.length > 0
    return hasHistory ? because : [...because, 'noHistory']
  }
  let told: Reason[] | undefined
  return {
    phase: phaseOf(window, lot.nowMs),
    ...window,
    // Most of the work, and asked only where the lot is looked at.
    get because() {
      told ??= reasons()
      return told
    },
  }
}

function phaseOf({ readyAtMs, fadingAtMs }: Window, nowMs: number): Verdict {
  if (nowMs < readyAtMs.likely) return 'young'
  return nowMs < fadingAtMs.likely ? 'ready' : 'fading'
}

/** Why a window differs, and by how much: the logarithm of the factor on time. */
interface SizedReason {
  readonly name: Reason
  readonly size: number
}
const reason = (name: Reason, size: number): SizedReason => ({ name, size })

/** What warmth and light did and will do until it fades. */
function storageReasons(bottledAtMs: number, untilMs: number, warmth: Clock, all: Clock) {
  const usual = clockOf(bottledAtMs, [], () => 1).ageDays(untilMs)
  const faster = Math.log(warmth.ageDays(untilMs) / usual)
  return [
    reason(faster > 0 ? 'warm' : 'cool', Math.abs(faster)),
    reason('light', Math.log(all.ageDays(untilMs) / warmth.ageDays(untilMs))),
  ]
}

const reasonOf: Record<Verdict, Reason> = {
  young: 'tastedYoung',
  ready: 'tastedReady',
  fading: 'tastedFading',
}

/** How far the verdicts of each kind alone would move it. */
function verdictReasons(
  lot: AgeingLot,
  window: Window,
  ready: Coming,
  fading: Coming,
): SizedReason[] {
  if (lot.verdicts.length === 0) return []
  const untasted = tastedWindow(ready, fading, [])
  const toldBy = (own: AgeingLot['verdicts']) => {
    if (own.length === 0) return untasted
    return own.length === lot.verdicts.length ? window : tastedWindow(ready, fading, own)
  }
  const age = (ms: number) => Math.max(1, ms - lot.bottledAtMs)
  const apart = (a: number, b: number) => Math.abs(Math.log(age(a) / age(b)))
  return (['young', 'ready', 'fading'] as const).map((kind) => {
    const own = lot.verdicts.filter(({ verdict }) => verdict === kind)
    const told = toldBy(own)
    return reason(
      reasonOf[kind],
      Math.max(
        apart(told.readyAtMs.likely, untasted.readyAtMs.likely),
        apart(told.fadingAtMs.likely, untasted.fadingAtMs.likely),
      ),
    )
  })
}
