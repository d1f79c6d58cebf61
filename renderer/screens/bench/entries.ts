/** What stands in a tool's form, and the question that it makes. */
import {
  BenchRequest,
  type BenchInputName,
  type BenchInstrument,
  type BenchLiquid,
} from '../../../shared/schemas/bench.ts'
import type { FineSpec, Mode, Tool } from './tools.ts'

type Numbers = Readonly<Partial<Record<BenchInputName, number | undefined>>>

export interface Entries {
  readonly instrument: BenchInstrument
  readonly numbers: Numbers
  /** Only what the maker has said: the rest is as usual for its kind. */
  readonly fineness: Numbers
  readonly liquid: BenchLiquid
  readonly isCompensated: boolean
}

/** Numbers that two ways of a tool share are kept when the maker changes from one to the other. */
export const startOf = ({ modes }: Tool): Entries => ({
  instrument: modes[0].instrument,
  numbers: Object.fromEntries(
    modes.toReversed().flatMap(({ numbers }) => numbers.map(({ name, start }) => [name, start])),
  ),
  fineness: {},
  liquid: 'spirit',
  isCompensated: true,
})

export const modeOf = ({ modes }: Tool, { instrument }: Entries): Mode =>
  modes.find((mode) => mode.instrument === instrument) ?? modes[0]

/** How fine a number is taken to be read, if nobody says otherwise. */
export function usualFinenessOf({ name, usual }: FineSpec, numbers: Numbers): number | undefined {
  if (typeof usual === 'number') return usual
  const value = numbers[name]
  return value === undefined ? undefined : Math.abs(value) * usual.share
}

/** Undefined while a number is missing. */
export function requestOf(mode: Mode, entries: Entries): BenchRequest | undefined {
  const fineness = given(
    mode.fine.map(({ name }) => name),
    entries.fineness,
  )
  const parsed = BenchRequest.safeParse({
    instrument: mode.instrument,
    ...given(
      mode.numbers.map(({ name }) => name),
      entries.numbers,
    ),
    ...(mode.asksLiquid && { liquid: entries.liquid }),
    ...(mode.asksCompensation && { isCompensated: entries.isCompensated }),
    ...(Object.keys(fineness).length > 0 && { fineness }),
  })
  return parsed.success ? parsed.data : undefined
}

const given = (names: readonly BenchInputName[], from: Numbers) =>
  Object.fromEntries(
    names.flatMap((name) => (from[name] === undefined ? [] : [[name, from[name]]])),
  )
