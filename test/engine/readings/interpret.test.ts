import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Interpretation, type Reading } from '../../../shared/schemas/readings.ts'
import { trueStrength } from '../../../main/engine/alcoholometry/true-strength.ts'
import { interpretReading } from '../../../main/engine/readings/interpret.ts'
import { readBoilOff, readTwoInstruments } from './composed-liqueurs.ts'

const alcoholometer = (readingPctVol: number, temperatureC = 20): Reading => ({
  instrument: 'alcoholometer',
  readingPctVol,
  temperatureC,
})

describe('interpretReading of an alcoholometer', () => {
  it('is the true strength, sure to about half a % vol', () => {
    const found = interpretReading(alcoholometer(45, 12), {})
    expect(found.strengthPctVol).toBe(trueStrength({ readingPctVol: 45, temperatureC: 12 }))
    expect(found.strengthUncertaintyPctVol).toBeCloseTo(0.53, 1)
    expect(found.doubts).toEqual([])
  })

  it('is doubted in more than 2 g/L of sugar, and is then that much less sure', () => {
    expect(interpretReading(alcoholometer(40), { expectedSugarGPerL: 2 }).doubts).toEqual([])
    const justSweet = interpretReading(alcoholometer(40), { expectedSugarGPerL: 2.1 })
    expect(justSweet.doubts).toEqual(['instrumentMisledBySugar'])
    const misled = interpretReading(alcoholometer(30), { expectedSugarGPerL: 40 })
    expect(misled.doubts).toEqual(['instrumentMisledBySugar'])
    expect(misled.strengthUncertaintyPctVol).toBeGreaterThan(10)
  })

  it('is doubted above all that was poured, but not for its own noise', () => {
    const poured = { strongestPouredPctVol: 40 }
    expect(interpretReading(alcoholometer(40.8), poured).doubts).toEqual([])
    expect(interpretReading(alcoholometer(42), poured).doubts).toEqual([
      'strongerThanAnythingPoured',
    ])
  })

  it('is out of range above 97 % vol, off the scale, and where no spirit shows it', () => {
    expect(interpretReading(alcoholometer(98), {}).doubts).toEqual(['outOfRange'])
    expect(interpretReading(alcoholometer(120), {})).toEqual({ doubts: ['outOfRange'] })
    expect(interpretReading(alcoholometer(0, 30), {})).toEqual({ doubts: ['outOfRange'] })
    expect(interpretReading(alcoholometer(40, 55), {})).toEqual({ doubts: ['outOfRange'] })
  })

  it('has an uncertainty at both ends of its scale and of the temperatures', () => {
    for (const [reading, t] of [
      [0, 20],
      [100, 20],
      [0, 4],
      [90, 40],
      [60, -20],
    ] as const)
      expect(
        interpretReading(alcoholometer(reading, t), {}).strengthUncertaintyPctVol,
      ).toBeGreaterThan(0.49)
  })
})

describe('interpretReading of a hydrometer or a refractometer', () => {
  const liqueur = { strengthPctVol: 30, sugarGPerL: 150 }
  const read = readTwoInstruments(liqueur)
  const hydrometer: Reading = {
    instrument: 'hydrometer',
    densityKgPerM3: read.densityKgPerM3,
    temperatureC: 20,
  }
  const refractometer: Reading = {
    instrument: 'refractometer',
    brix: read.brixReading,
    temperatureC: 20,
  }

  it('tells the strength where the sugar is expected, less surely than both together', () => {
    const both = interpretReading(
      {
        instrument: 'hydrometerAndRefractometer',
        densityKgPerM3: read.densityKgPerM3,
        brix: read.brixReading,
        temperatureC: 20,
      },
      {},
    )
    expect(both.strengthPctVol).toBeCloseTo(30, 6)
    expect(both.sugarGPerL).toBeCloseTo(150, 5)
    for (const reading of [hydrometer, refractometer]) {
      const alone = interpretReading(reading, { expectedSugarGPerL: 150 })
      expect(alone.strengthPctVol).toBeCloseTo(30, 6)
      expect(alone.strengthUncertaintyPctVol).toBeGreaterThan(both.strengthUncertaintyPctVol! * 2)
      expect(alone.sugarGPerL).toBeUndefined()
      expect(alone.doubts).toEqual([])
    }
  })

  it('tells the sugar where only the strength is expected', () => {
    for (const reading of [hydrometer, refractometer]) {
      const alone = interpretReading(reading, { expectedStrengthPctVol: 30 })
      expect(alone.sugarGPerL).toBeCloseTo(150, 5)
      expect(alone.sugarUncertaintyGPerL).toBeGreaterThan(3)
      expect(alone.strengthPctVol).toBeUndefined()
    }
  })

  it('tells nothing where nothing is expected', () => {
    expect(interpretReading(hydrometer, {})).toEqual({ doubts: [] })
    expect(interpretReading(refractometer, {})).toEqual({ doubts: [] })
  })

  it('corrects the glass of the hydrometer for its temperature', () => {
    const cold = readTwoInstruments(liqueur, { temperatureC: 5 })
    const shown = { ...hydrometer, densityKgPerM3: cold.densityKgPerM3 * (1 - 15 * 25e-6) }
    const found = interpretReading({ ...shown, temperatureC: 5 } as Reading, {
      expectedSugarGPerL: 150,
    })
    expect(found.strengthPctVol).toBeCloseTo(30, 5)
  })

  it('doubts what no liquid of that sugar shows', () => {
    const dense: Reading = { instrument: 'hydrometer', densityKgPerM3: 1200, temperatureC: 20 }
    expect(interpretReading(dense, { expectedSugarGPerL: 100 })).toEqual({
      doubts: ['noSuchMixture'],
    })
  })
})

describe('interpretReading of a boil-off', () => {
  it('tells strength and sugar', () => {
    const read = readBoilOff({ strengthPctVol: 25, sugarGPerL: 250 })
    const found = interpretReading({ instrument: 'boilOff', ...read }, {})
    expect(found.strengthPctVol).toBeCloseTo(25, 6)
    expect(found.sugarGPerL).toBeCloseTo(250, 5)
    expect(found.strengthUncertaintyPctVol).toBeGreaterThan(0.5)
    expect(found.sugarUncertaintyGPerL).toBeGreaterThan(1)
  })

  it('doubts a residue lighter than water', () => {
    const reading: Reading = {
      instrument: 'boilOff',
      densityBeforeKgPerM3: 960,
      densityAfterKgPerM3: 985,
      temperatureC: 20,
    }
    expect(interpretReading(reading, {})).toEqual({ doubts: ['noSuchMixture'] })
  })
})

describe('interpretReading of a measuring jug', () => {
  it('tells the volume at 20 °C of what the ledger expects in it', () => {
    const jug: Reading = { instrument: 'measuringJug', volumeMl: 1000, temperatureC: 30 }
    const liqueur = { expectedStrengthPctVol: 40, expectedSugarGPerL: 0 }
    expect(interpretReading(jug, liqueur).volumeMl).toBeCloseTo(992.7, 0)
    expect(interpretReading(jug, {}).volumeMl).toBeCloseTo(997.4, 0)
  })
})

describe('interpretReading', () => {
  const temperatureC = fc.double({ min: -20, max: 60, noNaN: true })
  const density = fc.double({ min: 500, max: 2000, noNaN: true })
  const brix = fc.double({ min: -5, max: 100, noNaN: true })
  const anyReading: fc.Arbitrary<Reading> = fc.oneof(
    fc.record({
      instrument: fc.constant('alcoholometer' as const),
      readingPctVol: fc.double({ min: -20, max: 150, noNaN: true }),
      temperatureC,
    }),
    fc.record({
      instrument: fc.constant('hydrometer' as const),
      densityKgPerM3: density,
      temperatureC,
    }),
    fc.record({ instrument: fc.constant('refractometer' as const), brix, temperatureC }),
    fc.record({
      instrument: fc.constant('hydrometerAndRefractometer' as const),
      densityKgPerM3: density,
      brix,
      temperatureC,
    }),
    fc.record({
      instrument: fc.constant('boilOff' as const),
      densityBeforeKgPerM3: density,
      densityAfterKgPerM3: density,
      temperatureC,
    }),
    fc.record({
      instrument: fc.constant('measuringJug' as const),
      volumeMl: fc.double({ min: 1, max: 1e7, noNaN: true }),
      temperatureC,
    }),
  )
  const anyContext = fc.record(
    {
      expectedSugarGPerL: fc.double({ min: 0, max: 1200, noNaN: true }),
      expectedStrengthPctVol: fc.double({ min: 0, max: 100, noNaN: true }),
      strongestPouredPctVol: fc.double({ min: 0, max: 100, noNaN: true }),
    },
    { requiredKeys: [] },
  )

  it('never throws, is finite, and tells something or says why not, for whatever is shown', () => {
    fc.assert(
      fc.property(anyReading, anyContext, (reading, context) => {
        const found = interpretReading(Object.freeze(reading), Object.freeze(context))
        expect(() => Interpretation.parse(found)).not.toThrow()
        const { doubts, ...told } = found
        expect(Object.values(told).every(Number.isFinite)).toBe(true)
        expect(new Set(doubts).size).toBe(doubts.length)
      }),
      { numRuns: 5000 },
    )
  })
})
