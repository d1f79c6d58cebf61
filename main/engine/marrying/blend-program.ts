/** The best blend at a given mixture: what it is like, then how much, then which of the rest. */
import type { MarryRequest } from '../../../shared/schemas/marrying.ts'
import { addLitre, addMisses, kilograms, sumOf, type Model } from './blend-model.ts'
import type { Measured } from './blend-part.ts'
import {
  ProgramBuilder,
  solveInOrder,
  valueOf,
  type SolveLinear,
  type Stage,
  type Terms,
} from './linear-program.ts'

export interface Aims {
  readonly prefer: MarryRequest['prefer']
  readonly holds: MarryRequest['holds']
  /** Where no volume is wished: as much as can be, or as little as must be. */
  readonly amount: 'most' | 'least'
}

export interface Solved {
  /** Of each part. */
  readonly steps: readonly number[]
  /** Of each size of bottle wished for. */
  readonly bottles: readonly number[]
}

const slack = 1e-7

/** What 1 % vol too much or too little in a litre weighs against a litre that is missing. */
const missWeight = 1000
/** Where only whole bottles go in: they rarely meet a strength, and a fuller vessel is worth a little. */
const wholeMissWeight = 0.2

export function bestBlend(model: Model, aims: Aims, solve: SolveLinear): Solved | undefined {
  const builder = new ProgramBuilder()
  const steps = model.parts.map(({ low, high, isWhole }) => builder.variable(low, high, isWhole))
  const litres = sumOf(steps, model.litres)
  const misses = addMisses(builder, steps, model)
  const { bottles, aim: volume } = addVolume(builder, model, litres, aims)
  const choice = addPreference(builder, steps, model, aims)
  const stages: Stage[] | undefined =
    aims.holds === 'volume'
      ? [{ aim: volume, keeps: [], settles: bottles }, { aim: volume }, { aim: misses }]
      : compositionFirst(builder, model, { litres, misses, volume, bottles }, solve)
  const values = stages && solveInOrder(builder, [...stages, { aim: choice }], solve, slack)
  const at = (variable: number) => values?.[variable] ?? 0
  return values && { steps: steps.map(at), bottles: bottles.map(at) }
}

interface Parts {
  readonly litres: Terms
  readonly misses: Terms
  readonly volume: Terms
  readonly bottles: readonly number[]
}

/** The least miss that any volume allows is allowed at every volume; more of it costs first. */
function compositionFirst(
  builder: ProgramBuilder,
  model: Model,
  { litres, misses, volume, bottles }: Parts,
  solve: SolveLinear,
): Stage[] | undefined {
  const missPerLitre = leastMiss(model, solve)
  if (missPerLitre === undefined) return undefined
  const excess = builder.variable()
  builder.atMost([...misses, ...scaled(litres, -missPerLitre), [excess, -1]], slack)
  const isAllWhole = model.parts.every(({ isWhole, high }) => isWhole || high === 0)
  const weight = isAllWhole ? wholeMissWeight : missWeight
  const aim: Terms = [...volume, [excess, weight]]
  return [{ aim, keeps: [[[excess, 1]]], settles: bottles }, { aim: volume }]
}

const scaled = (terms: Terms, factor: number): Terms =>
  terms.map(([variable, each]) => [variable, each * factor] as const)

export function leastMiss(model: Model, solve: SolveLinear): number | undefined {
  const builder = new ProgramBuilder()
  const misses = addMisses(builder, addLitre(builder, model), model)
  const values = solve(builder.minimising(misses))
  return values && Math.max(valueOf(misses, values), 0)
}

/** Litres as wished, in whole bottles, or as many or as few as can be. */
function addVolume(builder: ProgramBuilder, model: Model, litres: Terms, { amount }: Aims) {
  const { volumeMl, bottles: sizes } = model.wishes
  const aim: [number, number][] = []
  const near = (low: number | undefined, high: number | undefined) => {
    if (low !== undefined) {
      const short = builder.variable()
      builder.atLeast([...litres, [short, 1]], low / 1000)
      aim.push([short, 1])
    }
    if (high !== undefined) {
      const over = builder.variable()
      builder.atMost([...litres, [over, -1]], high / 1000)
      aim.push([over, 1])
    }
  }
  near(volumeMl?.low, volumeMl?.high)
  if (!sizes) {
    if (aim.length > 0) return { bottles: [], aim }
    const sign = amount === 'most' ? -1 : 1
    return { bottles: [], aim: scaled(litres, sign) }
  }
  // Of one size, the whole bottles in the greatest volume are the most: nothing to search for.
  const isSearched = sizes.length > 1 || model.parts.some(({ isWhole }) => isWhole)
  const bottles = sizes.map(({ count }) => builder.variable(0, count ?? mostBottles, isSearched))
  const filled = bottles.map((variable, i) => [variable, (sizes[i]?.sizeMl ?? 0) / 1000] as const)
  const rest = builder.variable()
  builder.equal([...litres, ...scaled(filled, -1), [rest, -1]], 0)
  // A bottle more is worth any rest; of equal bottles, the least rest.
  return { bottles, aim: [...aim, ...scaled(filled, -1), [rest, restWeight] as const] }
}

/** A litre that fills no bottle, against one that does. */
const restWeight = 0.01

const mostBottles = 20_000

/** Among blends that are as good: the maker's preference, then the most of the extracts. */
function addPreference(
  builder: ProgramBuilder,
  steps: readonly number[],
  model: Model,
  { prefer }: Aims,
): Terms {
  const masses = kilograms(model.parts)
  const using = model.parts.map(({ part: { kind } }, i) => keenness[kind] * (masses[i] ?? 0))
  switch (prefer) {
    case 'useUp':
      return sumOf(steps, using)
    case 'cheapest': {
      const costs = model.parts.map(({ costPerStep }) => costPerStep)
      const dearest = Math.max(...costs, 1e-9)
      return sumOf(
        steps,
        costs.map((cost, i) => cost / dearest + 1e-4 * (using[i] ?? 0)),
      )
    }
    case 'even':
      return [
        ...addUnevenness(builder, steps, model.parts),
        ...sumOf(
          steps,
          using.map((u) => u * 1e-4),
        ),
      ]
  }
}

/** What is added to a blend of extracts is added sparingly, and water before spirit. */
const keenness = { extract: -1, water: 0.1, sweetener: 0.2, acid: 0.3, spirit: 0.3 } as const

/** How far the used shares of the extracts lie from one common share. */
function addUnevenness(
  builder: ProgramBuilder,
  steps: readonly number[],
  parts: readonly Measured[],
): Terms {
  const common = builder.variable(0, 1)
  const apart: [number, number][] = []
  parts.forEach(({ part, high }, index) => {
    if (part.kind !== 'extract' || high <= 0) return
    const off = builder.variable()
    const share = [steps[index] ?? 0, 1 / high] as const
    builder.atMost([share, [common, -1], [off, -1]], 0)
    builder.atLeast([share, [common, -1], [off, 1]], 0)
    apart.push([off, 1])
  })
  return apart
}
