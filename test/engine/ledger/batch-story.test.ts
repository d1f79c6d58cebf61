import { describe, expect, it } from 'vitest'
import { curveOf, jarSpans, sampleTimes, stepsOf, yieldOf } from '../../../main/engine/index.ts'
import { buyFruit, buySpirit, buySugar, dayAt, folded, type Deed } from './book-of-moves.ts'

const batchId = 'batch'
const at = (day: number) => Date.parse(dayAt(day))
const lines: (readonly [number, Deed])[] = [
  [0, buyFruit('quinces', 'quince', 2000)],
  [0, buySpirit('spirit', 2000, 70)],
  [0, buySugar('sugar', 1000)],
  [
    1,
    {
      kind: 'charge',
      batchId,
      jarId: 'jar',
      lotId: 'quinces',
      massG: 2000,
      refuseG: 780,
      cut: 'cut',
    },
  ],
  [1, { kind: 'pourSpirit', batchId, jarId: 'jar', lotId: 'spirit', volumeMl: 2000 }],
  [43, { kind: 'drawOff', batchId, fromJarId: 'jar', toJarId: 'first' }],
  [43, { kind: 'coverWithSugar', batchId, jarId: 'jar', lotId: 'sugar', massG: 400 }],
  [50, { kind: 'drawOff', batchId, fromJarId: 'jar', toJarId: 'second' }],
  [50, { kind: 'discard', from: { jarId: 'jar', part: 'all' } }],
  [
    51,
    {
      kind: 'marry',
      batchId,
      parts: [{ jarId: 'first' }, { jarId: 'second' }],
      toJarId: 'demijohn',
    },
  ],
]
function story() {
  const { cellar, steps } = folded(lines)
  return { cellar, own: stepsOf(steps, batchId) }
}

describe('stepsOf', () => {
  it('finds the moves that touch the batch, whether or not they name it', () => {
    expect(story().own.map((step) => step.recorded.move.kind)).toEqual([
      'charge',
      'pourSpirit',
      'drawOff',
      'coverWithSugar',
      'drawOff',
      'discard',
      'marry',
    ])
  })
})

describe('jarSpans', () => {
  it('tells which jar held the batch at which stage, and for how long', () => {
    const spans = jarSpans(story().own, batchId, at(60))
    expect(spans.map(({ jarId, stage, fromMs, toMs }) => [jarId, stage, fromMs, toMs])).toEqual([
      ['jar', 'steeping', at(1), at(43)],
      ['first', 'drawnOff', at(43), at(51)],
      ['jar', 'sugarDraw', at(43), at(50)],
      ['second', 'drawnOff', at(50), at(51)],
      ['demijohn', 'married', at(51), undefined],
    ])
  })
})

describe('curveOf', () => {
  function curvesOfStory() {
    const { own } = story()
    return curveOf(own, batchId, sampleTimes(own, at(60), 40))
  }

  it('has a line for the whole and one for each jar, with rising times', () => {
    const curves = curvesOfStory()
    expect([...curves.keys()].sort()).toEqual(['demijohn', 'first', 'jar', 'second', 'whole'])
    for (const samples of curves.values())
      for (const [index, sample] of samples.entries())
        expect(sample.atMs).toBeGreaterThan(samples[index - 1]?.atMs ?? 0)
  })

  it('falls from the strength poured, fast at first, towards its resting value', () => {
    const jar = curvesOfStory().get('jar') ?? []
    const strengthOn = (day: number) =>
      jar.findLast(({ atMs }) => atMs <= at(day))?.strengthPctVol ?? 0
    expect(strengthOn(1)).toBeCloseTo(70, 6)
    expect(strengthOn(3)).toBeLessThan(strengthOn(1.1))
    expect(strengthOn(1.1) - strengthOn(3)).toBeGreaterThan(strengthOn(20) - strengthOn(42))
  })

  it('keeps married liquid as it was married', () => {
    const samples = curvesOfStory().get('demijohn') ?? []
    expect(new Set(samples.map(({ strengthPctVol }) => strengthPctVol.toFixed(9))).size).toBe(1)
  })
})

describe('the whole of a batch', () => {
  const bottled: typeof lines = [
    ...lines,
    [
      60,
      {
        kind: 'bottle',
        batchId,
        fromJarId: 'demijohn',
        bottleLotId: 'lot',
        bottleSizeMl: 500,
        count: 3,
      },
    ],
    [61, { kind: 'openBottle', bottleLotId: 'lot', openedId: 'opened' }],
    [62, { kind: 'pourGlass', openedId: 'opened', volumeMl: 100 }],
    [63, { kind: 'drawBottle', bottleLotId: 'lot', count: 1 }],
  ]
  const wholeAt = (told: typeof lines, day: number, of = batchId) => {
    const { steps } = folded(told)
    return curveOf(stepsOf(steps, batchId), of, [at(day)]).get('whole')?.[0]
  }
  const mlAt = (day: number) => wholeAt(bottled, day)?.volumeMl ?? 0

  it('counts what stands in bottles, and in an opened one, until it is drunk', () => {
    expect(mlAt(60)).toBeCloseTo(mlAt(59), 3)
    expect(mlAt(61)).toBeCloseTo(mlAt(60), 3)
    expect(mlAt(61) - mlAt(62)).toBeCloseTo(100, 1)
    expect(mlAt(62) - mlAt(63)).toBeCloseTo(500, 1)
    expect(wholeAt(bottled, 63)?.strengthPctVol).toBeCloseTo(
      wholeAt(bottled, 59)?.strengthPctVol ?? 0,
      6,
    )
  })

  it('counts nothing of another batch', () => {
    const both: typeof lines = [
      [0, buySpirit('more', 1000, 40)],
      ...bottled,
      [64, { kind: 'pourSpirit', batchId: 'other', jarId: 'theirs', lotId: 'more', volumeMl: 700 }],
      [
        65,
        {
          kind: 'bottle',
          batchId: 'other',
          fromJarId: 'theirs',
          bottleLotId: 'their-lot',
          bottleSizeMl: 500,
          count: 1,
        },
      ],
      [66, { kind: 'openBottle', bottleLotId: 'their-lot', openedId: 'their-bottle' }],
    ]
    const { steps } = folded(both)
    const ml = (of: string, day: number) =>
      curveOf(steps, of, [at(day)]).get('whole')?.[0]?.volumeMl ?? 0
    expect(ml(batchId, 66)).toBeCloseTo(mlAt(63), 6)
    expect(ml('other', 66)).toBeCloseTo(700, 1)
  })
})

describe('yieldOf', () => {
  it('counts fruit without its refuse, sugar, and the share of ethanol in hand', () => {
    const { own, cellar } = story()
    const found = yieldOf(own, cellar, batchId)
    expect(found.fruitG).toBe(1220)
    expect(found.sugarAddedG).toBeCloseTo(400, 6)
    expect(found.ethanolPouredG).toBeCloseTo(2000 * 0.7 * 0.78924, 0)
    const share = found.ethanolInHandG / found.ethanolPouredG
    expect(share).toBeGreaterThan(0.7)
    expect(share).toBeLessThan(1)
  })
})
