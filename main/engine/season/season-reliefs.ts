/**
 * What would one more jar, a little more money, room, spirit or season bring?
 *
 * The whole program is solved again with that one limit eased, begun from the plan there is, so
 * that the answer is that of whole jars and not of a dual price. Only limits that are in force are
 * asked about, and nothing at all where everything wanted is covered. Of the jars, one more of each
 * size that the cellar has is tried, and the one that brings most is told.
 */
import type { SeasonRelief } from '../../../shared/schemas/season.ts'
import type { Otherwise } from './season-facts.ts'
import { jarClasses } from './season-question.ts'
import { coverSeason, type Covered, type Reckoned, type Reckoning } from './reckon-season.ts'

interface Easing {
  readonly eases: SeasonRelief['eases']
  readonly unit: SeasonRelief['unit']
  readonly by: number
  readonly otherwise: Otherwise
}

const eased = { moneyMinor: 10_000, bottles: 12, spiritMl: 1000, weeks: 2 } as const
/** Less than half a small glass is no gain. */
const leastGainMl = 20

export function easings({ facts }: Pick<Reckoning, 'facts'>): Easing[] {
  const { limits } = facts.wishes
  const { moneyMinor, bottles, spiritMl, weeks } = eased
  return [
    ...[...new Set(jarClasses(facts).map(({ capacityMl }) => capacityMl))].map(
      (capacityMl): Easing => ({
        eases: 'jars',
        unit: 'jarMl',
        by: capacityMl,
        otherwise: { moreJarMl: capacityMl },
      }),
    ),
    ...(limits.moneyMinor === undefined
      ? []
      : [
          {
            eases: 'money',
            unit: 'minor',
            by: moneyMinor,
            otherwise: { moreMoneyMinor: moneyMinor },
          } as const,
        ]),
    ...(limits.shelfBottles === undefined
      ? []
      : [
          {
            eases: 'shelf',
            unit: 'bottles',
            by: bottles,
            otherwise: { moreBottles: bottles },
          } as const,
        ]),
    ...(limits.isSpiritAtHandOnly
      ? [
          {
            eases: 'spirit',
            unit: 'ml',
            by: spiritMl,
            otherwise: { moreSpiritMl: spiritMl },
          } as const,
        ]
      : []),
    { eases: 'fruitWeeks', unit: 'weeks', by: weeks, otherwise: { seasonWeeks: weeks } },
  ]
}

/** What easing it brings; undefined where it brings nothing. */
export function reliefOf(
  easing: Easing,
  plan: Reckoned,
  reckoning: Reckoning,
): SeasonRelief | undefined {
  const known = plan.solved
  const now = coverSeason({ ...reckoning, known, isCoverOnly: true }, easing.otherwise)
  const gainsMl = gain(plan, now)
  if (gainsMl < leastGainMl) return undefined
  return {
    eases: easing.eases,
    unit: easing.unit,
    by: easing.by,
    gainsMl,
    costsMinor: moneyOf(now) - moneyOf(plan),
    kinds: reckoning.kinds.flatMap(({ fruit }, index) => {
      const ownMl = (now.plannedMl[index] ?? 0) - (plan.plannedMl[index] ?? 0)
      return Math.abs(ownMl) >= leastGainMl ? [{ kindId: fruit.id, gainsMl: ownMl }] : []
    }),
    isProven: now.solved.isProven && plan.solved.isProven,
  }
}

const gain = (before: Covered, after: Covered): number => sum(before.shortMl) - sum(after.shortMl)

/** Bought new, by the weights of the program: what a plan costs where prices are known. */
function moneyOf({ asked, solved }: Covered): number {
  const { ways, kinds, spirits, sweeteners, minorPerBottle } = asked.question
  const used = (perKg: (way: (typeof ways)[number]) => number) =>
    solved.loads.reduce((total, { wayIndex, kg }) => {
      const way = ways[wayIndex]
      return way ? total + kg * perKg(way) : total
    }, 0)
  const bought = (
    supplies: typeof spirits,
    amounts: (way: (typeof ways)[number]) => readonly number[],
  ) =>
    supplies.reduce((total, { atHand, minorPerUnit }, index) => {
      const needed = used((way) => amounts(way)[index] ?? 0)
      return total + Math.max(0, needed - atHand) * minorPerUnit
    }, 0)
  return (
    used(({ fruitMinorPerKg }) => fruitMinorPerKg) +
    bought(spirits, ({ spiritMlPerKg }) => spiritMlPerKg) +
    bought(sweeteners, ({ sweetenerGPerKg }) => sweetenerGPerKg) +
    used(
      ({ lPerKg, kindIndex }) =>
        (lPerKg * 1000 * minorPerBottle) / (kinds[kindIndex]?.bottleSizeMl ?? 1000),
    )
  )
}

/** The most useful first; of the sizes of jars only the one that brings most. */
export function mostUseful(reliefs: readonly SeasonRelief[]): SeasonRelief[] {
  const sorted = [...reliefs].sort((a, b) => b.gainsMl - a.gainsMl || a.by - b.by)
  const bestJar = sorted.find(({ eases }) => eases === 'jars')
  return sorted.filter((relief) => relief.eases !== 'jars' || relief === bestJar)
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)
