import * as z from 'zod'
import { CellarTemperatureC, Id, Instant } from './basics.ts'
import { StageBand } from './cellar.ts'
import { Cut, Turned } from './moves.ts'
import { Interpretation } from './readings.ts'

/** The best value, and the band that holds the true one nine times in ten. */
export const Banded = z.strictObject({ value: z.number(), low: z.number(), high: z.number() })
export type Banded = z.infer<typeof Banded>

/** What a curve tells of a liquid at an instant. */
export const CurveValues = z.strictObject({
  strengthPctVol: z.number(),
  sugarGPerL: z.number(),
  acidGPerL: z.number(),
  volumeMl: z.number(),
  /** Pure ethanol that the fruit holds, as volume at 20 °C. */
  ethanolInFruitMl: z.number(),
})
export type CurveValues = z.infer<typeof CurveValues>

export const CurvePoint = z.strictObject({
  at: Instant,
  ...CurveValues.shape,
  low: CurveValues.optional(),
  high: CurveValues.optional(),
})
export type CurvePoint = z.infer<typeof CurvePoint>

export const CurveSeries = z.strictObject({
  /** `whole` is all free liquid of the batch as if poured together; else a jar. */
  key: z.union([z.literal('whole'), Id]),
  points: z.array(CurvePoint),
})
export type CurveSeries = z.infer<typeof CurveSeries>

export const CurveReading = z.strictObject({
  moveId: Id,
  jarId: Id,
  at: Instant,
  interpretation: Interpretation,
  /** Doubtful and unconfirmed readings are kept, and not used. */
  isUsed: z.boolean(),
  /** How many standard uncertainties the fitted model lies from it; absent where it is not used. */
  residualSigmas: z.number().optional(),
  /** Used, and yet it does not fit: looked at again with less weight. */
  isOutlier: z.boolean(),
})
export type CurveReading = z.infer<typeof CurveReading>

/** What the readings and measured volumes of a batch say about its fruit. */
export const BatchFit = z.strictObject({
  readingsUsed: z.number().int(),
  volumesUsed: z.number().int(),
  /** Times faster than the kinetic class, and what was believed before any reading. */
  pace: Banded,
  priorPace: Banded,
  /** Litres of liquid held per litre that the library expects. */
  hold: Banded,
  priorHold: Banded,
  /** Share by which the fruit's own juice differs from the library's: 0.02 is 2 % more. */
  juice: Banded,
  priorJuice: Banded,
})
export type BatchFit = z.infer<typeof BatchFit>

/** A question asked of the curve: the same batch, handled otherwise. Times are from the start, or from now on. */
export const WhatIf = z.strictObject({
  since: z.enum(['start', 'now']),
  temperatureC: CellarTemperatureC.optional(),
  turned: Turned.optional(),
  cut: Cut.optional(),
  /** Pieces that many times their size. */
  pieceScale: z.number().min(0.1).max(4).optional(),
  /** When the liquid is drawn off. */
  drawOffAt: Instant.optional(),
})
export type WhatIf = z.infer<typeof WhatIf>

/** What a jar would give if it were drawn off at that instant. */
export const DrawOffOutcome = z.strictObject({
  jarId: Id,
  at: Instant,
  values: CurveValues,
  /** Share of the acid and other solubles that the jar gives up in the end; of the colour. */
  extractFraction: z.number(),
  colourFraction: z.number(),
})
export type DrawOffOutcome = z.infer<typeof DrawOffOutcome>

export const BatchCurve = z.strictObject({
  /** Fitted to the readings where there are any; runs on past now while fruit still steeps. */
  series: z.array(CurveSeries),
  /** After this instant the curve is a forecast. */
  now: Instant,
  bands: z.array(StageBand),
  readings: z.array(CurveReading),
  fit: BatchFit.optional(),
  whatIf: z
    .strictObject({
      series: z.array(CurveSeries),
      /** With the change, and as it is, at the same instant. */
      outcomes: z.array(z.strictObject({ changed: DrawOffOutcome, asIs: DrawOffOutcome })),
    })
    .optional(),
})
export type BatchCurve = z.infer<typeof BatchCurve>

const ArrivalAt = z.strictObject({
  early: Instant.optional(),
  typical: Instant.optional(),
  late: Instant.optional(),
})
/** Instants; one is absent where the forecast does not see it within its horizon. */
export type ArrivalAt = z.infer<typeof ArrivalAt>

/** What covering the spent fruit with sugar would bring. */
export const SugarDrawWorth = z.strictObject({
  sugarG: z.number(),
  /** Which draw it would be. */
  draw: z.number().int().positive(),
  heldMl: z.number(),
  heldEthanolMl: z.number(),
  outMl: z.number(),
  outStrengthPctVol: z.number(),
  recoveredEthanolMl: z.number(),
  /** Of the ethanol, at the price of the spirit that was poured; smallest unit of the currency. */
  valueMinor: z.number().optional(),
})
export type SugarDrawWorth = z.infer<typeof SugarDrawWorth>

export const JarForecast = z.strictObject({
  jarId: Id,
  /** Fitted to the readings; the ledger's own account stands in the jar's contents. */
  now: z.strictObject({ strengthPctVol: Banded, sugarGPerL: Banded, volumeMl: Banded }),
  resting: z.strictObject({ strengthPctVol: Banded, sugarGPerL: Banded, volumeMl: Banded }),
  /** When strength comes within 0.5 % vol of its resting value. */
  settledAt: ArrivalAt,
  isSettled: z.boolean(),
  /** What one more week changes. */
  weekChange: z.strictObject({ strengthPctVol: z.number(), sugarGPerL: z.number() }),
  extractFraction: Banded,
  colourFraction: z.number(),
  /** When nearly all the extract is out: time to draw off. */
  extractedAt: ArrivalAt,
  sugarDraw: SugarDrawWorth.optional(),
})
export type JarForecast = z.infer<typeof JarForecast>

export const BatchForecast = z.strictObject({
  fit: BatchFit.optional(),
  /** Jars with fruit under spirit. */
  jars: z.array(JarForecast),
})
export type BatchForecast = z.infer<typeof BatchForecast>

/** One batch of several on a common axis: days since its first move. */
export const ComparedBatch = z.strictObject({
  batchId: Id,
  points: z.array(z.strictObject({ day: z.number(), ...CurveValues.shape })),
})
export type ComparedBatch = z.infer<typeof ComparedBatch>
