import { describe, expect, it } from 'vitest'
import {
  fruitOf,
  fruitTissue,
  noNews,
  replayOf,
  spreadOf,
  stepsOf,
  tuningOf,
} from '../../../main/engine/index.ts'
import { curveOf, ethanolMl, sampleTimes } from '../../../main/engine/ledger/batch-curve.ts'
import { settledJar, type JarState } from '../../../main/engine/ledger/cellar-state.ts'
import type { Step } from '../../../main/engine/ledger/fold.ts'
import { describeLiquid } from '../../../main/engine/ledger/jar-liquid.ts'
import { liquidVolumeMl } from '../../../main/engine/solution/liquid-volume.ts'
import {
  bandedCurve,
  bandOf,
  ensembleOf,
  type Ensemble,
} from '../../../main/engine/steeping/banded-curve.ts'
import {
  extractOut,
  forecastJars,
  isSteeping,
  jarsAfter,
} from '../../../main/engine/steeping/forecast.ts'
import { replay, type Replay } from '../../../main/engine/steeping/replay.ts'
import { sugarDraw } from '../../../main/engine/steeping/sugar-draw.ts'
import {
  handledFromNow,
  handledFromStart,
  outcomesAt,
} from '../../../main/engine/steeping/what-if.ts'
import type { CurveValues } from '../../../shared/schemas/steeping.ts'
import { buyFruit, buySpirit, buySugar, dayAt, folded, type Deed } from '../ledger/book-of-moves.ts'

const day = 86_400_000
const hour = 3_600_000
const atMs = (days: number) => Date.parse(dayAt(days))

type Written = readonly (readonly [day: number, deed: Deed])[]
const begun: Written = [
  [0, buyFruit('fruit', 'sour_cherry', 4000)],
  [0, buySpirit('spirit', 9000, 70)],
  [0, buySugar('sugar', 3000)],
  [0, { kind: 'charge', batchId: 'b', jarId: 'j', lotId: 'fruit', massG: 2000, cut: 'pricked' }],
  [0, { kind: 'pourSpirit', batchId: 'b', jarId: 'j', lotId: 'spirit', volumeMl: 2000 }],
]
const drawn: Written = [
  ...begun,
  [40, { kind: 'drawOff', batchId: 'b', fromJarId: 'j', toJarId: 'e' }],
]
const read: Deed = {
  kind: 'read',
  batchId: 'b',
  jarId: 'j',
  reading: { instrument: 'measuringJug', volumeMl: 100, temperatureC: 20 },
}

const toldOf = (deeds: Written): Replay => {
  const { steps, cellar, refused } = folded(deeds)
  expect(refused).toEqual([])
  return replayOf(stepsOf(steps, 'b'), cellar, 'b', fruitOf)
}
const spread = spreadOf(fruitTissue(fruitOf('sour_cherry')), 'pricked')
const at = (told: Replay, unknowns: readonly [number, number, number]) =>
  replay(told, tuningOf(spread, unknowns)).steps
const sharp = (told: Replay): Ensemble => {
  const middle = at(told, noNews)
  return { middle, outer: [0, 1, 2].map(() => [middle, middle] as const) }
}
const strengthIn = (jar: JarState, ms: number) =>
  describeLiquid(settledJar(jar, ms).bodies.free)!.strengthPctVol

describe('bandOf', () => {
  it('adds the farthest of each axis in quadrature, up and down apart', () => {
    expect(
      bandOf(10, [
        [13, 7],
        [14, 6],
      ]),
    ).toEqual({ low: 5, high: 15 })
    // Both ends of an axis on one side: the farther of them counts.
    expect(
      bandOf(10, [
        [13, 14],
        [9, 6],
      ]),
    ).toEqual({ low: 6, high: 14 })
    expect(
      bandOf(10, [
        [14, 13],
        [6, 9],
      ]),
    ).toEqual({ low: 6, high: 14 })
    expect(bandOf(10, [[10, 10]])).toEqual({ low: 10, high: 10 })
    expect(bandOf(10, [])).toEqual({ low: 10, high: 10 })
  })
})

describe('ensembleOf', () => {
  const told = toldOf(begun)
  const endOf = (steps: readonly Step[]) => strengthIn(jarsAfter(steps, 'b').get('j')!, atMs(3))

  it('tells the batch at the best unknowns and out to 90 % on both sides of each axis', () => {
    const variances = [0.25, 1, 4]
    const covariance = variances.map((variance, row) =>
      variances.map((_, column) => (row === column ? variance : 0)),
    )
    const unknowns = [0.5, -0.3, 0.2] as const
    const { middle, outer } = ensembleOf(told, { spread, unknowns, covariance })
    expect(endOf(middle)).toBeCloseTo(endOf(at(told, unknowns)), 9)
    expect(outer).toHaveLength(3)
    const out = (axis: number, sign: number) =>
      at(
        told,
        unknowns.map((value, index) =>
          index === axis ? value + sign * 1.6449 * Math.sqrt(variances[axis]!) : value,
        ) as [number, number, number],
      )
    const inOrder = (values: number[]) => values.sort((a, b) => a - b)
    const expected = inOrder([0, 1, 2].flatMap((axis) => [1, -1].map((s) => endOf(out(axis, s)))))
    const found = inOrder(outer.flat().map(endOf))
    for (const [index, value] of expected.entries()) expect(found[index]).toBeCloseTo(value, 9)
  })

  it('has no width where all is known, though rounding leaves a variance below zero', () => {
    const covariance = [0, 0, -1e-18].map((value, row) =>
      [0, 1, 2].map((column) => (row === column ? value : 0)),
    )
    const { middle, outer } = ensembleOf(told, { spread, unknowns: noNews, covariance })
    for (const steps of outer.flat()) expect(endOf(steps)).toBe(endOf(middle))
  })
})

describe('bandedCurve', () => {
  const told = toldOf(drawn)
  const middle = at(told, noNews)
  const [fast, slow] = [at(told, [1, 0, 0]), at(told, [-1, 0, 0])]
  const juicy = at(told, [0, 0, 1])
  const ensemble: Ensemble = {
    middle,
    outer: [
      [fast, slow],
      [juicy, middle],
      [middle, middle],
    ],
  }
  const untilMs = atMs(60)
  // Asked anew in each test: a change of the engine is switched on test by test.
  const curves = () => bandedCurve(ensemble, 'b', untilMs, 90)
  const quantities = [
    'strengthPctVol',
    'sugarGPerL',
    'acidGPerL',
    'volumeMl',
    'ethanolInFruitMl',
  ] as const satisfies readonly (keyof CurveValues)[]

  it('is the curve of the middle, jar by jar and whole', () => {
    const plain = curveOf(middle, 'b', sampleTimes(middle, untilMs, 90))
    expect([...curves().keys()]).toEqual([...plain.keys()])
    expect([...curves().keys()].sort()).toEqual(['e', 'j', 'whole'])
    for (const [key, samples] of curves()) {
      const bare = samples.map(({ low: _low, high: _high, ...sample }) => sample)
      expect(bare, key).toEqual(plain.get(key))
    }
  })

  it('is as wide as the replays lie apart at instants that it looks at, and straight between', () => {
    const times = sampleTimes(middle, untilMs, 40, 4)
    const valuesAt = (steps: readonly Step[], key: string, ms: number) =>
      curveOf(steps, 'b', [ms]).get(key)?.[0]
    const widths = (key: string, ms: number, quantity: keyof CurveValues) => {
      const here = valuesAt(middle, key, ms)![quantity]
      const of = (steps: readonly Step[]) => valuesAt(steps, key, ms)![quantity]
      const { low, high } = bandOf(here, [
        [of(fast), of(slow)],
        [of(juicy), here],
        [here, here],
      ])
      return { down: here - low, up: high - here }
    }
    let between = 0
    for (const sample of curves()
      .get('j')!
      .filter(({ atMs: ms }) => ms < atMs(39))) {
      const next = times.findIndex((ms) => ms >= sample.atMs)
      const [after, isThere] = [times[next]!, times[next] === sample.atMs]
      const before = isThere ? after : times[next - 1]!
      const share = isThere ? 0 : (sample.atMs - before) / (after - before)
      if (!valuesAt(middle, 'j', before)) continue
      if (!isThere) between += 1
      for (const quantity of quantities) {
        const [a, b] = [widths('j', before, quantity), widths('j', after, quantity)]
        const { low, high } = sample
        expect(low![quantity], `${quantity} low`).toBeCloseTo(
          Math.max(0, sample[quantity] - a.down - share * (b.down - a.down)),
          6,
        )
        expect(high![quantity], `${quantity} high`).toBeCloseTo(
          sample[quantity] + a.up + share * (b.up - a.up),
          6,
        )
      }
    }
    expect(between).toBeGreaterThan(10)
  })

  it('has no width where nothing is open, and none at all where it is not known', () => {
    for (const samples of bandedCurve(sharp(told), 'b', untilMs, 90).values())
      for (const { low, high, ...sample } of samples) {
        if (!low || !high) continue
        for (const quantity of quantities) {
          expect(low[quantity]).toBeCloseTo(sample[quantity], 9)
          expect(high[quantity]).toBeCloseTo(sample[quantity], 9)
        }
      }
    const nowhere: Ensemble = {
      middle,
      outer: [
        [middle, middle],
        [[], middle],
      ],
    }
    const nowhereElse: Ensemble = { middle, outer: [[middle, []]] }
    for (const samples of bandedCurve(nowhereElse, 'b', untilMs, 20).values())
      for (const sample of samples) expect(sample).not.toHaveProperty('low')
    for (const samples of bandedCurve(nowhere, 'b', untilMs, 20).values())
      for (const sample of samples) {
        expect(sample).not.toHaveProperty('low')
        expect(sample).not.toHaveProperty('high')
      }
    expect(bandedCurve(nowhere, 'b', untilMs, 20).get('j')!.length).toBeGreaterThan(10)
  })

  it('never tells less than nothing', () => {
    // Fruit that drinks more than half of it on each of three axes: in quadrature, more than all.
    const thirsty = at(told, [0, 6, 0])
    const wide: Ensemble = { middle, outer: [0, 1, 2].map(() => [thirsty, middle] as const) }
    const all = [...bandedCurve(wide, 'b', untilMs, 60).values()].flat()
    const lows = all.flatMap(({ low }) => (low ? quantities.map((quantity) => low[quantity]) : []))
    expect(lows.length).toBeGreaterThan(100)
    expect(Math.min(...lows)).toBe(0)
    expect(all.some(({ low }) => low?.volumeMl === 0)).toBe(true)
  })
})

describe('jarsAfter', () => {
  it('has the jars that the batch stands in, not those it left or that others stand in', () => {
    const { steps } = folded([
      ...drawn,
      [41, { kind: 'discard', from: { jarId: 'j', part: 'all' } }],
      [
        42,
        { kind: 'charge', batchId: 'c', jarId: 'k', lotId: 'fruit', massG: 500, cut: 'pricked' },
      ],
    ])
    expect([...jarsAfter(steps, 'b').keys()]).toEqual(['e'])
    expect([...jarsAfter(steps.slice(0, 6), 'b').keys()]).toEqual(['j', 'e'])
    expect([...jarsAfter(steps, 'c').keys()]).toEqual(['k'])
    expect(jarsAfter([], 'b').size).toBe(0)
  })

  it('steeps where dead fruit lies under spirit', () => {
    const jars = (deeds: Written) => jarsAfter(folded(deeds).steps, 'b')
    expect(isSteeping(jars(begun).get('j')!)).toBe(true)
    // Raw fruit without spirit lives; an extract has no fruit.
    expect(isSteeping(jars(begun.slice(0, 4)).get('j')!)).toBe(false)
    expect(isSteeping(jars(drawn).get('e')!)).toBe(false)
    // Drained: the fruit still holds spirit.
    expect(isSteeping(jars(drawn).get('j')!)).toBe(true)
  })
})

describe('forecastJars', () => {
  const told = toldOf(begun)
  const ensemble = sharp(told)
  const jar = jarsAfter(ensemble.middle, 'b').get('j')!
  const nowMs = atMs(2)
  const farMs = nowMs + 400 * 365 * day
  const found = () => forecastJars(ensemble, 'b', nowMs)[0]
  const exactly = (value: number) => ({ value, low: value, high: value })

  it('tells the jar as it is, as it will rest, and what a week brings', () => {
    expect(forecastJars(ensemble, 'b', nowMs)).toHaveLength(1)
    expect(found()!.jarId).toBe('j')
    const liquid = (ms: number) => describeLiquid(settledJar(jar, ms).bodies.free)!
    for (const [told_, ms] of [
      [found()!.now, nowMs],
      [found()!.resting, farMs],
    ] as const) {
      const { strengthPctVol, sugarGPerL, volumeMl } = liquid(ms)
      expect(told_.strengthPctVol.value).toBeCloseTo(strengthPctVol, 6)
      expect(told_.sugarGPerL.value).toBeCloseTo(sugarGPerL, 6)
      expect(told_.volumeMl.value).toBeCloseTo(volumeMl, 5)
      expect(told_.volumeMl).toEqual(exactly(told_.volumeMl.value))
    }
    const [now, week] = [liquid(nowMs), liquid(nowMs + 7 * day)]
    expect(found()!.weekChange.strengthPctVol).toBeCloseTo(
      week.strengthPctVol - now.strengthPctVol,
      9,
    )
    expect(found()!.weekChange.sugarGPerL).toBeCloseTo(week.sugarGPerL - now.sugarGPerL, 9)
    // Spirit goes into the fruit, sugar comes out of it.
    expect(found()!.weekChange.strengthPctVol).toBeLessThan(0)
    expect(found()!.weekChange.sugarGPerL).toBeGreaterThan(0)
    expect(found()!.colourFraction).toBe(settledJar(jar, nowMs).colourFraction)
  })

  it('is settled, to the hour, once it stays within half a per cent of where it rests', () => {
    const restPctVol = strengthIn(jar, farMs)
    const off = (ms: number) => Math.abs(strengthIn(jar, ms) - restPctVol)
    const { typicalMs, earlyMs, lateMs } = found()!.settled
    expect(off(nowMs)).toBeGreaterThan(0.5)
    expect(found()!.isSettled).toBe(false)
    expect([earlyMs, lateMs]).toEqual([typicalMs, typicalMs])
    expect(off(typicalMs!)).toBeLessThanOrEqual(0.5)
    expect(off(typicalMs! - hour)).toBeGreaterThan(0.5)
    const [later] = forecastJars(ensemble, 'b', atMs(200))
    expect(later!.isSettled).toBe(true)
    expect(later!.settled).toEqual({
      earlyMs: atMs(200),
      typicalMs: atMs(200),
      lateMs: atMs(200),
    })
  })

  it('is drawn out once nineteen twentieths of acid and solubles are in the liquid', () => {
    const extractG = (ms: number) => {
      const { acidG, solublesG } = settledJar(jar, ms).bodies.free
      return acidG + solublesG
    }
    expect(found()!.extractFraction.value).toBeCloseTo(extractG(nowMs) / extractG(farMs), 9)
    const { typicalMs } = found()!.extracted
    expect(extractG(typicalMs!) / extractG(farMs)).toBeGreaterThanOrEqual(0.95)
    expect(extractG(typicalMs! - hour) / extractG(farMs)).toBeLessThan(0.95)
    // Spirit alone has none to wait for.
    const spirit = folded([
      [0, buySpirit('spirit', 1000, 70)],
      [0, { kind: 'pourSpirit', batchId: 'b', jarId: 's', lotId: 'spirit', volumeMl: 1000 }],
    ])
    expect(extractOut(spirit.cellar.jars.get('s')!, nowMs, farMs)).toBe(1)
  })

  it('tells what a sugar draw now would bring out of the fruit', () => {
    const { held } = settledJar(jar, nowMs).bodies
    const sugarG = 0.25 * jar.fruit!.edibleG
    const { out } = sugarDraw({ held, sugarG, draw: 1 })
    const liquid = describeLiquid(out)!
    const draw = found()!.sugarDraw!
    expect(draw.draw).toBe(1)
    expect(draw.sugarG).toBeCloseTo(sugarG, 9)
    expect(draw.heldMl).toBeCloseTo(liquidVolumeMl(held), 9)
    expect(draw.heldEthanolMl).toBeCloseTo(ethanolMl(held.ethanolG), 9)
    expect(draw.outMl).toBeCloseTo(liquid.volumeMl, 9)
    expect(draw.outStrengthPctVol).toBeCloseTo(liquid.strengthPctVol, 9)
    expect(draw.recoveredEthanolMl).toBeCloseTo(ethanolMl(out.ethanolG), 9)
    expect(draw.recoveredEthanolMl).toBeLessThan(draw.heldEthanolMl)
  })

  it('offers no draw from fruit that is under sugar, nor a fourth', () => {
    const sugared = (count: number): Written => [
      ...begun,
      ...Array.from({ length: count }, (_, index) => index + 1).flatMap((draw): Written => [
        [40 + 20 * draw, { kind: 'drawOff', batchId: 'b', fromJarId: 'j', toJarId: 'e' }],
        [
          40 + 20 * draw,
          { kind: 'coverWithSugar', batchId: 'b', jarId: 'j', lotId: 'sugar', massG: 400 },
        ],
      ]),
    ]
    const drawAfter = (deeds: Written, days: number) =>
      forecastJars(sharp(toldOf(deeds)), 'b', atMs(days))[0]!.sugarDraw
    expect(drawAfter(sugared(1), 65)).toBeUndefined()
    const done = (count: number): Written => [
      ...sugared(count),
      [60 + 20 * count, { kind: 'drawOff', batchId: 'b', fromJarId: 'j', toJarId: 'e' }],
      [
        60 + 20 * count,
        { kind: 'pourSpirit', batchId: 'b', jarId: 'j', lotId: 'spirit', volumeMl: 500 },
      ],
    ]
    expect(drawAfter(done(1), 81)!.draw).toBe(2)
    expect(drawAfter(done(2), 101)!.draw).toBe(3)
    expect(drawAfter(done(3), 121)).toBeUndefined()
  })

  it('is as open as the replays lie apart, early by the first and late by the last', () => {
    const [fast, slow] = [at(told, [1, 0, 0]), at(told, [-1, 0, 0])]
    const wide: Ensemble = { middle: ensemble.middle, outer: [[fast, slow]] }
    const [open] = forecastJars(wide, 'b', nowMs)
    const ofSteps = (steps: readonly Step[]) =>
      forecastJars({ middle: steps, outer: [] }, 'b', nowMs)[0]!
    const [soon, late] = [ofSteps(fast), ofSteps(slow)]
    expect(open!.settled).toEqual({
      earlyMs: soon.settled.typicalMs,
      typicalMs: found()!.settled.typicalMs,
      lateMs: late.settled.typicalMs,
    })
    expect(open!.extracted.earlyMs).toBe(soon.extracted.typicalMs)
    expect(open!.extracted.lateMs).toBe(late.extracted.typicalMs)
    const { value, low, high } = open!.now.strengthPctVol
    expect([low, high]).toEqual(
      Object.values(
        bandOf(value, [[soon.now.strengthPctVol.value, late.now.strengthPctVol.value]]),
      ),
    )
    expect(open!.extractFraction.high).toBeCloseTo(soon.extractFraction.value, 9)
    expect(open!.extractFraction.low).toBeCloseTo(late.extractFraction.value, 9)
  })

  it('leaves the end open where one of them never gets there', () => {
    // A pace so slow that five years are not enough.
    const never = at(told, [-12, 0, 0])
    const [open] = forecastJars({ middle: ensemble.middle, outer: [[never, never]] }, 'b', nowMs)
    expect(open!.settled).toEqual({
      earlyMs: found()!.settled.typicalMs,
      typicalMs: found()!.settled.typicalMs,
    })
    const [lost] = forecastJars({ middle: never, outer: [] }, 'b', nowMs)
    expect(lost!.settled).toEqual({})
    expect(lost!.isSettled).toBe(false)
  })

  it('tells a jar from its last move on, and skips replays in which it is empty', () => {
    const early = forecastJars(ensemble, 'b', atMs(-5))[0]!
    expect(early.now).toEqual(forecastJars(ensemble, 'b', atMs(0))[0]!.now)
    const gone = forecastJars({ middle: ensemble.middle, outer: [[[], []]] }, 'b', nowMs)[0]!
    expect(gone).toEqual(found())
    // Extracts are not waited for, nor fruit that nothing is poured over.
    const { middle } = sharp(toldOf(drawn))
    expect(forecastJars({ middle, outer: [] }, 'b', atMs(41)).map(({ jarId }) => jarId)).toEqual([])
  })
})

describe('handledFromStart', () => {
  const told = toldOf([
    ...begun,
    [0, { kind: 'charge', batchId: 'b', jarId: 'j', lotId: 'fruit', massG: 100, cut: 'pricked' }],
    [5, { kind: 'keep', batchId: 'b', jarId: 'j', temperatureC: 12, turned: 'never' }],
    [9, read],
  ])
  const asIs = tuningOf(spread, noNews)
  const kept = (change: Parameters<typeof handledFromStart>[2]) =>
    handledFromStart(told, asIs, change).map(({ recorded: { id, move } }) => ({ id, move }))
  const movesOf = (change: Parameters<typeof handledFromStart>[2], kind: string) =>
    kept(change).filter(({ move }) => move.kind === kind)

  it('tells the batch as it was when nothing is asked', () => {
    expect(kept({})).toEqual(told.moves.map(({ id, move }) => ({ id, move })))
    const end = (steps: readonly Step[]) => jarsAfter(steps, 'b').get('j')!.bodies
    expect(end(handledFromStart(told, asIs, {}))).toEqual(end(replay(told).steps))
  })

  it('keeps each jar so from its first charge on, whatever was done later', () => {
    const keeps = movesOf({ temperatureC: 28 }, 'keep')
    expect(keeps.map(({ id, move }) => [id.endsWith('-kept'), move])).toStrictEqual([
      [true, { kind: 'keep', at: dayAt(0), batchId: 'b', jarId: 'j', temperatureC: 28 }],
      // How often it is turned is not asked: that stays.
      [false, { kind: 'keep', at: dayAt(5), batchId: 'b', jarId: 'j', turned: 'never' }],
    ])
    expect(movesOf({ turned: 'daily' }, 'keep').map(({ move }) => move)).toStrictEqual([
      { kind: 'keep', at: dayAt(0), batchId: 'b', jarId: 'j', turned: 'daily' },
      { kind: 'keep', at: dayAt(5), batchId: 'b', jarId: 'j', temperatureC: 12 },
    ])
    const both = handledFromStart(told, asIs, { temperatureC: 28, turned: 'daily' })
    expect(jarsAfter(both, 'b').get('j')!.keeping).toEqual({ temperatureC: 28, turned: 'daily' })
    // Right after the first of two charges.
    const ids = kept({ temperatureC: 28 }).map(({ id }) => id)
    const first = ids.findIndex((id) => id.endsWith('-kept'))
    expect(ids[first]).toBe(`${ids[first - 1]}-kept`)
    expect(kept({ temperatureC: 28 })[first - 1]!.move.kind).toBe('charge')
  })

  it('cuts every charge so, and each piece in other sizes', () => {
    const cuts = movesOf({ cut: 'crushed' }, 'charge').map(({ move }) => move)
    expect(cuts).toMatchObject([{ cut: 'crushed' }, { cut: 'crushed' }])
    expect(movesOf({ turned: 'daily' }, 'charge').map(({ move }) => move)).toMatchObject([
      { cut: 'pricked' },
      { cut: 'pricked' },
    ])
    const scaleOf = (pieceScale?: number) =>
      jarsAfter(handledFromStart(told, asIs, { pieceScale }), 'b').get('j')!.fruit!.parts[0]!
        .pieceScale
    expect([scaleOf(), scaleOf(0.5)]).toEqual([1, 0.5])
  })
})

describe('handledFromNow', () => {
  const { steps } = folded(drawn)
  const own = stepsOf(steps, 'b')

  it('starts the clock of every jar with fruit anew, as it stands', () => {
    const nowMs = atMs(45)
    const change = { temperatureC: 28, turned: 'daily', cut: 'cut', pieceScale: 0.5 } as const
    const after = handledFromNow(own, 'b', change, nowMs)
    expect(after).toHaveLength(own.length + 1)
    const last = after.at(-1)!
    expect([last.atMs, last.effect.transfers]).toEqual([nowMs, []])
    expect([...last.effect.jars!.keys()]).toEqual(['j'])
    const jar = last.effect.jars!.get('j')!
    const was = settledJar(jarsAfter(own, 'b').get('j')!, nowMs)
    expect(jar.bodies).toEqual(was.bodies)
    expect(jar.keeping).toEqual({ temperatureC: 28, turned: 'daily' })
    expect(jar.clock).toEqual({
      atMs: nowMs,
      bodies: was.bodies,
      lagDays: 0,
      colourFraction: was.colourFraction,
    })
    expect(jar.fruit!.parts).toMatchObject([{ cut: 'cut', pieceScale: 0.5 }])
  })

  it('leaves what is not asked as it is, and never goes back before the last move', () => {
    const after = handledFromNow(own, 'b', {}, atMs(10))
    const last = after.at(-1)!
    expect(last.atMs).toBe(atMs(40))
    const jar = last.effect.jars!.get('j')!
    expect(jar.keeping).toEqual(jarsAfter(own, 'b').get('j')!.keeping)
    expect(jar.fruit!.parts).toMatchObject([{ cut: 'pricked', pieceScale: 1 }])
    expect(handledFromNow([], 'b', {}, 0)).toEqual([])
  })
})

describe('outcomesAt', () => {
  it('tells each steeping jar as if it were drawn off then', () => {
    const { steps } = folded([
      ...begun,
      [0, { kind: 'charge', batchId: 'b', jarId: 'k', lotId: 'fruit', massG: 500, cut: 'pricked' }],
    ])
    const then = atMs(20)
    const [one, ...others] = outcomesAt(steps, 'b', then)
    // The other jar has no spirit.
    expect(others).toEqual([])
    const jar = settledJar(jarsAfter(steps, 'b').get('j')!, then)
    const { strengthPctVol, sugarGPerL, acidGPerL, volumeMl } = describeLiquid(jar.bodies.free)!
    expect(one).toEqual({
      jarId: 'j',
      atMs: then,
      values: {
        strengthPctVol,
        sugarGPerL,
        acidGPerL,
        volumeMl,
        ethanolInFruitMl: ethanolMl(jar.bodies.held.ethanolG),
      },
      extractFraction: extractOut(jar, then, then + 500 * 365 * day),
      colourFraction: jar.colourFraction,
    })
  })

  it.each<Deed>([
    { kind: 'drawOff', batchId: 'b', fromJarId: 'j', toJarId: 'e' },
    { kind: 'coverWithSugar', batchId: 'b', jarId: 'j', lotId: 'sugar', massG: 300 },
    { kind: 'press', batchId: 'b', fromJarId: 'j', toJarId: 'e' } as Deed,
    { kind: 'discard', from: { jarId: 'j', part: 'all' } },
  ])('tells it as it stood before $kind, however late it is asked', (deed) => {
    const { steps } = folded([...begun, [40, deed]])
    const then = atMs(50)
    const found = outcomesAt(steps, 'b', then)
    expect(found).toEqual(outcomesAt(steps.slice(0, 5), 'b', then))
    expect(found).toHaveLength(1)
    // Asked about before it, what came after is no matter.
    expect(outcomesAt(steps, 'b', atMs(30))).toEqual(outcomesAt(steps.slice(0, 5), 'b', atMs(30)))
  })

  it('goes on with what is only poured in, and with no other batch', () => {
    const more: Written = [
      ...begun,
      [5, { kind: 'pourSpirit', batchId: 'b', jarId: 'j', lotId: 'spirit', volumeMl: 500 }],
    ]
    const { steps } = folded(more)
    const [one] = outcomesAt(steps, 'b', atMs(50))
    expect(one!.values.volumeMl).toBeGreaterThan(2000)
    expect(one!.values.volumeMl).toBe(
      describeLiquid(settledJar(jarsAfter(steps, 'b').get('j')!, atMs(50)).bodies.free)!.volumeMl,
    )
    expect(outcomesAt(steps, 'other', atMs(50))).toEqual([])
    // What is poured at that instant is in it.
    const [poured] = outcomesAt(steps, 'b', atMs(5))
    expect(poured!.values.volumeMl).toBeGreaterThan(
      outcomesAt(steps, 'b', atMs(5) - 1)[0]!.values.volumeMl + 400,
    )
    // Before the spirit there is nothing to draw off.
    expect(outcomesAt(steps, 'b', atMs(-1))).toEqual([])
  })
})

describe('replayOf', () => {
  it('sets aside what came from another batch, and pours it as it was poured', () => {
    const married: Written = [
      ...drawn,
      [40, { kind: 'pourSpirit', batchId: 'other', jarId: 'x', lotId: 'spirit', volumeMl: 700 }],
      [
        41,
        {
          kind: 'marry',
          batchId: 'b',
          parts: [{ jarId: 'e' }, { jarId: 'x' }],
          toJarId: 'm',
        } as Deed,
      ],
    ]
    const { steps, cellar, refused } = folded(married)
    expect(refused).toEqual([])
    const told = replayOf(stepsOf(steps, 'b'), cellar, 'b', fruitOf)
    const again = replay(told)
    expect(again.refused).toEqual([])
    const { free } = again.cellar.jars.get('m')!.bodies
    const was = cellar.jars.get('m')!.bodies.free
    for (const kind of ['ethanolG', 'waterG', 'sugarG', 'acidG', 'solublesG'] as const)
      expect(free[kind]).toBeCloseTo(was[kind], 6)
    const marry = told.moves.find(({ move }) => move.kind === 'marry')!
    expect(marry.move).toMatchObject({
      parts: [{ jarId: 'e' }, { jarId: `guest-${marry.id}-1` }],
      toJarId: 'm',
    })
    const guest = told.from.jars.get(`guest-${marry.id}-1`)!
    expect(liquidVolumeMl(guest.bodies.free)).toBeCloseTo(700, 3)
    expect(guest.clock.bodies).toEqual(guest.bodies)
    expect(guest.batchId).toBe(`of-guest-${marry.id}-1`)
  })
})
