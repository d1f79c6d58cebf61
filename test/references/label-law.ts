/** What the law asks of labels, as far as these papers go by it. Read, at second hand, or remembered. */

/** Regulation (EU) 1169/2011, Annex XII: read in a public copy. */
export const strengthForm = {
  mostDecimals: 1,
  unit: '% vol',
  mayPrecede: ['alcohol', 'alc.'],
  lawful: [
    '30 % vol',
    '29.5 % vol',
    'alc. 30 % vol',
    'alcohol 29,5 % vol',
    'Alc. 8.5 % vol',
    '30% vol',
  ],
  unlawful: [
    '30',
    '30 %',
    '30 vol',
    '29.53 % vol',
    '30 % ABV',
    'about 30 % vol',
    '30 % vol!',
    '130 % vol',
    '',
  ],
} as const

/** The same annex. */
export const strengthTolerancePctVol = { maceratedFruit: 1.5, otherwise: 0.3 } as const

/** Regulation (EU) 1169/2011, Annex II: from memory. */
export const allergenFruitIds = ['green_walnut'] as const

/** Regulation (EU) 1169/2011, article 13: from memory. */
export const leastXHeightMm = 1.2

/** 27 CFR 5.65: from memory. Proof is twice the percentage at 60 °F. */
export const americanForm = {
  lawful: ['30% alc/vol', '30% alc/vol (60 proof)', 'alc. 29.5% alc/vol (59 proof)'],
  unlawful: ['30% alc/vol (59 proof)', '60 proof'],
} as const
