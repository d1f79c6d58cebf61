/**
 * How much more is taken in each month of the year than in the mean month?
 *
 * Method: what was taken in a calendar month over what its kinds' mean rates would have taken while
 * there was some, shrunk to flat as if a few ordinary takings more had been seen in each month (an
 * estimate); scaled to a mean of 1. Over all kinds together: one kind's takings are too few.
 * In: months of several kinds. Out: twelve factors, January first. Leaves out: feasts that wander.
 */
import { monthsPerYear } from './months.ts'
import type { MonthOfTaking, Stream } from './taking-history.ts'

export type Seasonality = readonly number[]

export const flat: Seasonality = Array.from({ length: monthsPerYear }, () => 1)

/** Ordinary takings that every month of the year is believed to have had besides. */
const believedTakings = 4

export const factorOf = (season: Seasonality, month: number): number =>
  season[month % monthsPerYear] ?? 1

export function seasonalityOf(
  kinds: readonly (readonly MonthOfTaking[])[],
  stream: Stream,
  takingMl: number,
): Seasonality {
  const takenMl = flat.map(() => believedTakings * takingMl)
  const expectedMl = [...takenMl]
  for (const months of kinds) {
    const exposure = sumOf(months, (month) => month.exposure)
    const rateMl = exposure > 0 ? sumOf(months, (month) => month.takenMl[stream]) / exposure : 0
    for (const month of months) {
      const at = month.month % monthsPerYear
      takenMl[at] = (takenMl[at] as number) + month.takenMl[stream]
      expectedMl[at] = (expectedMl[at] as number) + rateMl * month.exposure
    }
  }
  const ratios = takenMl.map((taken, at) => taken / (expectedMl[at] as number))
  const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / monthsPerYear
  return ratios.map((ratio) => ratio / mean)
}

const sumOf = (months: readonly MonthOfTaking[], of: (month: MonthOfTaking) => number) =>
  months.reduce((sum, month) => sum + of(month), 0)
