/**
 * Published half-lives of anthocyanins, and what they say of each other across studies; as collected
 * in the craft reference. Activation energies in kJ/mol, half-lives in weeks.
 */
import type { CheckTable } from './check-tables.ts'

const finnishJuices = 'Finnish berry juice anthocyanin study, half-lives of the abstract'
const acrossStudies =
  'half-lives at 30 °C from Molecules 23 (2018) 2156, Ea of cyanidin-3-glucoside from Front. Nutr. 5 (2018) 100'

/** Activation energy behind two half-lives. */
export const activationOfHalfLives = {
  source: finnishJuices,
  status: 'found',
  unit: 'kJ/mol',
  columns: ['coldHalfLife', 'coldC', 'warmHalfLife', 'warmC', 'expected'],
  rows: [
    ['arrhenius-05 blackcurrant juice', 20.3, 4, 3.0, 21, 76.2, 0.6],
    ['arrhenius-07 crowberry juice', 12.3, 4, 2.2, 21, 68.6, 0.6],
  ],
} as const satisfies CheckTable

/** A half-life moved to another temperature. */
export const movedHalfLives = [
  {
    source: `${finnishJuices}: measured at 9 °C, never used to fit`,
    status: 'found',
    unit: 'weeks',
    columns: ['halfLife', 'atC', 'activationKJPerMol', 'temperatureC', 'expected'],
    // A twelfth: 8 % of 11.5.
    rows: [['arrhenius-08 blackcurrant juice', 3.0, 21, 76.2, 9, 11.5, 0.92]],
  },
  {
    source: `${acrossStudies}, against sour cherry juice at 20 °C, Bonerz et al. 2007`,
    status: 'found',
    unit: 'weeks',
    columns: ['halfLife', 'atC', 'activationKJPerMol', 'temperatureC', 'expected'],
    rows: [
      ['colour-05 with sugar', 5.9, 30, 66.5, 20, 14.5, 2.0],
      ['colour-05 without sugar', 6.6, 30, 66.5, 20, 14.5, 2.0],
    ],
  },
] as const satisfies readonly CheckTable[]

/** What is left after so many weeks, from a half-life at 30 °C. */
export const colourLeftChecks = [
  {
    source: `${acrossStudies}, against the most that was left of ten liqueurs at 15 °C, Food Chem. 157 (2014) 533`,
    status: 'found',
    unit: 'share',
    columns: ['halfLife', 'activationKJPerMol', 'temperatureC', 'weeks', 'expected'],
    rows: [
      ['colour-01 with sugar', 5.9, 66.5, 15, 26, 0.47, 0.05],
      ['colour-01 without sugar', 6.6, 66.5, 15, 26, 0.47, 0.05],
    ],
  },
  {
    source: 'Molecules 23 (2018) 2156; Food Chem. 157 (2014) 533 says nearly nothing is left',
    status: 'found',
    unit: 'share',
    columns: ['halfLife', 'activationKJPerMol', 'temperatureC', 'weeks', 'expected'],
    rows: [['colour-02', 5.9, 66.5, 30, 26, 0.047, 0.01]],
  },
] as const satisfies readonly CheckTable[]

/** Sour cherry juice at 20 °C: share lost in 26 weeks, and the half-life that it means. */
export const lossChecks = {
  source: 'Bonerz et al., Eur. Food Res. Technol. 224 (2007) 355',
  status: 'found',
  unit: 'weeks',
  columns: ['lostShare', 'weeks', 'expected'],
  rows: [['colour-04', 0.75, 26, 13.0, 0.2]],
} as const satisfies CheckTable
