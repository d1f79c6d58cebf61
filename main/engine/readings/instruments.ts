/**
 * Standard uncertainties (one standard deviation) of home instruments and of the equations, where
 * nothing better is said. Each is an engineering estimate with its reason.
 */
import { usualFineness } from '../../../shared/fineness.ts'

export const {
  alcoholometerPctVol,
  hydrometerKgPerM3,
  refractometerBrix,
  thermometerC,
  flaskShare,
} = usualFineness

/** kg/m³ that OIML R 22 may be off: older tables differ from it by 0.05 on average, 0.12 at most. */
export const spiritDensityKgPerM3 = 0.05

/** % vol that a corrected alcoholometer may be off: 0.06 proof rms against 27 CFR 30.61. */
export const correctionPctVol = 0.03

/** Share of the result that a reduction's volumes may be off: 0.15 mL/L against a printed table. */
export const reductionShare = 0.00015

/** Share of a volume carried from one temperature to another. */
export const expansionShare = 0.0002

/** °Bx that the temperature correction of refractometers may be off between its rows. */
export const brixCorrection = 0.02

/** kg/m³ that the sucrose equation may be off, by mass fraction: against printed tables. */
export const syrupDensityErrorKgPerM3 = (massFraction: number): number =>
  massFraction <= 0.5 ? 0.1 : massFraction <= 0.6 ? 0.2 : 0.8

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
