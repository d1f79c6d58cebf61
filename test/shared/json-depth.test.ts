import { describe, expect, it } from 'vitest'
import { depthOf } from '../../shared/json-depth.ts'

describe('depthOf', () => {
  it('counts brackets, not those in texts', () => {
    expect(depthOf('{"a":[1,{"b":[]}],"c":[]}')).toBe(4)
    expect(depthOf(String.raw`["[[[\"[[\\"]`)).toBe(1)
    expect(depthOf('1')).toBe(0)
  })
})
