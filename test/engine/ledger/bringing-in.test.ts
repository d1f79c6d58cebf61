import { describe, expect, it } from 'vitest'
import { massOf, subtractMatter } from '../../../shared/matter.ts'
import type { MoveOf } from '../../../shared/schemas/moves.ts'
import {
  balance,
  costsOf,
  describeLiquid,
  fold,
  fruitOf,
  fruitsInBottles,
  lineageBack,
  matterInBottles,
  type BottleState,
} from '../../../main/engine/index.ts'

const old: MoveOf<'bringIn'> = {
  at: '2014-10-01T12:00:00.000Z',
  kind: 'bringIn',
  batchId: 'damson',
  bottleLotId: 'lot',
  bottleSizeMl: 500,
  count: 12,
  strengthPctVol: 32,
  sugarGPerL: 210,
  fruitIds: ['damson', 'ginger'],
  shelfId: 'rack',
}
const bookOf = (...moves: MoveOf<'bringIn'>[]) =>
  fold(
    moves.map((move, index) => ({
      id: `m${index}`,
      seq: index + 1,
      groupId: 'g',
      recordedAt: move.at,
      version: 1,
      move,
    })),
    { fruitOf },
  )
const lotIn = (book: ReturnType<typeof bookOf>) => book.cellar.bottles.get('lot') as BottleState

describe('bringIn', () => {
  it('fills each of 12 bottles with half a litre of what their maker says it is', () => {
    const lot = lotIn(bookOf(old))
    const liquid = describeLiquid(lot.perBottle)
    expect(liquid?.volumeMl).toBeCloseTo(500, 6)
    expect(liquid?.strengthPctVol).toBeCloseTo(32, 6)
    expect(liquid?.sugarGPerL).toBeCloseTo(210, 6)
    expect([lot.count, lot.filledCount, lot.shelves.get('rack')]).toEqual([12, 12, 12])
    expect(lot.bottledAtMs).toBe(Date.parse(old.at))
  })

  it('takes its matter from elsewhere, gram for gram', () => {
    const book = bookOf(old)
    const { broughtIn, inBottles, bought, missing } = balance(book.cellar)
    expect(massOf(subtractMatter(broughtIn, matterInBottles(lotIn(book))))).toBe(0)
    expect(massOf(inBottles)).toBeCloseTo(massOf(broughtIn), 9)
    expect(massOf(bought)).toBeCloseTo(0, 12)
    expect(Math.abs(massOf(missing))).toBeLessThan(1e-9)
  })

  it('brings its batch to rest, and no money', () => {
    const book = bookOf(old)
    expect(book.cellar.batches.get('damson')?.stage).toBe('resting')
    const costs = costsOf(book.steps)
    expect(costs.spent.minor).toBe(0)
    expect(costs.places.get('bottles:lot')).toEqual({ minor: 0, isComplete: false })
  })

  it('is of the fruits its maker named, in equal parts, and of no purchase', () => {
    const book = bookOf(old)
    const [first, second] = fruitsInBottles(book).get('lot') ?? []
    expect([first?.fruitId, second?.fruitId]).toEqual(['damson', 'ginger'])
    expect(first?.massG).toBeCloseTo(second?.massG ?? 0, 9)
    expect(lineageBack(book, 'bottles:lot').origins.map(({ key }) => key)).toEqual([
      'outside:elsewhere',
    ])
  })

  it('refuses a lot that is there, and a strength that leaves no room for the sugar', () => {
    const codes = (...moves: MoveOf<'bringIn'>[]) =>
      bookOf(...moves).refused.map(({ refusal }) => refusal.code)
    expect(codes(old, { ...old, count: 1 })).toEqual(['alreadyThere'])
    expect(codes({ ...old, strengthPctVol: 95, sugarGPerL: 400 })).toEqual(['noSuchMixture'])
  })
})
