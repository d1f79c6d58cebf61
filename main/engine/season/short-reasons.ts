/**
 * Why is a kind short, as far as the plan itself shows it?
 *
 * Method: what a further load would need is held against what the plan leaves free, in each week
 * that the fruit may start: two jars, as much to put in them as fills them far enough, and money,
 * places and spirit for that much. What is not there is a reason.
 * In: the question, the plan. Out: limits by kind; none where nothing is short.
 * Leaves out: what another plan could do; the limits eased ask for that.
 */
import type { SeasonLimit } from '../../../shared/schemas/season.ts'
import { PlanSketch } from './plan-sketch.ts'
import { leastL, type Loading, type SeasonQuestion, type Way } from './season-program.ts'

/** Less is rounding. */
const leastKg = 1e-3

export function shortReasons(question: SeasonQuestion, loading: Loading): SeasonLimit[][] {
  const sketch = new PlanSketch(question, loading)
  return question.kinds.map(({ wantedL }, kindIndex) => {
    const shortL = wantedL - (sketch.madeL[kindIndex] as number)
    if (shortL <= leastKg) return []
    const own = question.ways.flatMap((way, index) => (way.kindIndex === kindIndex ? [index] : []))
    if (own.length === 0) return ['recipe']
    // By the way that lacks least.
    const lacking = own
      .map((wayIndex) => lackingFor(sketch, wayIndex))
      .filter((limits) => limits !== undefined)
      .sort((a, b) => a.length - b.length)
    return lacking[0] ?? ['fruitWeeks']
  })
}

/** What a further load would lack; undefined where there is no fruit for it. */
function lackingFor(sketch: PlanSketch, wayIndex: number): SeasonLimit[] | undefined {
  const { ways, classes } = sketch.question
  const way = ways[wayIndex] as Way
  if (way.starts.length === 0) return undefined
  const wantedKg = sketch.leftL(way.kindIndex) / way.lPerKg
  const smallestKg = leastL(way, classes) / way.lPerKg
  const freeKg = Math.min(Infinity, ...way.starts.map(({ week }) => sketch.leastKg(wayIndex, week)))
  const hasRoom = roomInLoads(sketch, wayIndex) > leastKg
  const isFree = hasRoom || freeKg <= wantedKg
  const nextKg = hasRoom ? leastKg : isFree ? freeKg : smallestKg
  const allowed = sketch.room.allowedKg(wayIndex)
  if (allowed.pantry < nextKg) return undefined
  // Infinite where there are no two jars at all.
  if (!isFree && wantedKg < smallestKg && smallestKg < Infinity) return ['tooLittle']
  return [
    ...(isFree ? [] : (['jars'] as const)),
    ...(['money', 'shelf', 'spirit'] as const).filter((limit) => allowed[limit] < nextKg),
  ]
}

/** Fruit that the jars in use of a way could still take. */
const roomInLoads = (sketch: PlanSketch, wayIndex: number): number =>
  [...sketch.loads]
    .filter((load) => load.wayIndex === wayIndex)
    .reduce((sum, load) => sum + sketch.roomKg(load), 0)
