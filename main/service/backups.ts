/** The backups of the maker's own book: how they stand, and making one of it as it is open now. */
import { rowsAfter } from '../cellar/book-facts.ts'
import { ledgerDigest } from '../cellar/ledger-digest.ts'
import { nextSeq } from '../cellar/move-store.ts'
import { folderOf, readWhereabouts, usualFolder } from '../cellar/whereabouts.ts'
import type { BackupReason, BackupState, SafekeepingJob } from '../../shared/schemas/safekeeping.ts'
import { backupJob } from './backup-job.ts'
import { standingOf } from './backup-standing.ts'
import type { Session } from './session.ts'

export function backupState(session: Session): BackupState {
  const { options, jobs } = session
  const whereabouts = readWhereabouts(options.ownFile)
  const { schedule, lastMade, lastFailure } = whereabouts
  const folder = folderOf(options.ownFile, whereabouts)
  const unsaved = session.isDemo
    ? { rows: 0, since: null }
    : rowsAfter(session.book, lastMade?.lastSeq ?? 0)
  const known = { schedule, lastMade, lastFailure, unsaved }
  return {
    ...known,
    standing: session.isDemo ? 'demo' : standingOf(known, options.now().getTime()),
    folder,
    isUsualFolder: folder === usualFolder(options.ownFile),
    job: jobs.running('backup') ?? null,
  }
}

/** Begins a backup of the open book. */
export function startBackup(session: Session, jobId: string, reason: BackupReason): SafekeepingJob {
  const live = {
    seq: nextSeq(session.book) - 1,
    digest: ledgerDigest(session.ledger.folded.cellar),
  }
  const whereabouts = readWhereabouts(session.options.ownFile)
  return session.jobs.start(backupJob(session.options, { jobId, reason, whereabouts, live }))
}
