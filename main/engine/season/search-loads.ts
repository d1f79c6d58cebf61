/**
 * A good plan found soon: loads are taken back and laid otherwise, thousands of times.
 *
 * Method: ruin and recreate (Schrimpf et al. 2000, Journal of Computational Physics 159, 139) under
 * simulated annealing. Loads of some weeks, of some kinds, or here and there are taken back, and the
 * sketch covers what is wanted again in an order that strays; a worse plan is kept now and then, less
 * and less often. The numbers it strays by always come in the same order, so that the same question
 * gets the same answer. It proves nothing; the integer program goes on from it.
 * In: a question, a plan to begin with. Out: a plan that fits, at the least sum found.
 * Leaves out: more than two jars to one load at once, and that goods in the pantry cost nothing.
 */
import { PlanSketch } from './plan-sketch.ts'
import type { Load, Loading, SeasonQuestion, Way } from './season-program.ts'
import { wholeWeight } from './weights.ts'

export interface Searching {
  /** A plan that fits. */
  readonly begun?: Loading | undefined
  /** Cover as good as any: one run for money and trouble, no more. */
  readonly near: number
  /** No less is sought. */
  readonly enough: number
  readonly isTimeUp: () => boolean
}

const runs = 3
/** For each pair of kinds. */
const roundsPerPair = 45
/** How much worse a plan may be kept at first, as a share of the whole weight. */
const warmthShare = 0.005
/** How far orders and choices stray. */
const orderStray = 1.5
const choiceStray = 0.3
const ruinedWeeks = { least: 2, most: 16 }
const ruinedKinds = { least: 1, most: 4 }
const ruinedShare = { least: 0.05, most: 0.35 }

export function searchLoads(question: SeasonQuestion, searching: Searching): Loading {
  const random = sequence(20_260_704)
  const first = new PlanSketch(question, searching.begun)
  first.cover()
  let best: Found = { sum: first.sum(), loading: first.loading }
  for (let run = 0; run < runs && (run === 0 || best.sum > searching.near); run += 1)
    best = cooled(question, best, searching, random)
  return best.loading
}

interface Found {
  readonly sum: number
  readonly loading: Loading
}

/** One run, from a plan on: warm at first, and cooling. */
function cooled(
  question: SeasonQuestion,
  begun: Found,
  { enough, isTimeUp }: Searching,
  random: Random,
): Found {
  const sketch = new PlanSketch(question, begun.loading)
  let { sum } = begun
  let best = begun
  const rounds = roundsPerPair * question.kinds.length ** 2
  const warmth = warmthShare * wholeWeight(question)
  for (let round = 0; round < rounds && best.sum > enough && !isTimeUp(); round += 1) {
    const ruined = ruin(sketch, random)
    for (const load of ruined) sketch.takeBack(load)
    const reach = random() < 0.5 ? 0 : choiceStray * random()
    const laid = sketch.cover({
      order: () => orderStray * random(),
      choice: () => reach * random(),
      start: (count) => Math.floor(count * random()),
    })
    const next = sketch.sum()
    const worse = warmth * (1 - round / rounds) ** 2 * -Math.log(1 - random())
    if (next < sum + worse) {
      sum = next
      if (next < best.sum) best = { sum: next, loading: sketch.loading }
    } else {
      for (const load of laid) sketch.takeBack(load)
      for (const load of ruined) sketch.lay(load)
    }
  }
  return best
}

type Random = () => number

function ruin(sketch: PlanSketch, random: Random): Load[] {
  const { question, loads } = sketch
  const between = ({ least, most }: { least: number; most: number }) =>
    least + (most - least) * random()
  const pick = random()
  if (pick < 0.4) {
    const ends = [...loads].map((load) => load.week + wayOf(question, load).settleToWeek)
    const from = random() * Math.max(0, ...ends)
    const to = from + between(ruinedWeeks)
    const share = 0.3 + 0.7 * random()
    return [...loads].filter((load) => {
      const isThere = load.week < to && load.week + wayOf(question, load).settleToWeek > from
      return isThere && random() < share
    })
  }
  if (pick < 0.8) {
    const short = question.kinds.flatMap(({ wantedL }, index) =>
      (sketch.madeL[index] as number) < wantedL - 0.01 ? [index] : [],
    )
    const oneOf = (count: number) => Math.floor(random() * count)
    const kinds = new Set(short.length > 0 ? [short[oneOf(short.length)]] : [])
    for (let more = between(ruinedKinds); more >= 1; more -= 1)
      kinds.add(oneOf(question.kinds.length))
    return [...loads].filter((load) => kinds.has(wayOf(question, load).kindIndex))
  }
  const share = between(ruinedShare)
  return [...loads].filter(() => random() < share)
}

const wayOf = ({ ways }: SeasonQuestion, { wayIndex }: Load): Way => ways[wayIndex] as Way

/** Numbers from 0 to 1 in an order that is always the same (linear congruence modulo 2^32). */
function sequence(seed: number): Random {
  let state = seed
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return state / 4_294_967_296
  }
}
