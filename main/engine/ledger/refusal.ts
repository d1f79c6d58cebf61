/** Why a move cannot be. A refusal is a value: the maker can mend it, so nothing is thrown. */
import type { Refusal } from '../../../shared/schemas/errors.ts'
import type { Effect } from './cellar-state.ts'

export type { Refusal }

/** What a move comes to: an effect, or the reason why it cannot be. */
export type Outcome = { ok: true; effect: Effect } | Refused
export type Refused = { ok: false; refusal: Refusal }

export const allowed = (effect: Effect): Outcome => ({ ok: true, effect })

export const refused = (refusal: Refusal): Refused => ({ ok: false, refusal })

/** Amounts are compared with this slack, so that "all of it" typed by hand is not refused. */
export const slackMl = 0.5
export const slackG = 0.5

/** The share of what is there that was asked for; a hair more or less than all of it is all of it. */
export function shareOf(asked: number, available: number, slack: number): number | undefined {
  if (asked > available + slack) return undefined
  return asked >= available - slack ? 1 : asked / available
}

export const notEnough = (
  place: string,
  unit: 'ml' | 'g' | 'bottles',
  asked: number,
  available: number,
  nearest: number = available,
): Refused => refused({ code: 'notEnough', place, unit, asked, available, nearest })

export const nothingThere = (place: string): Refused => refused({ code: 'nothingThere', place })
