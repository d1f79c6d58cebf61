/**
 * Published and recalled check values of the trade: strength, reduction, energy, drinks, law.
 * `found` was read in a public source; `memory` was recalled and cross-checked by computation.
 */
const oiml = { source: 'OIML R 22 polynomial at 20 °C', status: 'memory' } as const
const annex14 = {
  source: 'Regulation (EU) 1169/2011, Annex XIV; ethanol 0.78924 g/mL',
  status: 'memory',
} as const
const spiritLaw = { source: 'Regulation 110/2008, then (EU) 2019/787', status: 'found' } as const
const labelLaw = { source: 'Regulation (EU) 1169/2011, Annex XII', status: 'found' } as const
const drinks = { source: 'public article on standard drinks', status: 'found' } as const

/** Strength to mass percent and density at 20 °C, both within 0.03. */
export const strengthChecks = [
  { id: 'strength-01', pctVol: 40, massPercent: 33.3, densityKgPerM3: 948.05, ...oiml },
  { id: 'strength-02', pctVol: 50, massPercent: 42.426, densityKgPerM3: 930.14, ...oiml },
  { id: 'strength-03', pctVol: 60, massPercent: 52.088, densityKgPerM3: 909.11, ...oiml },
  { id: 'strength-05', pctVol: 96, massPercent: 93.838, densityKgPerM3: 807.42, ...oiml },
  { id: 'strength-06', pctVol: 20, massPercent: 16.214, densityKgPerM3: 973.56, ...oiml },
] as const

/** A litre of spirit brought down with water, both volumes within 0.002 L. */
export const dilutionChecks = [
  { id: 'dilution-02', fromPctVol: 96, toPctVol: 60, waterL: 0.6483, resultL: 1.6, ...oiml },
  { id: 'dilution-03', fromPctVol: 96, toPctVol: 50, waterL: 0.9802, resultL: 1.92, ...oiml },
  { id: 'dilution-05', fromPctVol: 96, toPctVol: 40, waterL: 1.4705, resultL: 2.4, ...oiml },
  { id: 'dilution-06', fromPctVol: 95, toPctVol: 45, waterL: 1.1742, resultL: 2.1111, ...oiml },
] as const

/** Liquids poured together: litres and % vol of each part. */
export const minglingChecks = [
  {
    id: 'dilution-07',
    parts: [
      [0.5, 96],
      [0.5, 0],
    ],
    volumeL: { expected: 0.9696, tolerance: 0.0005 },
    pctVol: { expected: 49.5, tolerance: 0.03 },
    ...oiml,
  },
  {
    id: 'dilution-09',
    parts: [
      [0.74, 96],
      [0.29, 0],
    ],
    pctVol: { expected: 70.8, tolerance: 1 },
    source: 'public worked example that claims 70 % vol',
    status: 'found',
  },
  {
    id: 'dilution-10',
    parts: [
      [0.8, 48],
      [0.45, 30],
      [0.25, 22],
    ],
    volumeL: { expected: 1.4969, tolerance: 0.001 },
    pctVol: { expected: 38.35, tolerance: 0.05 },
    ...oiml,
  },
] as const

/** Energy of 100 mL. */
export const energyChecks = [
  {
    id: 'energy-01',
    glass: { strengthPctVol: 37.5, sugarGPerL: 18 },
    kJ: { expected: 889, tolerance: 2 },
    kcal: { expected: 214, tolerance: 1 },
    source: "a producers' federation, for a fruit spirit",
    status: 'found',
  },
  {
    id: 'energy-03',
    glass: { strengthPctVol: 12, sugarGPerL: 0 },
    kJ: { expected: 275, tolerance: 1 },
    kcal: { expected: 66, tolerance: 1 },
    source: 'public worked example of the European factors, alcohol only',
    status: 'found',
  },
  {
    id: 'energy-04',
    glass: { strengthPctVol: 40, sugarGPerL: 200 },
    kJ: { expected: 1255.5, tolerance: 1.5 },
    kcal: { expected: 301, tolerance: 0.5 },
    ...annex14,
  },
  {
    id: 'energy-06',
    glass: { strengthPctVol: 18, sugarGPerL: 400, acidGPerL: 12 },
    kJ: { expected: 1107.6, tolerance: 1.5 },
    kcal: { expected: 263, tolerance: 0.5 },
    ...annex14,
  },
  {
    id: 'energy-07',
    glass: { strengthPctVol: 35, sugarGPerL: 120, acidGPerL: 5 },
    kJ: { expected: 1011.6, tolerance: 1.5 },
    kcal: { expected: 242.9, tolerance: 0.5 },
    ...annex14,
  },
] as const

export const drinkChecks = {
  british: { id: 'units-02', volumeMl: 35, strengthPctVol: 40, drinks: 1.4, tolerance: 0.001 },
  australian: { id: 'units-03', volumeMl: 30, strengthPctVol: 40, drinks: 0.95, tolerance: 0.01 },
  /** One American drink of 14 g, as mL of ethanol. */
  american: { id: 'units-04', ethanolMl: 17.7, tolerance: 0.1 },
  ...drinks,
} as const

/** What a sales name asks for at least. */
export const legalChecks = [
  { id: 'legal-01', category: 'liqueur', leastPctVol: 15, leastInvertGPerL: 100, ...spiritLaw },
  { id: 'legal-02', category: 'cherryLiqueurOfCherrySpirit', leastInvertGPerL: 70, ...spiritLaw },
  { id: 'legal-04', category: 'cremeDeCassis', leastInvertGPerL: 400, ...spiritLaw },
  { id: 'legal-05', category: 'cremeDe', leastInvertGPerL: 250, ...spiritLaw },
  {
    id: 'legal-11',
    category: 'americanLiqueur',
    leastSugarMassFraction: 0.025,
    source: '27 CFR 5, at second hand',
    status: 'found',
  },
] as const

export const labelChecks = [
  {
    id: 'legal-08',
    label: { statedPctVol: 30, truePctVol: 31.4, hasMaceratedFruit: true },
    isWithin: true,
    ...labelLaw,
  },
  {
    id: 'legal-09',
    label: { statedPctVol: 30, truePctVol: 30.4, hasMaceratedFruit: false },
    isWithin: false,
    ...labelLaw,
  },
] as const

export const labelToleranceCheck = { id: 'legal-07', withoutFruitPctVol: 0.3, ...labelLaw } as const
