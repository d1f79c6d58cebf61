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
const { cellar, steps } = folded(lines)
const own = stepsOf(steps, batchId)

describe('stepsOf', () => {
  it('finds the moves that touch the batch, whether or not they name it', () => {
    expect(own.map((step) => step.recorded.move.kind)).toEqual([
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
    const spans = jarSpans(own, batchId, at(60))
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
  const times = sampleTimes(own, at(60), 40)
  const curves = curveOf(own, batchId, times)

  it('has a line for the whole and one for each jar, with rising times', () => {
    expect([...curves.keys()].sort()).toEqual(['demijohn', 'first', 'jar', 'second', 'whole'])
    for (const samples of curves.values())
      for (const [index, sample] of samples.entries())
        expect(sample.atMs).toBeGreaterThan(samples[index - 1]?.atMs ?? 0)
  })

  it('falls from the strength poured, fast at first, towards its resting value', () => {
    const jar = curves.get('jar') ?? []
    const strengthOn = (day: number) =>
      jar.findLast(({ atMs }) => atMs <= at(day))?.strengthPctVol ?? 0
    expect(strengthOn(1)).toBeCloseTo(70, 6)
    expect(strengthOn(3)).toBeLessThan(strengthOn(1.1))
    expect(strengthOn(1.1) - strengthOn(3)).toBeGreaterThan(strengthOn(20) - strengthOn(42))
  })

  it('keeps married liquid as it was married', () => {
    const samples = curves.get('demijohn') ?? []
    expect(new Set(samples.map(({ strengthPctVol }) => strengthPctVol.toFixed(9))).size).toBe(1)
  })
})

describe('yieldOf', () => {
  it('counts fruit without its refuse, sugar, and the share of ethanol in hand', () => {
    const found = yieldOf(own, cellar, batchId)
    expect(found.fruitG).toBe(1220)
    expect(found.sugarAddedG).toBeCloseTo(400, 6)
    expect(found.ethanolPouredG).toBeCloseTo(2000 * 0.7 * 0.78924, 0)
    const share = found.ethanolInHandG / found.ethanolPouredG
    expect(share).toBeGreaterThan(0.7)
    expect(share).toBeLessThan(1)
  })
})
