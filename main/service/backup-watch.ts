/** Makes a backup when one is due: looked at a little after writes, and every hour besides. */
import { msPerHour } from '../../shared/spans-of-time.ts'
import { bookErrorOf } from '../cellar/book-error.ts'
import { backupState, startBackup } from './backups.ts'
import { dueReason } from './backup-standing.ts'
import type { Session } from './session.ts'

/** Moves often come several at a time: the backup waits until they are in. */
const quietMs = 20_000

export interface BackupWatch {
  /** Something was written. */
  look: () => void
  end: () => void
}

/** `onDone` is called when a backup was made or has failed, so that screens tell it. */
export function watchBackups(session: Session, onDone: () => void): BackupWatch {
  session.jobs.onBackup(onDone)
  if (!session.options.backsUp) return { look: () => {}, end: () => {} }
  let soon: NodeJS.Timeout | undefined
  const look = () => {
    soon ??= setTimeout(() => {
      soon = undefined
      backUpIfDue(session)
    }, quietMs).unref()
  }
  const hourly = setInterval(look, msPerHour).unref()
  look()
  return {
    look,
    end: () => {
      clearTimeout(soon)
      clearInterval(hourly)
    },
  }
}

function backUpIfDue(session: Session): void {
  try {
    if (session.trouble || session.isDemo || session.jobs.running('backup')) return
    const reason = dueReason(backupState(session), session.options.now().getTime())
    if (reason) startBackup(session, session.options.newId(), reason)
  } catch (error) {
    // The next write will say what is wrong with the book; a missed backup is told on Today.
    if (!bookErrorOf(error)) console.error('ratafia: no backup could be begun:', error)
  }
}
