import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  describeSolution,
  marry,
  waterPart,
  type BlendPart,
  type MarryQuestion,
} from '../../../main/engine/index.ts'
import { amountThere } from '../../../main/engine/marrying/blend-part.ts'
import { lpSolver } from '../../../main/service/lp-solver.ts'
import { massOf, scaleMatter, sumMatter } from '../../../shared/matter.ts'
import { exactly, extract, spirit, sugar, vintage } from './blend-samples.ts'

const solve = await lpSolver()
const usual = { prefer: 'useUp', holds: 'composition', amount: 'most' } as const
const ask = (question: Partial<MarryQuestion> & Pick<MarryQuestion, 'parts' | 'wishes'>) =>
  marry({ ...usual, ...question }, solve)
type Married = ReturnType<typeof ask>

const amountOf = (married: Married, place: string) =>
  married.amounts.find((one) => one.place === place)?.amount ?? 0

/** What the told amounts make, mixed anew from the parts' own matter. */
function mixed(parts: readonly BlendPart[], married: Married) {
  return sumMatter(
    married.amounts.map(({ place, amount }) => {
      const part = parts.find((one) => one.place === place)
      if (!part) throw new Error(`${place} was not among the parts`)
      const all = part.isEndless ? massOf(part.matter) / (amountThere(part) || 1) : 0
      return part.isEndless
        ? scaleMatter(part.matter, (amount * all) / massOf(part.matter))
        : scaleMatter(part.matter, amount / amountThere(part))
    }),
  )
}

describe('marry', () => {
  it('makes 964.6 ml of 500 ml each of pure spirit and water', () => {
    const parts = [spirit(500, 100), waterPart({ least: 500, most: 500 })]
    const { liquid, contractionMl } = ask({ parts, wishes: {} })
    // 394.62 g and 499.10 g; a spirit of 0.44155 by mass weighs 926.5 kg/m³ (OIML R 22).
    expect(liquid?.volumeMl).toBeCloseTo(893.72 / 0.9265, 0)
    expect(contractionMl).toBeCloseTo(1000 - (liquid?.volumeMl ?? 0), 3)
  })

  it('marries 0.8 L at 48, 0.45 L at 30 and 0.25 L at 22 % vol to 1.497 L at 38.35 % vol', () => {
    const parts = [
      extract('a', { volumeMl: 800, strengthPctVol: 48 }),
      extract('b', { volumeMl: 450, strengthPctVol: 30 }),
      extract('c', { volumeMl: 250, strengthPctVol: 22 }),
    ]
    const { liquid } = ask({ parts, wishes: {} })
    expect(Math.abs((liquid?.volumeMl ?? 0) / 1000 - 1.4969)).toBeLessThan(0.001)
    expect(Math.abs((liquid?.strengthPctVol ?? 0) - 38.35)).toBeLessThan(0.05)
  })

  it('meets strength, sugar and volume to 0.01 % vol, 0.1 g/L and half a ml', () => {
    const parts = [
      extract('first', { volumeMl: 3000, strengthPctVol: 48, acidGPerL: 9 }),
      extract('draw', { volumeMl: 2000, strengthPctVol: 20, sugarGPerL: 250 }),
      spirit(2000),
      sugar(5000),
      waterPart(),
    ]
    const wishes = {
      strengthPctVol: exactly(30),
      sugarGPerL: exactly(200),
      volumeMl: exactly(5000),
    }
    const married = ask({ parts, wishes })
    expect(married.broken).toEqual([])
    const made = describeSolution(mixed(parts, married))
    expect(Math.abs(made.strengthPctVol - 30)).toBeLessThan(0.01)
    expect(Math.abs(made.sugarGPerL - 200)).toBeLessThan(0.1)
    expect(Math.abs(made.volumeMl - 5000)).toBeLessThan(0.5)
  })

  it('keeps back, uses the least, and stops at the most', () => {
    const parts = [
      extract('a', { volumeMl: 3000, strengthPctVol: 40 }, { keepBack: 1000 }),
      extract('b', { volumeMl: 3000, strengthPctVol: 40 }, { least: 700, most: 900 }),
    ]
    const married = ask({ parts, wishes: {} })
    expect(amountOf(married, 'jar:a')).toBeCloseTo(2000, 3)
    expect(amountOf(married, 'jar:b')).toBeCloseTo(900, 3)
    const little = ask({ parts, wishes: { volumeMl: exactly(800) } })
    expect(amountOf(little, 'jar:b')).toBeGreaterThan(699.9)
  })

  it('tells a least use that is more than there is', () => {
    const parts = [extract('a', { volumeMl: 500, strengthPctVol: 40 }, { least: 800 })]
    expect(ask({ parts, wishes: {} }).cutShort).toEqual(['jar:a'])
  })

  it('opens older vintages by whole bottles only', () => {
    const parts = [
      vintage('old', { count: 6, volumeMl: 500, strengthPctVol: 31, sugarGPerL: 190 }),
      extract('young', { volumeMl: 4000, strengthPctVol: 45, sugarGPerL: 100 }),
      sugar(3000),
      waterPart(),
    ]
    const wishes = {
      strengthPctVol: exactly(30),
      sugarGPerL: exactly(200),
      volumeMl: exactly(3300),
    }
    const married = ask({ parts, wishes })
    const opened = amountOf(married, 'bottles:old')
    expect(opened).toBe(Math.round(opened))
    expect(opened).toBeGreaterThan(0)
    expect(married.broken).toEqual([])
  })

  it('fills as many whole bottles as there is liquid for', () => {
    const parts = [extract('a', { volumeMl: 3_290, strengthPctVol: 40 })]
    const married = ask({ parts, wishes: { bottles: [{ sizeMl: 500 }] } })
    expect(married.bottles).toEqual([{ sizeMl: 500, count: 6 }])
    expect(married.liquid?.volumeMl).toBeCloseTo(3000, 1)
  })

  it('takes even shares of the extracts when asked to', () => {
    const parts = [
      extract('a', { volumeMl: 1000, strengthPctVol: 40 }),
      extract('b', { volumeMl: 3000, strengthPctVol: 40 }),
    ]
    const married = ask({ parts, wishes: { volumeMl: exactly(2000) }, prefer: 'even' })
    expect(amountOf(married, 'jar:a')).toBeCloseTo(500, 1)
    expect(amountOf(married, 'jar:b')).toBeCloseTo(1500, 1)
  })

  it('takes the cheaper of two alike when asked to', () => {
    const parts = [
      extract(
        'dear',
        { volumeMl: 2000, strengthPctVol: 40 },
        { cost: { minor: 9000, isComplete: true } },
      ),
      extract(
        'cheap',
        { volumeMl: 2000, strengthPctVol: 40 },
        { cost: { minor: 1000, isComplete: true } },
      ),
    ]
    const married = ask({ parts, wishes: { volumeMl: exactly(1500) }, prefer: 'cheapest' })
    expect(amountOf(married, 'jar:cheap')).toBeCloseTo(1500, 1)
    expect(married.cost).toEqual({ minor: expect.closeTo(750, 1), isComplete: true })
  })
})

describe('what is told of each part', () => {
  const parts = () => [
    extract('a', { volumeMl: 1000, strengthPctVol: 40 }),
    extract('b', { volumeMl: 1000, strengthPctVol: 40 }, { most: 250 }),
    sugar(2000, { most: 100, cost: { minor: 600, isComplete: false } }),
  ]

  it('is its amount, its price, and whether all of it that may be used was used', () => {
    const { amounts, cost } = ask({
      parts: parts(),
      wishes: { volumeMl: exactly(700), sugarGPerL: { low: 1 } },
    })
    const sums = { minor: 0, massG: 0 }
    for (const one of amounts) {
      const whole = parts().find(({ place }) => place === one.place) as BlendPart
      const share = one.amount / amountThere(whole)
      expect(one).toMatchObject({
        unit: whole.unit,
        massG: expect.closeTo(share * massOf(whole.matter), 6),
        cost: {
          minor: expect.closeTo(share * whole.cost.minor, 6),
          isComplete: whole.cost.isComplete,
        },
      })
      sums.minor += one.cost.minor
    }
    expect(cost.minor).toBeCloseTo(sums.minor, 9)
  })

  it('is used up at the most that may be used', () => {
    const { amounts } = ask({ parts: parts(), wishes: {} })
    expect(amounts.map(({ place, isUsedUp }) => [place, isUsedUp])).toEqual([
      ['lot:sugar', true],
      ['jar:a', true],
      ['jar:b', true],
    ])
    const half = ask({ parts: parts().slice(0, 1), wishes: { volumeMl: exactly(500) } })
    expect(half.amounts.map(({ isUsedUp }) => isUsedUp)).toEqual([false])
    const tap = ask({ parts: [waterPart({ most: 500 })], wishes: {} })
    expect(tap.amounts).toMatchObject([{ place: 'outside:tap', isUsedUp: false }])
  })

  it('has no whole price as soon as one part has none', () => {
    const sweetened = ask({ parts: parts(), wishes: { sugarGPerL: exactly(20) } })
    expect(sweetened.amounts.map(({ place }) => place)).toContain('lot:sugar')
    expect(sweetened.cost.isComplete).toBe(false)
    expect(ask({ parts: parts().slice(0, 2), wishes: {} }).cost).toEqual({
      minor: expect.closeTo(1250, 6),
      isComplete: true,
    })
  })

  it('pours the lighter of two liquids first', () => {
    const heavy = extract('heavy', { volumeMl: 500, strengthPctVol: 20, sugarGPerL: 300 })
    const light = extract('light', { volumeMl: 5, strengthPctVol: 70 })
    const { amounts } = ask({ parts: [heavy, light], wishes: {} })
    expect(amounts.map(({ place }) => place)).toEqual(['jar:light', 'jar:heavy'])
  })

  it('names only what was cut short', () => {
    const short = extract('a', { volumeMl: 500, strengthPctVol: 40 }, { least: 800 })
    const whole = extract('b', { volumeMl: 500, strengthPctVol: 40 }, { least: 500 })
    expect(ask({ parts: [short, whole], wishes: {} }).cutShort).toEqual(['jar:a'])
    expect(ask({ parts: [whole], wishes: {} }).cutShort).toEqual([])
  })
})

describe('bottles', () => {
  it('leave a rest of what must be used and fills none', () => {
    const parts = [extract('a', { volumeMl: 3290, strengthPctVol: 40 }, { least: 3290 })]
    const married = ask({ parts, wishes: { bottles: [{ sizeMl: 500 }] } })
    expect(married.bottles).toEqual([{ sizeMl: 500, count: 6 }])
    expect(married.restMl).toBeCloseTo(290, 3)
    expect(married.pourTable).toEqual({
      columns: [
        {
          place: 'jar:a',
          unit: 'ml',
          total: expect.closeTo(3290, 3),
          remainder: expect.closeTo(290, 3),
        },
      ],
      rows: [
        {
          sizeMl: 500,
          count: 6,
          amounts: [500],
          filledMl: expect.closeTo(500, 3),
          strengthPctVol: expect.closeTo(40, 3),
          sugarGPerL: 0,
        },
      ],
    })
  })

  it('of two sizes leave the least rest, and the table has only those that are filled', () => {
    const parts = [extract('a', { volumeMl: 1400, strengthPctVol: 40 }, { least: 1400 })]
    const sizes = { bottles: [{ sizeMl: 700 }, { sizeMl: 500 }] }
    const married = ask({ parts, wishes: sizes })
    // Twice 700 fills it; twice 500 or one of each would leave 400 or 200 ml.
    expect(married.bottles).toEqual([
      { sizeMl: 700, count: 2 },
      { sizeMl: 500, count: 0 },
    ])
    expect(married.restMl).toBeCloseTo(0, 2)
    expect(married.pourTable?.rows.map(({ sizeMl, count }) => [sizeMl, count])).toEqual([[700, 2]])
  })

  it('are no more than asked for', () => {
    const parts = [extract('a', { volumeMl: 3000, strengthPctVol: 40 })]
    const married = ask({ parts, wishes: { bottles: [{ sizeMl: 500, count: 4 }] } })
    expect(married.bottles).toEqual([{ sizeMl: 500, count: 4 }])
    expect(married.liquid?.volumeMl).toBeCloseTo(2000, 1)
  })

  it('are none where none are asked for', () => {
    const parts = [extract('a', { volumeMl: 3000, strengthPctVol: 40 })]
    expect(ask({ parts, wishes: {} })).toMatchObject({
      bottles: [],
      restMl: expect.closeTo(3000, 3),
    })
  })
})

describe('what is preferred', () => {
  it('is to use the extracts, and water before spirit, where it is all the same', () => {
    const parts = [
      extract('a', { volumeMl: 1000, strengthPctVol: 30 }),
      spirit(1000, 30),
      waterPart({ most: 1000 }),
    ]
    const married = ask({ parts, wishes: { volumeMl: exactly(1200), strengthPctVol: { low: 20 } } })
    expect(amountOf(married, 'jar:a')).toBeCloseTo(1000, 1)
    expect(amountOf(married, 'lot:spirit')).toBeCloseTo(0, 1)
    expect(amountOf(married, 'outside:tap')).toBeGreaterThan(190)
  })

  it('is the least of it all to mend with, or the most there is', () => {
    const parts = [extract('a', { volumeMl: 1000, strengthPctVol: 40 }, { least: 300 })]
    expect(amountOf(ask({ parts, wishes: {}, amount: 'least' }), 'jar:a')).toBeCloseTo(300, 2)
    expect(amountOf(ask({ parts, wishes: {}, amount: 'most' }), 'jar:a')).toBeCloseTo(1000, 2)
  })

  it('is what costs least for each litre, whatever the lots cost as a whole', () => {
    const priced = (id: string, volumeMl: number, minor: number) =>
      extract(id, { volumeMl, strengthPctVol: 40 }, { cost: { minor, isComplete: true } })
    const parts = [
      priced('dear', 500, 2000),
      priced('mean', 1000, 3000),
      priced('cheap', 4000, 6000),
    ]
    const wishes = { volumeMl: exactly(4500) }
    const married = ask({ parts, wishes, prefer: 'cheapest' })
    expect(amountOf(married, 'jar:cheap')).toBeCloseTo(4000, 1)
    expect(amountOf(married, 'jar:mean')).toBeCloseTo(500, 1)
    expect(amountOf(married, 'jar:dear')).toBeCloseTo(0, 1)
  })

  it('is the extract before the spirit where both cost nothing', () => {
    const free = { cost: { minor: 0, isComplete: true } }
    const parts = [
      spirit(1000, 40, free),
      extract('a', { volumeMl: 1000, strengthPctVol: 40 }, free),
    ]
    const married = ask({ parts, wishes: { volumeMl: exactly(800) }, prefer: 'cheapest' })
    expect(amountOf(married, 'jar:a')).toBeCloseTo(800, 1)
  })

  it('is even among extracts alone: spirit and water have no share to keep', () => {
    const parts = [
      extract('a', { volumeMl: 1000, strengthPctVol: 40 }),
      extract('b', { volumeMl: 2000, strengthPctVol: 40 }),
      extract('kept', { volumeMl: 2000, strengthPctVol: 40 }, { keepBack: 2000 }),
      spirit(3000),
      waterPart(),
    ]
    const wishes = { volumeMl: exactly(1800), strengthPctVol: exactly(40) }
    const married = ask({ parts, wishes, prefer: 'even' })
    expect(amountOf(married, 'jar:a')).toBeCloseTo(600, 1)
    expect(amountOf(married, 'jar:b')).toBeCloseTo(1200, 1)
    expect(amountOf(married, 'lot:spirit')).toBeCloseTo(0, 1)
  })
})

describe('a wish with one end', () => {
  const parts = () => [extract('a', { volumeMl: 1000, strengthPctVol: 40 }), waterPart()]

  it('is met at that end and no further', () => {
    const atMost = ask({ parts: parts(), wishes: { strengthPctVol: { low: 20 } } })
    // As much as can be: thinned to the very end.
    expect(atMost.liquid?.strengthPctVol).toBeCloseTo(20, 2)
    const [extractAlone, water] = parts() as [BlendPart, BlendPart]
    const atLeast = ask({
      parts: [{ ...extractAlone, least: 1000 }, water],
      wishes: { strengthPctVol: { low: 20, high: 30 } },
      amount: 'least',
    })
    expect(atLeast.liquid?.strengthPctVol).toBeCloseTo(30, 2)
  })

  it('of volume stops where it has enough', () => {
    const { liquid, broken } = ask({ parts: parts(), wishes: { volumeMl: { high: 700 } } })
    expect(broken).toEqual([])
    expect(liquid?.volumeMl ?? 0).toBeLessThan(700.5)
  })
})

describe('a wish that cannot be', () => {
  it('names the strongest part where more is asked', () => {
    const parts = [
      extract('a', { volumeMl: 3000, strengthPctVol: 48 }),
      extract('b', { volumeMl: 2000, strengthPctVol: 20 }),
    ]
    const { broken, liquid } = ask({ parts, wishes: { strengthPctVol: exactly(60) } })
    expect(broken).toEqual([
      {
        wish: 'strengthPctVol',
        low: 60,
        high: 60,
        reached: expect.closeTo(48, 3),
        reason: 'beyondParts',
        reachable: { low: expect.closeTo(20, 2), high: expect.closeTo(48, 2) },
        places: [],
      },
    ])
    expect(liquid?.strengthPctVol).toBeCloseTo(48, 3)
  })

  it('stops where sugar no longer dissolves', () => {
    const parts = [extract('a', { volumeMl: 2000, strengthPctVol: 48 }), sugar(9000), waterPart()]
    const wishes = { strengthPctVol: exactly(30), sugarGPerL: exactly(900) }
    const { broken, undissolvedG, liquid } = ask({ parts, wishes })
    expect(broken.map(({ wish, reason }) => [wish, reason])).toEqual([['sugarGPerL', 'saturation']])
    expect(undissolvedG).toBeLessThan(0.5)
    expect(liquid?.sugarGPerL).toBeGreaterThan(500)
  })

  it('says which place ran out, and keeps the composition or the volume as asked', () => {
    const parts = [spirit(500), sugar(2000), waterPart()]
    const wishes = {
      strengthPctVol: exactly(32),
      sugarGPerL: exactly(200),
      volumeMl: exactly(3000),
    }
    const less = ask({ parts, wishes })
    expect(less.broken).toMatchObject([
      { wish: 'volumeMl', reason: 'stock', places: ['lot:spirit'] },
    ])
    expect(less.liquid?.strengthPctVol).toBeCloseTo(32, 2)
    expect(less.liquid?.volumeMl).toBeCloseTo(1500, -1)
    const weaker = ask({ parts, wishes, holds: 'volume' })
    expect(weaker.broken).toMatchObject([{ wish: 'strengthPctVol', reason: 'stock' }])
    expect(weaker.liquid?.volumeMl).toBeCloseTo(3000, 1)
    expect(weaker.liquid?.strengthPctVol).toBeCloseTo(16, 0)
  })

  it('tells two wishes that fight from one that no mixture meets', () => {
    const parts = [
      extract('strong', { volumeMl: 2000, strengthPctVol: 60 }),
      extract('sweet', { volumeMl: 2000, strengthPctVol: 20, sugarGPerL: 400 }),
    ]
    const wishes = { strengthPctVol: exactly(50), sugarGPerL: exactly(300) }
    const { broken } = ask({ parts, wishes })
    expect(broken.length).toBeGreaterThan(0)
    expect(broken.every(({ reason }) => reason === 'conflict')).toBe(true)
  })

  it('asks for an end where there is only water', () => {
    const { broken, liquid } = ask({ parts: [waterPart()], wishes: {} })
    expect(broken).toStrictEqual([
      { wish: 'volumeMl', reached: liquid?.volumeMl, reason: 'noEnd', places: [] },
    ])
    expect(liquid?.volumeMl).toBeGreaterThan(9_000_000)
  })

  it('makes nothing of nothing, and says that the volume is missing', () => {
    const nothing = {
      amounts: [],
      contractionMl: 0,
      undissolvedG: 0,
      cost: { minor: 0, isComplete: true },
      cutShort: [],
      bottles: [],
      restMl: 0,
    }
    const missing = { wish: 'volumeMl', reached: 0, reason: 'stock', places: [] }
    const wishes = { volumeMl: { low: 500 } }
    expect(ask({ parts: [], wishes })).toStrictEqual({
      ...nothing,
      broken: [{ ...missing, low: 500 }],
    })
    const keptBack = extract('a', { volumeMl: 500, strengthPctVol: 40 }, { keepBack: 500 })
    expect(ask({ parts: [keptBack], wishes: {} })).toStrictEqual({ ...nothing, broken: [missing] })
  })
})

describe('against enumeration', () => {
  /** Every mixture of the parts in steps of a hundredth, and how far the nearest is from the wishes. */
  function nearestByGrid(
    parts: readonly BlendPart[],
    strengthPctVol: number,
    sugarGPerL: number,
  ): number {
    const count = 100
    let nearest = Number.POSITIVE_INFINITY
    for (let i = 0; i <= count; i += 1)
      for (let j = 0; i + j <= count; j += 1) {
        const shares = [i, j, count - i - j].map((share) => share / count)
        const mixture = sumMatter(
          parts.map(({ matter }, k) => scaleMatter(matter, (shares[k] ?? 0) / massOf(matter))),
        )
        if (massOf(mixture) === 0) continue
        const made = describeSolution(mixture)
        const miss =
          Math.abs(made.strengthPctVol - strengthPctVol) +
          0.1 * Math.abs(made.sugarGPerL - sugarGPerL)
        nearest = Math.min(nearest, miss)
      }
    return nearest
  }

  it('comes as near to the wishes as the nearest of 5,151 mixtures, for 60 random cellars', () => {
    const lot = fc.record({
      strengthPctVol: fc.double({ min: 5, max: 70, noNaN: true }),
      sugarGPerL: fc.double({ min: 0, max: 280, noNaN: true }),
      volumeMl: fc.double({ min: 500, max: 5000, noNaN: true }),
    })
    fc.assert(
      fc.property(
        fc.tuple(lot, lot, lot),
        fc.double({ min: 15, max: 50, noNaN: true }),
        fc.double({ min: 20, max: 260, noNaN: true }),
        (lots, strengthPctVol, sugarGPerL) => {
          const parts = lots.map((told, index) => extract(`j${index}`, told))
          const { liquid } = ask({
            parts,
            wishes: { strengthPctVol: exactly(strengthPctVol), sugarGPerL: exactly(sugarGPerL) },
          })
          const miss =
            Math.abs((liquid?.strengthPctVol ?? 0) - strengthPctVol) +
            0.1 * Math.abs((liquid?.sugarGPerL ?? 0) - sugarGPerL)
          expect(miss).toBeLessThan(nearestByGrid(parts, strengthPctVol, sugarGPerL) + 0.02)
        },
      ),
      { numRuns: 60, seed: 7 },
    )
  })

  it('makes as much as the best of all pairs of jugs', () => {
    const a = extract('a', { volumeMl: 1800, strengthPctVol: 55 })
    const b = extract('b', { volumeMl: 2600, strengthPctVol: 22 })
    const { liquid } = ask({ parts: [a, b], wishes: { strengthPctVol: exactly(35) } })
    let best = 0
    for (let i = 0; i <= 1000; i += 1)
      for (let j = 0; j <= 1000; j += 1) {
        const mixture = sumMatter([
          scaleMatter(a.matter, i / 1000),
          scaleMatter(b.matter, j / 1000),
        ])
        if (i + j === 0 || i + 3 * j < 900) continue
        const made = describeSolution(mixture)
        if (Math.abs(made.strengthPctVol - 35) < 0.02) best = Math.max(best, made.volumeMl)
      }
    expect(best).toBeGreaterThan(3000)
    expect(Math.abs((liquid?.volumeMl ?? 0) - best)).toBeLessThan(12)
  })
})

describe('conservation', () => {
  const lot = fc.record({
    strengthPctVol: fc.double({ min: 0, max: 80, noNaN: true }),
    sugarGPerL: fc.double({ min: 0, max: 150, noNaN: true }),
    acidGPerL: fc.double({ min: 0, max: 20, noNaN: true }),
    volumeMl: fc.double({ min: 50, max: 8000, noNaN: true }),
  })
  const wish = (max: number) =>
    fc.option(fc.double({ min: 0, max, noNaN: true }), { nil: undefined })

  it('keeps every gram, and no more of a part than there is, in 150 random marriages', () => {
    fc.assert(
      fc.property(
        fc.array(lot, { minLength: 1, maxLength: 6 }),
        wish(90),
        wish(600),
        wish(20),
        fc.option(fc.double({ min: 10, max: 20_000, noNaN: true }), { nil: undefined }),
        fc.constantFrom('useUp', 'cheapest', 'even'),
        fc.constantFrom('composition', 'volume'),
        (lots, strengthPctVol, sugarGPerL, acidGPerL, volumeMl, prefer, holds) => {
          const parts = [
            ...lots.map((told, index) => extract(`j${index}`, told)),
            spirit(1500),
            sugar(2500),
            waterPart({ most: 4000 }),
          ]
          const married = ask({
            parts,
            wishes: {
              ...(strengthPctVol !== undefined && { strengthPctVol: exactly(strengthPctVol) }),
              ...(sugarGPerL !== undefined && { sugarGPerL: exactly(sugarGPerL) }),
              ...(acidGPerL !== undefined && { acidGPerL: exactly(acidGPerL) }),
              ...(volumeMl !== undefined && { volumeMl: exactly(volumeMl) }),
            },
            prefer,
            holds,
          })
          const mixture = mixed(parts, married)
          const told = married.amounts.reduce((sum, { massG }) => sum + massG, 0)
          expect(Math.abs(massOf(mixture) - told)).toBeLessThan(1e-6 * (told + 1))
          const overdrawn = married.amounts.filter(({ place, amount }) => {
            const part = parts.find((one) => one.place === place) as BlendPart
            return amount < 0 || (!part.isEndless && amount > amountThere(part) * (1 + 1e-9) + 1e-6)
          })
          expect(overdrawn).toEqual([])
          if (!married.liquid) return
          const made = describeSolution(mixture)
          const offMl = Math.abs(made.volumeMl - married.liquid.volumeMl)
          expect(offMl).toBeLessThan(1e-6 * made.volumeMl)
          // What is not called broken is met.
          const missOf = (name: 'strengthPctVol' | 'sugarGPerL', wished: number | undefined) =>
            wished === undefined || married.broken.some((one) => one.wish === name)
              ? 0
              : Math.abs(made[name] - wished)
          expect(missOf('strengthPctVol', strengthPctVol)).toBeLessThan(0.011)
          expect(missOf('sugarGPerL', sugarGPerL)).toBeLessThan(0.11)
        },
      ),
      { numRuns: 150, seed: 11 },
    )
  })

  it('gives the same answer to the same question, to the bit', () => {
    const parts = [
      extract('a', { volumeMl: 900, strengthPctVol: 41, sugarGPerL: 80 }),
      vintage('old', { count: 4, volumeMl: 350, strengthPctVol: 29, sugarGPerL: 210 }),
      spirit(700),
      sugar(900),
      waterPart(),
    ]
    const wishes = { strengthPctVol: exactly(33), bottles: [{ sizeMl: 500 }, { sizeMl: 200 }] }
    const first = ask({ parts, wishes })
    ask({ parts: parts.slice(1), wishes: { volumeMl: exactly(500) } })
    expect(ask({ parts, wishes })).toEqual(first)
  })
})
