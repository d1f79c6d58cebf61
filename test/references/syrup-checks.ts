/** Published values of sucrose in water away from 20 °C, from other sources than the equations. */

/** Density in kg/m³ by mass fraction: Zuckertechniker-Taschenbuch (1966), read in a public copy. */
export const syrupDensityChecks = [
  {
    temperatureC: 10,
    rows: [
      [0.1, 1040.2],
      [0.2, 1083.5],
      [0.3, 1130.1],
      [0.4, 1180.2],
    ],
  },
  {
    temperatureC: 30,
    rows: [
      [0.1, 1035.29],
      [0.2, 1077.66],
      [0.3, 1123.25],
      [0.4, 1172.31],
    ],
  },
  {
    temperatureC: 40,
    rows: [
      [0.1, 1031.56],
      [0.2, 1073.66],
      [0.3, 1118.88],
      [0.4, 1167.58],
    ],
  },
  {
    temperatureC: 60,
    rows: [
      [0.1, 1022.07],
      [0.2, 1063.65],
      [0.3, 1108.47],
      [0.4, 1156.75],
    ],
  },
] as const

/** °C and grams of sucrose in 100 g of water: Sokolovsky (1958), read in a public copy. */
export const solubilityChecks = [
  [0, 179.2],
  [10, 190.5],
  [20, 203.9],
  [30, 219.5],
  [40, 238.1],
  [50, 260.4],
  [60, 287.3],
  [70, 320.5],
  [80, 362.1],
] as const
