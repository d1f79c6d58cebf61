/**
 * How much of its red does a liqueur keep?
 *
 * Method: anthocyanins go by first order, A/A0 = 2^(-t/th), with th by Arrhenius from 20 °C and
 * divided by the light's factor (craft reference; Sokół-Łętowska et al. 2014, 2018; Muche et al.
 * 2018). Fruits fade each by their own th and add up by share. The band joins the ranges of th, of
 * the activation energy and of the light as logarithms of the loss, in quadrature.
 * In: fruits and stays, instants in ms. Out: share of the colour at bottling, 0 to 1 with band;
 * undefined where less than a tenth of the fruit is red.
 * Leaves out: polymer pigments, which stay as brick-red and brown, and the bottle's own tint.
 * @example anthocyaninHalfLifeWeeks({ stability: 'stable', temperatureC: 20 }) // 14
 */
import type { ShelfLight } from '../../../shared/schemas/shelf.ts'
import type { Banded } from '../../../shared/schemas/steeping.ts'
import { arrhenius } from '../steeping/keeping.ts'
import type { AgeingFruit, Stay } from './ageing-lot.ts'
import { colourStabilityOf, halfLifeWeeksAt20C, type ColourStability } from './colour-stability.ts'
import { ageingActivation, clockOf, fasterInLight } from './storage.ts'

const daysPerWeek = 7
const leastRedShare = 0.1

export const anthocyaninHalfLifeWeeks = ({
  stability,
  temperatureC,
  light = 'dark',
}: {
  readonly stability: ColourStability
  readonly temperatureC: number
  readonly light?: ShelfLight
}): number =>
  halfLifeAt({ halfLife: halfLifeWeeksAt20C[stability].typical, atC: 20, temperatureC }) /
  fasterInLight[light].typical

/** A half-life known at one temperature, at another; activation energy in kJ/mol. */
export const halfLifeAt = ({
  halfLife,
  atC,
  temperatureC,
  activationKJPerMol = ageingActivation.typical,
}: {
  readonly halfLife: number
  readonly atC: number
  readonly temperatureC: number
  readonly activationKJPerMol?: number
}): number =>
  (halfLife * arrhenius(activationKJPerMol, atC)) / arrhenius(activationKJPerMol, temperatureC)

export interface ColourQuestion {
  readonly fruits: readonly Pick<AgeingFruit, 'share' | 'fruit'>[]
  readonly stays: readonly Stay[]
  readonly bottledAtMs: number
  readonly atMs: number
}

export function colourLeft(question: ColourQuestion): Banded | undefined {
  const { fruits } = question
  const red = fruits.flatMap(({ fruit, share }) => {
    const stability = colourStabilityOf(fruit.id)
    return stability ? [{ stability, share }] : []
  })
  const redShare = sumOf(red)
  if (redShare === 0 || redShare < leastRedShare * sumOf(fruits)) return undefined
  const weeks = weeksAt20C(question)
  const of = (left: (stability: ColourStability) => number) =>
    red.reduce((sum, { stability, share }) => sum + share * left(stability), 0) / redShare
  return {
    value: of((stability) => 2 ** (-weeks.typical / halfLifeWeeksAt20C[stability].typical)),
    low: of((stability) => 2 ** -halvings(weeks, stability, 'fast')),
    high: of((stability) => 2 ** -halvings(weeks, stability, 'slow')),
  }
}

const sumOf = (parts: readonly { readonly share: number }[]) =>
  parts.reduce((sum, { share }) => sum + share, 0)

/** Weeks at 20 °C in the dark that do as much: the best figure, and what moves it to either side. */
interface WeeksThatCount {
  readonly typical: number
  readonly byActivation: readonly [number, number]
  readonly byLight: readonly [number, number]
}

function weeksAt20C({ bottledAtMs, stays, atMs }: ColourQuestion): WeeksThatCount {
  const weeks = (activation: keyof typeof ageingActivation, light: 'typical' | 'low' | 'high') => {
    const rate = (stay: Omit<Stay, 'fromMs'>) =>
      arrhenius(ageingActivation[activation], stay.temperatureC) * fasterInLight[stay.light][light]
    return clockOf(bottledAtMs, stays, rate).ageDays(atMs) / daysPerWeek
  }
  return {
    typical: weeks('typical', 'typical'),
    byActivation: [weeks('low', 'typical'), weeks('high', 'typical')],
    byLight: [weeks('typical', 'low'), weeks('typical', 'high')],
  }
}

/** How many times its colour halves at the end of the band where it goes fast, or slowly. */
function halvings(weeks: WeeksThatCount, stability: ColourStability, pace: 'fast' | 'slow') {
  const { typical, low, high } = halfLifeWeeksAt20C[stability]
  if (weeks.typical === 0) return 0
  const sign = pace === 'fast' ? 1 : -1
  const out = (ends: readonly [number, number]) =>
    Math.max(0, ...ends.map((end) => sign * Math.log(end / weeks.typical)))
  const byHalfLife = Math.log(pace === 'fast' ? typical / low : high / typical)
  const deviation = Math.hypot(byHalfLife, out(weeks.byActivation), out(weeks.byLight))
  return (weeks.typical / typical) * Math.exp(sign * deviation)
}
