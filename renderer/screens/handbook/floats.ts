/** Three liquids at 20 °C; a test holds the densities to the engine's. */
export const floats = [
  { id: 'water', strengthPctVol: 0, sugarGPerL: 0, densityKgPerM3: 998.2 },
  { id: 'spirit', strengthPctVol: 40, sugarGPerL: 0, densityKgPerM3: 948 },
  { id: 'liqueur', strengthPctVol: 30, sugarGPerL: 100, densityKgPerM3: 1000.5 },
] as const
