import { describe, expect, it } from 'vitest'
import { formatMeasured } from '../../../renderer/screens/bench/format-measured.ts'

const metric = { locale: 'en-GB', units: 'metric' } as const
const shown = (...[value, uncertainty, dimension]: [number, number | undefined, never]) =>
  formatMeasured(value, uncertainty, dimension, metric)

describe('formatMeasured', () => {
  it.each([
    [38.42, 0.61, 'strength', '38.4 ± 0.6 % vol'],
    [40.0047, 0.354, 'strength', '40.0 ± 0.4 % vol'],
    [35.038, 0.179, 'strength', '35.04 ± 0.18 % vol'],
    [99.99, 2.63, 'sugar', '100 ± 3 g/L'],
    [1470.53, 15.7, 'volume', '1.471 ± 0.016 L'],
    [70.53, 0.97, 'volume', '70.5 ± 1.0 ml'],
    [79.86, 0.4, 'proof', '79.9 ± 0.4 proof'],
    [1.4, 0.014, 'drinks', '1.400 ± 0.014'],
    [12345, 250, 'energyKj', '12,345 ± 250 kJ'],
    [12345, 250, 'energyKj', '12,345 ± 250 kJ'],
  ] as const)('shows %d ± %d %s as %s', (value, uncertainty, dimension, text) => {
    const { number, uncertainty: off, unit } = formatMeasured(value, uncertainty, dimension, metric)
    expect([`${number} ± ${off}`, unit].filter(Boolean).join(' ').replaceAll('\u00a0', ' ')).toBe(
      text,
    )
  })

  it('shows no uncertainty where none is known, or it is nothing', () => {
    expect(shown(40, undefined, 'strength' as never)).toEqual({ number: '40.0', unit: '% vol' })
    expect(shown(40, 0, 'strength' as never)).toEqual({ number: '40.0', unit: '% vol' })
  })

  it('converts a difference without the zero of the scale: 0.5 °C is 0.9 °F', () => {
    const warm = formatMeasured(20, 0.5, 'temperature', { locale: 'en-US', units: 'us' })
    expect(warm).toEqual({ number: '68.0', uncertainty: '0.9', unit: '°F' })
  })

  it('writes as the locale does', () => {
    const polish = formatMeasured(38.42, 0.61, 'strength', { locale: 'pl-PL', units: 'metric' })
    expect(polish).toMatchObject({ number: '38,4', uncertainty: '0,6' })
  })
})
