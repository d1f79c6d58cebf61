/** A steeping batch as the service tells it: forecast, fit, and a curve that runs on past now. */
import type {
  BatchCurve,
  BatchFit,
  BatchForecast,
  CurveValues,
  DrawOffOutcome,
  JarForecast,
} from '../../../shared/schemas/steeping.ts'

export const now = '2026-11-25T12:00:00Z'
const start = Date.parse('2026-09-10T08:00:00Z')
const msPerDay = 86_400_000

const banded = (value: number, give: number) => ({ value, low: value - give, high: value + give })

export const jarForecast = (changed: Partial<JarForecast> = {}): JarForecast => ({
  jarId: 'north',
  now: {
    strengthPctVol: banded(32.6, 0.6),
    sugarGPerL: banded(178, 9),
    volumeMl: banded(1500, 40),
  },
  resting: {
    strengthPctVol: banded(31, 0.7),
    sugarGPerL: banded(184, 8),
    volumeMl: banded(1560, 60),
  },
  settledAt: {
    early: '2026-12-08T00:00:00Z',
    typical: '2026-12-12T00:00:00Z',
    late: '2026-12-20T00:00:00Z',
  },
  isSettled: false,
  weekChange: { strengthPctVol: -0.3, sugarGPerL: 2 },
  extractFraction: { value: 0.87, low: 0.8, high: 0.93 },
  colourFraction: 0.92,
  extractedAt: {
    early: '2026-11-20T00:00:00Z',
    typical: '2026-12-03T00:00:00Z',
    late: '2026-12-14T00:00:00Z',
  },
  ...changed,
})

export const fit = (changed: Partial<BatchFit> = {}): BatchFit => ({
  readingsUsed: 3,
  volumesUsed: 0,
  pace: { value: 1.4, low: 0.9, high: 2.1 },
  priorPace: { value: 1, low: 0.3, high: 2.9 },
  hold: { value: 1.05, low: 0.9, high: 1.2 },
  priorHold: { value: 1, low: 0.7, high: 1.4 },
  juice: { value: 0.02, low: -0.03, high: 0.07 },
  priorJuice: { value: 0, low: -0.1, high: 0.1 },
  ...changed,
})

export const forecast = (changed: Partial<BatchForecast> = {}): BatchForecast => ({
  fit: fit(),
  jars: [jarForecast()],
  ...changed,
})

/** Falls from 58 % vol to rest, faster or slower; sugar and acid rise. */
const valuesAt = (days: number, pace: number): CurveValues => {
  const left = Math.exp(-days / (18 / pace))
  return {
    strengthPctVol: 31 + 27 * left,
    sugarGPerL: 184 - 90 * left,
    acidGPerL: 9 - 8 * left,
    volumeMl: 1560 - 160 * left,
    ethanolInFruitMl: 160 * (1 - left),
  }
}

const shifted = (values: CurveValues, by: number): CurveValues => ({
  strengthPctVol: values.strengthPctVol + by,
  sugarGPerL: values.sugarGPerL - 8 * by,
  acidGPerL: values.acidGPerL - 0.3 * by,
  volumeMl: values.volumeMl - 20 * by,
  ethanolInFruitMl: values.ethanolInFruitMl - 10 * by,
})

export function series(pace: number, lastDay = 120): BatchCurve['series'] {
  const points = Array.from({ length: lastDay }, (_, index) => {
    const days = index + 1
    const values = valuesAt(days, pace)
    const give = 0.2 + 2 * Math.exp(-days / 15)
    return {
      at: new Date(start + days * msPerDay).toISOString(),
      ...values,
      low: shifted(values, -give),
      high: shifted(values, give),
    }
  })
  return [
    { key: 'whole', points },
    { key: 'north', points },
  ]
}

const reading = (
  moveId: string,
  days: number,
  strengthPctVol: number,
  more: { isUsed?: boolean; isOutlier?: boolean } = {},
): BatchCurve['readings'][number] => ({
  moveId,
  jarId: 'north',
  at: new Date(start + days * msPerDay).toISOString(),
  interpretation: { strengthPctVol, strengthUncertaintyPctVol: 0.8, doubts: [] },
  isUsed: true,
  isOutlier: false,
  ...more,
})

export const steepingCurve = (changed: Partial<BatchCurve> = {}): BatchCurve => ({
  series: series(1),
  now,
  bands: [
    { stage: 'layered', from: '2026-09-10T08:00:00Z', to: '2026-09-11T08:00:00Z' },
    { stage: 'steeping', from: '2026-09-11T08:00:00Z', to: now },
  ],
  readings: [
    reading('first', 12, 44.6),
    reading('second', 30, 36.1),
    reading('odd', 45, 41, { isOutlier: true }),
    reading('doubted', 60, 28, { isUsed: false }),
  ],
  fit: fit(),
  ...changed,
})

export const outcome = (changed: Partial<DrawOffOutcome> = {}): DrawOffOutcome => ({
  jarId: 'north',
  at: '2026-12-12T12:00:00Z',
  values: valuesAt(93, 1),
  extractFraction: 0.95,
  colourFraction: 0.98,
  ...changed,
})

/** Kept warmer it settles faster: that much faster for each degree above 20 °C. */
export const curveAnswer = ({
  whatIf,
}: {
  whatIf?: { temperatureC?: number | undefined; drawOffAt?: string | undefined } | undefined
}): BatchCurve => {
  if (!whatIf) return steepingCurve()
  const pace = 1.05 ** ((whatIf.temperatureC ?? 20) - 20)
  const at = whatIf.drawOffAt ?? '2026-12-12T12:00:00Z'
  const days = (Date.parse(at) - start) / msPerDay
  return steepingCurve({
    whatIf: {
      series: series(pace),
      outcomes: [
        {
          changed: outcome({ at, values: valuesAt(days, pace), extractFraction: 0.97 }),
          asIs: outcome({ at, values: valuesAt(days, 1) }),
        },
      ],
    },
  })
}
