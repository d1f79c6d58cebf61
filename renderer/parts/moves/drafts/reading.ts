/** What an instrument showed. Each instrument asks only for its own numbers. */
import type { Move, MoveOf } from '../../../../shared/schemas/moves.ts'
import type { Instrument, Reading } from '../../../../shared/schemas/readings.ts'
import {
  complete,
  headOf,
  headOfMove,
  missing,
  type DraftHead,
  type Outcome,
} from './draft-basics.ts'
import { hasLiquid, ownJars, type LogContext } from './log-context.ts'

/** Every number that some instrument shows. */
export interface ShownNumbers {
  readonly readingPctVol: number | undefined
  readonly densityKgPerM3: number | undefined
  readonly brix: number | undefined
  readonly densityBeforeKgPerM3: number | undefined
  readonly densityAfterKgPerM3: number | undefined
  readonly volumeMl: number | undefined
  readonly temperatureC: number | undefined
}

export type ShownNumber = keyof ShownNumbers

export interface ReadingDraft extends DraftHead {
  readonly kind: 'read'
  readonly jarId: string | undefined
  readonly instrument: Instrument
  readonly shown: ShownNumbers
  readonly isConfirmed: boolean
}

/** The numbers each instrument shows, in the order in which they are read off it. */
export const numbersOf = {
  alcoholometer: ['readingPctVol', 'temperatureC'],
  hydrometer: ['densityKgPerM3', 'temperatureC'],
  refractometer: ['brix', 'temperatureC'],
  hydrometerAndRefractometer: ['densityKgPerM3', 'brix', 'temperatureC'],
  boilOff: ['densityBeforeKgPerM3', 'densityAfterKgPerM3', 'temperatureC'],
  measuringJug: ['volumeMl', 'temperatureC'],
} as const satisfies Record<Instrument, readonly ShownNumber[]>

const nothingShown: ShownNumbers = {
  readingPctVol: undefined,
  densityKgPerM3: undefined,
  brix: undefined,
  densityBeforeKgPerM3: undefined,
  densityAfterKgPerM3: undefined,
  volumeMl: undefined,
  temperatureC: 20,
}

export const startReading = (context: LogContext): ReadingDraft => ({
  kind: 'read',
  at: context.now(),
  note: '',
  jarId: (ownJars(context).find(hasLiquid) ?? ownJars(context)[0])?.jar.id,
  instrument: 'hydrometer',
  shown: nothingShown,
  isConfirmed: false,
})

export function readingMoves(draft: ReadingDraft, batchId: string): Outcome<Move> {
  const { at, note, jarId, isConfirmed } = draft
  const reading = readingOf(draft.instrument, draft.shown)
  if (at === undefined || jarId === undefined || reading === undefined) {
    const numbers = numbersOf[draft.instrument].map((name) => [`shown.${name}`, draft.shown[name]])
    return missing({ at, jarId, ...Object.fromEntries(numbers) })
  }
  const confirmed = isConfirmed ? { isConfirmed } : {}
  return complete([{ ...headOf(at, note), kind: 'read', batchId, jarId, reading, ...confirmed }])
}

/** The instrument's numbers as a reading; undefined while one is missing. */
function readingOf(instrument: Instrument, shown: ShownNumbers): Reading | undefined {
  const { temperatureC, densityKgPerM3, brix, readingPctVol, volumeMl } = shown
  const { densityBeforeKgPerM3, densityAfterKgPerM3 } = shown
  if (temperatureC === undefined) return undefined
  switch (instrument) {
    case 'alcoholometer':
      return readingPctVol === undefined ? undefined : { instrument, readingPctVol, temperatureC }
    case 'hydrometer':
      return densityKgPerM3 === undefined ? undefined : { instrument, densityKgPerM3, temperatureC }
    case 'refractometer':
      return brix === undefined ? undefined : { instrument, brix, temperatureC }
    case 'hydrometerAndRefractometer':
      return densityKgPerM3 === undefined || brix === undefined
        ? undefined
        : { instrument, densityKgPerM3, brix, temperatureC }
    case 'boilOff':
      return densityBeforeKgPerM3 === undefined || densityAfterKgPerM3 === undefined
        ? undefined
        : { instrument, densityBeforeKgPerM3, densityAfterKgPerM3, temperatureC }
    case 'measuringJug':
      return volumeMl === undefined ? undefined : { instrument, volumeMl, temperatureC }
  }
}

export function readingOfMove(move: MoveOf<'read'>): ReadingDraft {
  const { instrument, ...shown } = move.reading
  return {
    kind: 'read',
    ...headOfMove(move),
    jarId: move.jarId,
    instrument,
    shown: { ...nothingShown, ...shown },
    isConfirmed: move.isConfirmed ?? false,
  }
}
