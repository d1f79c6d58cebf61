import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { densityProfile } from '../../../main/engine/alcoholometry/density-of-spirit.ts'
import {
  massFractionOfStrength,
  massFractionOfVolumeShare,
  strengthOfMassFraction,
  volumeShareOfMassFraction,
} from '../../../main/engine/alcoholometry/strength.ts'
import { strengthChecks } from '../../references/trade-checks.ts'

const strength = fc.double({ min: 0, max: 100, noNaN: true })

describe('massFractionOfStrength', () => {
  it('meets the mass percents used in the trade within 0.03', () => {
    for (const { id, pctVol, massPercent } of strengthChecks) {
      const off = 100 * massFractionOfStrength(pctVol) - massPercent
      expect(Math.abs(off), id).toBeLessThanOrEqual(0.03)
    }
  })

  it('is undone by strengthOfMassFraction within 1e-10 % vol, the rounding of its great terms', () => {
    fc.assert(
      fc.property(strength, (pctVol) => {
        const back = strengthOfMassFraction(massFractionOfStrength(pctVol))
        expect(Math.abs(back - pctVol)).toBeLessThan(1e-10)
      }),
      { numRuns: 2000 },
    )
  })

  it('is exactly 0 for water and 1 for ethanol, and below the strength between', () => {
    expect(massFractionOfStrength(0)).toBe(0)
    expect(massFractionOfStrength(100)).toBe(1)
    expect(strengthOfMassFraction(0)).toBe(0)
    expect(strengthOfMassFraction(1)).toBe(100)
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 99.99, noNaN: true }), (pctVol) => {
        expect(massFractionOfStrength(pctVol)).toBeLessThan(pctVol / 100)
      }),
    )
  })

  it('refuses what is no strength', () => {
    for (const bad of [Number.NaN, Infinity, -0.001, 100.001]) {
      expect(() => massFractionOfStrength(bad)).toThrow(RangeError)
    }
    expect(() => massFractionOfStrength(140)).toThrow('strength is 140 % vol, must be 0 to 100')
    expect(() => strengthOfMassFraction(1.01)).toThrow(RangeError)
    expect(() => strengthOfMassFraction(Number.NaN)).toThrow(RangeError)
  })
})

describe('a share by volume at another temperature', () => {
  it('is undone within 1e-12', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: -20, max: 40, noNaN: true }),
        (share, temperatureC) => {
          const profile = densityProfile(temperatureC)
          const massFraction = massFractionOfVolumeShare(profile, share)
          expect(massFraction).toBeGreaterThanOrEqual(0)
          expect(massFraction).toBeLessThanOrEqual(1)
          const back = volumeShareOfMassFraction(profile, massFraction)
          expect(Math.abs(back - share)).toBeLessThan(1e-12)
        },
      ),
      { numRuns: 500 },
    )
  })

  it('is nothing of water and all of ethanol', () => {
    for (const temperatureC of [-20, 15.56, 40]) {
      const profile = densityProfile(temperatureC)
      expect(massFractionOfVolumeShare(profile, 0)).toBe(0)
      expect(massFractionOfVolumeShare(profile, 1)).toBe(1)
      expect(volumeShareOfMassFraction(profile, 0)).toBe(0)
      expect(volumeShareOfMassFraction(profile, 1)).toBe(1)
    }
  })
})
