import { describe, expect, it } from 'vitest'
import { learn } from '../../../main/engine/fruit/learn.ts'
import { usualYieldLPerKg } from '../../../main/engine/fruit/usual-yield.ts'
import { fruitOf, learnedTissue, settledJar } from '../../../main/engine/index.ts'
import { wholeVolumeMl } from '../../../main/engine/ledger/jar-liquid.ts'
import { buyFruit, buySpirit, buySugar, folded, type Deed } from '../ledger/book-of-moves.ts'

type Day = readonly [number, Deed]

const cherryEdibleKg = 0.9

/** A kilogram of sour cherries under a litre of spirit, and what the maker does then. */
const batch = (id: string, ...then: readonly Day[]): Day[] => [
  [0, buyFruit(`${id}-fruit`, 'sour_cherry', 1000)],
  [0, buySpirit(`${id}-spirit`, 1000, 70)],
  [0, buySugar(`${id}-sugar`, 500)],
  [
    0,
    {
      kind: 'charge',
      batchId: id,
      jarId: `${id}-jar`,
      lotId: `${id}-fruit`,
      massG: 1000,
      cut: 'frozen',
    },
  ],
  [
    0,
    {
      kind: 'pourSpirit',
      batchId: id,
      jarId: `${id}-jar`,
      lotId: `${id}-spirit`,
      volumeMl: 1000,
    },
  ],
  ...then,
]

const poured = (id: string, volumeMl: number | undefined) => ({
  batchId: id,
  fromJarId: `${id}-jar`,
  toJarId: `${id}-first`,
  ...(volumeMl !== undefined && { volumeMl }),
})
const drawOff = (id: string, volumeMl?: number): Deed => ({
  kind: 'drawOff',
  ...poured(id, volumeMl),
})
const press = (id: string, volumeMl?: number): Deed => ({ kind: 'press', ...poured(id, volumeMl) })
const cover = (id: string): Deed => ({
  kind: 'coverWithSugar',
  batchId: id,
  jarId: `${id}-jar`,
  lotId: `${id}-sugar`,
  massG: 250,
})
const throwOut = (id: string): Deed => ({
  kind: 'discard',
  from: { jarId: `${id}-jar`, part: 'pulp' },
})
const bottle = (id: string, count: number): Deed => ({
  kind: 'bottle',
  batchId: id,
  fromJarId: `${id}-first`,
  bottleLotId: `${id}-bottles`,
  bottleSizeMl: 250,
  count,
})

const noPace = () => undefined
const taught = (...days: readonly Day[][]) =>
  learn(folded(days.flat().sort(([a], [b]) => a - b)), fruitOf('sour_cherry'), { paceOf: noPace })

/** All the liquid of the jar after sixty days, in and out of the fruit. */
function wholeAfterSixtyDaysMl(): number {
  const { cellar, steps } = folded(batch('a'))
  const jar = cellar.jars.get('a-jar')
  if (!jar) throw new Error('no jar')
  return wholeVolumeMl(settledJar(jar, (steps.at(-1)?.atMs ?? 0) + 60 * 86_400_000))
}

describe('learn', () => {
  it('finds that 0.45 L stayed in a kilogram when all but that was drawn off', () => {
    const wholeMl = wholeAfterSixtyDaysMl()
    const drawn = wholeMl - 450 * cherryEdibleKg
    const learned = taught(batch('a', [60, drawOff('a', drawn)], [60, cover('a')]))
    expect(learned?.drainedLPerKg?.own).toBeCloseTo(0.45, 4)
    expect(learned?.drainedLPerKg?.library).toBe(0.65)
    // One batch against facts that count as two: (0.45 + 2 · 0.65) / 3.
    expect(learned?.drainedLPerKg?.blended).toBeCloseTo(0.58333, 4)
    expect(learned?.drainedLPerKg?.batchIds).toEqual(['a'])
  })

  it('counts a batch whose raw fruit was layered with sugar first', () => {
    const layered = (id: string): Day[] =>
      batch(id).flatMap((line): Day[] => {
        const [day, deed] = line
        if (deed.kind !== 'charge') return [line]
        const { batchId, jarId } = deed
        return [
          [day, { ...deed, cut: 'whole' }],
          [day, { kind: 'sugar', batchId, jarId, lotId: `${id}-sugar`, massG: 200 }],
        ]
      })
    const learned = taught([...layered('a'), [60, drawOff('a', 1000)], [60, cover('a')]])
    expect(learned?.drainedLPerKg?.batchIds).toEqual(['a'])
  })

  it('takes the mean of two batches and lets it weigh half', () => {
    const wholeMl = wholeAfterSixtyDaysMl()
    const learned = taught(
      batch('a', [60, drawOff('a', wholeMl - 400 * cherryEdibleKg)], [61, throwOut('a')]),
      batch('b', [60, drawOff('b', wholeMl - 500 * cherryEdibleKg)], [61, throwOut('b')]),
    )
    expect(learned?.drainedLPerKg?.own).toBeCloseTo(0.45, 4)
    expect(learned?.drainedLPerKg?.blended).toBeCloseTo((2 * 0.45 + 2 * 0.65) / 4, 4)
    expect(learned?.drainedLPerKg?.batchIds).toEqual(['a', 'b'])
  })

  it('counts only the last draw-off before the sugar', () => {
    const wholeMl = wholeAfterSixtyDaysMl()
    const half = (wholeMl - 450 * cherryEdibleKg) / 2
    const learned = taught(
      batch('a', [60, drawOff('a', half)], [61, drawOff('a', half)], [61, cover('a')]),
    )
    expect(learned?.drainedLPerKg?.own).toBeCloseTo(0.45, 4)
  })

  it('learns nothing from a draw-off that nothing followed, was not measured, or came after sugar', () => {
    const wholeMl = wholeAfterSixtyDaysMl()
    const drawn = wholeMl - 450 * cherryEdibleKg
    expect(taught(batch('a', [60, drawOff('a', drawn)]))).toBeUndefined()
    expect(taught(batch('a', [60, drawOff('a')], [60, cover('a')]))).toBeUndefined()
    expect(
      taught(batch('a', [60, drawOff('a', 300)], [61, drawOff('a')], [61, cover('a')])),
    ).toBeUndefined()
    expect(
      taught(
        batch('a', [60, drawOff('a')], [61, cover('a')], [75, drawOff('a', 100)], [76, press('a')]),
      ),
    ).toBeUndefined()
  })

  it('learns what a press leaves, and the drained value before it', () => {
    const wholeMl = wholeAfterSixtyDaysMl()
    const learned = taught(
      batch(
        'a',
        [60, drawOff('a', wholeMl - 600 * cherryEdibleKg)],
        [60, press('a', 300 * cherryEdibleKg)],
      ),
    )
    expect(learned?.drainedLPerKg?.own).toBeCloseTo(0.6, 4)
    expect(learned?.pressedLPerKg?.own).toBeCloseTo(0.3, 3)
    expect(learned?.pressedLPerKg?.library).toBe(0.28)
  })

  it('leaves out a jar that would hold more than 3 L/kg', () => {
    // 10 kg of spirit on 1 kg: with only 100 mL drawn, eleven litres a kilogram stay.
    const flooded = batch('a', [60, drawOff('a', 100)], [60, cover('a')]).map(([day, deed]): Day =>
      'volumeMl' in deed && deed.volumeMl === 1000
        ? [day, { ...deed, volumeMl: 9000 }]
        : [day, deed],
    )
    expect(taught(flooded)).toBeUndefined()
  })

  it('leaves out a batch of two kinds of fruit', () => {
    const wholeMl = wholeAfterSixtyDaysMl()
    const days = batch('a', [60, drawOff('a', wholeMl)], [61, throwOut('a')])
    const raspberries: Day[] = [
      [0, buyFruit('other', 'raspberry', 200)],
      [
        0,
        {
          kind: 'charge',
          batchId: 'a',
          jarId: 'a-jar',
          lotId: 'other',
          massG: 200,
          cut: 'frozen',
        },
      ],
    ]
    expect(taught([...days.slice(0, 3), ...raspberries, ...days.slice(3)])).toBeUndefined()
  })

  it('learns the yield of what is bottled: 1.25 L from 0.9 kg', () => {
    const learned = taught(
      batch('a', [60, drawOff('a')], [60, throwOut('a')], [61, bottle('a', 5)]),
    )
    expect(learned?.yieldLPerKg).toBeUndefined()
    const emptied: Deed = { kind: 'discard', from: { jarId: 'a-first', part: 'all' } }
    const rested = taught(
      batch(
        'a',
        [60, drawOff('a', 1300)],
        [60, throwOut('a')],
        [61, bottle('a', 5)],
        [62, emptied],
      ),
    )
    expect(rested?.yieldLPerKg?.own).toBeCloseTo(1.25 / cherryEdibleKg, 6)
    expect(rested?.yieldLPerKg?.library).toBe(usualYieldLPerKg(fruitOf('sour_cherry')))
  })

  it('learns no yield of bottles that were opened back into a jar', () => {
    const unbottled: Deed = {
      kind: 'unbottle',
      batchId: 'a',
      bottleLotId: 'a-bottles',
      count: 1,
      toJarId: 'a-second',
    }
    const learned = taught(
      batch(
        'a',
        [60, drawOff('a', 1300)],
        [60, throwOut('a')],
        [61, bottle('a', 5)],
        [62, { kind: 'discard', from: { jarId: 'a-first', part: 'all' } }],
        [63, unbottled],
        [64, { kind: 'discard', from: { jarId: 'a-second', part: 'all' } }],
      ),
    )
    expect(learned?.yieldLPerKg).toBeUndefined()
    expect(learned?.drainedLPerKg).toBeDefined()
  })

  it('learns no yield while the batch stands in jars, of what was mixed, and of what is dried', () => {
    const emptied: Day = [62, { kind: 'discard', from: { jarId: 'a-first', part: 'all' } }]
    const toBottles: Day[] = [
      [60, drawOff('a', 1300)],
      [60, throwOut('a')],
      [61, bottle('a', 5)],
    ]
    const yieldOf = (...then: Day[]) => taught(batch('a', ...then))?.yieldLPerKg?.own
    expect(yieldOf(...toBottles.slice(0, 2), [61, bottle('a', 2)])).toBeUndefined()
    expect(yieldOf(...toBottles, emptied)).toBeCloseTo(1.25 / cherryEdibleKg, 6)
    const drunk: Day = [63, { kind: 'drawBottle', bottleLotId: 'a-bottles', count: 5 }]
    expect(yieldOf(...toBottles, emptied, drunk)).toBeCloseTo(1.25 / cherryEdibleKg, 6)
    // Some of its extract went into another batch.
    const givenAway: Day = [
      60.5,
      {
        kind: 'marry',
        batchId: 'b',
        parts: [{ jarId: 'a-first', volumeMl: 50 }],
        toJarId: 'b-jar',
      },
    ]
    expect(
      yieldOf(...toBottles.slice(0, 2), givenAway, [61, bottle('a', 4)], emptied),
    ).toBeUndefined()
    const dried = batch('a', ...toBottles, emptied).map((line): Day => {
      const [day, deed] = line
      return deed.kind === 'buy' && deed.lotId === 'a-fruit'
        ? [day, buyFruit('a-fruit', 'raisin', 1000)]
        : line
    })
    const raisin = learn(folded(dried), fruitOf('raisin'), { paceOf: noPace })
    expect(raisin?.yieldLPerKg).toBeUndefined()
    const peel = batch('a', ...toBottles, emptied).map((line): Day => {
      const [day, deed] = line
      return deed.kind === 'buy' && deed.lotId === 'a-fruit'
        ? [day, buyFruit('a-fruit', 'lemon_peel', 1000)]
        : line
    })
    const lemon = learn(folded(peel), fruitOf('lemon_peel'), { paceOf: noPace })
    expect(lemon?.yieldLPerKg).toBeUndefined()
  })

  it('counts the edible fruit of every charge, whichever jar it went into', () => {
    const more: Day[] = [
      [1, buyFruit('more', 'sour_cherry', 500)],
      [
        1,
        { kind: 'charge', batchId: 'a', jarId: 'a-jar', lotId: 'more', massG: 500, cut: 'frozen' },
      ],
    ]
    const learned = taught(
      batch(
        'a',
        ...more,
        [60, drawOff('a', 1300)],
        [60, throwOut('a')],
        [61, bottle('a', 5)],
        [62, { kind: 'discard', from: { jarId: 'a-first', part: 'all' } }],
      ),
    )
    expect(learned?.yieldLPerKg?.own).toBeCloseTo(1.25 / (1.5 * cherryEdibleKg), 6)
  })

  it('is taught of its own fruit by batches of that fruit alone', () => {
    const { cellar, steps } = folded(batch('a', [60, drawOff('a', 1000)], [61, throwOut('a')]))
    expect(learn({ cellar, steps }, fruitOf('quince'), { paceOf: () => 2 })).toBeUndefined()
    const told = learn({ cellar, steps }, fruitOf('sour_cherry'), { paceOf: noPace })
    expect(told && Object.keys(told)).toEqual(['fruitId', 'drainedLPerKg'])
  })

  it('blends paces on logs: four times faster once, against one, is 4^(1/3)', () => {
    const book = folded(batch('a'))
    const learned = learn(book, fruitOf('sour_cherry'), {
      paceOf: (id) => (id === 'a' ? 4 : undefined),
    })
    expect(learned?.pace?.own).toBeCloseTo(4, 12)
    expect(learned?.pace?.blended).toBeCloseTo(4 ** (1 / 3), 12)
  })

  it('gives what later charges are reckoned with', () => {
    const cherry = fruitOf('sour_cherry')
    const drained = { own: 0.45, library: 0.65, blended: 0.58, batchIds: ['a'] }
    const tissue = learnedTissue(cherry, { fruitId: cherry.id, drainedLPerKg: drained })
    expect(tissue).toEqual({
      kineticClass: 'thinSkin',
      piece: { shape: 'sphere', halfSizeMm: 9 },
      drainedLPerKg: 0.58,
      pressedLPerKg: 0.28,
      bulkDensityKgPerL: 0.655,
    })
    const of = (blended: number) => ({ own: blended, library: 1, blended, batchIds: ['a'] })
    const all = { drainedLPerKg: of(0.5), pressedLPerKg: of(0.2), pace: of(1.5) }
    expect(learnedTissue(cherry, { fruitId: cherry.id, ...all })).toEqual({
      ...tissue,
      drainedLPerKg: 0.5,
      pressedLPerKg: 0.2,
      pace: 1.5,
    })
    expect(learnedTissue({ ...cherry, pace: 0.8 }, undefined)).toEqual({
      ...tissue,
      drainedLPerKg: 0.65,
      pace: 0.8,
    })
    expect(learnedTissue(cherry, undefined)).not.toHaveProperty('pace')
  })
})

describe('usualYieldLPerKg', () => {
  it("is the craft reference's planning yield where facts say nothing of spirit", () => {
    const { fruitKgPerLSpirit: _, ...bare } = fruitOf('sour_cherry')
    expect(usualYieldLPerKg(bare)).toBe(1.7)
    const { steepingStrengthPctVol: __, ...weakless } = fruitOf('sour_cherry')
    expect(usualYieldLPerKg(weakless)).toBe(1.7)
    const { finishedStrengthPctVol: ___, ...endless } = fruitOf('sour_cherry')
    expect(usualYieldLPerKg(endless)).toBe(1.7)
  })

  it('is 1.7 L/kg for 1 kg under 1 L of 67.5 % vol finished at 31.7 % vol', () => {
    const range = (typical: number) => ({ typical, low: typical, high: typical })
    const fruit = {
      ...fruitOf('sour_cherry'),
      fruitKgPerLSpirit: range(1),
      steepingStrengthPctVol: range(67.5),
      finishedStrengthPctVol: range(31.7),
    }
    expect(usualYieldLPerKg(fruit)).toBeCloseTo(1.7, 2)
  })
})
