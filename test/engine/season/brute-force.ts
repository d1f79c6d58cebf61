/**
 * The best plan of a tiny season, found by trying every number of jars in every week. Written apart
 * from the program: capacity is counted week by week, and what is wanted is filled up to the brim.
 * Money is spent where a coin covers most. Only for one way a kind, without taken jars, pantry and
 * shelf limits.
 */
import type { SeasonQuestion, Way } from '../../../main/engine/season/season-program.ts'

interface Filling {
  readonly steep: readonly number[]
  readonly settle: readonly number[]
  readonly lowKg: number
  readonly highKg: number
  readonly trouble: number
}

const litreShort = { must: 1000, should: 100, could: 10 }

export function bestByTrying(question: SeasonQuestion, mostL: readonly number[]): number {
  const { ways, classes, kinds, cleaningWeeks } = question
  const starts = ways.flatMap((way) => way.starts.map((start) => ({ way, start })))
  const fillings = starts.map(({ way, start }) =>
    allFillings(question, way, start.weeksFromPlenty, (mostL[way.kindIndex] ?? 0) / way.lPerKg),
  )
  const used = classes.map(() => Array.from({ length: 200 }, () => 0))
  const low = kinds.map(() => 0)
  const high = kinds.map(() => 0)
  let best = Infinity

  const occupy = (way: Way, week: number, { steep, settle }: Filling, by: number): boolean => {
    let fits = true
    const take = (classIndex: number, count: number, from: number, to: number) => {
      for (let at = from; at < to + cleaningWeeks; at += 1) {
        const weeks = used[classIndex]!
        weeks[at]! += by * count
        if (weeks[at]! > classes[classIndex]!.jarIds.length) fits = false
      }
    }
    steep.forEach((count, index) => take(index, count, week, week + way.emptiedWeek))
    settle.forEach((count, index) =>
      take(index, count, week + way.settleFromWeek, week + way.settleToWeek),
    )
    return fits
  }

  const attempt = (index: number, trouble: number) => {
    if (trouble >= best) return
    const next = starts[index]
    if (!next) {
      best = Math.min(best, trouble + uncovered(question, mostL, low, high))
      return
    }
    const { way, start } = next
    for (const filling of fillings[index]!) {
      if (occupy(way, start.week, filling, 1)) {
        low[way.kindIndex]! += filling.lowKg * way.lPerKg
        high[way.kindIndex]! += filling.highKg * way.lPerKg
        if (low[way.kindIndex]! <= mostL[way.kindIndex]! + 1e-9)
          attempt(index + 1, trouble + filling.trouble)
        low[way.kindIndex]! -= filling.lowKg * way.lPerKg
        high[way.kindIndex]! -= filling.highKg * way.lPerKg
      }
      occupy(way, start.week, filling, -1)
    }
  }
  attempt(0, 0)
  return best
}

const countOf = (jars: readonly number[]): number => jars.reduce((total, n) => total + n, 0)

/** Every number of jars of each size, with the fruit that they take at least and at most. */
function allFillings(
  { classes }: SeasonQuestion,
  way: Way,
  weeksFromPlenty: number,
  mostKg: number,
): Filling[] {
  const counts = classes.reduce<number[][]>(
    (all, { jarIds }) =>
      all.flatMap((one) => Array.from({ length: jarIds.length + 1 }, (_, n) => [...one, n])),
    [[]],
  )
  const kgIn = (jars: readonly number[], fraction: number, mlPerKg: number) =>
    jars.reduce((sum, n, index) => sum + (n * fraction * classes[index]!.capacityMl) / mlPerKg, 0)
  return counts.flatMap((steep) =>
    counts.flatMap((settle): Filling[] => {
      const lowKg = Math.max(
        kgIn(steep, 0.4, way.steepMlPerKg),
        kgIn(settle, 0.4, way.settleMlPerKg),
      )
      const highKg = Math.min(
        mostKg,
        kgIn(steep, 0.95, way.steepMlPerKg),
        kgIn(settle, 0.95, way.settleMlPerKg),
      )
      if (lowKg > highKg + 1e-9) return []
      const narrow = steep.reduce((n, count, index) => n + (classes[index]!.isWide ? 0 : count), 0)
      const trouble =
        countOf(steep) * (0.2 + 0.02 * weeksFromPlenty) + 0.05 * narrow + 0.1 * countOf(settle)
      return [{ steep, settle, lowKg, highKg, trouble }]
    }),
  )
}

/** What stays uncovered, what is over, and money, when the jars are filled as well as money allows. */
function uncovered(
  question: SeasonQuestion,
  mostL: readonly number[],
  low: readonly number[],
  high: readonly number[],
): number {
  const { kinds, moneyMinor = Infinity } = question
  const minorPerL = kinds.map((_, index) => costOfL(question, index))
  const dearest = Math.max(...minorPerL)
  let leftMinor = moneyMinor - kinds.reduce((sum, _, k) => sum + low[k]! * minorPerL[k]!, 0)
  if (leftMinor < -1e-6) return Infinity
  let sum = kinds.reduce((over, { wantedL }, k) => over + 0.1 * Math.max(0, low[k]! - wantedL), 0)
  const parts = kinds.flatMap(({ tiers, wantedL }, k) => {
    let fromL = 0
    return tiers.map(({ priority, isSure, volumeMl }) => {
      const toL = fromL + volumeMl / 1000
      const within = (litres: number) => Math.min(toL, Math.max(fromL, litres)) - fromL
      const forced = within(low[k]!)
      const open = within(Math.min(high[k]!, wantedL, mostL[k]!)) - forced
      fromL = toL
      const weight = litreShort[priority] * (isSure ? 2 : 1)
      sum += weight * (volumeMl / 1000 - forced)
      return { weight, perL: minorPerL[k]!, openL: Math.max(0, open) }
    })
  })
  parts.sort((a, b) => b.weight * a.perL - a.weight * b.perL)
  for (const { weight, perL, openL } of parts) {
    const litres = perL > 0 ? Math.min(openL, leftMinor / perL) : openL
    leftMinor -= litres * perL
    sum -= weight * litres
  }
  const spentMinor = moneyMinor - leftMinor
  return sum + (dearest > 0 && moneyMinor < Infinity ? spentMinor / dearest : 0)
}

/** All of it bought. */
function costOfL({ ways, kinds, spirits, sweeteners, minorPerBottle }: SeasonQuestion, k: number) {
  const way = ways.find(({ kindIndex }) => kindIndex === k)!
  const spirit = way.spiritMlPerKg.reduce((sum, ml, i) => sum + ml * spirits[i]!.minorPerUnit, 0)
  const sweet = way.sweetenerGPerKg.reduce((sum, g, i) => sum + g * sweeteners[i]!.minorPerUnit, 0)
  const perBottle = (minorPerBottle * 1000) / kinds[k]!.bottleSizeMl
  return (way.fruitMinorPerKg + spirit + sweet) / way.lPerKg + perBottle
}
