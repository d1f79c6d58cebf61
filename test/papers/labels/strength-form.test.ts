import { describe, expect, it } from 'vitest'
import { isWithinLabelTolerance, strengthOfProof } from '../../../main/engine/index.ts'
import { readStrength, strengthWords } from '../../../main/papers/labels/strength-form.ts'
import { paperWords } from '../../../main/papers/words/paper-words.ts'
import { americanForm, strengthForm, strengthTolerancePctVol } from '../../references/label-law.ts'

const words = (
  strengthPctVol: number,
  { locale = 'en-GB', units = 'metric' as 'metric' | 'us', prefix = 'none' as const } = {},
) =>
  strengthWords(strengthPctVol, { locale, units, prefix, words: paperWords({}) }).replaceAll(
    '\u00a0',
    ' ',
  )

describe('strengthWords', () => {
  it('says it in Polish as Polish labels do, and reads that back', () => {
    const polish = {
      locale: 'pl-PL',
      units: 'metric',
      words: paperWords({ language: 'pl' }),
    } as const
    for (const [prefix, said] of [
      ['none', '29,5 % obj.'],
      ['alc', 'alk. 29,5 % obj.'],
      ['alcohol', 'alkohol 29,5 % obj.'],
    ] as const) {
      expect(strengthWords(29.5, { ...polish, prefix }).replaceAll('\u00a0', ' ')).toBe(said)
      expect(readStrength(said)).toBe(29.5)
    }
  })

  it.each([
    [30, '30 % vol'],
    [29.53, '29.5 % vol'],
    [29.45, '29.5 % vol'],
    [29.96, '30 % vol'],
    [8.049, '8 % vol'],
    [0, '0 % vol'],
  ])('says %f as %s', (strength, said) => expect(words(strength)).toBe(said))

  it('has at most one decimal, the law’s unit, and only what may precede it', () => {
    for (let strength = 0; strength <= 96; strength += 0.37)
      for (const prefix of ['none', 'alc', 'alcohol'] as const) {
        const said = strengthWords(strength, {
          locale: 'en-GB',
          units: 'metric',
          prefix,
          words: paperWords({}),
        })
        const [, before = '', number = '', unit = ''] =
          /^(?:([a-z.]+)\u00a0)?([\d.]+)\u00a0(.*)$/.exec(said) ?? []
        expect(['', ...strengthForm.mayPrecede]).toContain(before)
        expect((number.split('.')[1] ?? '').length).toBeLessThanOrEqual(strengthForm.mostDecimals)
        expect(unit.replace('\u00a0', ' ')).toBe(strengthForm.unit)
      }
  })

  it('is never further from the truth than the narrower tolerance of the law', () => {
    for (let truePctVol = 0; truePctVol <= 96; truePctVol += 0.0713) {
      const statedPctVol = readStrength(words(truePctVol)) ?? Number.NaN
      expect(Math.abs(statedPctVol - truePctVol)).toBeLessThan(strengthTolerancePctVol.otherwise)
      expect(isWithinLabelTolerance({ statedPctVol, truePctVol, hasMaceratedFruit: false })).toBe(
        true,
      )
    }
  })

  it('writes the number as the locale does, in figures that everybody reads', () => {
    expect(words(29.5, { locale: 'pl-PL' })).toBe('29,5 % vol')
    expect(words(29.5, { locale: 'ar-EG' })).toMatch(/^29[.,٫]5 % vol$/)
  })

  it('is by volume at 60 °F with its proof in America', () => {
    const ofProof = (proof: number) =>
      words(strengthOfProof(proof), { locale: 'en-US', units: 'us' })
    expect(ofProof(60)).toBe('30% alc/vol (60 proof)')
    expect(ofProof(59)).toBe('29.5% alc/vol (59 proof)')
    // At 60 °F the same spirit is a little less by volume.
    expect(words(30, { locale: 'en-US', units: 'us' })).toBe('29.9% alc/vol (59.8 proof)')
  })
})

describe('readStrength', () => {
  it.each(strengthForm.lawful)('reads “%s”', (text) => {
    const digits = Number(/[\d.,]+/.exec(text.replace('lc.', ''))?.[0].replace(',', '.'))
    expect(readStrength(text)).toBe(digits)
  })

  it.each(strengthForm.unlawful)('does not take “%s” for the law’s form', (text) =>
    expect(readStrength(text)).toBeUndefined(),
  )

  it.each(americanForm.lawful)('reads “%s”', (text) =>
    expect(readStrength(text)).toBeCloseTo(text.includes('29') ? 29.5 : 30, 0),
  )

  it.each(americanForm.unlawful)('does not take “%s” for the American form', (text) =>
    expect(readStrength(text)).toBeUndefined(),
  )

  it('reads back whatever is written', () => {
    for (const locale of ['en-GB', 'pl-PL', 'de-DE'])
      for (const units of ['metric', 'us'] as const)
        expect(readStrength(words(33.3, { locale, units }))).toBeCloseTo(33.3, 1)
  })
})
