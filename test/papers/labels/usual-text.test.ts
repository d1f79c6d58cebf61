import { describe, expect, it } from 'vitest'
import { fruitLibrary, fruitOf } from '../../../main/engine/index.ts'
import { usualText, type LotFacts } from '../../../main/papers/labels/usual-text.ts'
import type { Settings } from '../../../shared/channels.ts'
import { allergenFruitIds } from '../../references/label-law.ts'

const settings: Settings = {
  locale: 'en-GB',
  units: 'metric',
  temperature: 'celsius',
  strength: 'pctVol',
  theme: 'light',
  currency: 'EUR',
  reminders: false,
}

const walnut: LotFacts = {
  name: 'Green walnut 2024',
  batchId: 'walnut-24',
  bottledAt: '2025-09-08T10:00:00.000Z',
  bottleSizeMl: 500,
  vintage: 2024,
  liquid: {
    volumeMl: 500,
    strengthPctVol: 30.04,
    sugarGPerL: 200,
    acidGPerL: 1,
    densityKgPerM3: 1035,
  },
  ingredients: [
    { kind: 'spirit' },
    { kind: 'fruit', fruit: fruitOf('green_walnut') },
    { kind: 'sugar' },
    { kind: 'water' },
  ],
}

const text = (change: Partial<LotFacts> = {}, changed: Partial<Settings> = {}) =>
  usualText(
    { ...walnut, ...change },
    { settings: { ...settings, ...changed }, strengthPrefix: 'none' },
  )

const plain = (words: string) => words.replaceAll('\u00a0', ' ')

describe('usualText', () => {
  it('says what the book knows, the year of the name as the vintage', () => {
    const said = Object.fromEntries(
      Object.entries(text()).map(([field, words]) => [field, plain(words)]),
    )
    expect(said).toEqual({
      name: 'Green walnut',
      kind: 'Green walnut liqueur',
      vintage: '2024',
      strength: '30 % vol',
      volume: '500 ml',
      batch: 'Batch walnut-24',
      bottled: 'Bottled 8 September 2025',
      ingredients: 'Spirit, green walnut, sugar, water',
      allergens: 'Contains nuts: green walnut',
      // 100 ml of 30.04 % vol: 23.71 g ethanol; 20 g sugar; 0.1 g acid, by the factors of Annex XIV.
      energy: 'Energy in 100 ml: 1,029 kJ / 246 kcal',
      drinks: '15 UK units',
      cautions: 'Keep out of the reach of children.',
      note: '',
    })
  })

  it('calls no liqueur what has not the sugar or strength of one', () => {
    const dry = { ...walnut.liquid, sugarGPerL: 20 } as NonNullable<LotFacts['liquid']>
    expect(text({ liquid: dry }).kind).toBe('Green walnut in spirit')
  })

  it('names nuts for every fruit of the library that the law counts as one, and for no other', () => {
    const named = [...fruitLibrary.values()].filter(
      (fruit) => text({ ingredients: [{ kind: 'fruit', fruit }] }).allergens !== '',
    )
    expect(named.map(({ id }) => id)).toEqual([...allergenFruitIds])
  })

  it('warns of stones in what was made of stone fruit', () => {
    const ingredients = [{ kind: 'fruit', fruit: fruitOf('sour_cherry') } as const]
    expect(text({ ingredients }).cautions).toMatch(/stone fruit/)
    expect(text().cautions).not.toMatch(/stone/)
  })

  it('keeps a year that is not the vintage, and a name that is only a year', () => {
    expect(text({ name: 'Walnut of 1999', vintage: 2024 })).toMatchObject({
      name: 'Walnut of 1999',
      vintage: '2024',
    })
    expect(text({ name: '2024' })).toMatchObject({ name: '2024', vintage: '' })
  })

  it('speaks Polish in a Polish cellar', () => {
    const polish = text({}, { locale: 'pl-PL', language: 'pl' })
    expect(plain(polish.strength)).toBe('30 % obj.')
    expect(plain(polish.bottled)).toBe('Butelkowano 8 września 2025')
    expect(polish.kind).toBe('Likier: orzech włoski zielony')
    expect(polish.ingredients).toBe('Spirytus, orzech włoski zielony, cukier, woda')
    expect(polish.cautions).toContain('Trzymać z dala od dzieci.')
    for (const said of Object.values(polish)) expect(said).not.toMatch(/batch|bottled|spirit\b/i)
  })

  it('speaks the units and the drinks of the country', () => {
    const american = text({}, { units: 'us', locale: 'en-US' })
    expect(plain(american.volume)).toBe('16.9 fl oz (500 mL)')
    expect(plain(american.drinks)).toBe('8.5 US standard drinks (14 g each)')
    expect(plain(text({}, { locale: 'pl-PL' }).drinks)).toBe('11,9 standard drinks (10 g each)')
  })

  it('says nothing of an empty bottle’s strength', () => {
    const empty = text({ liquid: undefined })
    expect([empty.strength, empty.energy, empty.drinks, empty.kind]).toEqual(['', '', '', ''])
  })
})
