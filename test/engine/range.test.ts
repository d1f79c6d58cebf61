import { describe, expect, it } from 'vitest'
import { DomainError } from '../../main/engine/domain-error.ts'
import { requireMass, requirePositive, requireRange } from '../../main/engine/range.ts'

const refusalOf = (act: () => unknown): DomainError => {
  try {
    act()
  } catch (error) {
    if (error instanceof DomainError) return error
  }
  throw new Error('was not refused')
}

describe('requireRange', () => {
  it('lets both ends pass', () => {
    expect(() => requireRange('strength', 0, 0, 100, '% vol')).not.toThrow()
    expect(() => requireRange('strength', 100, 0, 100, '% vol')).not.toThrow()
  })

  it('refuses with the quantity, the value and the range, in words and as data', () => {
    const refusal = refusalOf(() => requireRange('strength', 101, 0, 100, '% vol'))
    expect(refusal).toBeInstanceOf(RangeError)
    expect(refusal.code).toBe('outOfRange')
    expect(refusal.message).toBe('strength is 101 % vol, must be 0 to 100 % vol')
    expect(refusal.details).toEqual({
      quantity: 'strength',
      value: 101,
      low: 0,
      high: 100,
      unit: '% vol',
    })
  })

  it('refuses what is no number even where the range has no end', () => {
    for (const bad of [Number.NaN, -Infinity]) {
      expect(() => requireRange('mass', bad, 0, Infinity, 'g')).toThrow(RangeError)
    }
  })
})

describe('requirePositive', () => {
  it('refuses nothing, less than nothing and what is not finite', () => {
    requirePositive('volume', Number.MIN_VALUE, 10, 'mL')
    for (const bad of [0, -1, 11, Number.NaN, Infinity]) {
      expect(() => requirePositive('volume', bad, 10, 'mL')).toThrow(RangeError)
    }
  })
})

describe('requireMass', () => {
  it('forgives the rounding of a subtraction and nothing more', () => {
    expect(requireMass('water', -1e-9)).toBe(0)
    expect(requireMass('water', 12.5)).toBe(12.5)
    expect(refusalOf(() => requireMass('water', -0.001)).details.value).toBe(-0.001)
    expect(() => requireMass('water', Number.NaN)).toThrow(RangeError)
    expect(() => requireMass('water', Infinity)).toThrow(RangeError)
  })
})
