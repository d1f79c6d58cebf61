/** What is still free while loads are laid and taken back: jars by week, money, shelf, spirit, fruit. */
import type { Load, SeasonQuestion, Way } from './season-program.ts'
import { minorPerL } from './weights.ts'

/** The fewest jars free of each class while a way's load steeps, while it settles, while it does both. */
export interface FreeJars {
  readonly steep: readonly number[]
  readonly settle: readonly number[]
  readonly both: readonly number[]
}

type Span = readonly [fromWeek: number, toWeek: number]

export class JarRoom {
  readonly question: SeasonQuestion
  /** Jars of each class in each week. */
  readonly #free: readonly Int32Array[]
  readonly #minorPerL: readonly number[]
  readonly #bottlesPerL: readonly number[]
  readonly #spiritLeft: number[]
  readonly #kgLeft: number[]
  #moneyLeft: number
  #bottlesLeft: number

  constructor(question: SeasonQuestion) {
    this.question = question
    const { classes, kinds, ways, mustSettle, spirits, cleaningWeeks } = question
    const weekCount = Math.max(
      0,
      ...question.taken.map(({ untilWeek }) => untilWeek + cleaningWeeks),
      ...mustSettle.map(({ toWeek }) => toWeek + cleaningWeeks),
      ...ways.flatMap((way) => way.starts.map(({ week }) => this.#spanOf(way, week, 'settle')[1])),
      ...ways.flatMap((way) => way.starts.map(({ week }) => this.#spanOf(way, week, 'steep')[1])),
    )
    this.#free = classes.map(({ jarIds }) => new Int32Array(weekCount).fill(jarIds.length))
    for (const { classIndex, untilWeek } of question.taken)
      this.occupy(classIndex, [0, untilWeek + cleaningWeeks], 1)
    this.#minorPerL = ways.map((way) => minorPerL(way, question))
    this.#bottlesPerL = ways.map(({ kindIndex }) => 1000 / (kinds[kindIndex]?.bottleSizeMl ?? 1000))
    this.#spiritLeft = spirits.map(({ atHand, mayBuy }) => (mayBuy ? Infinity : atHand))
    this.#kgLeft = ways.map(({ mostKg }) => mostKg)
    this.#moneyLeft = question.moneyMinor ?? Infinity
    this.#bottlesLeft = question.shelfBottles ?? Infinity
  }

  /** As much fruit as each of them still allows. */
  allowedKg(wayIndex: number): Readonly<Record<'money' | 'shelf' | 'spirit' | 'pantry', number>> {
    const { lPerKg, spiritMlPerKg } = this.question.ways[wayIndex] as Way
    const perL = this.#minorPerL[wayIndex] ?? 0
    const byMoney = perL > 0 ? this.#moneyLeft / perL / lPerKg : Infinity
    const byShelf = this.#bottlesLeft / (this.#bottlesPerL[wayIndex] as number) / lPerKg
    const bySpirit = spiritMlPerKg.map((ml, index) =>
      ml > 0 ? (this.#spiritLeft[index] as number) / ml : Infinity,
    )
    return {
      money: byMoney,
      shelf: byShelf,
      spirit: Math.min(Infinity, ...bySpirit),
      pantry: this.#kgLeft[wayIndex] as number,
    }
  }

  freeFor(way: Way, week: number): FreeJars {
    const steep = this.#spanOf(way, week, 'steep')
    const settle = this.#spanOf(way, week, 'settle')
    const both: Span = [Math.max(steep[0], settle[0]), Math.min(steep[1], settle[1])]
    return {
      steep: this.#free.map((_, index) => this.least(index, steep)),
      settle: this.#free.map((_, index) => this.least(index, settle)),
      both: this.#free.map((_, index) => this.least(index, both)),
    }
  }

  /** The fewest jars of a class free in any of those weeks. */
  least(classIndex: number, [from, to]: Span): number {
    const weeks = this.#free[classIndex] as Int32Array
    let least = Infinity
    for (let week = from; week < to; week += 1)
      if ((weeks[week] as number) < least) least = weeks[week] as number
    return least
  }

  occupy(classIndex: number, [from, to]: Span, count: number): void {
    const weeks = this.#free[classIndex] as Int32Array
    for (let week = from; week < to; week += 1) weeks[week] = (weeks[week] as number) - count
  }

  lay(load: Load): void {
    this.#account(load, 1)
  }

  takeBack(load: Load): void {
    this.#account(load, -1)
  }

  #account({ wayIndex, week, kg, steep, settle }: Load, by: 1 | -1): void {
    const way = this.question.ways[wayIndex] as Way
    steep.forEach((count, index) => {
      if (count > 0) this.occupy(index, this.#spanOf(way, week, 'steep'), by * count)
    })
    settle.forEach((count, index) => {
      if (count > 0) this.occupy(index, this.#spanOf(way, week, 'settle'), by * count)
    })
    const litres = by * kg * way.lPerKg
    this.#moneyLeft -= litres * (this.#minorPerL[wayIndex] as number)
    this.#bottlesLeft -= litres * (this.#bottlesPerL[wayIndex] as number)
    this.#kgLeft[wayIndex] = (this.#kgLeft[wayIndex] as number) - by * kg
    way.spiritMlPerKg.forEach((ml, index) => {
      this.#spiritLeft[index] = (this.#spiritLeft[index] as number) - by * ml * kg
    })
  }

  /** Washing included. */
  #spanOf(way: Way, week: number, use: 'steep' | 'settle'): Span {
    const { cleaningWeeks } = this.question
    return use === 'steep'
      ? [week, week + way.emptiedWeek + cleaningWeeks]
      : [week + way.settleFromWeek, week + way.settleToWeek + cleaningWeeks]
  }
}
