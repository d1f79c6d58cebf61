/**
 * Composition of fruit as printed elsewhere, to hold the library against.
 * `found` was read in a public source. Grams per 100 g of edible fruit unless said otherwise.
 */
/** The table of USDA Standard Reference, by its record; found; within 0.01. */
export const compositionChecks = [
  {
    id: 'composition-02',
    fruitId: 'sour_cherry',
    record: '09063',
    waterG: 86.13,
    sugarG: 8.49,
    fibreG: 1.6,
  },
  {
    id: 'composition-03',
    fruitId: 'raspberry',
    record: '09302',
    waterG: 85.75,
    sugarG: 4.42,
    fibreG: 6.5,
  },
  {
    id: 'composition-05',
    fruitId: 'plum',
    record: '09279',
    waterG: 87.23,
    sugarG: 9.92,
    fibreG: 1.4,
  },
  {
    id: 'composition-06',
    fruitId: 'rhubarb',
    record: '09307',
    waterG: 93.61,
    sugarG: 1.1,
    fibreG: 1.8,
  },
  {
    id: 'composition-07',
    fruitId: 'apple',
    record: '09003',
    waterG: 85.56,
    sugarG: 10.39,
    fibreG: 2.4,
  },
] as const

/** Loose bulk density from the weight of a household cup of 236.588 mL, within 0.001 kg/L. */
export const bulkDensityChecks = [
  {
    id: 'composition-09',
    fruitId: 'raspberry',
    cupG: 123,
    source: 'USDA Standard Reference; found',
  },
  { id: 'composition-10', fruitId: 'apricot', cupG: 155, source: 'the same, halves; found' },
] as const

export const cupMl = 236.588

/** Published spans that the typical value must lie in. */
export const spanChecks = {
  cornelianCherry: {
    id: 'composition-12',
    source: 'eighteen genotypes, HortScience 46 (2011) 849; found',
    dryMatterG: { low: 18.26, high: 33.39 },
    acidG: { low: 1.62, high: 3.75 },
  },
  greenWalnut: {
    id: 'composition-13',
    source: 'Kuban study of green walnuts, public summary; found',
    dryMatterG: { low: 10.6, high: 13.4 },
    sugarG: { expected: 3.6, tolerance: 0.05 },
  },
} as const

/**
 * Litres of liquid in a kilogram of edible fruit were all its water and solubles set free, as the
 * craft reference derives them: (water / 0.9982 + 0.62 sugars + 0.60 (acids + others)) / 100.
 * Coffee and dry spices are left out: there the published figure does not count the acids.
 */
export const cellLiquidLPerKg: Readonly<Record<string, number>> = {
  rhubarb: 0.964,
  strawberry: 0.953,
  raspberry: 0.909,
  blackberry: 0.924,
  blackcurrant: 0.898,
  redcurrant: 0.914,
  gooseberry: 0.931,
  sour_cherry: 0.935,
  sweet_cherry: 0.919,
  cornelian_cherry: 0.898,
  plum: 0.943,
  damson: 0.893,
  mirabelle: 0.923,
  apricot: 0.932,
  peach: 0.947,
  pear: 0.924,
  apple: 0.934,
  quince: 0.928,
  japanese_quince: 0.926,
  sloe: 0.887,
  rowan: 0.86,
  hawthorn: 0.856,
  elderberry: 0.887,
  elderflower: 0.82,
  rosehip: 0.779,
  cranberry: 0.929,
  lingonberry: 0.933,
  blueberry: 0.925,
  bilberry: 0.921,
  sea_buckthorn: 0.916,
  aronia: 0.9,
  haskap: 0.927,
  mulberry: 0.938,
  fig: 0.904,
  grape: 0.919,
  pomegranate: 0.885,
  green_walnut: 0.904,
  lemon_peel: 0.876,
  lemon_juice_flesh: 0.94,
  orange_peel: 0.84,
  orange_flesh: 0.936,
  pineapple: 0.939,
  ginger: 0.801,
  dried_plum: 0.691,
  raisin: 0.643,
}
