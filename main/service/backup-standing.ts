/** When a backup is due, and how the book stands without one: rules, without files or clocks. */
import { msPerDay, msPerHour } from '../../shared/spans-of-time.ts'
import type { BackupReason, BackupStanding, BackupState } from '../../shared/schemas/safekeeping.ts'

type Known = Pick<BackupState, 'schedule' | 'lastMade' | 'lastFailure' | 'unsaved'>

/** After this long without a backup, moves are in danger. */
export const longestUnsavedMs = 2 * msPerDay
/** A folder that failed is not tried at every move. */
const triedAgainMs = msPerHour

/** Why a backup is to be made now; undefined when it is not. */
export function dueReason(
  { schedule, lastMade, lastFailure, unsaved }: Known,
  nowMs: number,
): BackupReason | undefined {
  if (!schedule.isOn || unsaved.rows === 0) return undefined
  if (lastFailure && nowMs - Date.parse(lastFailure.at) < triedAgainMs) return undefined
  if (lastMade && unsaved.rows >= schedule.everyMoves) return 'moves'
  if (!lastMade || nowMs - Date.parse(lastMade.madeAt) >= msPerDay) return 'daily'
  return undefined
}

export function standingOf(
  { schedule, lastMade, lastFailure, unsaved }: Known,
  nowMs: number,
): BackupStanding {
  if (!schedule.isOn) return 'off'
  if (lastFailure && unsaved.rows > 0) return 'failed'
  const isLong = unsaved.since !== null && nowMs - Date.parse(unsaved.since) > longestUnsavedMs
  if (unsaved.rows > 0 && isLong) return 'missed'
  return lastMade ? 'fresh' : 'nothingYet'
}
