/**
 * A good plan to begin with, found in a moment: one load after another, the most urgent kind first.
 *
 * Method: each kind in turn takes, until it is covered, the load of one steeping and one settling
 * jar that spends the fewest litre-weeks of jar on a litre. That is tried for many orders of the
 * kinds, shuffled by a fixed sequence so that the same question gets the same answer, and the best
 * by the plan's own weights is kept. It proves nothing; the integer program goes on from it.
 * Leaves out: several loads that settle in one jar, and goods in the pantry, which only help.
 */
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import {
  leastFillFraction,
  leastL,
  mostL,
  type JarClass,
  type Load,
  type SeasonQuestion,
  type Way,
} from './season-program.ts'
import { minorPerL, weightOfTier, weights } from './weights.ts'

const orders = 120
/** A rest of less than that is covered; a load that leaves one for no jar counts as so much dearer. */
const leastRestL = 0.01
const strandedPenalty = 2
/** How far a shuffled order strays from that of urgency: a factor of up to e. */
const straying = 1

export function greedyLoads(question: SeasonQuestion): Load[] {
  const random = sequence(20_260_704)
  let best: Tried | undefined
  for (let index = 0; index < orders; index += 1) {
    const noise = question.kinds.map(() => (index === 0 ? 0 : straying * random()))
    const tried = tryOrder(question, noise)
    if (!best || tried.sum < best.sum) best = tried
  }
  return best?.loads ?? []
}

interface Tried {
  readonly loads: Load[]
  readonly sum: number
}

const horizonWeeks = 220

function tryOrder(question: SeasonQuestion, noise: readonly number[]): Tried {
  const { kinds, ways } = question
  const room = new Room(question)
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
      const choice = bestChoice(question, room, kindIndex, left[kindIndex] as number, kgLeft)
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
  return { loads, sum: short + trouble }
}

interface Choice {
  readonly wayIndex: number
  readonly way: Way
  readonly week: number
  readonly weeksOff: number
  readonly steepClass: number
  readonly settleClass: number
  readonly kg: number
  readonly litres: number
}

const loadOf = ({ wayIndex, week, kg, steepClass, settleClass }: Choice, count: number): Load => {
  const one = (at: number) => Array.from({ length: count }, (_, index) => (index === at ? 1 : 0))
  return { wayIndex, week, kg, steep: one(steepClass), settle: one(settleClass) }
}

function bestChoice(
  question: SeasonQuestion,
  room: Room,
  kindIndex: number,
  leftL: number,
  kgLeft: readonly number[],
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
          const score = (jarWeeks / litres) * waiting * stranded
          if (score >= bestScore) continue
          bestScore = score
          const place = { wayIndex, way, week, weeksOff: weeksFromPlenty, steepClass, settleClass }
          best = { ...place, kg, litres }
        }
    }
  })
  return best
}

/** Free jars of each size in each week, and what money, spirit and shelf still allow. */
class Room {
  readonly question: SeasonQuestion
  readonly free: Int32Array[]
  moneyLeft: number
  bottlesLeft: number
  readonly spiritLeft: number[]

  constructor(question: SeasonQuestion) {
    this.question = question
    const { classes, taken, cleaningWeeks, moneyMinor, shelfBottles, spirits } = question
    this.free = classes.map(({ jarIds }: JarClass, classIndex) => {
      const weeks = new Int32Array(horizonWeeks).fill(jarIds.length)
      for (const one of taken)
        if (one.classIndex === classIndex)
          for (let week = 0; week < one.untilWeek + cleaningWeeks; week += 1)
            weeks[week] = (weeks[week] ?? 0) - 1
      return weeks
    })
    this.moneyLeft = moneyMinor ?? Infinity
    this.bottlesLeft = shelfBottles ?? Infinity
    this.spiritLeft = spirits.map(({ atHand, mayBuy }) => (mayBuy ? Infinity : atHand))
  }

  kgAffordable(way: Way): number {
    const { kinds } = this.question
    const perL = minorPerL(way, this.question)
    const sizeMl = kinds[way.kindIndex]?.bottleSizeMl ?? 1000
    const byMoney = perL > 0 ? this.moneyLeft / perL / way.lPerKg : Infinity
    const byShelf = (this.bottlesLeft * sizeMl) / 1000 / way.lPerKg
    const bySpirit = way.spiritMlPerKg.map((ml, index) =>
      ml > 0 ? (this.spiritLeft[index] ?? Infinity) / ml : Infinity,
    )
    return Math.max(0, Math.min(byMoney, byShelf, ...bySpirit))
  }

  span(way: Way, week: number, use: 'steep' | 'settle'): [number, number] {
    const { cleaningWeeks } = this.question
    return use === 'steep'
      ? [week, week + way.emptiedWeek + cleaningWeeks]
      : [week + way.settleFromWeek, week + way.settleToWeek + cleaningWeeks]
  }

  least(classIndex: number, [from, to]: readonly [number, number]): number {
    let least = Infinity
    for (let week = from; week < to; week += 1)
      least = Math.min(least, this.free[classIndex]?.[week] ?? 0)
    return least
  }

  freeFor(way: Way, week: number, use: 'steep' | 'settle'): number[] {
    const span = this.span(way, week, use)
    return this.free.flatMap((_, index) => (this.least(index, span) > 0 ? [index] : []))
  }

  /** Both jars of one size: where they overlap, two are needed. */
  hasTwo(way: Way, week: number, classIndex: number): boolean {
    const [steepFrom, steepTo] = this.span(way, week, 'steep')
    const [settleFrom, settleTo] = this.span(way, week, 'settle')
    const from = Math.max(steepFrom, settleFrom)
    const to = Math.min(steepTo, settleTo)
    return from >= to || this.least(classIndex, [from, to]) > 1
  }

  take({ way, week, steepClass, settleClass, kg, litres }: Choice): void {
    const use = [
      [steepClass, this.span(way, week, 'steep')],
      [settleClass, this.span(way, week, 'settle')],
    ] as const
    for (const [classIndex, [from, to]] of use) {
      const weeks = this.free[classIndex] as Int32Array
      for (let at = from; at < to; at += 1) weeks[at] = (weeks[at] ?? 0) - 1
    }
    this.moneyLeft -= litres * minorPerL(way, this.question)
    const sizeMl = this.question.kinds[way.kindIndex]?.bottleSizeMl ?? 1000
    this.bottlesLeft -= (1000 * litres) / sizeMl
    way.spiritMlPerKg.forEach((ml, index) => {
      this.spiritLeft[index] = (this.spiritLeft[index] as number) - ml * kg
    })
  }
}

/** Numbers from 0 to 1 in an order that is always the same (linear congruence modulo 2^31). */
function sequence(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648
    return state / 2_147_483_648
  }
}
