/**
 * How fine the instruments of a home usually read: one standard uncertainty each, where the maker
 * says nothing better. Engineering estimates, each with its reason; the screens show them first.
 */
export const usualFineness = {
  /** Graduated in whole % vol, read to half a division. */
  alcoholometerPctVol: 0.5,
  /** Graduated in 1 or 2 kg/m³: half a division and as much of its own error. */
  hydrometerKgPerM3: 1,
  /** A hand refractometer graduated in 0.2 °Bx and as exact as its makers claim. */
  refractometerBrix: 0.2,
  /** A kitchen thermometer. */
  thermometerC: 0.5,
  /** A label may be 0.3 % vol off (Regulation (EU) 1169/2011, Annex XII), evenly spread. */
  labelPctVol: 0.2,
  /** A jug graduated in 50 ml a litre, read to a fifth of a division. */
  jugShare: 0.01,
  /** A kitchen scale in whole grams, tared once. */
  scaleG: 1,
  /** The last digit of a scale fine enough to weigh a small flask. */
  scaleStepG: 0.1,
  /** A flask with a mark: ±0.2 % in a triangle. */
  flaskShare: 0.002 / Math.sqrt(6),
  /** What a maker knows of the sugar in a liquid from what went in. */
  sugarGPerL: 5,
} as const
