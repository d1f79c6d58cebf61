import { describe, expect, it } from 'vitest'
import {
  requestOf,
  startEntries,
  withPart,
  type Entries,
} from '../../../renderer/screens/marry/entries.ts'
import { movesOf } from '../../../renderer/screens/marry/record/recording.ts'
import { cures, helpersOf } from '../../../renderer/screens/marry/mend/troubles.ts'
import { endless, lotShown } from '../../../renderer/screens/marry/places.ts'
import { MarryRequest, type BlendAmount } from '../../../shared/schemas/marrying.ts'
import { Move } from '../../../shared/schemas/moves.ts'
import { liquid, spiritLot } from '../cellar-fixture.ts'

const chosen: Entries = withPart(startEntries, 'jar:north', { keepBack: 200 })

describe('requestOf', () => {
  it('asks nothing while nothing but water goes in', () => {
    expect(requestOf(startEntries)).toBeUndefined()
    expect(requestOf(withPart(startEntries, 'outside:tap', {}))).toBeUndefined()
  })

  it('asks for what is wished, exactly, at least or at most', () => {
    const request = requestOf({
      ...chosen,
      wishes: {
        strengthPctVol: { sense: 'exactly', value: 30 },
        sugarGPerL: { sense: 'atMost', value: 200 },
        acidGPerL: { sense: 'any', value: 8 },
      },
    })
    expect(request).toMatchObject({
      parts: [{ place: 'jar:north', keepBack: 200 }],
      wishes: { strengthPctVol: { low: 30, high: 30 }, sugarGPerL: { high: 200 } },
    })
    expect(request?.wishes).not.toHaveProperty('acidGPerL')
    expect(MarryRequest.safeParse(request).success).toBe(true)
  })

  it('waits for a volume or a size that is not written yet', () => {
    expect(requestOf({ ...chosen, amount: 'volume', volumeMl: undefined })).toBeUndefined()
    const bottles = [{ sizeMl: undefined, count: 3 }]
    expect(requestOf({ ...chosen, amount: 'bottles', bottles })).toBeUndefined()
  })

  it('fills as many bottles as can be where no number is written', () => {
    const request = requestOf({ ...chosen, amount: 'bottles' })
    expect(request?.wishes.bottles).toEqual([{ sizeMl: 500 }])
  })
})

const amount = (place: string, unit: BlendAmount['unit'], value: number): BlendAmount => ({
  place,
  unit,
  amount: value,
  volumeMl: value,
  massG: value,
  isUsedUp: false,
  cost: { minor: 0, isComplete: true },
})

describe('movesOf', () => {
  const moves = movesOf({
    amounts: [
      amount('lot:sugar', 'g', 480.04),
      amount('outside:tap', 'ml', 225.96),
      amount('jar:wicker', 'ml', 1770),
      amount('jar:stair', 'ml', 712.345),
      amount('lot:spirit', 'ml', 0.001),
      amount('bottles:old', 'bottles', 3),
      amount('outside:acid', 'g', 4),
      amount('lot:citric', 'g', 2.5),
    ],
    batchId: 'damson',
    toJarId: 'wicker',
    at: '2026-11-20T10:00:00Z',
    note: ' poured slowly ',
    isAcid: (lotId) => lotId === 'citric',
    bought: { lotId: 'fresh', massG: 100, priceMinor: 250 },
  })

  it('marries jars first, then opens bottles, then adds what the pantry and the tap give', () => {
    expect(moves.map(({ kind }) => kind)).toEqual([
      'marry',
      'unbottle',
      'pourWater',
      'sugar',
      'addAcid',
      'buy',
      'addAcid',
    ])
  })

  it('rounds to a tenth, names the vessel as a part, and notes the first move', () => {
    expect(moves[0]).toMatchObject({
      parts: [
        { jarId: 'wicker', volumeMl: 1770 },
        { jarId: 'stair', volumeMl: 712.3 },
      ],
      note: 'poured slowly',
    })
    expect(moves[3]).toMatchObject({ kind: 'sugar', massG: 480 })
  })

  it('takes acid from its lot, and buys what the pantry has not in the same breath', () => {
    expect(moves[4]).toMatchObject({ kind: 'addAcid', lotId: 'citric', massG: 2.5 })
    expect(moves[5]).toMatchObject({ kind: 'buy', lotId: 'fresh', massG: 100, priceMinor: 250 })
    expect(moves[6]).toMatchObject({ kind: 'addAcid', lotId: 'fresh', massG: 4 })
  })

  it('keeps to the contract', () => {
    for (const move of moves) expect(Move.safeParse(move).success).toBe(true)
  })
})

describe('cures', () => {
  it('guess a target on the mending side of what is there', () => {
    const there = liquid()
    for (const { guess, target, isUp } of Object.values(cures))
      expect(guess(there) > there[target]).toBe(isUp)
  })

  it('offer one lot of each kind that helps', () => {
    const places = [
      lotShown(spiritLot(), 'Spirit'),
      lotShown(spiritLot({ id: 'second' }), 'Spirit'),
      endless('outside:tap', 'Water', 'water'),
    ].filter((one) => one !== undefined)
    expect(helpersOf(cures.tooSweet, places)).toEqual(['lot:spirit', 'outside:tap'])
  })

  it('sharpen with the acid there is, and only without any with acid still to buy', () => {
    const toBuy = endless('outside:acid', 'Citric acid', 'acid')
    const lot = lotShown(
      {
        id: 'citric',
        goods: { kind: 'acid' },
        boughtAt: '2026-11-01T10:00:00Z',
        boughtMassG: 100,
        massG: 80,
      },
      'Citric acid',
    )
    expect(helpersOf(cures.tooFlat, [...(lot ? [lot] : []), toBuy])).toEqual(['lot:citric'])
    expect(helpersOf(cures.tooFlat, [toBuy])).toEqual(['outside:acid'])
  })
})
