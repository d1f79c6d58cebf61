/**
 * The wishes as rows of a linear program: at a given mixture, volume is a sum over the parts, so
 * "30 % vol" says that ethanol less thirty hundredths of the volume adds up to nothing.
 */
import { massOf, type Matter } from '../../../shared/matter.ts'
import type { MarryWishes, Wish, WishName } from '../../../shared/schemas/marrying.ts'
import { ethanolDensityKgPerM3 } from '../alcoholometry/density-of-spirit.ts'
import type { Solution } from '../solution/liquid-volume.ts'
import { sucroseSolubility } from '../solution/sucrose-solubility.ts'
import type { Measured } from './blend-part.ts'
import type { ProgramBuilder, Terms } from './linear-program.ts'
import { addedVolumeMl } from './partial-volumes.ts'

export type RatioWish = Exclude<WishName, 'volumeMl'>
export const ratioWishes = [
  'strengthPctVol',
  'sugarGPerL',
  'acidGPerL',
] as const satisfies readonly RatioWish[]

/** How bad a miss is, so that unlike wishes compare: 1 % vol, 10 g/L of sugar, 1 g/L of acid. */
const weights: Readonly<Record<RatioWish, number>> = {
  strengthPctVol: 1,
  sugarGPerL: 0.1,
  acidGPerL: 1,
}
/** Sugar that does not dissolve is no wish granted: it outweighs the wish for it. */
const undissolvedWeight = 0.5

/** What stands above the volume in a wish, so that divided by litres it is the wished quantity. */
export function quantityOf(wish: RatioWish, matter: Matter): number {
  switch (wish) {
    case 'strengthPctVol':
      return (100 * matter.ethanolG) / ethanolDensityKgPerM3
    case 'sugarGPerL':
      return matter.sugarG
    case 'acidGPerL':
      return matter.acidG
  }
}

/** The parts in numbers at a given mixture. */
export interface Model {
  readonly parts: readonly Measured[]
  readonly wishes: MarryWishes
  /** Litres that a step of each part adds. */
  readonly litres: readonly number[]
  /** Grams of sugar that a gram of water keeps dissolved in this mixture. */
  readonly sugarPerWater: number
}

export function modelAt(
  parts: readonly Measured[],
  wishes: MarryWishes,
  mixture: Matter,
  growth: Solution,
): Model {
  const { ethanolG, waterG } = mixture
  const ethanolMassFraction = ethanolG / Math.max(ethanolG + waterG, 1e-9)
  return {
    parts,
    wishes,
    litres: parts.map(({ step }) => addedVolumeMl(step, growth) / 1000),
    sugarPerWater: sucroseSolubility({ ethanolMassFraction, temperatureC: 20 }),
  }
}

export const sumOf = (variables: readonly number[], each: readonly number[]): Terms =>
  variables.map((variable, index) => [variable, each[index] ?? 0] as const)

export const quantities = (parts: readonly Measured[], wish: RatioWish): number[] =>
  parts.map(({ step }) => quantityOf(wish, step))

/** By how much a blend of these steps misses the wishes for what it is like, weighted, times its litres. */
export function addMisses(
  builder: ProgramBuilder,
  steps: readonly number[],
  model: Model,
  only: readonly RatioWish[] = ratioWishes,
): Terms {
  const misses: [number, number][] = []
  for (const wish of only) {
    const { low, high }: Wish = model.wishes[wish] ?? {}
    const amounts = quantities(model.parts, wish)
    const beyond = (target: number) =>
      amounts.map((amount, index) => amount - target * (model.litres[index] ?? 0))
    if (low !== undefined && low > 0) {
      const miss = builder.variable()
      builder.atLeast([...sumOf(steps, beyond(low)), [miss, 1]], 0)
      misses.push([miss, weights[wish]])
    }
    if (high !== undefined) {
      const miss = builder.variable()
      builder.atMost([...sumOf(steps, beyond(high)), [miss, -1]], 0)
      misses.push([miss, weights[wish]])
    }
  }
  const undissolved = builder.variable()
  const excess = model.parts.map(({ step }) => step.sugarG - model.sugarPerWater * step.waterG)
  builder.atMost([...sumOf(steps, excess), [undissolved, -1]], 0)
  misses.push([undissolved, undissolvedWeight])
  return misses
}

/**
 * A blend of one litre: each part as its share, limits scaled by a variable that stands for one
 * over the true volume, so that composition can be judged before the volume is known.
 */
export function addLitre(builder: ProgramBuilder, model: Model): number[] {
  const steps = model.parts.map(() => builder.variable())
  const perLitre = builder.variable()
  steps.forEach((step, index) => {
    const { low, high } = model.parts[index] as Measured
    builder.atMost(
      [
        [step, 1],
        [perLitre, -high],
      ],
      0,
    )
    if (low > 0)
      builder.atLeast(
        [
          [step, 1],
          [perLitre, -low],
        ],
        0,
      )
  })
  builder.equal(sumOf(steps, model.litres), 1)
  return steps
}

/** Kilograms of each step, for what is judged by mass. */
export const kilograms = (parts: readonly Measured[]): number[] =>
  parts.map(({ step }) => massOf(step) / 1000)
