/**
 * A good plan to begin with, found in a moment: one load after another, the most urgent kind first.
 *
 * Method: each kind in turn takes, until it is covered, the load of one steeping and one settling
 * jar that spends the fewest litre-weeks of jar on a litre. That is tried many times with orders
 * and choices shuffled by a fixed sequence, so that the same question gets the same answer, and the
 * best by the plan's own weights is kept. It proves nothing; the integer program goes on from it.
 * Leaves out: several loads that settle in one jar, and goods in the pantry, which only help.
 */
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import {
  leastFillFraction,
  leastL,
  mostL,
  type Load,
  type Loading,
  type MustSettle,
  type SeasonQuestion,
  type Settled,
} from './season-program.ts'
import { JarRoom, type OneLoad } from './jar-room.ts'
import { weightOfTier, weights } from './weights.ts'

const orders = 200
/** A rest of less than that is covered; a load that leaves one for no jar counts as so much dearer. */
const leastRestL = 0.01
const strandedPenalty = 2
/** How far a shuffled order strays from that of urgency: a factor of up to e. */
const straying = 1

export function greedyLoading(question: SeasonQuestion): Loading {
  const random = sequence(20_260_704)
  let best: Tried | undefined
  for (let index = 0; index < orders; index += 1) {
    const order = question.kinds.map(() => (index === 0 ? 0 : straying * random()))
    // Every other time the choices stray as well: mostly the thriftiest is best, not always.
    const stray = index % 2 === 0 ? () => 0 : () => straying * random()
    const tried = tryOrder(question, order, stray)
    if (!best || tried.sum < best.sum) best = tried
  }
  return best ?? { loads: [], settled: [] }
}

interface Tried extends Loading {
  readonly sum: number
}

function tryOrder(question: SeasonQuestion, noise: readonly number[], stray: () => number): Tried {
  const { kinds, ways } = question
  const room = new JarRoom(question)
  const settled = question.mustSettle.map((must) => settle(room, must))
  const left = kinds.map((_, index) => mostL(question, index))
  const kgLeft = ways.map(({ mostKg }) => mostKg)
  const loads: Load[] = []
  let trouble = 0
  const turns = kinds
    .flatMap((kind, kindIndex) =>
      kind.tiers.map((tier, tierIndex) => ({
        kindIndex,
        untilL: kind.tiers.slice(0, tierIndex + 1).reduce((sum, t) => sum + t.volumeMl / 1000, 0),
        rank: Math.log(weightOfTier(tier)) + (noise[kindIndex] ?? 0),
      })),
    )
    .sort((a, b) => b.rank - a.rank)
  for (const { kindIndex, untilL } of turns) {
    const most = mostL(question, kindIndex)
    while (most - (left[kindIndex] as number) < untilL - 1e-9) {
      const choice = bestChoice(question, room, kindIndex, left[kindIndex] as number, kgLeft, stray)
      if (!choice) break
      room.take(choice)
      left[kindIndex] = (left[kindIndex] as number) - choice.litres
      kgLeft[choice.wayIndex] = (kgLeft[choice.wayIndex] as number) - choice.kg
      trouble += weights.steepLoad + weights.settleLoad + choice.weeksOff * weights.weekOffPlenty
      loads.push(loadOf(choice, question.classes.length))
    }
  }
  const short = kinds.reduce((sum, kind, index) => {
    let madeL = mostL(question, index) - (left[index] as number)
    return kind.tiers.reduce((all, tier) => {
      const tierL = tier.volumeMl / 1000
      const missing = Math.max(0, tierL - madeL)
      madeL = Math.max(0, madeL - tierL)
      return all + weightOfTier(tier) * missing
    }, sum)
  }, 0)
  return { loads, settled, sum: short + trouble }
}

/** The smallest free jar that holds it all; failing that, the largest free ones until it is in. */
function settle(room: JarRoom, { fromWeek, toWeek, volumeMl }: MustSettle): Settled {
  const { classes, cleaningWeeks } = room.question
  const span = [fromWeek, toWeek + cleaningWeeks] as const
  const jars = classes.map(() => 0)
  const safeMl = (index: number) => safeFillFraction * (classes[index]?.capacityMl ?? 0)
  let leftMl = volumeMl
  while (leftMl > 0) {
    const free = room.free.flatMap((_, index) => (room.least(index, span) > 0 ? [index] : []))
    const chosen = free.find((index) => safeMl(index) >= leftMl) ?? free.at(-1)
    if (chosen === undefined) break
    room.occupy(chosen, span)
    jars[chosen] = (jars[chosen] ?? 0) + 1
    leftMl -= safeMl(chosen)
  }
  return { jars, homelessMl: Math.max(0, leftMl) }
}

interface Choice extends OneLoad {
  readonly wayIndex: number
  readonly weeksOff: number
}

const loadOf = ({ wayIndex, week, kg, steepClass, settleClass }: Choice, count: number): Load => {
  const one = (at: number) => Array.from({ length: count }, (_, index) => (index === at ? 1 : 0))
  return { wayIndex, week, kg, steep: one(steepClass), settle: one(settleClass) }
}

function bestChoice(
  question: SeasonQuestion,
  room: JarRoom,
  kindIndex: number,
  leftL: number,
  kgLeft: readonly number[],
  stray: () => number,
): Choice | undefined {
  let best: Choice | undefined
  let bestScore = Infinity
  question.ways.forEach((way, wayIndex) => {
    if (way.kindIndex !== kindIndex) return
    const smallestL = leastL(way, question.classes)
    const wantedKg = Math.min(leftL / way.lPerKg, kgLeft[wayIndex] ?? 0, room.kgAffordable(way))
    for (const { week, weeksFromPlenty } of way.starts) {
      const freeToSettle = room.freeFor(way, week, 'settle')
      for (const steepClass of room.freeFor(way, week, 'steep'))
        for (const settleClass of freeToSettle) {
          if (steepClass === settleClass && !room.hasTwo(way, week, steepClass)) continue
          const steepMl = question.classes[steepClass]?.capacityMl ?? 0
          const settleMl = question.classes[settleClass]?.capacityMl ?? 0
          const mostKg = Math.min(
            wantedKg,
            (safeFillFraction * steepMl) / way.steepMlPerKg,
            (safeFillFraction * settleMl) / way.settleMlPerKg,
          )
          const leastKg =
            leastFillFraction * Math.max(steepMl / way.steepMlPerKg, settleMl / way.settleMlPerKg)
          if (leastKg > mostKg || mostKg <= 0) continue
          // A rest too small for any jar would stay uncovered: rather less now, and a load more.
          const restL = leftL - mostKg * way.lPerKg
          const isStranded = restL > leastRestL && restL < smallestL
          const sparingKg = isStranded ? (leftL - smallestL) / way.lPerKg : mostKg
          const kg = sparingKg >= leastKg ? sparingKg : mostKg
          const litres = kg * way.lPerKg
          const jarWeeks =
            (steepMl * way.emptiedWeek + settleMl * (way.settleToWeek - way.settleFromWeek)) / 1000
          const waiting = 1 + 0.05 * weeksFromPlenty
          const stranded = isStranded && kg === mostKg ? strandedPenalty : 1
          const score = (jarWeeks / litres) * waiting * stranded * Math.exp(stray() / 2)
          if (score >= bestScore) continue
          bestScore = score
          const place = { wayIndex, way, week, weeksOff: weeksFromPlenty, steepClass, settleClass }
          best = { ...place, kg, litres }
        }
    }
  })
  return best
}

/** Numbers from 0 to 1 in an order that is always the same (linear congruence modulo 2^31). */
function sequence(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648
    return state / 2_147_483_648
  }
}
