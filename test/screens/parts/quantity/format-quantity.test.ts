import { describe, expect, it } from 'vitest'
import { formatQuantity } from '../../../../renderer/parts/quantity/format-quantity.ts'
import type { Dimension } from '../../../../renderer/parts/quantity/units.ts'

const shown = (
  value: number,
  dimension: Dimension,
  locale = 'en-GB',
  units: 'metric' | 'us' = 'metric',
) =>
  formatQuantity(value, dimension, { locale, units, currency: 'EUR' }).text.replaceAll(
    '\u00a0',
    ' ',
  )

describe('formatQuantity', () => {
  it.each([
    [32.44, 'strength', '32.4 % vol'],
    [0, 'strength', '0.0 % vol'],
    [-0.0001, 'sugar', '0 g/L'],
    [180.4, 'sugar', '180 g/L'],
    [750, 'volume', '750 ml'],
    [999.4, 'volume', '999 ml'],
    [999.6, 'volume', '1.00 L'],
    [1500, 'volume', '1.50 L'],
    [2.35, 'volume', '2.4 ml'],
    [999.6, 'mass', '1.00 kg'],
    [12_345, 'mass', '12.35 kg'],
    [18.5, 'temperature', '18.5 °C'],
    [1045, 'density', '1,045 kg/m³'],
    [1250, 'money', '€12.50'],
    [7, 'count', '7'],
  ] as const)('shows %d as %s: %s', (value, dimension, text) => {
    expect(shown(value, dimension)).toBe(text)
  })

  it('writes numbers as the locale does', () => {
    expect(shown(1500, 'volume', 'pl-PL')).toBe('1,50 L')
    expect(shown(1250, 'money', 'pl-PL')).toBe('12,50 €')
  })

  it('shows US units in the size that fits', () => {
    expect(shown(355, 'volume', 'en-US', 'us')).toBe('12.0 fl oz')
    expect(shown(1000, 'volume', 'en-US', 'us')).toBe('1.06 qt')
    expect(shown(10_000, 'volume', 'en-US', 'us')).toBe('2.64 gal')
    expect(shown(200, 'mass', 'en-US', 'us')).toBe('7.1 oz')
    expect(shown(1000, 'mass', 'en-US', 'us')).toBe('2.20 lb')
    expect(shown(20, 'temperature', 'en-US', 'us')).toBe('68 °F')
  })

  it('shows sizes as they are sold', () => {
    const size = (ml: number) =>
      formatQuantity(ml, 'volume', { locale: 'en-GB', units: 'metric', isNominal: true }).text
    expect(size(3000)).toBe('3\u00a0L')
    expect(size(1500)).toBe('1.5\u00a0L')
    expect(size(500)).toBe('500\u00a0ml')
  })

  it('refuses a unit of another dimension', () => {
    expect(() =>
      formatQuantity(1, 'mass', { locale: 'en-GB', units: 'metric', unit: 'L' }),
    ).toThrow(RangeError)
  })
})
