/**
 * Equilibrium strength and sugar of steeped fruit, each with where the expected value comes from.
 * `found` was read in a public source; `model regression` is a worked example of the mass balance,
 * kept so that a change of the model shows. Strengths in % vol at 20 °C.
 */
export const macerationChecks = {
  industrialSourCherry: {
    source: 'public technical description of a traditional sour cherry infusion; found',
    fruitKg: 267,
    edibleFraction: 0.9,
    pureAlcoholL: 100,
    spiritPctVol: 96,
    strengthPctVol: { expected: 31.0, tolerance: 1.5 },
  },
  stonesCountedAsFlesh: {
    source: 'the same with stones wrongly counted as juicy; model regression',
    edibleFraction: 1,
    strengthPctVol: { expected: 28.9, tolerance: 0.4 },
  },
  sloe: {
    source: 'public recipe and its usual strength of 20 to 25 % vol; found',
    fruitKg: 0.5,
    edibleFraction: 0.86,
    spiritL: 0.7,
    spiritPctVol: 40,
    sugarKg: 0.25,
    strengthPctVol: { expected: 23.0, tolerance: 2.5 },
  },
  raspberry: {
    source: 'handbook of 1855 for the amounts (found); strength by the mass balance',
    fruitKg: 100,
    edibleFraction: 0.96,
    spiritL: 100,
    spiritPctVol: 85,
    strengthPctVol: { expected: 46.38, tolerance: 0.6 },
  },
  stonedSourCherry: {
    source:
      'worked example: 1 kg stoned sour cherries, 1 L of 70 % vol, 0.30 kg sugar; model regression',
    volumeL: { expected: 2.095, tolerance: 0.03 },
    strengthPctVol: { expected: 33.4, tolerance: 0.5 },
    sugarGPerL: { expected: 184, tolerance: 4 },
    draw: {
      sugarKg: 0.25,
      volumeL: { expected: 0.448, tolerance: 0.02 },
      strengthPctVol: { expected: 27.0, tolerance: 0.5 },
      recovered: { expected: 0.556, tolerance: 0.015 },
    },
    married: {
      volumeL: { expected: 1.97, tolerance: 0.04 },
      strengthPctVol: { expected: 31.7, tolerance: 0.5 },
      sugarGPerL: { expected: 257, tolerance: 6 },
      ethanolRecovered: { expected: 0.892, tolerance: 0.015 },
    },
  },
} as const
