import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { costsOf, fold, fruitOf } from '../../../main/engine/index.ts'
import { totalMinor } from '../../../main/engine/ledger/cost.ts'
import { buyAcid, buyFruit, buySpirit, buySugar, recorded, type Deed } from './book-of-moves.ts'

type Priced = readonly [day: number, deed: Deed]

const priced = (deed: Deed, priceMinor: number | undefined): Deed =>
  deed.kind === 'buy' && priceMinor !== undefined ? { ...deed, priceMinor } : deed

const costs = (deeds: readonly Priced[]) => costsOf(fold(recorded(deeds), { fruitOf }).steps)

const batchId = 'cherry'
const bought: readonly Priced[] = [
  [0, priced(buyFruit('fruit', 'sour_cherry', 2000), 800)],
  [0, priced(buySpirit('spirit', 2000, 96), 4000)],
  [0, priced(buySugar('sugar', 1000), 200)],
]
const steeped: readonly Priced[] = [
  ...bought,
  [
    0,
    {
      kind: 'charge',
      batchId,
      jarId: 'a',
      lotId: 'fruit',
      massG: 2000,
      refuseG: 200,
      cut: 'pricked',
    },
  ],
  [0, { kind: 'pourSpirit', batchId, jarId: 'a', lotId: 'spirit', volumeMl: 1500 }],
  [0, { kind: 'pourWater', batchId, jarId: 'a', volumeMl: 500 }],
]

describe('costsOf', () => {
  it('puts prices on lots, and takes along the share that is used', () => {
    const { places, spent } = costs(steeped)
    expect(spent).toEqual({ minor: 5000, isComplete: true })
    expect(places.get('lot:spirit')?.minor).toBeCloseTo(1000, 6)
    // All of the fruit, stones and all, and three quarters of the spirit; water is free.
    expect(places.get('jar:a')?.minor).toBeCloseTo(800 + 3000, 6)
    expect(places.has('lot:fruit')).toBe(false)
  })

  it('takes the price of acid into the jar that it sharpens', () => {
    const { places } = costs([
      ...steeped,
      [0, priced(buyAcid('acid', 100), 300)],
      [30, { kind: 'addAcid', batchId, jarId: 'a', lotId: 'acid', massG: 20 }],
    ])
    expect(places.get('jar:a')?.minor).toBeCloseTo(3800 + 60, 6)
    expect(places.get('lot:acid')?.minor).toBeCloseTo(240, 6)
  })

  it('gives an extract its share of the liquid, and the spent fruit leaves its cost behind', () => {
    const drawn: Priced[] = [
      ...steeped,
      [40, { kind: 'drawOff', batchId, fromJarId: 'a', toJarId: 'b' }],
    ]
    const { places } = costs(drawn)
    const [first, left] = [places.get('jar:b')?.minor ?? 0, places.get('jar:a')?.minor ?? 0]
    expect(first + left).toBeCloseTo(3800, 6)
    expect(left).toBeGreaterThan(300)
    const thrown = costs([...drawn, [41, { kind: 'discard', from: { jarId: 'a', part: 'all' } }]])
    expect(thrown.places.get('jar:b')?.minor).toBeCloseTo(3800, 6)
    expect(thrown.wasted.minor).toBeCloseTo(0, 6)
  })

  it('writes off good liquid that is thrown away', () => {
    const { wasted } = costs([
      ...steeped,
      [40, { kind: 'drawOff', batchId, fromJarId: 'a', toJarId: 'b' }],
      [41, { kind: 'discard', from: { jarId: 'b', part: 'all' } }],
    ])
    expect(wasted.minor).toBeGreaterThan(1500)
  })

  it('keeps what the filter keeps on the liquid that went through', () => {
    const { places } = costs([
      [0, priced(buySpirit('spirit', 1000, 40), 1000)],
      [0, { kind: 'pourSpirit', batchId, jarId: 'a', lotId: 'spirit', volumeMl: 1000 }],
      [1, { kind: 'filter', batchId, fromJarId: 'a', toJarId: 'b', medium: 'paper' }],
    ])
    expect(places.get('jar:b')?.minor).toBeCloseTo(1000, 6)
  })

  it('carries cost into bottles, and out with each that is drunk or given', () => {
    const { places, drunk, given } = costs([
      [0, priced(buySpirit('spirit', 3000, 40), 3000)],
      [0, { kind: 'pourSpirit', batchId, jarId: 'a', lotId: 'spirit', volumeMl: 3000 }],
      [
        1,
        {
          kind: 'bottle',
          batchId,
          fromJarId: 'a',
          bottleLotId: 'lot',
          bottleSizeMl: 500,
          count: 6,
        },
      ],
      [2, { kind: 'drawBottle', bottleLotId: 'lot', count: 1 }],
      [3, { kind: 'give', bottleLotId: 'lot', count: 2 }],
      [4, { kind: 'unbottle', batchId, bottleLotId: 'lot', count: 1, toJarId: 'b' }],
    ])
    expect(places.get('bottles:lot')?.minor).toBeCloseTo(1000, 6)
    expect(places.get('jar:b')?.minor).toBeCloseTo(500, 6)
    expect([drunk.minor, given.minor]).toEqual([expect.closeTo(500, 6), expect.closeTo(1000, 6)])
  })

  const inBatch = { batchId }
  const lost = { kind: 'discard' } as const
  const half = (jarId: string): Priced => [
    0,
    { kind: 'pourSpirit', ...inBatch, jarId, lotId: 'spirit', volumeMl: 500 },
  ]
  /** Two jars of the batch with half a litre at 500 each; the fruit in the first is spent. */
  const twoJars: readonly Priced[] = [
    [0, priced(buySpirit('spirit', 2000, 40), 2000)],
    [0, priced(buyFruit('fruit', 'sour_cherry', 500), 300)],
    half('a'),
    half('b'),
    [0, { kind: 'charge', ...inBatch, jarId: 'a', lotId: 'fruit', massG: 500, cut: 'whole' }],
    [40, { kind: 'drawOff', ...inBatch, fromJarId: 'a', toJarId: 'c' }],
  ]

  it('leaves what spent fruit cost on the batch’s jars by their mass', () => {
    const { places, wasted } = costs([
      ...twoJars,
      [41, { ...lost, from: { jarId: 'a', part: 'all' } }],
    ])
    const [b, c] = ['jar:b', 'jar:c'].map((place) => places.get(place)?.minor ?? 0) as [
      number,
      number,
    ]
    expect(b + c).toBeCloseTo(1300, 6)
    // Both jars had 500 or less of their own; each took a part of what was left in the first.
    expect(b).toBeGreaterThan(500)
    expect(wasted.minor).toBe(0)
    expect(places.has('jar:a')).toBe(false)
  })

  it('goes to the bottles where no jar is left, then to the opened ones, then is lost', () => {
    const bottled: readonly Priced[] = [
      ...twoJars.filter(([, { kind }]) => kind !== 'charge' && kind !== 'drawOff'),
      [
        1,
        {
          kind: 'bottle',
          ...inBatch,
          fromJarId: 'b',
          bottleLotId: 'lot',
          bottleSizeMl: 250,
          count: 2,
        },
      ],
      [2, { kind: 'charge', ...inBatch, jarId: 'a', lotId: 'fruit', massG: 500, cut: 'whole' }],
    ]
    const fruitGone: Priced = [3, { ...lost, from: { jarId: 'a', part: 'all' } }]
    // What goes with spent fruit is a normal loss: its 500 of spirit and 300 of fruit stay.
    const { places, wasted } = costs([...bottled, fruitGone])
    expect(places.get('bottles:lot')?.minor).toBeCloseTo(500 + 800, 6)
    expect(wasted.minor).toBe(0)
    const opened: readonly Priced[] = [
      ...bottled,
      [2.5, { kind: 'openBottle', bottleLotId: 'lot', openedId: 'one' }],
      [2.6, { kind: 'drawBottle', bottleLotId: 'lot', count: 1 }],
    ]
    const toOpened = costs([...opened, fruitGone])
    expect(toOpened.drunk.minor).toBeCloseTo(250, 6)
    expect(toOpened.places.get('opened:one')?.minor).toBeCloseTo(250 + 800, 6)
    expect(toOpened.wasted.minor).toBe(0)
    const nothingLeft = costs([...opened, [2.7, { kind: 'pourGlass', openedId: 'one' }], fruitGone])
    expect([...nothingLeft.places.keys()].filter((place) => !place.startsWith('lot:'))).toEqual([])
    expect(nothingLeft.drunk.minor).toBeCloseTo(500, 6)
    expect(nothingLeft.wasted.minor).toBeCloseTo(800, 6)
  })

  it('says where a price is missing, and only there', () => {
    const { places, spent } = costs([
      [0, buySpirit('gift', 500, 40)],
      [0, priced(buySpirit('spirit', 500, 40), 700)],
      [0, { kind: 'pourSpirit', batchId, jarId: 'a', lotId: 'gift', volumeMl: 100 }],
      [0, { kind: 'pourSpirit', batchId, jarId: 'b', lotId: 'spirit', volumeMl: 100 }],
    ])
    expect(places.get('jar:a')).toEqual({ minor: 0, isComplete: false })
    expect(places.get('jar:b')?.isComplete).toBe(true)
    expect(spent.isComplete).toBe(false)
  })

  it('loses no money over 400 random histories', () => {
    const jars = ['a', 'b', 'c'] as const
    const pick = fc.record({
      kind: fc.nat(11),
      jarId: fc.constantFrom(...jars),
      otherId: fc.constantFrom(...jars),
      share: fc.double({ min: 0.05, max: 1, noNaN: true }),
      priceMinor: fc.option(fc.nat(9000), { nil: undefined }),
    })
    let steps = 0
    fc.assert(
      fc.property(fc.array(pick, { minLength: 10, maxLength: 45 }), (picks) => {
        const deeds: Priced[] = [...bought]
        picks.forEach(({ kind, jarId, otherId, share, priceMinor }, index) => {
          const id = `n${index}`
          const own = `batch-${jarId}`
          const choices: readonly Deed[] = [
            priced(buySpirit(id, 3000 * share, 60), priceMinor),
            priced(buySugar(id, 2000 * share), priceMinor),
            {
              kind: 'charge',
              batchId: own,
              jarId,
              lotId: 'fruit',
              massG: 600 * share,
              refuseG: 30,
              cut: 'cut',
            },
            { kind: 'sugar', batchId: own, jarId, lotId: 'sugar', massG: 300 * share },
            { kind: 'pourSpirit', batchId: own, jarId, lotId: 'spirit', volumeMl: 900 * share },
            { kind: 'drawOff', batchId: own, fromJarId: jarId, toJarId: otherId },
            { kind: 'marry', batchId: own, parts: [{ jarId: otherId }], toJarId: jarId },
            { kind: 'filter', batchId: own, fromJarId: jarId, toJarId: jarId, medium: 'paper' },
            {
              kind: 'bottle',
              batchId: own,
              fromJarId: jarId,
              bottleLotId: id,
              bottleSizeMl: 100,
              count: 2,
            },
            { kind: 'drawBottle', bottleLotId: `n${index - 1}`, count: 1 },
            { kind: 'discard', from: { jarId, part: share < 0.5 ? 'pulp' : 'all' } },
            { kind: 'correct', found: { jarId, volumeMl: 1000 * share } },
          ]
          deeds.push([index, choices[kind] as Deed])
        })
        const folded = fold(recorded(deeds), { fruitOf })
        steps += folded.steps.length
        const told = costsOf(folded.steps)
        expect(Math.abs(totalMinor(told) - told.spent.minor)).toBeLessThan(1e-9 * 100_000)
        for (const { minor } of told.places.values()) expect(minor).toBeGreaterThan(-1e-6)
      }),
      { numRuns: 400, seed: 5 },
    )
    // The generator must not have been refused its way out of the test.
    expect(steps).toBeGreaterThan(400 * 8)
  })
})
