/** A batch's liquids over time, read off the ledger: of each jar, and of all of it together. */
import { addMatter, noMatter, type Matter } from '../../../shared/matter.ts'
import { msPerHour } from '../../../shared/spans-of-time.ts'
import type { CurveValues } from '../../../shared/schemas/steeping.ts'
import { densityOfSpirit } from '../alcoholometry/density-of-spirit.ts'
import {
  bodiesAt,
  matterInBottles,
  type BottleState,
  type JarState,
  type OpenedState,
} from './cellar-state.ts'
import type { Step } from './fold.ts'
import { describeLiquid } from './jar-liquid.ts'

export interface CurveSample extends CurveValues {
  readonly atMs: number
}

/** Millilitres that a gram of ethanol takes at 20 °C: OIML R 22 at mass fraction 1. */
const mlPerGEthanol = 1000 / densityOfSpirit({ massFraction: 1, temperatureC: 20 })

export const ethanolMl = (ethanolG: number): number => ethanolG * mlPerGEthanol

/** What a curve tells of free liquid and the ethanol that fruit holds; undefined with no liquid. */
export function curveValues(free: Matter, heldEthanolG: number): CurveValues | undefined {
  const liquid = describeLiquid(free)
  if (!liquid) return undefined
  const { strengthPctVol, sugarGPerL, acidGPerL, volumeMl } = liquid
  return {
    strengthPctVol,
    sugarGPerL,
    acidGPerL,
    volumeMl,
    ethanolInFruitMl: ethanolMl(heldEthanolG),
  }
}

/** Samples at the given instants, in order; `whole` is everything of the batch as if poured together. */
export function curveOf(
  steps: readonly Step[],
  batchId: string,
  times: readonly number[],
): Map<string, CurveSample[]> {
  const curves = new Map<string, CurveSample[]>([['whole', []]])
  const jars = new Map<string, JarState>()
  const bottles = new Map<string, BottleState>()
  const opened = new Map<string, OpenedState>()
  const add = (key: string, atMs: number, free: Matter, heldEthanolG: number) => {
    const values = curveValues(free, heldEthanolG)
    if (!values) return
    const curve = curves.get(key)
    if (curve) curve.push({ atMs, ...values })
    else curves.set(key, [{ atMs, ...values }])
  }
  let bottled = noMatter
  let next = 0
  for (const atMs of times) {
    let changed = false
    for (; next < steps.length && (steps[next] as Step).atMs <= atMs; next += 1) {
      const { effect } = steps[next] as Step
      for (const [jarId, jar] of effect.jars ?? []) {
        if (jar?.batchId === batchId) jars.set(jarId, jar)
        else jars.delete(jarId)
      }
      for (const [id, lot] of effect.bottles ?? [])
        if (lot.batchId === batchId) bottles.set(id, lot)
      for (const [id, one] of effect.opened ?? []) if (one.batchId === batchId) opened.set(id, one)
      changed ||= effect.bottles !== undefined || effect.opened !== undefined
    }
    if (changed) {
      bottled = noMatter
      for (const lot of bottles.values()) bottled = addMatter(bottled, matterInBottles(lot))
      for (const { matter } of opened.values()) bottled = addMatter(bottled, matter)
    }
    let whole = bottled
    let heldEthanolG = 0
    for (const [jarId, jar] of jars) {
      const { free, held } = bodiesAt(jar, atMs)
      add(jarId, atMs, free, held.ethanolG)
      whole = addMatter(whole, free)
      heldEthanolG += held.ethanolG
    }
    add('whole', atMs, whole, heldEthanolG)
  }
  return curves
}

/** Looking into a jar starts nothing, and a bottle is the same on any shelf. */
const changesLiquid = ({ recorded }: Step): boolean =>
  !['read', 'taste', 'shelve', 'remark'].includes(recorded.move.kind)

/**
 * Instants to look at: a millisecond before each move that changed something and at it, then ever
 * wider apart after it, because a jar changes fastest right after a move; and an even grid over the
 * whole. `wider` is how many times as far from the move each is as the one before.
 */
export function sampleTimes(
  steps: readonly Step[],
  untilMs: number,
  points: number,
  wider = 2,
): number[] {
  const first = steps[0]?.atMs
  if (first === undefined) return []
  const moveTimes = [...new Set(steps.filter(changesLiquid).map((step) => step.atMs))]
  const last = Math.max(untilMs, steps.at(-1)?.atMs ?? first)
  const times = new Set<number>([first, last])
  for (let i = 1; i < points - 1; i += 1)
    times.add(Math.round(first + ((last - first) * i) / (points - 1)))
  for (const [index, atMs] of moveTimes.entries()) {
    times.add(atMs)
    if (atMs > first) times.add(atMs - 1)
    const until = moveTimes[index + 1] ?? last
    for (let hours = 2; hours <= 24 * 32; hours *= wider) {
      const then = atMs + hours * msPerHour
      if (then < until) times.add(then)
    }
  }
  return [...times].sort((a, b) => a - b)
}
