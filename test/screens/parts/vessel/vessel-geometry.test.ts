import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { vesselGeometry } from '../../../../renderer/parts/vessel/vessel-geometry.ts'
import { vesselLevels } from '../../../../renderer/parts/vessel/vessel-levels.ts'
import {
  vesselProfiles,
  type VesselShape,
} from '../../../../renderer/parts/vessel/vessel-profiles.ts'

const shapes = Object.keys(vesselProfiles) as VesselShape[]
const shape = fc.constantFrom(...shapes)
const capacityMl = fc.double({ min: 20, max: 60_000, noNaN: true })
const share = fc.double({ min: 0, max: 1, noNaN: true })

describe('vesselGeometry', () => {
  it('holds its capacity to the brim and nothing at the bottom', () => {
    for (const one of shapes) {
      const jar = vesselGeometry(one, 5000)
      expect(jar.volumeBelowMl(0)).toBe(0)
      expect(jar.volumeBelowMl(jar.heightMm)).toBeCloseTo(5000, 9)
      expect(jar.volumeBelowMl(jar.heightMm * 2)).toBeCloseTo(5000, 9)
    }
  })

  it('agrees with the integral of its own radius, within 0.1 %', () => {
    for (const one of shapes) {
      const jar = vesselGeometry(one, 3000)
      const slices = 5000
      let mm3 = 0
      for (let i = 0; i < slices; i += 1)
        mm3 +=
          Math.PI *
          jar.radiusAtMm(((i + 0.5) / slices) * jar.heightMm) ** 2 *
          (jar.heightMm / slices)
      expect(mm3 / 1000 / 3000).toBeGreaterThan(0.999)
      expect(mm3 / 1000 / 3000).toBeLessThan(1.001)
    }
  })

  it('has the volume below a height rise with the height', () => {
    fc.assert(
      fc.property(shape, capacityMl, share, share, (one, ml, a, b) => {
        const jar = vesselGeometry(one, ml)
        const [low, high] = [Math.min(a, b), Math.max(a, b)].map((part) => part * jar.heightMm)
        expect(jar.volumeBelowMl(low ?? 0)).toBeLessThanOrEqual(jar.volumeBelowMl(high ?? 0))
      }),
    )
  })

  it('finds the height of a volume and the volume of that height again', () => {
    fc.assert(
      fc.property(shape, capacityMl, share, (one, ml, part) => {
        const jar = vesselGeometry(one, ml)
        expect(jar.volumeBelowMl(jar.heightOfMm(part * ml)) / ml).toBeCloseTo(part, 9)
      }),
    )
  })

  it('fills a demijohn by half well below half its height, and a jar near it', () => {
    const demijohn = vesselGeometry('demijohn', 10_000)
    const jar = vesselGeometry('jar', 10_000)
    expect(demijohn.heightOfMm(5000) / demijohn.heightMm).toBeLessThan(0.36)
    expect(jar.heightOfMm(5000) / jar.heightMm).toBeGreaterThan(0.45)
    expect(jar.heightOfMm(5000) / jar.heightMm).toBeLessThan(0.5)
  })

  it('is true to scale: eight times the volume is twice as high', () => {
    for (const one of shapes)
      expect(vesselGeometry(one, 8000).heightMm / vesselGeometry(one, 1000).heightMm).toBeCloseTo(
        2,
        9,
      )
  })

  it('has sizes as in a cellar: a litre jar, a 10 L demijohn, a 0.75 L bottle', () => {
    const jar = vesselGeometry('jar', 1000)
    expect(jar.heightMm).toBeGreaterThan(120)
    expect(jar.heightMm).toBeLessThan(190)
    const demijohn = vesselGeometry('demijohn', 10_000)
    expect(demijohn.heightMm).toBeGreaterThan(300)
    expect(demijohn.heightMm).toBeLessThan(420)
    const bottle = vesselGeometry('bottle', 770)
    expect(bottle.heightMm).toBeGreaterThan(260)
    expect(bottle.heightMm).toBeLessThan(340)
  })

  it('keeps the radius between nothing and the greatest', () => {
    fc.assert(
      fc.property(shape, share, (one, part) => {
        const jar = vesselGeometry(one, 2000)
        const radius = jar.radiusAtMm(part * jar.heightMm)
        expect(radius).toBeGreaterThan(0)
        expect(radius).toBeLessThanOrEqual(jar.maxRadiusMm * 1.0001)
      }),
    )
  })

  it('has a safe fill of 95 % in jars and 97 % in bottles', () => {
    expect(vesselGeometry('jar', 1000).safeFillMl).toBeCloseTo(950, 9)
    expect(vesselGeometry('bottle', 1000).safeFillMl).toBeCloseTo(970, 9)
  })

  it('refuses a vessel that holds nothing', () => {
    expect(() => vesselGeometry('jar', 0)).toThrow(RangeError)
    expect(() => vesselGeometry('jar', Number.NaN)).toThrow(RangeError)
  })
})

describe('vesselLevels', () => {
  it('stands the liquid at the sum of all when it covers the fruit', () => {
    const levels = vesselLevels({ fillMl: 2600, liquidMl: 1500, pulpMl: 1000, bedMl: 100 }, 4000)
    expect(levels.bedTopMl).toBe(100)
    expect(levels.liquidTopMl).toBe(2600)
    expect(levels.fruitTopMl).toBeGreaterThan(1100)
    expect(levels.fruitTopMl).toBeLessThan(2600)
  })

  it('lets fruit rise above liquid that does not fill its gaps', () => {
    const levels = vesselLevels({ fillMl: 1100, liquidMl: 100, pulpMl: 1000, bedMl: 0 }, 4000)
    expect(levels.liquidTopMl).toBeLessThan(levels.fruitTopMl)
  })

  it('never rises above the brim', () => {
    const levels = vesselLevels({ fillMl: 9000, liquidMl: 6000, pulpMl: 3000, bedMl: 0 }, 4000)
    expect(levels.liquidTopMl).toBe(4000)
    expect(levels.fruitTopMl).toBe(4000)
  })

  it('stands no liquid in an empty vessel', () => {
    expect(vesselLevels({ fillMl: 0, liquidMl: 0, pulpMl: 0, bedMl: 0 }, 4000)).toEqual({
      bedTopMl: 0,
      fruitTopMl: 0,
      liquidTopMl: 0,
    })
  })
})
