/**
 * The season as an integer program: loads of fruit in jars, week by week.
 *
 * Whole numbers count the jars of a size that a way fills in a week, to steep and to settle; kg of
 * fruit lie between the least and the safe fill of those jars. Jars of a size in use change from
 * week to week by what starts and what ends, and never pass those there are. Counting is enough:
 * each load takes its jar without a break, so the loads of a size are intervals; where never more
 * than n intervals overlap, handing each, by its start, any jar then free never runs out of n jars
 * (at its start at most n - 1 others run), and today's batches, which run from the start, keep their
 * own. `assign-jars.ts` does so; nothing is lost by leaving the single jar out of the program.
 */
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import { ProgramBuilder, type LinearProgram } from '../marrying/linear-program.ts'
import {
  leastFillFraction,
  mostL,
  type Load,
  type Loading,
  type SeasonQuestion,
  type Supply,
  type Way,
} from './season-program.ts'
import { weightOfMinor, weightOfTier, weights } from './weights.ts'

type Term = readonly [variable: number, coefficient: number]

interface Start {
  readonly wayIndex: number
  readonly week: number
  readonly kg: number
  readonly steep: readonly number[]
  readonly settle: readonly number[]
}

export interface JarProgram {
  readonly program: LinearProgram
  /** The same with no more uncovered than that, for the least money and trouble. */
  readonly saving: (mostUncovered: number) => LinearProgram
  readonly uncoveredOf: (values: readonly number[]) => number
  /** What a solution puts into jars. */
  readonly loadingOf: (values: readonly number[]) => Loading
  /** A solution that puts so much into jars, to begin with. */
  readonly valuesOf: (loading: Loading) => number[]
}

export function jarProgram(question: SeasonQuestion): JarProgram {
  const { kinds, ways, classes, mustSettle } = question
  const builder = new ProgramBuilder()
  /** What stays uncovered, and what a plan costs in money and trouble. */
  const uncovered: Term[] = []
  const aim: Term[] = []
  const use = new JarUse(question)

  const most = kinds.map((_, index) => mostL(question, index))
  const starts = ways.flatMap((way, wayIndex) =>
    way.starts.map((start) => {
      const mostKg = Math.min(way.mostKg, (most[way.kindIndex] as number) / way.lPerKg)
      const jars = jarsOfStart(builder, question, way, mostKg)
      jars.steep.forEach((x, index) => {
        const isNarrow = !classes[index]?.isWide
        const weeksOff = weights.weekOffPlenty * start.weeksFromPlenty
        aim.push([x, weights.steepLoad + weeksOff + (isNarrow ? weights.narrowSteep : 0)])
        use.take(x, index, start.week, start.week + way.emptiedWeek)
      })
      jars.settle.forEach((y, index) => {
        aim.push([y, weights.settleLoad])
        use.take(y, index, start.week + way.settleFromWeek, start.week + way.settleToWeek)
      })
      return { wayIndex, week: start.week, ...jars } satisfies Start
    }),
  )

  const covering = kinds.map(({ tiers, wantedL }, kindIndex) => {
    const made = starts.flatMap(({ wayIndex, kg }): Term[] => {
      const way = ways[wayIndex] as Way
      return way.kindIndex === kindIndex ? [[kg, way.lPerKg]] : []
    })
    const short = tiers.map((tier) => {
      const variable = builder.variable(0, tier.volumeMl / 1000)
      uncovered.push([variable, weightOfTier(tier)])
      return variable
    })
    const over = builder.variable(0, Math.max(0, (most[kindIndex] as number) - wantedL))
    aim.push([over, weights.litreOver])
    const missing = short.map((variable): Term => [variable, 1])
    builder.equal([...made, ...missing, [over, -1]], wantedL)
    return { made, short, over }
  })

  ways.forEach((way, wayIndex) => {
    if (Number.isFinite(way.mostKg)) builder.atMost(kgOf(starts, wayIndex), way.mostKg)
  })
  const money: Term[] = starts.flatMap(({ wayIndex, kg }): Term[] => {
    const { fruitMinorPerKg } = ways[wayIndex] as Way
    return fruitMinorPerKg > 0 ? [[kg, fruitMinorPerKg]] : []
  })
  const buying = [
    ...question.spirits.map((supply, index) => ({
      supply,
      perKg: (way: Way) => way.spiritMlPerKg[index] ?? 0,
    })),
    ...question.sweeteners.map((supply, index) => ({
      supply,
      perKg: (way: Way) => way.sweetenerGPerKg[index] ?? 0,
    })),
  ].map(({ supply, perKg }) => buySupply(builder, supply, neededOf(starts, ways, perKg), money))
  const bottled = covering.flatMap(({ made }, kindIndex) => {
    const perL = 1000 / (kinds[kindIndex]?.bottleSizeMl ?? 1000)
    return made.map(([variable, lPerKg]): Term => [variable, lPerKg * perL])
  })
  money.push(...bottled.map(([variable, per]): Term => [variable, per * question.minorPerBottle]))
  const paid = merged(money).filter(([, minor]) => minor > 0)
  if (question.moneyMinor !== undefined && paid.length > 0)
    builder.atMost(paid, question.moneyMinor)
  if (question.shelfBottles !== undefined && bottled.length > 0)
    builder.atMost(bottled, question.shelfBottles)
  const perMinor = weightOfMinor(question)
  aim.push(...paid.map(([variable, minor]): Term => [variable, minor * perMinor]))

  const standing = mustSettle.map(({ fromWeek, toWeek, volumeMl }) => {
    const jars = classes.map(({ jarIds }, index) => {
      const y = builder.variable(0, jarIds.length, true)
      aim.push([y, weights.settleLoad])
      use.take(y, index, fromWeek, toWeek)
      return y
    })
    const homeless = builder.variable(0, volumeMl / 1000)
    uncovered.push([homeless, weights.homelessLitre])
    const room = jars.map((y, index): Term => {
      const safeMl = safeFillFraction * (classes[index]?.capacityMl ?? 0)
      return [y, Math.min(volumeMl, safeMl) / 1000]
    })
    builder.atLeast([...room, [homeless, 1]], volumeMl / 1000)
    return { jars, homeless }
  })
  const flows = use.rows(builder)

  return {
    program: builder.minimising([...uncovered, ...aim]),
    saving: (mostUncovered) => ({
      variables: [...builder.variables],
      rows: [
        ...builder.rows,
        { terms: uncovered, low: Number.NEGATIVE_INFINITY, high: mostUncovered },
      ],
      minimise: aim,
    }),
    uncoveredOf: (values) => sumOf(uncovered, values),
    loadingOf: (values) => ({
      loads: loadsOf(starts, values),
      settled: standing.map(({ jars, homeless }) => ({
        jars: jars.map((y) => Math.round(values[y] ?? 0)),
        homelessMl: 1000 * (values[homeless] ?? 0),
      })),
    }),
    valuesOf: ({ loads, settled }) => {
      const values = builder.variables.map(() => 0)
      for (const { wayIndex, week, kg, steep, settle } of loads) {
        const start = starts.find((one) => one.wayIndex === wayIndex && one.week === week)
        if (!start) continue
        addTo(values, start.kg, kg)
        steep.forEach((count, index) => addTo(values, start.steep[index] as number, count))
        settle.forEach((count, index) => addTo(values, start.settle[index] as number, count))
      }
      covering.forEach(({ made, short, over }, kindIndex) => {
        const { tiers, wantedL } = kinds[kindIndex] as SeasonQuestion['kinds'][number]
        const madeL = sumOf(made, values)
        values[over] = Math.max(0, madeL - wantedL)
        // The least urgent stays uncovered first: they are in the order of urgency.
        let leftL = madeL
        tiers.forEach((tier, index) => {
          const tierL = tier.volumeMl / 1000
          values[short[index] as number] = Math.max(0, tierL - leftL)
          leftL = Math.max(0, leftL - tierL)
        })
      })
      for (const { bought, needed, atHand } of buying)
        values[bought] = Math.max(0, sumOf(needed, values) - atHand)
      standing.forEach(({ jars, homeless }, index) => {
        const { volumeMl } = mustSettle[index] as SeasonQuestion['mustSettle'][number]
        const own = settled[index]
        jars.forEach((y, at) => addTo(values, y, own?.jars[at] ?? 0))
        values[homeless] = (own ? own.homelessMl : volumeMl) / 1000
      })
      for (const { inUse, before, changes } of flows)
        values[inUse] =
          (before === undefined ? 0 : (values[before] as number)) + sumOf(changes, values)
      return values
    },
  }
}

/** Jars of each size for one way in one week, filled within the limits and drawn off into others. */
function jarsOfStart(
  builder: ProgramBuilder,
  { classes }: SeasonQuestion,
  way: Way,
  mostKg: number,
): Pick<Start, 'kg' | 'steep' | 'settle'> {
  const kg = builder.variable(0, mostKg)
  const within = (mlPerKg: number) => {
    const kgFilling = (capacityMl: number, fraction: number) => (fraction * capacityMl) / mlPerKg
    const jars = classes.map(({ capacityMl, jarIds }) => {
      const isTooLarge = kgFilling(capacityMl, leastFillFraction) > mostKg + roundingKg
      return builder.variable(0, isTooLarge ? 0 : jarIds.length, true)
    })
    const summed = (fraction: number, most: number): Term[] =>
      jars.map((jar, index) => [
        jar,
        -Math.min(most, kgFilling(classes[index]?.capacityMl ?? 0, fraction)),
      ])
    // A jar counts for no more than all there is to put in it: that keeps part jars honest.
    builder.atMost([[kg, 1], ...summed(safeFillFraction, mostKg)], 0)
    builder.atLeast([[kg, 1], ...summed(leastFillFraction, Infinity)], 0)
    return jars
  }
  return { kg, steep: within(way.steepMlPerKg), settle: within(way.settleMlPerKg) }
}

const roundingKg = 1e-6

/** Jars of each size in use, from week to week. */
class JarUse {
  readonly question: SeasonQuestion
  readonly changes: Map<number, Term[]>[]

  constructor(question: SeasonQuestion) {
    this.question = question
    this.changes = question.classes.map(() => new Map())
  }

  /** From the first week on, and washed after the last. */
  take(variable: number, classIndex: number, fromWeek: number, toWeek: number): void {
    this.change(classIndex, fromWeek, [variable, 1])
    this.change(classIndex, toWeek + this.question.cleaningWeeks, [variable, -1])
  }

  change(classIndex: number, week: number, term: Term): void {
    const ofClass = this.changes[classIndex] as Map<number, Term[]>
    ofClass.set(week, [...(ofClass.get(week) ?? []), term])
  }

  rows(builder: ProgramBuilder) {
    const { classes, taken, cleaningWeeks } = this.question
    return classes.flatMap(({ jarIds }, classIndex) => {
      const ofClass = this.changes[classIndex] as Map<number, Term[]>
      const ends = taken
        .filter((one) => one.classIndex === classIndex)
        .map(({ untilWeek }) => untilWeek + cleaningWeeks)
      const weeks = [...new Set([...ofClass.keys(), ...ends])].sort((a, b) => a - b)
      let before: number | undefined
      return weeks.map((week) => {
        const takenNow = ends.filter((end) => end > week).length
        const inUse = builder.variable(0, Math.max(0, jarIds.length - takenNow))
        const changes = ofClass.get(week) ?? []
        const was: Term[] = before === undefined ? [] : [[before, -1]]
        builder.equal([[inUse, 1], ...was, ...changes.map(([v, by]): Term => [v, -by])], 0)
        const row = { inUse, before, changes }
        before = inUse
        return row
      })
    })
  }
}

/** What the pantry lacks is bought; its price joins the money. */
function buySupply(
  builder: ProgramBuilder,
  { atHand, minorPerUnit, mayBuy }: Supply,
  needed: Term[],
  money: Term[],
) {
  const bought = builder.variable(0, mayBuy ? Number.POSITIVE_INFINITY : 0)
  if (needed.length > 0) builder.atMost([...needed, [bought, -1]], atHand)
  money.push([bought, minorPerUnit])
  return { bought, needed, atHand }
}

/** Each variable once: its coefficients added up. */
function merged(terms: readonly Term[]): Term[] {
  const sums = new Map<number, number>()
  for (const [variable, by] of terms) sums.set(variable, (sums.get(variable) ?? 0) + by)
  return [...sums]
}

const kgOf = (starts: readonly Start[], wayIndex: number): Term[] =>
  starts.flatMap((start): Term[] => (start.wayIndex === wayIndex ? [[start.kg, 1]] : []))

const neededOf = (
  starts: readonly Start[],
  ways: readonly Way[],
  perKg: (way: Way) => number,
): Term[] =>
  starts.flatMap(({ wayIndex, kg }): Term[] => {
    const amount = perKg(ways[wayIndex] as Way)
    return amount > 0 ? [[kg, amount]] : []
  })

/** Less fruit than this is rounding of the solver. */
const leastKg = 1e-3

const loadsOf = (starts: readonly Start[], values: readonly number[]): Load[] =>
  starts.flatMap(({ wayIndex, week, kg, steep, settle }) => {
    const amount = values[kg] ?? 0
    if (amount < leastKg) return []
    const counts = (jars: readonly number[]) => jars.map((jar) => Math.round(values[jar] ?? 0))
    return { wayIndex, week, kg: amount, steep: counts(steep), settle: counts(settle) }
  })

const sumOf = (terms: readonly Term[], values: readonly number[]): number =>
  terms.reduce((sum, [variable, by]) => sum + by * (values[variable] ?? 0), 0)

function addTo(values: number[], variable: number, amount: number): void {
  values[variable] = (values[variable] ?? 0) + amount
}
