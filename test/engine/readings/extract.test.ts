import { describe, expect, it } from 'vitest'
import { describeSolution, interpretReading } from '../../../main/engine/index.ts'

/** A damson extract: 40 g/L of sugar, and as much again of acid and other solubles. */
const extract = { ethanolG: 270, waterG: 640, sugarG: 40, acidG: 10, solublesG: 32 }
const { densityKgPerM3, apparentBrix, sugarGPerL, strengthPctVol, volumeMl } =
  describeSolution(extract)
const reading = {
  instrument: 'hydrometerAndRefractometer',
  densityKgPerM3,
  brix: apparentBrix,
  temperatureC: 20,
} as const
const ledger = {
  expectedSugarGPerL: sugarGPerL,
  expectedStrengthPctVol: strengthPctVol,
  expectedOtherExtractGPerL: (1000 * (extract.acidG + extract.solublesG)) / volumeMl,
}

describe('interpretReading of a fruit extract', () => {
  it('takes acid and other solubles off what the instruments show as sugar', () => {
    const told = interpretReading(reading, ledger)
    expect(told.doubts).toEqual([])
    expect(Math.abs((told.sugarGPerL ?? 0) - sugarGPerL)).toBeLessThan(3)
    expect(Math.abs((told.strengthPctVol ?? 0) - strengthPctVol)).toBeLessThan(0.6)
    // 30 % of 42 g/L: how well the ledger knows what else is dissolved.
    expect(told.sugarUncertaintyGPerL).toBeGreaterThan(0.3 * 42)
  })

  it('shows all of it as sugar where the ledger expects nothing else', () => {
    const told = interpretReading(reading, {})
    expect(told.sugarGPerL).toBeGreaterThan(sugarGPerL + 35)
  })

  it('doubts an alcoholometer that acid and other solubles alone mislead', () => {
    const told = interpretReading(
      { instrument: 'alcoholometer', readingPctVol: 30, temperatureC: 20 },
      { expectedSugarGPerL: 0, expectedOtherExtractGPerL: 12 },
    )
    expect(told.doubts).toContain('instrumentMisledBySugar')
  })
})
