import { describe, expect, it } from 'vitest'
import { fruitLibrary } from '../../../main/engine/index.ts'
import { listOfFruits, type WantedFruit } from '../../../renderer/screens/fruits/list-of-fruits.ts'

const all = [...fruitLibrary.values()].map((fruit) => ({
  fruit,
  origin: fruit.id === 'sloe' ? ('edited' as const) : ('library' as const),
  name: fruit.nameEn,
  kind: fruit.kind,
}))
const found = (wanted: Partial<WantedFruit>) =>
  listOfFruits(all, { group: 'all', search: '', month: 7, ...wanted }).map(({ fruit }) => fruit.id)

describe('listOfFruits', () => {
  it('finds by English, Polish and Latin name, without accents and in any order', () => {
    expect(found({ search: 'sour cher' })).toEqual(['sour_cherry'])
    expect(found({ search: 'wisnia' })).toEqual(['sour_cherry'])
    expect(found({ search: 'damaszka sliwka' })).toEqual(['damson'])
    expect(found({ search: 'spinosa' })).toEqual(['sloe'])
    expect(found({ search: 'no such fruit' })).toEqual([])
  })

  it('finds by kind', () => {
    expect(found({ search: 'citrus' })).toHaveLength(4)
  })

  it('tells July from January, over New Year too, and leaves out what is always sold', () => {
    expect(found({ group: 'inSeason' })).toContain('raspberry')
    expect(found({ group: 'inSeason', month: 1 })).toEqual(
      expect.arrayContaining(['lemon_peel', 'orange_peel', 'juniper']),
    )
    expect(found({ group: 'inSeason', month: 1 })).not.toContain('raspberry')
    expect(found({ group: 'inSeason', month: 1 })).not.toContain('coffee')
  })

  it('knows what is the maker’s', () => {
    expect(found({ group: 'yours' })).toEqual(['sloe'])
    expect(found({ group: 'yours', search: 'apple' })).toEqual([])
  })
})
