/** What is still free while loads are handed out one by one: jars by week, money, shelf, spirit. */
import type { SeasonQuestion, Way } from './season-program.ts'
import { minorPerL } from './weights.ts'

/** A load of one steeping and one settling jar. */
export interface OneLoad {
  readonly way: Way
  readonly week: number
  readonly steepClass: number
  readonly settleClass: number
  readonly kg: number
  readonly litres: number
}

/** Beyond any week in which a batch begun in the year could stand in a jar: spirit may rest on fruit for years. */
const horizonWeeks = 400

/** Free jars of each size in each week, and what money, spirit and shelf still allow. */
export class JarRoom {
  readonly question: SeasonQuestion
  readonly free: Int32Array[]
  moneyLeft: number
  bottlesLeft: number
  readonly spiritLeft: number[]

  constructor(question: SeasonQuestion) {
    this.question = question
    const { classes, taken, cleaningWeeks, moneyMinor, shelfBottles, spirits } = question
    this.free = classes.map(({ jarIds }, classIndex) => {
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

  occupy(classIndex: number, [from, to]: readonly [number, number]): void {
    const weeks = this.free[classIndex] as Int32Array
    for (let at = from; at < to; at += 1) weeks[at] = (weeks[at] ?? 0) - 1
  }

  take({ way, week, steepClass, settleClass, kg, litres }: OneLoad): void {
    this.occupy(steepClass, this.span(way, week, 'steep'))
    this.occupy(settleClass, this.span(way, week, 'settle'))
    this.moneyLeft -= litres * minorPerL(way, this.question)
    const sizeMl = this.question.kinds[way.kindIndex]?.bottleSizeMl ?? 1000
    this.bottlesLeft -= (1000 * litres) / sizeMl
    way.spiritMlPerKg.forEach((ml, index) => {
      this.spiritLeft[index] = (this.spiritLeft[index] as number) - ml * kg
    })
  }
}
