/**
 * What to add to degrees Brix shown away from 20 °C: pairs of reading and correction. Rows at 12,
 * 15, 17 and 22 °C were read in a public copy of a GOST table for laboratory refractometers; the
 * row at 25 °C is the ICUMSA table from memory, cross-checked by the index of water.
 */
export const brixCorrections = [
  {
    temperatureC: 12,
    status: 'found',
    rows: [
      [0, -0.42],
      [10, -0.48],
      [20, -0.52],
      [30, -0.56],
      [50, -0.6],
      [60, -0.61],
      [70, -0.63],
    ],
  },
  {
    temperatureC: 15,
    status: 'found',
    rows: [
      [0, -0.27],
      [10, -0.31],
      [20, -0.34],
      [30, -0.35],
      [40, -0.37],
      [50, -0.38],
      [60, -0.39],
      [70, -0.4],
    ],
  },
  {
    temperatureC: 17,
    status: 'found',
    rows: [
      [0, -0.17],
      [10, -0.19],
      [20, -0.21],
      [40, -0.22],
      [70, -0.24],
    ],
  },
  {
    temperatureC: 22,
    status: 'found',
    rows: [
      [0, 0.13],
      [10, 0.14],
      [20, 0.15],
    ],
  },
  {
    temperatureC: 25,
    status: 'memory',
    rows: [
      [0, 0.33],
      [10, 0.36],
      [20, 0.38],
      [30, 0.39],
      [40, 0.4],
      [60, 0.4],
    ],
  },
] as const
