/**
 * A plan in the making: loads are laid one by one into what is free, and taken back again.
 *
 * The most urgent that is still wanted comes first; it takes the load that spends the fewest
 * litre-weeks of jar on a litre. What a load costs is reckoned as if all of it were bought.
 */
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import { JarRoom, type FreeJars } from './jar-room.ts'
import { loadShapes, type LoadShape } from './load-shapes.ts'
import {
  leastL,
  mostL,
  type Load,
  type Loading,
  type MustSettle,
  type SeasonQuestion,
  type Settled,
  type Way,
} from './season-program.ts'
import { minorPerL, weightOfMinor, weightOfTier, weights } from './weights.ts'

/** A rest of less than that is covered; a load that leaves one for no jar counts as so much dearer. */
const leastRestL = 0.01
const strandedPenalty = 2

/** By how much what is covered next, and how, strays from the obvious; all 0 where it does not. */
export interface Stray {
  readonly order: () => number
  readonly choice: () => number
  /** Among so many weeks to start in, the one that is tried first. */
  readonly start: (count: number) => number
}
const obvious: Stray = { order: () => 0, choice: () => 0, start: () => 0 }

export class PlanSketch {
  readonly question: SeasonQuestion
  readonly loads = new Set<Load>()
  readonly madeL: number[]
  readonly room: JarRoom
  readonly #settled: readonly Settled[]
  readonly #shapes: readonly (readonly LoadShape[])[]
  readonly #mostL: readonly number[]
  readonly #leastL: readonly number[]
  readonly #weightPerKg: readonly number[]

  /** Empty, or with a plan that fits. */
  constructor(question: SeasonQuestion, begun?: Loading) {
    const { kinds, ways, classes, cleaningWeeks } = question
    this.question = question
    this.madeL = kinds.map(() => 0)
    this.room = new JarRoom(question)
    this.#shapes = ways.map((way) => loadShapes(way, classes, cleaningWeeks))
    this.#mostL = kinds.map((_, index) => mostL(question, index))
    this.#leastL = ways.map((way) => leastL(way, classes))
    const perMinor = weightOfMinor(question)
    this.#weightPerKg = ways.map((way) => perMinor * minorPerL(way, question) * way.lPerKg)
    this.#settled = begun?.settled ?? question.mustSettle.map((must) => findJars(this.room, must))
    begun?.settled.forEach(({ jars }, index) => {
      const { fromWeek, toWeek } = question.mustSettle[index] as MustSettle
      const span = [fromWeek, toWeek + cleaningWeeks] as const
      jars.forEach((count, classIndex) => this.room.occupy(classIndex, span, count))
    })
    begun?.loads.forEach((load) => this.lay(load))
  }

  get loading(): Loading {
    return { loads: [...this.loads], settled: this.#settled }
  }

  lay(load: Load): void {
    this.loads.add(load)
    this.room.lay(load)
    this.#make(load, 1)
  }

  takeBack(load: Load): void {
    this.loads.delete(load)
    this.room.takeBack(load)
    this.#make(load, -1)
  }

  /** Lays what still fits of what is wanted, and returns it. */
  cover(stray: Stray = obvious): Load[] {
    const laid: Load[] = []
    const full = new Set<number>()
    for (const { kindIndex, untilL } of this.#turns(stray))
      while (!full.has(kindIndex) && (this.madeL[kindIndex] as number) < untilL - leastRestL / 10) {
        const load = this.#bestLoad(kindIndex, stray)
        if (load) {
          this.lay(load)
          laid.push(load)
        } else full.add(kindIndex)
      }
    return laid
  }

  /** Whatever still fits: jars that are not full first, then further ones. */
  complete(): void {
    this.#fillUp()
    this.cover()
    this.#fillUp()
  }

  #fillUp(): void {
    // A copy: what is laid again would come round again.
    const before = [...this.loads]
    for (const load of before) {
      const { kindIndex, lPerKg } = this.question.ways[load.wayIndex] as Way
      const moreKg = Math.min(
        this.roomKg(load),
        this.#shortL(kindIndex) / lPerKg,
        this.#allowedKg(load.wayIndex),
      )
      if (moreKg <= 0) continue
      this.takeBack(load)
      this.lay({ ...load, kg: load.kg + moreKg })
    }
  }

  /** How much more fruit the jars of a load can take. */
  roomKg({ wayIndex, kg, steep, settle }: Load): number {
    const { classes, ways } = this.question
    const { steepMlPerKg, settleMlPerKg } = ways[wayIndex] as Way
    const safeMl = (jars: readonly number[]) =>
      safeFillFraction *
      jars.reduce((sum, count, index) => sum + count * (classes[index]?.capacityMl ?? 0), 0)
    return Math.min(safeMl(steep) / steepMlPerKg, safeMl(settle) / settleMlPerKg) - kg
  }

  /** The least fruit for jars that are free from a week on; infinite where none are. */
  leastKg(wayIndex: number, week: number): number {
    const free = this.room.freeFor(this.question.ways[wayIndex] as Way, week)
    const open = (this.#shapes[wayIndex] ?? []).filter((shape) => fits(shape, free))
    return Math.min(Infinity, ...open.map((shape) => shape.leastKg))
  }

  /** As much of a kind as may still be made. */
  leftL(kindIndex: number): number {
    return (this.#mostL[kindIndex] as number) - (this.madeL[kindIndex] as number)
  }

  #shortL(kindIndex: number): number {
    return (this.question.kinds[kindIndex]?.wantedL ?? 0) - (this.madeL[kindIndex] as number)
  }

  #allowedKg(wayIndex: number): number {
    const { money, shelf, spirit, pantry } = this.room.allowedKg(wayIndex)
    return Math.max(0, Math.min(money, shelf, spirit, pantry))
  }

  /** The weights of the program: what is uncovered, trouble, what is over, and money. */
  sum(): number {
    const { kinds, ways, classes } = this.question
    let sum = 0
    for (const { wayIndex, week, kg, steep, settle } of this.loads) {
      const start = (ways[wayIndex] as Way).starts.find((one) => one.week === week)
      const perSteep = weights.steepLoad + weights.weekOffPlenty * (start?.weeksFromPlenty ?? 0)
      steep.forEach((count, index) => {
        sum += count * (perSteep + (classes[index]?.isWide ? 0 : weights.narrowSteep))
      })
      for (const count of settle) sum += count * weights.settleLoad
      sum += kg * (this.#weightPerKg[wayIndex] as number)
    }
    kinds.forEach(({ tiers, wantedL }, index) => {
      let leftL = this.madeL[index] as number
      sum += weights.litreOver * Math.max(0, leftL - wantedL)
      for (const tier of tiers) {
        const tierL = tier.volumeMl / 1000
        sum += weightOfTier(tier) * Math.max(0, tierL - leftL)
        leftL = Math.max(0, leftL - tierL)
      }
    })
    return sum
  }

  #make({ wayIndex, kg }: Load, by: 1 | -1): void {
    const { kindIndex, lPerKg } = this.question.ways[wayIndex] as Way
    this.madeL[kindIndex] = (this.madeL[kindIndex] as number) + by * kg * lPerKg
  }

  /** Of each kind, how far to cover it; the most urgent first. */
  #turns(stray: Stray): { kindIndex: number; untilL: number }[] {
    return this.question.kinds
      .flatMap(({ tiers }, kindIndex) => {
        const strayed = stray.order()
        let untilL = 0
        return tiers.map((tier) => {
          untilL += tier.volumeMl / 1000
          return { kindIndex, untilL, rank: Math.log(weightOfTier(tier)) + strayed }
        })
      })
      .sort((a, b) => b.rank - a.rank)
  }

  #bestLoad(kindIndex: number, stray: Stray): Load | undefined {
    const shortL = this.#shortL(kindIndex)
    const leftL = this.leftL(kindIndex)
    let best: Load | undefined
    let bestScore = Infinity
    this.question.ways.forEach((way, wayIndex) => {
      if (way.kindIndex !== kindIndex) return
      const allowedKg = Math.min(leftL / way.lPerKg, this.#allowedKg(wayIndex))
      const smallestL = this.#leastL[wayIndex] as number
      const first = stray.start(way.starts.length)
      const open = [...way.starts.slice(first), ...way.starts.slice(0, first)]
        .map(({ week }) => ({ week, free: this.room.freeFor(way, week) }))
        .filter(({ free }) => isAnyFree(free.steep) && isAnyFree(free.settle))
      if (open.length === 0) return
      for (const shape of this.#shapes[wayIndex] ?? []) {
        if (shape.jarWeeks >= bestScore) break
        if (shape.leastKg > allowedKg) continue
        const fullKg = Math.min(
          shape.mostKg,
          allowedKg,
          Math.max(shape.leastKg, shortL / way.lPerKg),
        )
        // A rest too small for any jar would stay uncovered: rather less now, and a load more.
        const restL = shortL - fullKg * way.lPerKg
        const isStranded = restL > leastRestL && restL < smallestL
        const sparingKg = (shortL - smallestL) / way.lPerKg
        const isSparing = isStranded && sparingKg >= shape.leastKg
        const kg = isSparing ? sparingKg : fullKg
        const perL = shape.jarLWeeks / Math.min(kg * way.lPerKg, shortL)
        const stranded = isStranded && !isSparing ? strandedPenalty : 1
        const score = perL * stranded * (1 + stray.choice())
        if (score >= bestScore) continue
        const start = open.find(({ free }) => fits(shape, free))
        if (!start) continue
        bestScore = score
        best = { wayIndex, week: start.week, kg, steep: shape.steep, settle: shape.settle }
      }
    })
    return best
  }
}

function fits({ wants }: LoadShape, { steep, settle, both }: FreeJars): boolean {
  for (const { classIndex, steep: toSteep, settle: toSettle } of wants) {
    if (toSteep > 0 && toSteep > (steep[classIndex] as number)) return false
    if (toSettle > 0 && toSettle > (settle[classIndex] as number)) return false
    if (toSteep + toSettle > (both[classIndex] as number)) return false
  }
  return true
}

const isAnyFree = (counts: readonly number[]): boolean => counts.some((count) => count > 0)

/** The smallest free jar that holds it all; failing that, the largest free ones until it is in. */
function findJars(room: JarRoom, { fromWeek, toWeek, volumeMl }: MustSettle): Settled {
  const { classes, cleaningWeeks } = room.question
  const span = [fromWeek, toWeek + cleaningWeeks] as const
  const jars = classes.map(() => 0)
  const safeMl = (index: number) => safeFillFraction * (classes[index]?.capacityMl ?? 0)
  let leftMl = volumeMl
  while (leftMl > 0) {
    const free = classes.flatMap((_, index) => (room.least(index, span) > 0 ? [index] : []))
    const chosen = free.find((index) => safeMl(index) >= leftMl) ?? free.at(-1)
    if (chosen === undefined) break
    room.occupy(chosen, span, 1)
    jars[chosen] = (jars[chosen] ?? 0) + 1
    leftMl -= safeMl(chosen)
  }
  return { jars, homelessMl: Math.max(0, leftMl) }
}
