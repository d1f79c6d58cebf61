import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { BranchingMap } from '../../../main/engine/ledger/branching-map.ts'

const entriesOf = <K, V>(map: ReadonlyMap<K, V>) => [...map]

describe('BranchingMap', () => {
  it('leaves the map it came from as it was', () => {
    const first = new BranchingMap<string, number>()
    first.set('a', 1)
    first.set('b', 2)
    const second = first.branch()
    second.set('a', 10)
    second.set('c', 3)
    expect(entriesOf(first)).toEqual([
      ['a', 1],
      ['b', 2],
    ])
    expect(entriesOf(second)).toEqual([
      ['a', 10],
      ['b', 2],
      ['c', 3],
    ])
    expect([first.size, second.size]).toEqual([2, 3])
    expect([second.has('b'), second.has('d'), second.get('d')]).toEqual([true, false, undefined])
    expect([...second.keys()]).toEqual(['a', 'b', 'c'])
    expect([...second.values()]).toEqual([10, 2, 3])
  })

  it('says the same as plain maps copied for each version, over random histories', () => {
    const deed = fc.record({
      isBranch: fc.boolean(),
      version: fc.nat(5),
      key: fc.nat(30),
      value: fc.integer(),
    })
    fc.assert(
      fc.property(fc.array(deed, { maxLength: 120 }), (deeds) => {
        const versions = [
          { map: new BranchingMap<number, number>(), plain: new Map<number, number>() },
        ]
        for (const { isBranch, version, key, value } of deeds) {
          const from = versions[version % versions.length] as (typeof versions)[number]
          if (isBranch) versions.push({ map: from.map.branch(), plain: new Map(from.plain) })
          else {
            from.map.set(key, value)
            from.plain.set(key, value)
          }
        }
        for (const { map, plain } of versions) {
          expect(entriesOf(map)).toEqual(entriesOf(plain))
          expect(map.size).toBe(plain.size)
          const seen: [number, number][] = []
          map.forEach((value, key) => seen.push([key, value]))
          expect(seen).toEqual(entriesOf(plain))
        }
      }),
      { numRuns: 500 },
    )
  })
})
