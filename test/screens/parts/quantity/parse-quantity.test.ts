import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  editableQuantity,
  formatQuantity,
} from '../../../../renderer/parts/quantity/format-quantity.ts'
import {
  parseQuantity,
  type QuantityContext,
} from '../../../../renderer/parts/quantity/parse-quantity.ts'
import type { Dimension } from '../../../../renderer/parts/quantity/units.ts'

const read = (text: string, dimension: Dimension, change: Partial<QuantityContext> = {}) =>
  parseQuantity(text, { dimension, locale: 'en-GB', units: 'metric', ...change })

const value = (...asked: Parameters<typeof read>) => {
  const reading = read(...asked)
  if (!reading.ok) throw new Error(`“${asked[0]}” was not read: ${reading.problem.code}`)
  return reading.value
}

const problem = (...asked: Parameters<typeof read>) => {
  const reading = read(...asked)
  return reading.ok ? `read as ${reading.value}` : reading.problem.code
}

describe('parseQuantity: numbers', () => {
  it.each([
    ['1.5 l', 'en-GB', 1500],
    ['1,5 l', 'en-GB', 1500],
    ['1,5 l', 'pl-PL', 1500],
    ['1.5 l', 'pl-PL', 1500],
    ['0,750 l', 'en-GB', 750],
    ['1,500', 'en-GB', 1500],
    ['1,500', 'pl-PL', 1.5],
    ['1.500', 'en-GB', 1.5],
    ['1.500', 'de-DE', 1500],
    ['1 500', 'pl-PL', 1500],
    ['1 500', 'fr-FR', 1500],
    ['1’500', 'de-CH', 1500],
    ['1.234,5', 'en-GB', 1234.5],
    ['1,234.5', 'pl-PL', 1234.5],
    ['1,234,567', 'en-GB', 1_234_567],
    ['750', 'en-GB', 750],
    ['.5 l', 'en-GB', 500],
    ['5. l', 'en-GB', 5000],
    ['½ l', 'en-GB', 500],
    ['1½ l', 'en-GB', 1500],
    ['1 ½ l', 'en-GB', 1500],
    ['1/2 l', 'en-GB', 500],
    ['2 3/4 l', 'en-GB', 2750],
  ])('reads a volume of “%s” in %s as %d ml', (text, locale, ml) => {
    expect(value(text, 'volume', { locale })).toBeCloseTo(ml, 9)
  })

  it('calls a lone mark before three digits ambiguous where the locale uses it for neither', () => {
    const reading = read('1.500 l', 'volume', { locale: 'pl-PL' })
    expect(reading).toEqual({
      ok: false,
      problem: { code: 'ambiguous', readings: [1500, 1_500_000] },
    })
  })

  it('takes the only reading that can be: nothing is 40 125 % strong', () => {
    expect(value('40.125', 'strength', { locale: 'pl-PL' })).toBe(40.125)
  })

  it.each(['abc', '1 50', '12,34,5', '1/0 l', '1..5', '--3', '.', '½½', 'ml', '1,2,3.4'])(
    'does not read “%s”',
    (text) => {
      expect(problem(text, 'volume')).toBe('notANumber')
    },
  )

  it('tells emptiness from a mistake', () => {
    expect(problem('', 'mass')).toBe('empty')
    expect(problem('   ', 'mass')).toBe('empty')
  })
})

describe('parseQuantity: units', () => {
  it.each([
    ['1 1/2 kg', 'mass', 1500],
    ['2 lb', 'mass', 907.18474],
    ['2 lbs', 'mass', 907.18474],
    ['2 lb 8 oz', 'mass', 1133.980925],
    ['1 kg 200 g', 'mass', 1200],
    ['25 dag', 'mass', 250],
    ['0.75 l', 'volume', 750],
    ['0.75l', 'volume', 750],
    ['12 fl oz', 'volume', 354.88235475],
    ['12 fl. oz.', 'volume', 354.88235475],
    ['5 cm3', 'volume', 5],
    ['1 gal', 'volume', 3785.411784],
    ['70 CL', 'volume', 700],
    ['40%', 'strength', 40],
    ['40 % vol', 'strength', 40],
    ['80 proof', 'strength', 40],
    ['180 g/L', 'sugar', 180],
    ['68 °F', 'temperature', 20],
    ['-5 °C', 'temperature', -5],
    ['−5 °C', 'temperature', -5],
    ['1045', 'density', 1045],
    ['1.045', 'density', 1045],
    ['0.998 g/ml', 'density', 998],
    ['1045 kg/m3', 'density', 1045],
    ['22.5 °Bx', 'brix', 22.5],
    ['6', 'count', 6],
    ['12.50', 'money', 1250],
    ['€ 12.50', 'money', 1250],
    ['12,50 EUR', 'money', 1250],
  ] as const)('reads “%s” as %s', (text, dimension, base) => {
    expect(value(text, dimension)).toBeCloseTo(base, 9)
  })

  it('reads a hydrometer’s 1.045 alike wherever the marks could mean thousands', () => {
    for (const locale of ['pl-PL', 'de-DE', 'en-GB', 'fr-FR'])
      expect(value('1.045', 'density', { locale })).toBe(1045)
  })

  it('takes a bare number in the unit that the field shows', () => {
    expect(value('3', 'volume', { unit: 'L' })).toBe(3000)
    expect(value('3', 'mass', { unit: 'kg' })).toBe(3000)
    expect(value('16', 'volume', { units: 'us' })).toBeCloseTo(473.176473, 6)
  })

  it('counts money in the smallest part of its currency', () => {
    expect(value('1200', 'money', { currency: 'JPY' })).toBe(1200)
    expect(value('zł 12,5', 'money', { currency: 'PLN', locale: 'pl-PL' })).toBe(1250)
  })

  it('names the unit that it does not know, and those it does', () => {
    const reading = read('3 buckets', 'mass')
    expect(reading).toMatchObject({
      ok: false,
      problem: { code: 'unknownUnit', unit: 'buckets', known: ['g', 'dag', 'kg', 'oz', 'lb'] },
    })
    expect(problem('3 l', 'mass')).toBe('unknownUnit')
  })

  it('does not add up units that rise, repeat, or are not of one kind of quantity', () => {
    expect(problem('8 oz 2 lb', 'mass')).toBe('notANumber')
    expect(problem('1 kg 1 kg', 'mass')).toBe('notANumber')
    expect(problem('1 kg 5', 'mass')).toBe('notANumber')
    expect(problem('40 % 2 proof', 'strength')).toBe('notANumber')
  })
})

describe('parseQuantity: limits', () => {
  it('says the value and the range', () => {
    expect(read('120%', 'strength')).toEqual({
      ok: false,
      problem: { code: 'outOfRange', value: 120, range: { min: 0, max: 100 } },
    })
    expect(problem('-3', 'volume')).toBe('outOfRange')
    expect(problem('0', 'mass')).toBe('outOfRange')
  })

  it('keeps to a narrower range when the field has one', () => {
    expect(problem('98', 'strength', { range: { min: 0.1, max: 97.2 } })).toBe('outOfRange')
  })

  it('takes whole pieces only', () => {
    expect(problem('2.5', 'count')).toBe('notWhole')
  })

  it('asks for the scale when a bare temperature fits only the other one', () => {
    expect(read('68', 'temperature')).toEqual({
      ok: false,
      problem: { code: 'askTemperatureUnit', number: 68 },
    })
    expect(problem('20', 'temperature', { units: 'us' })).toBe('askTemperatureUnit')
    expect(value('20', 'temperature')).toBe(20)
    expect(value('68', 'temperature', { units: 'us' })).toBeCloseTo(20, 9)
    expect(value('20 C', 'temperature', { units: 'us' })).toBe(20)
  })
})

describe('parseQuantity after formatQuantity', () => {
  const locale = fc.constantFrom('en-GB', 'en-US', 'pl-PL', 'de-DE', 'de-CH', 'fr-FR', 'cs-CZ')
  const units = fc.constantFrom('metric' as const, 'us' as const)
  const quantity = fc.oneof(
    fc.record({
      dimension: fc.constant('volume' as const),
      base: fc.double({ min: 1, max: 9e6, noNaN: true }),
    }),
    fc.record({
      dimension: fc.constant('mass' as const),
      base: fc.double({ min: 1, max: 9e6, noNaN: true }),
    }),
    fc.record({
      dimension: fc.constant('length' as const),
      base: fc.double({ min: 0.8, max: 99, noNaN: true }),
    }),
    fc.record({
      dimension: fc.constant('strength' as const),
      base: fc.double({ min: 0, max: 99, noNaN: true }),
    }),
    fc.record({
      dimension: fc.constant('sugar' as const),
      base: fc.double({ min: 0, max: 1199, noNaN: true }),
    }),
    fc.record({
      dimension: fc.constant('acid' as const),
      base: fc.double({ min: 0, max: 199, noNaN: true }),
    }),
    fc.record({
      dimension: fc.constant('temperature' as const),
      base: fc.double({ min: -19, max: 59, noNaN: true }),
    }),
    fc.record({
      dimension: fc.constant('density' as const),
      base: fc.double({ min: 501, max: 1999, noNaN: true }),
    }),
    fc.record({
      dimension: fc.constant('brix' as const),
      base: fc.double({ min: -4, max: 99, noNaN: true }),
    }),
    fc.record({
      dimension: fc.constant('packing' as const),
      base: fc.double({ min: 0.01, max: 19, noNaN: true }),
    }),
    fc.record({
      dimension: fc.constant('holding' as const),
      base: fc.double({ min: 0.01, max: 4.9, noNaN: true }),
    }),
    fc.record({ dimension: fc.constant('money' as const), base: fc.integer({ min: 0, max: 1e9 }) }),
    fc.record({ dimension: fc.constant('count' as const), base: fc.integer({ min: 1, max: 1e5 }) }),
  )
  const context = fc.record({
    locale,
    units,
    temperature: fc.constantFrom('celsius' as const, 'fahrenheit' as const),
    strength: fc.constantFrom('pctVol' as const, 'proof' as const),
    language: fc.constantFrom('en' as const, 'pl' as const),
    currency: fc.constantFrom('EUR', 'PLN', 'USD'),
  })

  /** Half a step of the last digit shown. */
  const coarsest: Record<Dimension, (base: number) => number> = {
    volume: (base) => Math.max(1.5, base * 0.006),
    mass: (base) => Math.max(1.5, base * 0.006),
    // A hundredth of an inch, or a tenth of a millimetre.
    length: () => 0.128,
    strength: () => 0.051,
    sugar: () => 0.51,
    acid: () => 0.051,
    temperature: () => 0.051,
    density: () => 0.051,
    brix: () => 0.051,
    packing: () => 0.0051,
    // A tenth of a fluid ounce to a pound is 6.5 ml to a kilogram.
    holding: () => 0.0034,
    money: () => 0,
    count: () => 0,
  }

  it('reads back what is shown, to the digits shown', () => {
    fc.assert(
      fc.property(quantity, context, ({ dimension, base }, shownIn) => {
        const { text } = formatQuantity(base, dimension, shownIn)
        const back = value(text, dimension, shownIn)
        expect(Math.abs(back - base), text).toBeLessThanOrEqual(coarsest[dimension](base))
      }),
      { numRuns: 2000 },
    )
  })

  it('reads back what a field is given to edit, to eight digits', () => {
    fc.assert(
      fc.property(quantity, context, ({ dimension, base }, shownIn) => {
        // A bare temperature is asked about when only the other scale makes it likely.
        fc.pre(dimension !== 'temperature' || (base > 1 && base < 39))
        fc.pre(dimension !== 'density' || base >= 500)
        const text = editableQuantity(base, dimension, shownIn)
        const back = value(text, dimension, shownIn)
        expect(Math.abs(back - base), text).toBeLessThanOrEqual(1e-6 + base * 1e-7)
      }),
      { numRuns: 2000 },
    )
  })

  it('never throws and never hands out a number that is not one', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme' }),
        quantity,
        context,
        (text, { dimension }, shownIn) => {
          const back = parseQuantity(text, { dimension, ...shownIn })
          expect(Number.isFinite(back.ok ? back.value : 0)).toBe(true)
        },
      ),
      { numRuns: 2000 },
    )
  })
})
