import { beforeAll, describe, expect, it } from 'vitest'
import {
  bandsOf,
  ensembleOf,
  fitSteeping,
  forecastJars,
  fruitOf,
  fruitTissue,
  noNews,
  replayOf,
  spreadOf,
  stepsOf,
  tuningOf,
  type FitReading,
} from '../../../main/engine/index.ts'
import { describeLiquid } from '../../../main/engine/ledger/jar-liquid.ts'
import { replay, type Replay } from '../../../main/engine/steeping/replay.ts'
import { buyFruit, buySpirit, dayAt, folded, type Deed } from '../ledger/book-of-moves.ts'
import { fittedJar, holds, seeded } from './synthetic-jars.ts'

const look = (jarId: string): Deed => ({
  kind: 'read',
  batchId: 'b',
  jarId,
  reading: { instrument: 'measuringJug', volumeMl: 100, temperatureC: 20 },
})

const days = [2, 3, 4.5, 7, 11, 20]
const cherries = folded([
  [0, buyFruit('fruit', 'sour_cherry', 2000)],
  [0, buySpirit('spirit', 5000, 70)],
  [0, { kind: 'charge', batchId: 'b', jarId: 'j', lotId: 'fruit', massG: 2000, cut: 'whole' }],
  [0, { kind: 'pourSpirit', batchId: 'b', jarId: 'j', lotId: 'spirit', volumeMl: 2000 }],
  ...days.map((day) => [day, look('j')] as const),
])
const told: Replay = replayOf(stepsOf(cherries.steps, 'b'), cherries.cellar, 'b', fruitOf)
const spread = spreadOf(fruitTissue(fruitOf('sour_cherry')), 'whole')

/** Unknowns on so small a scale that they change nothing. */
const still = { lnPace: 1e-12, lnHold: 1e-12, juice: 1e-12 }

/** What careful readings would say of fruit with these unknowns. */
function readingsOf(truth: readonly [number, number, number], sigmaPctVol: number): FitReading[] {
  return replay(told, tuningOf(spread, truth)).steps.flatMap(({ recorded, effect }) => {
    const jar = effect.jars?.get('j')
    const liquid = jar && describeLiquid(jar.bodies.free)
    if (recorded.move.kind !== 'read' || !liquid) return []
    const { strengthPctVol } = liquid
    const strengthUncertaintyPctVol = sigmaPctVol
    const interpretation = { strengthPctVol, strengthUncertaintyPctVol, doubts: [] }
    return [{ moveId: recorded.id, jarId: 'j', interpretation }]
  })
}

const deviations = (covariance: readonly (readonly number[])[]) =>
  [0, 1, 2].map((i) => Math.sqrt(covariance[i]?.[i] ?? 0)) as unknown as [number, number, number]

describe('spreadOf', () => {
  it('reads the library’s ranges as 90 % bands', () => {
    const { drainedRangeLPerKg } = fruitOf('sour_cherry')
    const known = spreadOf(fruitTissue(fruitOf('sour_cherry')), 'whole', drainedRangeLPerKg)
    const { hold, pace } = bandsOf(known, noNews, [1, 1, 1])
    // Sour cherry: 0.65 (0.5 to 0.8) L/kg drained; half-time of ethanol 2 (0.7 to 6) days.
    expect(hold.high / hold.low).toBeCloseTo(0.8 / 0.5, 9)
    expect(pace.high / pace.low).toBeCloseTo(6 / 0.7, 9)
  })
})

describe('beliefs', () => {
  it('takes a quarter either way for litres retained where no range is known', () => {
    const lnHold = Math.log(1.25) / 1.6449
    const facts = fruitTissue(fruitOf('sour_cherry'))
    expect(spreadOf(facts, 'whole').lnHold).toBeCloseTo(lnHold, 12)
    const nothing = { typical: 0.5, low: 0, high: 1 }
    expect(spreadOf(facts, 'whole', nothing).lnHold).toBeCloseTo(lnHold, 12)
    expect(spreadOf(facts, 'whole').juice).toBe(0.05)
  })

  it('tells pace and hold as factors, juice as a share, each with nine tenths of what it may be', () => {
    const round = { lnPace: 0.5, lnHold: 0.2, juice: 0.05 }
    const bands = bandsOf(round, [1, -2, 3], [0.5, 1, 2])
    const factor = (at: number, by: number) => ({
      value: Math.exp(at),
      low: Math.exp(at - by),
      high: Math.exp(at + by),
    })
    expect(bands.pace).toEqual(factor(0.5, 0.5 * 1.6449 * 0.5))
    expect(bands.hold).toEqual(factor(-0.4, 0.2 * 1.6449))
    expect(bands.juice.value).toBeCloseTo(0.15, 12)
    expect(bands.juice.low).toBeCloseTo(0.15 - 0.05 * 1.6449 * 2, 12)
    expect(bands.juice.high).toBeCloseTo(0.15 + 0.05 * 1.6449 * 2, 12)
    const tuned = tuningOf(round, [1, -2, 3])
    expect([tuned.pace, tuned.hold]).toEqual([Math.exp(0.5), Math.exp(-0.4)])
    expect(tuned.juice).toBeCloseTo(0.15, 12)
  })
})

describe('fitSteeping', () => {
  it('knows only the library before any reading', () => {
    const fit = fitSteeping({ replay: told, spread, readings: [] })
    expect(fit.unknowns).toEqual([0, 0, 0])
    for (const deviation of deviations(fit.covariance)) expect(deviation).toBeCloseTo(1, 6)
  })

  it('finds a fruit that is twice as fast, and does not overstate it', () => {
    const truth = [Math.log(2) / spread.lnPace, 0, 0] as const
    const fit = fitSteeping({ replay: told, spread, readings: readingsOf(truth, 0.1) })
    const { pace } = bandsOf(spread, fit.unknowns, deviations(fit.covariance))
    // The prior pulls a little towards the library.
    expect(pace.value).toBeGreaterThan(1.85)
    expect(pace.value).toBeLessThan(2.05)
    expect(holds(pace, 2)).toBe(true)
  })

  it('finds fruit with more juice than the library’s', () => {
    const truth = [0, 0, 1] as const
    const fit = fitSteeping({ replay: told, spread, readings: readingsOf(truth, 0.1) })
    expect(fit.unknowns[2]).toBeGreaterThan(0.6)
    expect(fit.unknowns[2]).toBeLessThan(1.1)
  })

  it('takes the maker’s own jug for what the fruit holds', () => {
    const fit = fitSteeping({ replay: told, spread, readings: [], measuredHold: 1.2 })
    const { hold } = bandsOf(spread, fit.unknowns, deviations(fit.covariance))
    expect(hold.value).toBeGreaterThan(1.1)
    expect(hold.value).toBeLessThan(1.2)
  })

  it('weighs strength, sugar and volume by what reading and model are good for', () => {
    const read = told.moves.find(({ move }) => move.kind === 'read')!.id
    const step = replay(told).steps.find(({ recorded }) => recorded.id === read)!
    const liquid = describeLiquid(step.effect.jars!.get('j')!.bodies.free)!
    const residual = (interpretation: Partial<FitReading['interpretation']>, jarId = 'j') => {
      const reading = { moveId: read, jarId, interpretation: { doubts: [], ...interpretation } }
      const fit = fitSteeping({ replay: told, spread: still, readings: [reading] })
      return fit.residuals.get(read)
    }
    const { strengthPctVol, sugarGPerL, volumeMl } = liquid
    // Unknowns that move nothing: the residual is that of the ledger itself.
    expect(residual({ strengthPctVol: strengthPctVol - 0.6 })).toBeCloseTo(0.6 / 0.3, 6)
    const own = { strengthPctVol: strengthPctVol + 1, strengthUncertaintyPctVol: 0.4 }
    expect(residual(own)).toBeCloseTo(-1 / 0.5, 6)
    const sugar = sugarGPerL + 10
    expect(residual({ sugarGPerL: sugar })).toBeCloseTo(-10 / Math.hypot(4, 0.02 * sugar), 6)
    expect(residual({ sugarGPerL: sugar, sugarUncertaintyGPerL: 3 })).toBeCloseTo(
      -10 / Math.hypot(3, 4, 0.02 * sugar),
      6,
    )
    const volume = volumeMl - 100
    expect(residual({ volumeMl: volume })).toBeCloseTo(100 / (10 + 0.02 * volume), 6)
    // The farthest of several counts; what was not read, or not there, is on the line.
    expect(residual({ strengthPctVol: strengthPctVol - 0.6, volumeMl: volume })).toBeCloseTo(
      100 / (10 + 0.02 * volume),
      6,
    )
    expect(residual({})).toBe(0)
    expect(residual({ strengthPctVol: 1, sugarGPerL: 1, volumeMl: 1 }, 'elsewhere')).toBe(0)
  })

  it('names a reading that does not fit, and is bent little by it', () => {
    const good = readingsOf([0, 0, 0], 0.3)
    const slip = good.map((reading, index) =>
      index === 3
        ? {
            ...reading,
            interpretation: {
              ...reading.interpretation,
              strengthPctVol: (reading.interpretation.strengthPctVol ?? 0) + 9,
            },
          }
        : reading,
    )
    const fit = fitSteeping({ replay: told, spread, readings: slip })
    expect([...fit.outliers]).toEqual([good[3]?.moveId])
    for (const unknown of fit.unknowns) expect(Math.abs(unknown)).toBeLessThan(0.7)
  })

  it('narrows its band with every reading', () => {
    const at = (count: number) => {
      const readings = readingsOf(noNews, 0.4).slice(0, count)
      const fit = fitSteeping({ replay: told, spread, readings })
      const [jar] = forecastJars(ensembleOf(told, { spread, ...fit }), 'b', Date.parse(dayAt(3)))
      if (!jar) throw new Error('no jar steeps')
      return jar.now.strengthPctVol.high - jar.now.strengthPctVol.low
    }
    const widths = [0, 1, 3, 6].map(at)
    expect([...widths].sort((a, b) => b - a)).toEqual(widths)
    // Three readings leave less than half of what the library alone leaves open.
    expect(widths[2]).toBeLessThan((widths[0] as number) / 2)
  })

  it('gives the same answer every time', () => {
    const readings = readingsOf([0.5, -0.5, 0.3], 0.4)
    const once = fitSteeping({ replay: told, spread, readings })
    expect(fitSteeping({ replay: told, spread, readings })).toEqual(once)
  })
})

describe('bands', () => {
  // The long run, 1,000 jars, is `npm run bench -- steeping`, which prints the shares.
  const jars: ReturnType<typeof fittedJar>[] = []
  beforeAll(() => {
    const random = seeded(20)
    for (let i = 0; i < 200; i += 1) jars.push(fittedJar(random, { readings: 3, pctVolNoise: 0.5 }))
  })

  it('hold the true pace and resting strength about nine times in ten', () => {
    const share = (of: (jar: (typeof jars)[number]) => boolean) =>
      jars.filter(of).length / jars.length
    const pace = share((jar) => holds(jar.pace, jar.truePace))
    const resting = share((jar) => holds(jar.resting, jar.trueRestingPctVol))
    // 200 jars scatter by 2 %: two and a half of that on either side of 90 %.
    for (const found of [pace, resting]) {
      expect(found).toBeGreaterThan(0.84)
      expect(found).toBeLessThan(0.96)
    }
  })
})
