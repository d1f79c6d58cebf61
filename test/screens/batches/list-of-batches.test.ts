import { describe, expect, it } from 'vitest'
import {
  listOfBatches,
  type SortKey,
  type Wanted,
} from '../../../renderer/screens/batches/list-of-batches.ts'
import { batch, batches, liquid, summary } from '../cellar-fixture.ts'

const names = (change: Partial<Wanted> = {}, all = batches) =>
  listOfBatches(all, {
    group: 'all',
    search: '',
    order: { by: 'name', isDescending: false },
    locale: 'en-GB',
    alsoNamed: () => [],
    ...change,
  }).map((one) => one.batch.name)

const by = (key: SortKey, isDescending = false) => ({ order: { by: key, isDescending } })

describe('listOfBatches', () => {
  it('sorts by name, strength and age, both ways', () => {
    expect(names()).toEqual(['Hedge damson', 'Quince and ginger', 'Raspberry, north hedge'])
    expect(names(by('strength'))[0]).toBe('Quince and ginger')
    expect(names(by('strength', true))[0]).toBe('Hedge damson')
    expect(names(by('age', true))[0]).toBe('Raspberry, north hedge')
  })

  it('puts bottles that wait for tasting after steps that press, however old', () => {
    expect(names(by('next'))).toEqual([
      'Hedge damson',
      'Quince and ginger',
      'Raspberry, north hedge',
    ])
  })

  it('keeps what has no liquid last, whichever way', () => {
    const { liquid: _none, ...dry } = summary({ batch: batch({ id: 'dry', name: 'A dry one' }) })
    const all = [dry, summary({ liquid: liquid({ sugarGPerL: 5 }) })]
    expect(names(by('sugar'), all).at(-1)).toBe('A dry one')
    expect(names(by('sugar', true), all).at(-1)).toBe('A dry one')
  })

  it('filters by stage group', () => {
    expect(names({ group: 'resting' })).toEqual(['Raspberry, north hedge'])
    expect(names({ group: 'done' })).toEqual([])
  })

  it('finds every word in any order, without case and accents, also by jar and fruit', () => {
    const polish = [summary({ batch: batch({ name: 'Śliwka z żywopłotu' }) })]
    expect(names({ search: 'zywoplotu SLIWKA' }, polish)).toHaveLength(1)
    expect(names({ search: 'cellar', alsoNamed: () => ['Cellar crock'] })).toHaveLength(3)
    expect(names({ search: 'quince damson' })).toEqual([])
  })

  it('leaves the list it was given as it was', () => {
    const frozen = Object.freeze([...batches])
    expect(names(by('volume'), frozen as typeof batches)).toHaveLength(3)
  })
})
