/** How a jar stands while it steeps: how warm, how often it is turned, and what that does. */
import type { Turned } from '../../../shared/schemas/moves.ts'
import { usualTemperatureC, usualTurned } from '../../../shared/usual-keeping.ts'

export interface Keeping {
  readonly temperatureC: number
  readonly turned: Turned
}

export const usualKeeping: Keeping = Object.freeze({
  temperatureC: usualTemperatureC,
  turned: usualTurned,
})

/**
 * Days lost after something was poured in, until mixing brings it to the fruit. Syrup is heavier
 * than spirit and the stack is stable. Craft reference, section 2.3; estimate (never: 2 to 20).
 */
export const mixingLagDays: Record<Turned, number> = { daily: 0.3, weekly: 2, never: 7 }

/** Time in which half the sugar at the bottom dissolves; estimate. */
export const dissolvingHalfTimeDays: Record<Turned, number> = { daily: 0.5, weekly: 1, never: 4 }

/** Of diffusion in fruit, kJ/mol (20 to 45; craft reference, section 2.2), and the gas constant. */
const activationKJPerMol = 30
const gasKJPerMolK = 8.314462618e-3
const referenceK = 293.15

/** How many times faster than at 20 °C; about 1.5 for every 10 °C. */
export const fasterThanAt20C = (temperatureC: number): number =>
  arrhenius(activationKJPerMol, temperatureC)

/** Rate at a temperature against the rate at 20 °C, for an activation energy in kJ/mol. */
export const arrhenius = (activation: number, temperatureC: number): number =>
  Math.exp((activation / gasKJPerMolK) * (1 / referenceK - 1 / (temperatureC + 273.15)))

/**
 * Days that count, of those that passed: none at first while the liquids still lie in layers, all
 * in the end; `lagDays` are lost for good.
 */
export const daysThatCount = (elapsedDays: number, lagDays: number): number =>
  // Rounding must not run time backwards in its first instants.
  lagDays === 0
    ? elapsedDays
    : Math.max(0, elapsedDays + lagDays * Math.expm1(-elapsedDays / lagDays))
