/** The pieces of an answer of the Bench, in the form of the contract. */
import type {
  BenchDimension,
  BenchInputName,
  BenchNote,
  BenchQuantity,
  BenchReply,
  BenchResult,
} from '../../../shared/schemas/bench.ts'
import { usualFineness } from '../../../shared/fineness.ts'
import { flammablePctVol } from '../cautions/jar-cautions.ts'
import type { Measured } from '../readings/propagate.ts'

/** What was taken: the exact ones without an uncertainty. */
export const taken = (
  inputs: Readonly<Partial<Record<BenchInputName, Measured>>>,
): BenchReply['inputs'] =>
  Object.entries(inputs).map(([name, { value, uncertainty }]) => ({
    name: name as BenchInputName,
    value,
    ...(uncertainty > 0 && { uncertainty }),
  }))

/** An uncertainty that is not known is left out. */
const told = (
  isAnswer: boolean,
  quantity: BenchQuantity,
  dimension: BenchDimension,
  { value, uncertainty }: Measured,
): BenchResult => ({
  quantity,
  dimension,
  value,
  ...(Number.isFinite(uncertainty) && { uncertainty }),
  isAnswer,
})

type Told = [quantity: BenchQuantity, dimension: BenchDimension, found: Measured]

export const answer = (...result: Told): BenchResult => told(true, ...result)
export const detail = (...result: Told): BenchResult => told(false, ...result)

/** A measured volume, read off a jug when nothing else is said. */
export const jugMl = (volumeMl: number, finenessMl: number | undefined): Measured => ({
  value: volumeMl,
  uncertainty: finenessMl ?? Math.abs(volumeMl) * usualFineness.jugShare,
})

/** Vapour of strong spirit burns at room temperature: said wherever it is handled. */
export const strongSpirit = (strengthPctVol: number): BenchNote[] =>
  strengthPctVol >= flammablePctVol
    ? [{ code: 'strongSpirit', value: flammablePctVol, dimension: 'strength' }]
    : []
