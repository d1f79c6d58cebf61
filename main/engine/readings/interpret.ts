/**
 * What does a reading in a batch mean, and may it be believed?
 *
 * Each instrument by its own calculation; what one instrument alone cannot tell is taken from what
 * the ledger expects. Hydrometers and alcoholometers are glass, graduated at 20 °C; refractometers
 * are taken as temperature-compensated. In: the reading as noted, and the ledger's expectation.
 * Out: the quantities it tells, at 20 °C, with standard uncertainties, and doubts; never an error
 * for anything an instrument can show.
 * Leaves out: whether the reading agrees with the ledger, which the fit weighs.
 * @example interpretReading({ instrument: 'measuringJug', volumeMl: 500, temperatureC: 20 }, {}).volumeMl // 500
 */
import type { Interpretation, Reading, ReadingDoubt } from '../../../shared/schemas/readings.ts'
import { DomainError } from '../domain-error.ts'
import { volumeAt20 } from '../solution/volume-at-20.ts'
import { strengthByBoilOff } from './boil-off.ts'
import { densityOfHydrometer } from './hydrometer.ts'
import { rootSumSquare } from './instruments.ts'
import type { MeasuredLiquor } from './measured-liquor.ts'
import {
  type Expectation,
  readAlcoholometer,
  readHydrometer,
  readRefractometer,
} from './one-instrument.ts'
import { strengthByTwoInstruments } from './two-instruments.ts'

/** What the ledger knows of the liquid that was read. */
export interface ReadingContext extends Expectation {
  readonly strongestPouredPctVol?: number | undefined
  /** Acid and other solubles: every instrument takes them for sugar. */
  readonly expectedOtherExtractGPerL?: number | undefined
}

/** Sugar above this makes an alcoholometer show more than half a % vol too little. */
const misleadingSugarGPerL = 2

/** No spirit on sale is stronger. */
const strongestPctVol = 97

/** How well the ledger knows acid and other solubles: food tables against a maker's own fruit. */
const otherExtractUncertainty = 0.3

export function interpretReading(reading: Reading, context: ReadingContext): Interpretation {
  const seen = withAllExtract(context)
  try {
    const told = sugarAlone(tell(reading, seen), context)
    return { ...told, doubts: doubtsOf(told, reading, seen) }
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    const doubt = error.code === 'noSuchMixture' ? 'noSuchMixture' : 'outOfRange'
    return { doubts: [doubt, ...doubtsOf({}, reading, seen)] }
  }
}

/** What the instruments see as sugar. */
function withAllExtract(context: ReadingContext): ReadingContext {
  const { expectedSugarGPerL, expectedOtherExtractGPerL = 0 } = context
  if (expectedSugarGPerL === undefined) return context
  return { ...context, expectedSugarGPerL: expectedSugarGPerL + expectedOtherExtractGPerL }
}

/** Takes what the ledger expects of acid and other solubles off what was read as sugar. */
function sugarAlone(told: Told, { expectedOtherExtractGPerL = 0 }: ReadingContext): Told {
  const { sugarGPerL, sugarUncertaintyGPerL = 0 } = told
  if (sugarGPerL === undefined) return told
  return {
    ...told,
    sugarGPerL: Math.max(0, sugarGPerL - expectedOtherExtractGPerL),
    sugarUncertaintyGPerL: rootSumSquare(
      sugarUncertaintyGPerL,
      otherExtractUncertainty * expectedOtherExtractGPerL,
    ),
  }
}

type Told = Omit<Interpretation, 'doubts'>

function tell(reading: Reading, context: ReadingContext): Told {
  const { temperatureC } = reading
  switch (reading.instrument) {
    case 'alcoholometer':
      return readAlcoholometer(reading, context)
    case 'hydrometer':
      return readHydrometer(reading, context)
    case 'refractometer':
      return readRefractometer(reading, context)
    case 'hydrometerAndRefractometer':
      return toldBy(
        strengthByTwoInstruments({
          densityKgPerM3: trueDensity(reading.densityKgPerM3, temperatureC),
          brixReading: reading.brix,
          temperatureC,
          brixTemperatureC: temperatureC,
        }),
      )
    case 'boilOff':
      return toldBy(
        strengthByBoilOff({
          densityBeforeKgPerM3: trueDensity(reading.densityBeforeKgPerM3, temperatureC),
          densityAfterKgPerM3: trueDensity(reading.densityAfterKgPerM3, temperatureC),
          temperatureC,
        }),
      )
    case 'measuringJug':
      return {
        volumeMl: volumeAt20({
          volumeMl: reading.volumeMl,
          temperatureC,
          strengthPctVol: context.expectedStrengthPctVol ?? 0,
          sugarGPerL: context.expectedSugarGPerL ?? 0,
        }),
      }
  }
}

const trueDensity = (readingKgPerM3: number, temperatureC: number): number =>
  densityOfHydrometer({ readingKgPerM3, temperatureC })

const toldBy = (liquor: MeasuredLiquor): Told => ({
  strengthPctVol: liquor.strengthPctVol,
  strengthUncertaintyPctVol: liquor.uncertaintyPctVol,
  sugarGPerL: liquor.sugarGPerL,
  sugarUncertaintyGPerL: liquor.uncertaintyGPerL,
})

function doubtsOf(told: Told, reading: Reading, context: ReadingContext): ReadingDoubt[] {
  const doubts: ReadingDoubt[] = []
  const { strengthPctVol, strengthUncertaintyPctVol = 0 } = told
  const { expectedSugarGPerL = 0, strongestPouredPctVol = 100 } = context
  if (strengthPctVol !== undefined) {
    if (strengthPctVol > strongestPctVol) doubts.push('outOfRange')
    if (strengthPctVol > strongestPouredPctVol + 2 * strengthUncertaintyPctVol)
      doubts.push('strongerThanAnythingPoured')
  }
  if (reading.instrument === 'alcoholometer' && expectedSugarGPerL > misleadingSugarGPerL)
    doubts.push('instrumentMisledBySugar')
  return doubts
}
