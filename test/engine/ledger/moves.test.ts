import { describe, expect, it } from 'vitest'
import { massOf, noMatter } from '../../../shared/matter.ts'
import {
  describeJar,
  describeLiquid,
  liquidVolumeMl,
  type CellarState,
} from '../../../main/engine/index.ts'
import { buyAcid, buyFruit, buySpirit, buySugar, folded, type Deed } from './book-of-moves.ts'

type Line = readonly [day: number, deed: Deed]
const batchId = 'batch'

const pantry: Line[] = [
  [0, buyFruit('cherries', 'sour_cherry', 4000)],
  [0, buySpirit('spirit', 3000, 96)],
  [0, buySugar('sugar', 3000)],
]
const charge = (massG: number, jarId = 'jar', refuseG?: number): Deed => ({
  kind: 'charge',
  batchId,
  jarId,
  lotId: 'cherries',
  massG,
  cut: 'pricked',
  ...(refuseG !== undefined && { refuseG }),
})
const spirit = (volumeMl: number, jarId = 'jar'): Deed => ({
  kind: 'pourSpirit',
  batchId,
  jarId,
  lotId: 'spirit',
  volumeMl,
})
const water = (volumeMl: number, jarId = 'jar'): Deed => ({
  kind: 'pourWater',
  batchId,
  jarId,
  volumeMl,
})
const drawOff = (toJarId: string, volumeMl?: number, fromJarId = 'jar'): Deed => ({
  kind: 'drawOff',
  batchId,
  fromJarId,
  toJarId,
  ...(volumeMl !== undefined && { volumeMl }),
})
const bottle = (count: number, bottleSizeMl = 500): Deed => ({
  kind: 'bottle',
  batchId,
  fromJarId: 'jar',
  bottleLotId: 'lot',
  bottleSizeMl,
  count,
})

const jarOf = (cellar: CellarState, id = 'jar') => {
  const jar = cellar.jars.get(id)
  if (!jar) throw new Error(`${id} is empty`)
  return jar
}
const freeOf = (cellar: CellarState, id = 'jar') => describeLiquid(jarOf(cellar, id).bodies.free)

/** The refusal of the last line; the lines before it must all be allowed. */
const refusalOf = (lines: readonly Line[]) => {
  const { refused } = folded(lines)
  expect(refused).toHaveLength(1)
  expect(refused[0]?.recorded.id).toBe(`m${lines.length - 1}`)
  return refused[0]?.refusal
}

describe('buy', () => {
  it('brings 1 L of 96 % spirit in as 757.7 g of ethanol', () => {
    // 960 mL of ethanol at 20 °C, 789.24 g/L (OIML R 22).
    const lot = folded([[0, buySpirit('s', 1000, 96)]]).cellar.lots.get('s')
    expect(lot?.matter.ethanolG).toBeCloseTo(757.67, 1)
    expect(massOf(lot?.matter ?? noMatter)).toBeCloseTo(807.42, 1)
  })

  it('refuses a lot that is there already', () => {
    expect(
      refusalOf([
        [0, buySugar('s', 100)],
        [1, buySugar('s', 100)],
      ]),
    ).toMatchObject({ code: 'alreadyThere', place: 'lot:s' })
  })

  it('refuses spirit without a volume, and fruit without a mass', () => {
    expect(
      refusalOf([
        [0, { kind: 'buy', lotId: 's', goods: { kind: 'spirit', strengthPctVol: 96 }, massG: 5 }],
      ])?.code,
    ).toBe('wrongGoods')
  })
})

describe('charge', () => {
  it('takes refuse out as stones first: 100 g of 1 kg of cherries leaves all the flesh', () => {
    const { cellar, steps } = folded([...pantry, [1, charge(1000, 'jar', 100)]])
    const { held } = jarOf(cellar).bodies
    expect(massOf(held)).toBeCloseTo(900, 6)
    expect(held.waterG).toBeCloseTo(900 * 0.8613, 0) // USDA SR 09063: 86.13 g of water in 100 g
    const toWaste = steps.at(-1)?.effect.transfers.find(({ to }) => to === 'outside:waste')
    expect(toWaste?.matter.pulpG).toBeCloseTo(100, 6)
    expect(toWaste?.matter.waterG).toBeCloseTo(0, 6)
  })

  it('refuses more fruit than the lot has, with the nearest', () => {
    expect(refusalOf([...pantry, [1, charge(5000)]])).toEqual({
      code: 'notEnough',
      place: 'lot:cherries',
      unit: 'g',
      asked: 5000,
      available: 4000,
      nearest: 4000,
    })
  })

  it('refuses sugar where fruit is wanted', () => {
    expect(refusalOf([...pantry, [1, { ...charge(100), lotId: 'sugar' } as Deed]])).toMatchObject({
      code: 'wrongGoods',
    })
  })
})

describe('sugar on raw fruit', () => {
  it('draws juice overnight and more in the days after, leaving the fruit’s own sugar inside', () => {
    const lines: Line[] = [
      ...pantry,
      [1, charge(2000)],
      [1, { kind: 'sugar', batchId, jarId: 'jar', lotId: 'sugar', massG: 1000 }],
    ]
    const after = (day: number) =>
      describeJar(
        'jar',
        jarOf(folded([...lines, [day, { kind: 'stir', batchId, jarId: 'jar' }]]).cellar),
      )
    const overnight = after(1.7)
    const later = after(4)
    expect(overnight.free.waterG).toBeGreaterThan(150)
    expect(later.free.waterG).toBeGreaterThan(overnight.free.waterG)
    expect(overnight.bed.sugarG + overnight.free.sugarG).toBeCloseTo(1000, 6)
    expect(overnight.liquid?.strengthPctVol).toBe(0)
  })
})

describe('pourSpirit and pourWater', () => {
  it('shrinks: 500 mL of 96 % and 500 mL of water make 969.6 mL of 49.5 % vol', () => {
    // Craft reference, dilution-07, by OIML R 22.
    const { cellar } = folded([...pantry, [0, spirit(500)], [0, water(500)]])
    expect(Math.abs((freeOf(cellar)?.volumeMl ?? 0) - 969.6)).toBeLessThan(0.5)
    expect(Math.abs((freeOf(cellar)?.strengthPctVol ?? 0) - 49.5)).toBeLessThan(0.03)
  })

  it('refuses more spirit than there is', () => {
    expect(refusalOf([...pantry, [1, spirit(3200)]])).toMatchObject({
      code: 'notEnough',
      unit: 'ml',
      asked: 3200,
    })
  })

  it('refuses a lot that was never bought', () => {
    expect(refusalOf([...pantry, [1, { ...spirit(10), lotId: 'nowhere' } as Deed]])).toEqual({
      code: 'unknownPlace',
      place: 'lot:nowhere',
    })
  })
})

const steeped: Line[] = [...pantry, [1, charge(2000)], [2, water(400)], [2, spirit(1600)]]

describe('drawOff', () => {
  it('empties the free liquid into another jar and leaves the fruit its own', () => {
    const { cellar } = folded([...steeped, [60, drawOff('demijohn')]])
    expect(liquidVolumeMl(jarOf(cellar).bodies.free)).toBe(0)
    // 1.8 kg of flesh holds 0.65 L/kg once drained (library, estimate).
    expect(liquidVolumeMl(jarOf(cellar).bodies.held)).toBeCloseTo(1170, -1)
    expect(freeOf(cellar, 'demijohn')?.strengthPctVol).toBeGreaterThan(40)
  })

  it('takes what the jug measured, from the fruit too, up to all there is', () => {
    const all = describeJar(
      'jar',
      jarOf(folded([...steeped, [60, { kind: 'stir', batchId, jarId: 'jar' }]]).cellar),
    )
    const freeMl = all.liquid?.volumeMl ?? 0
    const { cellar, refused } = folded([...steeped, [60, drawOff('demijohn', freeMl + 300)]])
    expect(refused).toEqual([])
    expect(freeOf(cellar, 'demijohn')?.volumeMl).toBeCloseTo(freeMl + 300, 0)
    const refusal = refusalOf([...steeped, [60, drawOff('demijohn', 9000)]])
    expect(refusal).toMatchObject({ code: 'notEnough', place: 'jar:jar', unit: 'ml', asked: 9000 })
    expect(refusal?.nearest).toBeCloseTo(freeMl + all.heldMl, 3)
  })

  it('refuses an empty jar, the same jar, and another batch’s jar', () => {
    expect(refusalOf([...steeped, [60, drawOff('demijohn', undefined, 'other')]])?.code).toBe(
      'nothingThere',
    )
    expect(refusalOf([...steeped, [60, drawOff('jar')]])?.code).toBe('sameJar')
    const foreign: Deed = { kind: 'pourWater', batchId: 'foreign', jarId: 'demijohn', volumeMl: 10 }
    expect(refusalOf([...steeped, [59, foreign], [60, drawOff('demijohn')]])).toEqual({
      code: 'jarTaken',
      place: 'jar:demijohn',
      batchId: 'foreign',
    })
  })
})

describe('marry', () => {
  it('shrinks: 0.80 L of 48 %, 0.45 L of 30 % and 0.25 L of 22 % make 1.497 L of 38.35 % vol', () => {
    // Craft reference, dilution-10: sugar-free extracts, by OIML densities.
    const lines: Line[] = [
      [0, buySpirit('s48', 800, 48)],
      [0, buySpirit('s30', 450, 30)],
      [0, buySpirit('s22', 250, 22)],
      ...(['s48', 's30', 's22'] as const).map((lotId, i): Line => [
        0,
        { kind: 'pourSpirit', batchId, jarId: lotId, lotId, volumeMl: [800, 450, 250][i] ?? 0 },
      ]),
      [
        1,
        {
          kind: 'marry',
          batchId,
          parts: [{ jarId: 's48' }, { jarId: 's30' }, { jarId: 's22' }],
          toJarId: 'big',
        },
      ],
    ]
    const { cellar } = folded(lines)
    expect(freeOf(cellar, 'big')?.volumeMl).toBeCloseTo(1496.9, 0)
    expect(freeOf(cellar, 'big')?.strengthPctVol).toBeCloseTo(38.35, 1)
    expect([...cellar.jars.keys()]).toEqual(['big'])
  })

  it('may pour into a jar that is itself a part', () => {
    const lines: Line[] = [
      ...pantry,
      [1, spirit(500, 'a')],
      [1, water(500, 'b')],
      [2, { kind: 'marry', batchId, parts: [{ jarId: 'a' }, { jarId: 'b' }], toJarId: 'a' }],
    ]
    const { cellar } = folded(lines)
    expect([...cellar.jars.keys()]).toEqual(['a'])
    expect(cellar.batches.get(batchId)?.stage).toBe('married')
  })

  it('refuses to marry one jar with itself alone', () => {
    expect(
      refusalOf([
        ...pantry,
        [1, spirit(500, 'a')],
        [2, { kind: 'marry', batchId, parts: [{ jarId: 'a' }], toJarId: 'a' }],
      ])?.code,
    ).toBe('nothingThere')
  })
})

describe('filter', () => {
  const lines: Line[] = [...pantry, [1, spirit(1000)], [1, water(500)]]
  const filter = (lossMl?: number): Deed => ({
    kind: 'filter',
    batchId,
    fromJarId: 'jar',
    toJarId: 'clear',
    medium: 'paper',
    ...(lossMl !== undefined && { lossMl }),
  })

  it('loses the measured volume, and the usual 3 % through paper when none is given', () => {
    const whole = freeOf(folded(lines).cellar)?.volumeMl ?? 0
    expect(freeOf(folded([...lines, [2, filter(100)]]).cellar, 'clear')?.volumeMl).toBeCloseTo(
      whole - 100,
      3,
    )
    expect(freeOf(folded([...lines, [2, filter()]]).cellar, 'clear')?.volumeMl).toBeCloseTo(
      0.97 * whole,
      3,
    )
  })

  it('refuses to lose more than there is', () => {
    expect(refusalOf([...lines, [2, filter(5000)]])).toMatchObject({
      code: 'notEnough',
      unit: 'ml',
      asked: 5000,
    })
  })
})

describe('bottles', () => {
  const lines: Line[] = [...pantry, [1, spirit(1000)], [1, water(1200)]]

  it('are refused beyond what the jar fills, with the number that it does', () => {
    const refusal = refusalOf([...lines, [2, bottle(5)]])
    expect(refusal).toMatchObject({ code: 'notEnough', unit: 'bottles', asked: 5, nearest: 4 })
    expect(refusal?.available).toBeCloseTo(4.27, 1)
  })

  it('leave the batch resting once no further one can be filled, and finished when all are gone', () => {
    const rest = folded([...lines, [2, bottle(4)]]).cellar
    expect(rest.batches.get(batchId)?.stage).toBe('resting')
    const gone = folded([
      ...lines,
      [2, bottle(4)],
      [3, { kind: 'discard', from: { jarId: 'jar', part: 'all' } }],
      [4, { kind: 'drawBottle', bottleLotId: 'lot', count: 3 }],
      [5, { kind: 'give', bottleLotId: 'lot', count: 1 }],
    ]).cellar
    expect(gone.batches.get(batchId)?.stage).toBe('finished')
    expect(gone.bottles.get('lot')?.count).toBe(0)
  })

  it('opened back into a jar bring their liquid there, and no more of them than there are', () => {
    const filled: typeof lines = [...lines, [2, bottle(4)]]
    const unbottle = (count: number): Deed => ({
      kind: 'unbottle',
      batchId: 'other',
      bottleLotId: 'lot',
      count,
      toJarId: 'fresh',
    })
    const { cellar } = folded([...filled, [3, unbottle(3)]])
    expect(cellar.bottles.get('lot')?.count).toBe(1)
    const opened = cellar.jars.get('fresh')
    expect(opened?.batchId).toBe('other')
    expect(liquidVolumeMl(opened?.bodies.free ?? noMatter)).toBeCloseTo(1500, 3)
    expect(refusalOf([...filled, [3, unbottle(5)]])).toMatchObject({
      code: 'notEnough',
      nearest: 4,
    })
  })

  it('cannot be drawn beyond those that are left', () => {
    expect(
      refusalOf([
        ...lines,
        [2, bottle(2)],
        [3, { kind: 'drawBottle', bottleLotId: 'lot', count: 3 }],
      ]),
    ).toMatchObject({ code: 'notEnough', unit: 'bottles', asked: 3, available: 2, nearest: 2 })
  })

  it('found in a stocktake may not be more than were ever filled', () => {
    expect(
      refusalOf([
        ...lines,
        [2, bottle(2)],
        [3, { kind: 'correct', found: { bottleLotId: 'lot', count: 3 } }],
      ]),
    ).toMatchObject({ code: 'neverFilled', available: 2 })
  })
})

describe('correct', () => {
  it('sets strength and sugar to what was found, and books the difference', () => {
    const { cellar, steps } = folded([
      ...pantry,
      [1, spirit(1000)],
      [1, water(1000)],
      [
        2,
        {
          kind: 'correct',
          found: { jarId: 'jar', volumeMl: 1900, strengthPctVol: 46, sugarGPerL: 20 },
        },
      ],
    ])
    const liquid = freeOf(cellar)
    expect(liquid?.volumeMl).toBeCloseTo(1900, 3)
    expect(liquid?.strengthPctVol).toBeCloseTo(46, 4)
    expect(liquid?.sugarGPerL).toBeCloseTo(20, 4)
    expect(steps.at(-1)?.effect.transfers[0]).toMatchObject({
      from: 'outside:correction',
      to: 'jar:jar',
    })
  })

  it('refuses a liquid that cannot be', () => {
    expect(
      refusalOf([
        ...pantry,
        [1, spirit(500)],
        [2, { kind: 'correct', found: { jarId: 'jar', strengthPctVol: 96, sugarGPerL: 900 } }],
      ])?.code,
    ).toBe('noSuchMixture')
  })

  it('fills a lot that the book has emptied', () => {
    const { cellar, refused } = folded([
      [0, buySugar('s', 500)],
      [1, { kind: 'discard', from: { lotId: 's' } }],
      [2, { kind: 'correct', found: { lotId: 's', massG: 200 } }],
    ])
    expect(refused).toEqual([])
    expect(massOf(cellar.lots.get('s')?.matter ?? noMatter)).toBeCloseTo(200, 9)
  })
})

describe('addAcid', () => {
  const acid = (massG: number, jarId = 'jar', lotId = 'acid'): Deed => ({
    kind: 'addAcid',
    batchId,
    jarId,
    lotId,
    massG,
  })
  const sharpened: Line[] = [...pantry, [0, buyAcid('acid', 50)], [1, spirit(500)], [1, water(500)]]

  it('makes every gram of the powder acid in the liquid that pours', () => {
    const before = describeLiquid(jarOf(folded(sharpened).cellar).bodies.free)
    const { cellar } = folded([...sharpened, [2, acid(6)]])
    const { free } = jarOf(cellar).bodies
    expect(free.acidG).toBeCloseTo(6, 9)
    expect(massOf(cellar.lots.get('acid')?.matter ?? noMatter)).toBeCloseTo(44, 9)
    const after = describeLiquid(free)
    expect(after?.acidGPerL).toBeCloseTo(6000 / (after?.volumeMl ?? 0), 6)
    // A gram takes 0.6 ml, and so thins the spirit by a hair.
    expect((after?.volumeMl ?? 0) - (before?.volumeMl ?? 0)).toBeCloseTo(6 * 0.6, 6)
    expect(after?.strengthPctVol).toBeLessThan(before?.strengthPctVol ?? 0)
  })

  it('passes into the fruit that stands in the jar', () => {
    const { cellar } = folded([
      ...pantry,
      [0, buyAcid('acid', 50)],
      [1, charge(1000)],
      [1, spirit(1000)],
      [60, acid(10)],
      [160, { kind: 'stir', batchId, jarId: 'jar' }],
    ])
    const without = folded([
      ...pantry,
      [1, charge(1000)],
      [1, spirit(1000)],
      [160, { kind: 'stir', batchId, jarId: 'jar' }],
    ])
    const [is, was] = [jarOf(cellar).bodies, jarOf(without.cellar).bodies]
    expect(is.free.acidG + is.held.acidG).toBeCloseTo(was.free.acidG + was.held.acidG + 10, 6)
    expect(is.held.acidG - was.held.acidG).toBeGreaterThan(1)
  })

  it('needs acid, enough of it, and a liquid that dissolves it', () => {
    expect(refusalOf([...sharpened, [2, acid(60)]])).toMatchObject({
      code: 'notEnough',
      unit: 'g',
      available: 50,
    })
    expect(refusalOf([...sharpened, [2, acid(5, 'jar', 'sugar')]])?.code).toBe('wrongGoods')
    expect(refusalOf([...sharpened, [2, acid(5, 'empty')]])?.code).toBe('nothingThere')
    const onlyFruit: Line[] = [...pantry, [0, buyAcid('acid', 50)], [1, charge(500)]]
    expect(refusalOf([...onlyFruit, [1, acid(5)]])?.code).toBe('nothingThere')
  })

  it('is thrown away and put right by mass, like sugar', () => {
    const { cellar, refused } = folded([
      ...sharpened,
      [2, { kind: 'discard', from: { lotId: 'acid', massG: 20 } }],
      [3, { kind: 'correct', found: { lotId: 'acid', massG: 35 } }],
    ])
    expect(refused).toEqual([])
    expect(cellar.lots.get('acid')?.matter).toEqual({ ...noMatter, acidG: 35 })
  })
})

describe('crush and cover with sugar', () => {
  it('counts one draw however many portions of sugar, and the next only after drawing off', () => {
    const cover: Deed = {
      kind: 'coverWithSugar',
      batchId,
      jarId: 'jar',
      lotId: 'sugar',
      massG: 250,
    }
    const lines: Line[] = [
      ...steeped,
      [60, drawOff('a')],
      [60, { kind: 'crush', batchId, jarId: 'jar' }],
      [60, cover],
      [61, cover],
    ]
    expect(jarOf(folded(lines).cellar).fruit?.sugarDraws).toBe(1)
    const again: Line[] = [...lines, [64, drawOff('a')], [64, cover]]
    expect(jarOf(folded(again).cellar).fruit?.sugarDraws).toBe(2)
    expect(
      folded(again)
        .cellar.batches.get(batchId)
        ?.bands.map(({ stage }) => stage),
    ).toEqual(['layered', 'steeping', 'drawnOff', 'sugarDraw', 'drawnOff', 'sugarDraw'])
  })

  it('needs fruit', () => {
    expect(
      refusalOf([
        ...pantry,
        [1, spirit(100)],
        [2, { kind: 'coverWithSugar', batchId, jarId: 'jar', lotId: 'sugar', massG: 10 }],
      ])?.code,
    ).toBe('noFruit')
    expect(
      refusalOf([...pantry, [1, spirit(100)], [2, { kind: 'crush', batchId, jarId: 'jar' }]])?.code,
    ).toBe('noFruit')
  })
})
