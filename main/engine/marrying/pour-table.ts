/**
 * How much of each part goes into each bottle, so that all bottles hold the same?
 *
 * Each bottle gets its share of every part, in whole ml (grams for what is dry): the nearest where
 * there is enough for all bottles, else the one below. What whole numbers leave over is stated, so
 * that bottles and remainder add up to the part exactly. What those amounts make is computed anew.
 * In: parts of a blend in order of pouring, bottles, the blend's volume. Leaves out: what clings.
 */
import { massOf, scaleMatter, sumMatter, type Matter } from '../../../shared/matter.ts'
import type { BlendAmount, PourTable } from '../../../shared/schemas/marrying.ts'
import { describeLiquid } from '../ledger/jar-liquid.ts'
import type { PartKind } from './blend-part.ts'

export interface PouredPart {
  readonly amount: BlendAmount
  readonly matter: Matter
  readonly kind: PartKind
  readonly volumeMl: number
  readonly densityKgPerM3: number
}

export interface Bottles {
  readonly sizeMl: number
  readonly count: number
}

export function pourTable(
  parts: readonly PouredPart[],
  bottles: readonly Bottles[],
  blendMl: number,
): PourTable {
  const totals = parts.map(totalOf)
  const amounts = parts.map((_, part) => wholeShares(totals[part]?.total ?? 0, bottles, blendMl))
  const rows = bottles.map(({ sizeMl, count }, row) => {
    const own = amounts.map((ofPart) => ofPart[row] ?? 0)
    const made = sumMatter(
      parts.map(({ matter }, part) => {
        const total = totals[part]?.total ?? 0
        return scaleMatter(matter, total > 0 ? (own[part] ?? 0) / total : 0)
      }),
    )
    const liquid = describeLiquid(made)
    return {
      sizeMl,
      count,
      amounts: own,
      filledMl: liquid?.volumeMl ?? 0,
      strengthPctVol: liquid?.strengthPctVol ?? 0,
      sugarGPerL: liquid?.sugarGPerL ?? 0,
    }
  })
  const columns = totals.map(({ place, unit, total }, part) => {
    const poured = bottles.reduce(
      (sum, { count }, row) => sum + count * (amounts[part]?.[row] ?? 0),
      0,
    )
    return { place, unit, total, remainder: total - poured }
  })
  return { columns, rows }
}

/** Dry things are weighed, liquids measured, bottles opened and measured. */
function totalOf({ amount: { place, unit }, matter, volumeMl }: PouredPart) {
  return unit === 'g'
    ? { place, unit, total: massOf(matter) }
    : { place, unit: 'ml' as const, total: volumeMl }
}

/** Rounding a hair above a whole number must not cost a whole step. */
const hair = 1e-6

function wholeShares(total: number, bottles: readonly Bottles[], blendMl: number): number[] {
  const exact = bottles.map(({ sizeMl }) => (blendMl > 0 ? (total * sizeMl) / blendMl : 0))
  const sum = (each: readonly number[]) =>
    bottles.reduce((poured, { count }, row) => poured + count * (each[row] ?? 0), 0)
  const nearest = exact.map((share) => Math.round(share))
  if (sum(nearest) <= total + hair) return nearest
  return exact.map((share) => Math.floor(share + hair))
}
