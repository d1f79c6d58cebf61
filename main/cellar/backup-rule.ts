/**
 * Which backups stay: the grandfather's rule. All of the last days, then the newest of each week, of
 * each month, and of each year for ever, so that an early mistake noticed late can still be undone.
 */
import { msPerDay } from '../../shared/spans-of-time.ts'

export interface BackupAge {
  readonly file: string
  readonly madeAtMs: number
}

export const kept = { allDays: 7, weeks: 5, months: 12 } as const

/** The files to let go of; the newest backup always stays, and so does what lies in the future. */
export function backupsToDrop(backups: readonly BackupAge[], nowMs: number): string[] {
  const newestFirst = [...backups].sort((a, b) => b.madeAtMs - a.madeAtMs)
  const taken = new Set<string>()
  return newestFirst
    .filter(({ madeAtMs }, index) => {
      const ageDays = (nowMs - madeAtMs) / msPerDay
      if (index === 0 || ageDays <= kept.allDays) return false
      // The newest of its span stays, and with it the span is taken.
      const span = spanOf(madeAtMs, ageDays)
      const isTaken = taken.has(span)
      taken.add(span)
      return isTaken
    })
    .map(({ file }) => file)
}

function spanOf(madeAtMs: number, ageDays: number): string {
  const made = new Date(madeAtMs)
  if (ageDays <= kept.weeks * 7) return `week ${weekOf(madeAtMs)}`
  const year = made.getUTCFullYear()
  return ageDays <= kept.months * 31 ? `month ${year}-${made.getUTCMonth()}` : `year ${year}`
}

/** Weeks from Monday to Sunday; the first day of all was a Thursday. */
const weekOf = (ms: number): number => Math.floor((ms / msPerDay + 3) / 7)
