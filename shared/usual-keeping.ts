/**
 * How a jar stands where nobody said otherwise: at the temperature that half-times are told for,
 * turned about once a week. The ledger and the what-if question must depart from the same.
 */
import type { Turned } from './schemas/moves.ts'

export const usualTemperatureC = 20
export const usualTurned: Turned = 'weekly'
