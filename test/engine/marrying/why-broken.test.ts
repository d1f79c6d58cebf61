import { describe, expect, it } from 'vitest'
import {
  marry,
  sucroseSolubility,
  waterPart,
  type MarryQuestion,
} from '../../../main/engine/index.ts'
import { lpSolver } from '../../../main/service/lp-solver.ts'
import { exactly, extract, spirit, sugar } from './blend-samples.ts'

const solve = await lpSolver()
const ask = (question: Partial<MarryQuestion> & Pick<MarryQuestion, 'parts' | 'wishes'>) =>
  marry({ prefer: 'useUp', holds: 'composition', amount: 'most', ...question }, solve)

const strong = () => extract('strong', { volumeMl: 2000, strengthPctVol: 60 })
const sweet = () => extract('sweet', { volumeMl: 2000, strengthPctVol: 20, sugarGPerL: 400 })

describe('a volume that cannot be', () => {
  it('is more than all the parts together', () => {
    const parts = [extract('a', { volumeMl: 800, strengthPctVol: 40 }), waterPart({ most: 200 })]
    const { broken, liquid } = ask({ parts, wishes: { volumeMl: { low: 1500 } } })
    expect(broken).toStrictEqual([
      {
        wish: 'volumeMl',
        low: 1500,
        reached: liquid?.volumeMl,
        reason: 'stock',
        places: ['jar:a', 'outside:tap'].filter((place) => place !== 'outside:tap'),
      },
    ])
    expect(liquid?.volumeMl).toBeGreaterThan(980)
    expect(liquid?.volumeMl).toBeLessThan(1000)
  })

  it('is less than the least that is to be used, and names what that is of', () => {
    const parts = [
      extract('a', { volumeMl: 900, strengthPctVol: 40 }, { least: 800 }),
      extract('b', { volumeMl: 900, strengthPctVol: 40 }),
    ]
    const { broken } = ask({ parts, wishes: { volumeMl: exactly(500) } })
    expect(broken).toStrictEqual([
      {
        wish: 'volumeMl',
        low: 500,
        high: 500,
        reached: expect.closeTo(800, 1),
        reason: 'leastUse',
        places: ['jar:a'],
      },
    ])
  })

  it('is the volume of the bottles asked for', () => {
    const parts = [extract('a', { volumeMl: 1000, strengthPctVol: 40 })]
    const bottles = [
      { sizeMl: 500, count: 2 },
      { sizeMl: 200, count: 3 },
    ]
    const { broken } = ask({ parts, wishes: { bottles } })
    expect(broken).toMatchObject([{ wish: 'volumeMl', low: 1600, reason: 'stock' }])
    expect(broken[0]).not.toHaveProperty('high')
  })

  it('is one bottle of the smallest size where none has a number', () => {
    const parts = [extract('a', { volumeMl: 300, strengthPctVol: 40 }, { least: 300 })]
    const married = ask({ parts, wishes: { bottles: [{ sizeMl: 700 }, { sizeMl: 500 }] } })
    expect(married.broken).toStrictEqual([
      {
        wish: 'volumeMl',
        low: 500,
        reached: expect.closeTo(300, 3),
        reason: 'stock',
        places: ['jar:a'],
      },
    ])
    expect(married.bottles).toEqual([
      { sizeMl: 700, count: 0 },
      { sizeMl: 500, count: 0 },
    ])
    expect(married.restMl).toBeCloseTo(300, 3)
    expect(married).not.toHaveProperty('pourTable')
    // One bottle that can be filled is enough.
    const some = ask({ parts, wishes: { bottles: [{ sizeMl: 700 }, { sizeMl: 200 }] } })
    expect(some.broken).toEqual([])
  })
})

describe('a strength that cannot be', () => {
  it('is below the weakest part', () => {
    const parts = [
      extract('a', { volumeMl: 3000, strengthPctVol: 48 }),
      extract('b', { volumeMl: 2000, strengthPctVol: 20 }),
    ]
    const { broken } = ask({ parts, wishes: { strengthPctVol: { high: 10 } } })
    expect(broken).toStrictEqual([
      {
        wish: 'strengthPctVol',
        high: 10,
        reached: expect.closeTo(20, 3),
        places: [],
        reason: 'beyondParts',
        reachable: { low: expect.closeTo(20, 2), high: expect.closeTo(48, 2) },
      },
    ])
  })

  it('could be with more of what ran out', () => {
    const parts = [spirit(500), waterPart({ least: 2000 })]
    // 480 ml of ethanol over 2.5 L are not 30 % vol, but with more spirit they would be.
    const { broken } = ask({ parts, wishes: { strengthPctVol: { low: 30 } } })
    expect(broken).toMatchObject([{ wish: 'strengthPctVol', low: 30, reason: 'beyondParts' }])
    const held = ask({
      parts: [spirit(500), waterPart()],
      wishes: { strengthPctVol: { low: 30 }, volumeMl: exactly(3000) },
      holds: 'volume',
    })
    expect(held.broken).toStrictEqual([
      {
        wish: 'strengthPctVol',
        low: 30,
        reached: expect.closeTo(16, 0),
        places: ['lot:spirit'],
        reason: 'stock',
      },
    ])
  })

  it('is too high where too much strong extract must be used', () => {
    const parts = [
      extract('strong', { volumeMl: 2000, strengthPctVol: 60 }),
      extract('weak', { volumeMl: 500, strengthPctVol: 20 }),
    ]
    const { broken } = ask({
      parts,
      wishes: { strengthPctVol: { high: 30 }, volumeMl: exactly(2000) },
      holds: 'volume',
    })
    // 500 ml at 20 and 1,500 ml at 60 % vol; with more of the weak one it could be met.
    expect(broken).toStrictEqual([
      {
        wish: 'strengthPctVol',
        high: 30,
        reached: expect.closeTo(50, 0),
        places: ['jar:weak'],
        reason: 'stock',
      },
    ])
  })
})

describe('a sweetness that cannot be', () => {
  it('is more than dissolves: what does dissolve is told', () => {
    const parts = [extract('a', { volumeMl: 2000, strengthPctVol: 48 }), sugar(9000), waterPart()]
    const wishes = { strengthPctVol: exactly(30), sugarGPerL: exactly(900) }
    const { broken, liquid } = ask({ parts, wishes })
    expect(broken).toStrictEqual([
      {
        wish: 'sugarGPerL',
        low: 900,
        high: 900,
        reached: liquid?.sugarGPerL,
        places: [],
        reason: 'saturation',
        reachable: { low: expect.closeTo(0, 6), high: liquid?.sugarGPerL },
      },
    ])
  })

  it('is told apart from a strength that misses beside it', () => {
    // Both miss: the strength is beyond the parts, though the liquid is as good as saturated.
    const parts = [extract('a', { volumeMl: 2000, strengthPctVol: 40 }), sugar(9000)]
    const wishes = { strengthPctVol: exactly(60), sugarGPerL: { low: 50, high: 60 } }
    const { broken } = ask({ parts, wishes })
    expect(broken.map(({ wish, reason }) => [wish, reason])).toEqual([
      ['strengthPctVol', 'beyondParts'],
    ])
  })

  it('is less than the parts have', () => {
    const parts = [sweet(), extract('less', { volumeMl: 900, strengthPctVol: 30, sugarGPerL: 300 })]
    const { broken } = ask({ parts, wishes: { sugarGPerL: { high: 100 } } })
    expect(broken).toStrictEqual([
      {
        wish: 'sugarGPerL',
        high: 100,
        reached: expect.closeTo(300, 1),
        places: [],
        reason: 'beyondParts',
        reachable: { low: expect.closeTo(300, 1), high: expect.closeTo(400, 1) },
      },
    ])
  })

  it('fights with a strength where each could be met alone', () => {
    const wishes = { strengthPctVol: exactly(50), sugarGPerL: exactly(300) }
    const { broken, liquid } = ask({ parts: [strong(), sweet()], wishes })
    const told = { reason: 'conflict', places: [] }
    expect(broken).toStrictEqual([
      {
        ...told,
        wish: 'strengthPctVol',
        low: 50,
        high: 50,
        reached: liquid?.strengthPctVol,
        reachable: { low: expect.any(Number), high: expect.any(Number) },
      },
      {
        ...told,
        wish: 'sugarGPerL',
        low: 300,
        high: 300,
        reached: liquid?.sugarGPerL,
        reachable: { low: expect.any(Number), high: expect.any(Number) },
      },
    ])
    const [ofStrength, ofSugar] = broken.map(({ reachable }) => reachable)
    // 300 g/L are three parts of sweet to one of strong, 30 % vol; 50 % vol are one to three, 100 g/L.
    for (const end of ['low', 'high'] as const) {
      expect(Math.abs((ofStrength?.[end] ?? 0) - 30)).toBeLessThan(0.5)
      expect(Math.abs((ofSugar?.[end] ?? 0) - 100)).toBeLessThan(5)
    }
  })
})

describe('sugar that does not dissolve', () => {
  it('is told in grams where more of it must be used', () => {
    const parts = [
      extract('a', { volumeMl: 500, strengthPctVol: 50 }, { least: 500 }),
      sugar(2000, { least: 2000 }),
    ]
    const { undissolvedG } = ask({ parts, wishes: {} })
    const [{ matter }] = parts as [(typeof parts)[0]]
    const keptPerGram = sucroseSolubility({
      ethanolMassFraction: matter.ethanolG / (matter.ethanolG + matter.waterG),
      temperatureC: 20,
    })
    expect(undissolvedG).toBeCloseTo(2000 - keptPerGram * matter.waterG, 0)
    expect(undissolvedG).toBeGreaterThan(1000)
  })

  it('is none in what is far from saturated', () => {
    expect(ask({ parts: [strong()], wishes: {} }).undissolvedG).toBe(0)
  })
})
