import { describe, expect, it } from 'vitest'
import { growingList } from '../../main/service/growing-list.ts'

describe('growingList', () => {
  it('keeps each version as it was, whichever is read first', () => {
    const one = growingList([1, 2])
    const two = one.with([3])
    const three = two.with([4, 5])
    const other = two.with([6])
    expect(three.all).toEqual([1, 2, 3, 4, 5])
    expect(one.all).toEqual([1, 2])
    expect(other.all).toEqual([1, 2, 3, 6])
    expect(two.all).toEqual([1, 2, 3])
    expect(other.all).toEqual([1, 2, 3, 6])
  })

  it('is put together once', () => {
    const list = growingList([1]).with([2])
    expect(list.all).toBe(list.all)
  })

  it('grows a hundred thousand times before anyone reads it', () => {
    let list = growingList<number>([])
    for (let i = 0; i < 100_000; i += 1) list = list.with([i])
    expect(list.all).toHaveLength(100_000)
    expect(list.all.at(-1)).toBe(99_999)
  })
})
