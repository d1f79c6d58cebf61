/**
 * Standard uncertainties (one standard deviation) of home instruments and of the equations, where
 * nothing better is said. Each is an engineering estimate with its reason.
 */

/** A home alcoholometer graduated in whole % vol, read to half a division. */
export const alcoholometerPctVol = 0.5

/** A home hydrometer graduated in 1 or 2 kg/m³: half a division and as much of its own error. */
export const hydrometerKgPerM3 = 1

/** A hand refractometer graduated in 0.2 °Bx and as exact as its makers claim. */
export const refractometerBrix = 0.2

/** A kitchen thermometer. */
export const thermometerC = 0.5

/** A flask with a mark, as a share of its volume: ±0.2 % in a triangle. */
export const flaskShare = 0.002 / Math.sqrt(6)

/** mL/g: ethanol changes the room that sugar takes by an amount no public table tells. */
export const sugarRoomMlPerG = 0.005

/**
 * °Bx: the tables of refraction are met to 3e-4, and a degree is 1.5e-3. With the room of sugar
 * this comes to about 0.5 % vol in a liqueur read by two instruments.
 */
export const refractionBrix = 0.2

/** % vol that an alcoholometer shows too little for each g/L, near 40 % vol (0.24 to 0.29). */
export const obscurationPctVolPerGPerL = 0.27

/** How well a ledger of weighed fruit knows the sugar in a jar: 5 %, and 2 g/L at least. */
export const ledgerSugarGPerL = (sugarGPerL: number): number => 2 + 0.05 * sugarGPerL

/** How well it knows the strength. */
export const ledgerPctVol = 1.5

/** What the doubt about the room of sugar does to the density of a liquid. */
export const modelDensityKgPerM3 = (densityKgPerM3: number, sugarGPerL: number): number =>
  (densityKgPerM3 * sugarGPerL * sugarRoomMlPerG) / 1000

export const rootSumSquare = (...parts: readonly number[]): number => Math.hypot(...parts)
