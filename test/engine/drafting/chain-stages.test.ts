import { describe, expect, it } from 'vitest'
import { stepsOf } from '../../../main/engine/index.ts'
import { chainStages } from '../../../main/engine/drafting/chain-stages.ts'
import {
  buyAcid,
  buyFruit,
  buySpirit,
  buySugar,
  dayAt,
  folded,
  type Deed,
} from '../ledger/book-of-moves.ts'

type Lines = readonly (readonly [day: number, deed: Deed])[]

const batchId = 'b'
const inJar = { batchId, jarId: 'jar' }
const pantry: Lines = [
  [0, buyFruit('cherries', 'sour_cherry', 5000)],
  [0, buyFruit('quinces', 'quince', 5000)],
  [0, buySpirit('spirit', 5000, 70)],
  [0, buySugar('sugar', 5000)],
  [0, buyAcid('acid', 100)],
]
const layered: Lines = [
  [1, { kind: 'charge', ...inJar, lotId: 'cherries', massG: 1000, refuseG: 100, cut: 'whole' }],
  [1, { kind: 'sugar', ...inJar, lotId: 'sugar', massG: 200 }],
]
const steeped: Lines = [
  ...layered,
  [2, { kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl: 1000 }],
  [2, { kind: 'pourWater', ...inJar, volumeMl: 100 }],
]
const drawn: Lines = [
  ...steeped,
  [30, { kind: 'drawOff', batchId, fromJarId: 'jar', toJarId: 'first' }],
]
const covered: Lines = [
  ...drawn,
  [30, { kind: 'coverWithSugar', ...inJar, lotId: 'sugar', massG: 150 }],
]
const second: Lines = [
  ...covered,
  [40, { kind: 'drawOff', batchId, fromJarId: 'jar', toJarId: 'second' }],
]
const pressed: Lines = [
  ...second,
  [41, { kind: 'press', batchId, fromJarId: 'jar', toJarId: 'second' }],
]
const married: Lines = [
  ...pressed,
  [
    42,
    {
      kind: 'marry',
      batchId,
      parts: [{ jarId: 'first' }, { jarId: 'second' }],
      toJarId: 'demijohn',
    },
  ],
]
const filtered: Lines = [
  ...married,
  [50, { kind: 'filter', batchId, fromJarId: 'demijohn', toJarId: 'demijohn', medium: 'paper' }],
]
const bottled: Lines = [
  ...filtered,
  [
    52,
    {
      kind: 'bottle',
      batchId,
      fromJarId: 'demijohn',
      bottleLotId: 'lot',
      bottleSizeMl: 500,
      count: 2,
    },
  ],
]

function stagesOf(lines: Lines, endDay: number) {
  const { steps, refused } = folded([...pantry, ...lines])
  expect(refused).toEqual([])
  return chainStages(stepsOf(steps, batchId), batchId, Date.parse(dayAt(endDay)))
}

const named = (lines: Lines, endDay = 60) =>
  stagesOf(lines, endDay).map(({ key, ordinal, from, to }) => [
    `${key} ${ordinal}`,
    ...[from, to].map((at) => (Date.parse(at) - Date.parse(dayAt(0))) / 86_400_000),
  ])

describe('chainStages', () => {
  it('names each stage with the days it stood', () => {
    expect(named(bottled)).toEqual([
      ['layered 1', 1, 2],
      ['steeping 1', 2, 30],
      ['sugarDraw 1', 30, 40],
      ['pressed 1', 41, 41],
      ['married 1', 42, 50],
      ['filtered 1', 50, 52],
      ['bottled 1', 52, 52],
    ])
  })

  it('lets what still stands stand until now', () => {
    expect(named(layered, 1.5)).toEqual([['layered 1', 1, 1.5]])
    expect(named(steeped, 20).at(-1)).toEqual(['steeping 1', 2, 20])
    // Drawn off, the first stage is over; its extract stands in none yet.
    expect(named(drawn, 35)).toEqual([
      ['layered 1', 1, 2],
      ['steeping 1', 2, 30],
    ])
  })

  it('tells what flowed into each, fruit without what was thrown away', () => {
    const inflows = Object.fromEntries(
      stagesOf(bottled, 60).map((stage) => [stage.key, stage.inflows]),
    )
    expect(inflows).toMatchObject({
      layered: [
        { what: 'fruit', massG: 900, fruitId: 'sour_cherry' },
        { what: 'sugar', massG: 200 },
      ],
      steeping: [
        {
          what: 'spirit',
          volumeMl: expect.closeTo(1000, 3),
          strengthPctVol: expect.closeTo(70, 3),
        },
        { what: 'water', volumeMl: expect.closeTo(100, 3), strengthPctVol: 0 },
      ],
      sugarDraw: [{ what: 'sugar', massG: 150 }],
      pressed: [],
      married: [{ what: 'extract' }, { what: 'extract' }],
      filtered: [],
      bottled: [],
    })
  })

  it('tells what came out: liquid, what the filter kept, and bottles', () => {
    const stages = stagesOf(bottled, 60)
    const of = (key: string) => stages.find((stage) => stage.key === key)
    expect(of('bottled')).toMatchObject({
      bottles: 2,
      liquid: { volumeMl: expect.closeTo(1000, 0) },
    })
    expect(of('filtered')?.lossMl).toBeGreaterThan(0)
    expect(stages.filter(({ lossMl }) => lossMl !== undefined)).toHaveLength(1)
    expect(stages.filter((stage) => stage.bottles !== undefined)).toHaveLength(1)
    // What was poured off in the end is the liquid of a stage, not what stood in it before.
    const first = of('married')?.inflows[0]
    expect(of('steeping')?.liquid?.volumeMl).toBeCloseTo(first?.volumeMl ?? 0, 6)
    expect(of('steeping')?.vessels.map(({ jarId }) => jarId)).toEqual(['jar'])
    expect(of('married')?.vessels.map(({ jarId }) => jarId)).toEqual(['demijohn'])
  })

  it('keeps the highest fill of each vessel', () => {
    const vesselIn = (stage: ReturnType<typeof stagesOf>[number] | undefined) => stage?.vessels[0]
    const [underSugar, underSpirit] = stagesOf(steeped, 20)
    expect(vesselIn(underSpirit)?.peakFillMl).toBeGreaterThan(
      (vesselIn(underSugar)?.peakFillMl ?? 0) + 500,
    )
    for (const { vessels } of stagesOf(bottled, 60))
      for (const { peakFillMl, contents } of vessels)
        expect(peakFillMl).toBeGreaterThanOrEqual(contents.fillMl)
  })

  it('begins another stage of a kind with what comes in after liquid was drawn', () => {
    const again: Lines = [
      ...second,
      [41, { kind: 'coverWithSugar', ...inJar, lotId: 'sugar', massG: 100 }],
      [48, { kind: 'drawOff', batchId, fromJarId: 'jar', toJarId: 'third' }],
    ]
    expect(named(again).slice(2)).toEqual([
      ['sugarDraw 1', 30, 40],
      ['sugarDraw 2', 41, 48],
    ])
    const respirited: Lines = [
      ...drawn,
      [31, { kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl: 500 }],
    ]
    expect(named(respirited, 35).at(-1)).toEqual(['steeping 2', 31, 35])
  })

  it('takes fruit of a second kind, and acid, for the same steeping', () => {
    const more: Lines = [
      ...steeped,
      [5, { kind: 'charge', ...inJar, lotId: 'quinces', massG: 300, cut: 'cut' }],
      [6, { kind: 'addAcid', ...inJar, lotId: 'acid', massG: 5 }],
    ]
    const stages = stagesOf(more, 10)
    expect(stages.map(({ key }) => key)).toEqual(['layered', 'steeping'])
    expect(stages[1]?.inflows.at(-1)).toEqual({ what: 'fruit', massG: 300, fruitId: 'quince' })
  })

  it('takes what is added to liquid without fruit for marrying', () => {
    const finished: Lines = [
      ...married,
      [43, { kind: 'sugar', batchId, jarId: 'demijohn', lotId: 'sugar', massG: 40 }],
      [43, { kind: 'pourWater', batchId, jarId: 'demijohn', volumeMl: 50 }],
    ]
    const stages = stagesOf(finished, 45)
    expect(stages.map(({ key }) => key)).toEqual([
      'layered',
      'steeping',
      'sugarDraw',
      'pressed',
      'married',
    ])
    expect(stages[4]?.inflows.map(({ what }) => what)).toEqual([
      'extract',
      'extract',
      'sugar',
      'water',
    ])
  })

  it('takes pouring over without fruit for filtering', () => {
    const racked: Lines = [
      ...married,
      [45, { kind: 'drawOff', batchId, fromJarId: 'demijohn', toJarId: 'clear' }],
    ]
    expect(named(racked, 46).at(-1)?.[0]).toBe('filtered 1')
  })

  it('goes on bottling where bottles are filled twice', () => {
    const twice: Lines = [
      ...filtered,
      ...[52, 53].map((day) => {
        const lot = { bottleLotId: `lot${day}`, bottleSizeMl: 200, count: 1 }
        return [day, { kind: 'bottle', batchId, fromJarId: 'demijohn', ...lot }] as const
      }),
    ]
    const stage = stagesOf(twice, 60).at(-1)
    expect(stage).toMatchObject({ key: 'bottled', bottles: 2 })
    expect(stage?.liquid?.volumeMl).toBeCloseTo(400, 0)
  })

  it('leaves out what is only looked at, kept or tasted', () => {
    const watched: Lines = [
      ...steeped,
      [5, { kind: 'stir', ...inJar }],
      [6, { kind: 'keep', ...inJar, turned: 'weekly' }],
      [7, { kind: 'taste', ...inJar, scores: {} }],
      [8, { kind: 'crush', ...inJar }],
    ]
    expect(named(watched, 20)).toEqual(named(steeped, 20))
  })
})
