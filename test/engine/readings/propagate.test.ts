import { describe, expect, it } from 'vitest'
import { DomainError } from '../../../main/engine/domain-error.ts'
import { exactly, measured, propagate } from '../../../main/engine/readings/propagate.ts'
import { strengthOfDensity } from '../../../main/engine/alcoholometry/strength-of-density.ts'
import { requireRange } from '../../../main/engine/range.ts'
import { noiseOf } from './composed-liqueurs.ts'

describe('propagate', () => {
  it('is exact for a sum and a scale: 3 and 4 make 5, and 2 times 0.5 makes 1', () => {
    const sum = propagate({ a: measured(10, 3), b: measured(20, 4) }, ({ a, b }) => ({ c: a + b }))
    expect(sum.c).toEqual({ value: 30, uncertainty: 5 })
    const twice = propagate({ a: measured(7, 0.5) }, ({ a }) => ({ b: 2 * a }))
    expect(twice.b.uncertainty).toBeCloseTo(1, 12)
  })

  it('follows a product as its relative uncertainties add in squares', () => {
    const { area } = propagate(
      { long: measured(50, 0.5), wide: measured(20, 0.2) },
      ({ long, wide }) => ({ area: long * wide }),
    )
    expect(area.uncertainty / area.value).toBeCloseTo(Math.SQRT2 * 0.01, 10)
  })

  it('adds the error of the equation itself, and nothing for an exact input', () => {
    const found = propagate(
      { a: measured(10, 3), b: exactly(20) },
      ({ a, b }) => ({ c: a + b }),
      () => ({ c: 4 }),
    )
    expect(found.c.uncertainty).toBe(5)
  })

  it('takes one side alone where the other leaves the range, or a smaller step', () => {
    const rooted = ({ x }: { x: number }) => {
      requireRange('x', x, 0, 1, '')
      return { y: 10 * x }
    }
    expect(propagate({ x: measured(1, 0.2) }, rooted).y.uncertainty).toBeCloseTo(2, 10)
    expect(propagate({ x: measured(0.5, 3) }, rooted).y.uncertainty).toBeCloseTo(30, 10)
  })

  it('says infinite where the point stands alone, and throws what the point itself is refused', () => {
    const only = ({ x }: { x: number }) => {
      requireRange('x', x, 1, 1, '')
      return { y: x }
    }
    expect(propagate({ x: measured(1, 0.1) }, only).y.uncertainty).toBe(Number.POSITIVE_INFINITY)
    expect(() => propagate({ x: measured(2, 0.1) }, only)).toThrow(DomainError)
  })

  it('throws on what is a bug, and does not take it for the edge of a range', () => {
    const broken = ({ x }: { x: number }) => {
      if (x !== 1) throw new TypeError('a bug')
      return { y: x }
    }
    expect(() => propagate({ x: measured(1, 0.1) }, broken)).toThrow(TypeError)
  })

  it('agrees with 20,000 seeded samples through the density tables within 3 %', () => {
    const noise = noiseOf(7)
    const [density, temperature] = [measured(948, 1), measured(18, 0.5)]
    const act = (at: { density: number; temperature: number }) =>
      strengthOfDensity({ densityKgPerM3: at.density, temperatureC: at.temperature })
    const { strength } = propagate({ density, temperature }, (at) => ({ strength: act(at) }))
    const samples = Array.from({ length: 20_000 }, () =>
      act({
        density: density.value + density.uncertainty * noise.normal(),
        temperature: temperature.value + temperature.uncertainty * noise.normal(),
      }),
    )
    const mean = samples.reduce((sum, one) => sum + one, 0) / samples.length
    const spread = Math.sqrt(
      samples.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (samples.length - 1),
    )
    expect(strength.uncertainty / spread).toBeGreaterThan(0.97)
    expect(strength.uncertainty / spread).toBeLessThan(1.03)
  })
})
