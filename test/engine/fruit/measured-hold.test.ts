import { describe, expect, it } from 'vitest'
import { stepsOf } from '../../../main/engine/index.ts'
import { measuredHold } from '../../../main/engine/fruit/measured-hold.ts'
import { wholeVolumeMl } from '../../../main/engine/ledger/jar-liquid.ts'
import {
  buyAcid,
  buyFruit,
  buySpirit,
  buySugar,
  folded,
  type Deed,
} from '../ledger/book-of-moves.ts'

type Day = readonly [number, Deed]

const batchId = 'a'
const inJar = { batchId, jarId: 'jar' }
const pouring = { batchId, fromJarId: 'jar', toJarId: 'first' }

/** A kilogram of frozen sour cherries, 0.9 kg of it edible, under a litre of spirit. */
const steeped: readonly Day[] = [
  [0, buyFruit('fruit', 'sour_cherry', 3000)],
  [0, buySpirit('spirit', 3000, 70)],
  [0, buySugar('sugar', 500)],
  [0, buyAcid('acid', 50)],
  [0, { kind: 'charge', ...inJar, lotId: 'fruit', massG: 1000, cut: 'frozen' }],
  [0, { kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl: 1000 }],
  [1, { kind: 'pourSpirit', batchId, jarId: 'other', lotId: 'spirit', volumeMl: 200 }],
]
const drawn: Deed = { kind: 'drawOff', ...pouring, volumeMl: 900 }
const covered: Deed = { kind: 'coverWithSugar', ...inJar, lotId: 'sugar', massG: 250 }
const pressed: Deed = { kind: 'press', ...pouring, volumeMl: 100 }

function held(...then: readonly Day[]) {
  const { steps, refused } = folded([...steeped, ...then])
  expect(refused).toEqual([])
  return measuredHold(stepsOf(steps, batchId), batchId)
}

/** What stands in the jar after the moves, by the kilogram of edible fruit. */
function standingLPerKg(...then: readonly Day[]): number {
  const jar = folded([...steeped, ...then]).cellar.jars.get('jar')
  if (!jar?.fruit) throw new Error('the fruit is gone')
  return wholeVolumeMl(jar) / jar.fruit.edibleG
}

describe('measuredHold', () => {
  it('is what stands in the jar after the last draw-off, however the fruit goes on', () => {
    const drainedLPerKg = standingLPerKg([60, drawn])
    for (const handled of [
      covered,
      { kind: 'crush', ...inJar },
      { kind: 'sugar', ...inJar, lotId: 'sugar', massG: 100 },
      { kind: 'discard', from: { jarId: 'jar', part: 'pulp' } },
      { kind: 'discard', from: { jarId: 'jar', part: 'all' } },
    ] as const)
      expect(held([60, drawn], [61, handled]), handled.kind).toEqual({
        drainedLPerKg: expect.closeTo(drainedLPerKg, 9),
      })
  })

  it.each([
    ['stirred', { kind: 'stir', ...inJar }],
    ['kept otherwise', { kind: 'keep', ...inJar, turned: 'daily' }],
    ['tasted', { kind: 'taste', ...inJar, scores: {} }],
  ] as const)('is not touched by what is only %s', (_, looked) => {
    expect(held([60, drawn], [60.5, looked as Deed], [61, covered])).toEqual(
      held([60, drawn], [61, covered]),
    )
  })

  it.each([
    ['water', { kind: 'pourWater', ...inJar, volumeMl: 50 }],
    ['spirit', { kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl: 50 }],
    ['acid', { kind: 'addAcid', ...inJar, lotId: 'acid', massG: 5 }],
    ['more fruit', { kind: 'charge', ...inJar, lotId: 'fruit', massG: 100, cut: 'whole' }],
    ['another extract', { kind: 'drawOff', batchId, fromJarId: 'other', toJarId: 'jar' }],
    ['a marriage', { kind: 'marry', batchId, parts: [{ jarId: 'other' }], toJarId: 'jar' }],
    [
      'a filtrate',
      { kind: 'filter', batchId, fromJarId: 'other', toJarId: 'jar', medium: 'cloth' },
    ],
  ] as const)('is lost when %s comes in, until it is drawn off again', (_, refill) => {
    const deed = refill as Deed
    expect(held([60, drawn], [60.5, deed], [61, covered])).toEqual({})
    const again: Deed = { kind: 'drawOff', ...pouring, volumeMl: 40 }
    expect(held([60, drawn], [60.5, deed], [61, again], [62, covered])).toEqual({
      drainedLPerKg: expect.closeTo(standingLPerKg([60, drawn], [60.5, deed], [61, again]), 9),
    })
  })

  it.each([
    ['thrown away', { kind: 'discard', from: { jarId: 'jar', part: 'liquid' } }],
    ['married', { kind: 'marry', batchId, parts: [{ jarId: 'jar' }], toJarId: 'other' }],
    ['filtered', { kind: 'filter', batchId, fromJarId: 'jar', toJarId: 'other', medium: 'cloth' }],
  ] as const)('is lost for good when liquid is %s unmeasured', (_, taken) => {
    expect(
      held([60, { ...drawn, volumeMl: 500 }], [60.5, taken as Deed], [61, covered], [62, pressed]),
    ).toEqual({})
  })

  it('is believed as it was put right', () => {
    const some: Deed = { ...drawn, volumeMl: 600 }
    const right: Deed = { kind: 'correct', found: { jarId: 'jar', volumeMl: 250 } }
    const corrected = standingLPerKg([60, some], [60.5, right])
    expect(corrected).not.toBeCloseTo(standingLPerKg([60, some]), 2)
    expect(held([60, some], [60.5, right], [61, covered])).toEqual({
      drainedLPerKg: expect.closeTo(corrected, 9),
    })
    // Before anything was drawn off there is nothing to put right.
    expect(held([50, right], [61, covered])).toEqual({})
  })

  it('needs every draw-off measured, the press too', () => {
    expect(held([60, { kind: 'drawOff', ...pouring }], [61, covered])).toEqual({})
    const loose: Deed = { kind: 'press', ...pouring }
    const drainedLPerKg = expect.closeTo(standingLPerKg([60, drawn]), 9)
    expect(held([60, drawn], [61, loose])).toEqual({ drainedLPerKg })
    expect(held([60, drawn], [61, pressed])).toEqual({
      drainedLPerKg,
      pressedLPerKg: expect.closeTo(standingLPerKg([60, drawn], [61, pressed]), 9),
    })
    expect(held([60, { kind: 'drawOff', ...pouring }], [61, pressed])).toEqual({})
  })

  it('counts fruit that was covered once only as it first drained', () => {
    const first = held([60, drawn], [61, covered])
    const second: Deed = { kind: 'drawOff', ...pouring, volumeMl: 50 }
    expect(held([60, drawn], [61, covered], [70, second], [71, covered])).toEqual(first)
  })

  it('weighs jars by their fruit', () => {
    const beside = (volumeMl: number): Day[] => [
      [0, { kind: 'charge', batchId, jarId: 'big', lotId: 'fruit', massG: 2000, cut: 'frozen' }],
      [0, { kind: 'pourSpirit', batchId, jarId: 'big', lotId: 'spirit', volumeMl: 1500 }],
      [60, { kind: 'drawOff', batchId, fromJarId: 'big', toJarId: 'second', volumeMl }],
      [61, { kind: 'discard', from: { jarId: 'big', part: 'pulp' } }],
    ]
    const one = held([60, drawn], [61, covered]).drainedLPerKg ?? 0
    const alone = held(...beside(1500)).drainedLPerKg ?? 0
    const both = [...beside(1500), [60, drawn] as Day, [61, covered] as Day].sort(
      ([a], [b]) => a - b,
    )
    expect(held(...both).drainedLPerKg).toBeCloseTo((one + 2 * alone) / 3, 6)
  })

  it('begins anew with the next fruit in the jar', () => {
    const next: Day[] = [
      [60, drawn],
      [61, { kind: 'discard', from: { jarId: 'jar', part: 'all' } }],
      [62, { kind: 'charge', ...inJar, lotId: 'fruit', massG: 1000, cut: 'frozen' }],
      [62, { kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl: 800 }],
      [90, { kind: 'drawOff', ...pouring, volumeMl: 850 }],
    ]
    const before = held(...next)
    const after = held(...next, [91, covered])
    expect(before.drainedLPerKg).toBeCloseTo(standingLPerKg([60, drawn]), 9)
    const second = standingLPerKg(...next)
    expect(after.drainedLPerKg).toBeCloseTo(((before.drainedLPerKg ?? 0) + second) / 2, 6)
  })

  it('is not of another batch’s fruit', () => {
    const { steps } = folded([...steeped, [60, drawn], [61, covered]])
    expect(measuredHold(stepsOf(steps, batchId), 'someone')).toEqual({})
  })
})
