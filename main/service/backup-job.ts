/** A backup as a job of its own thread, and the note of what became of it. */
import { basename } from 'node:path'
import { backupEnding, failureOfSystem } from '../cellar/backup-file.ts'
import { dropUnfinishedOf } from '../cellar/dated-file.ts'
import type { SafekeepingOrder } from '../cellar/safekeeping-orders.ts'
import {
  folderOf,
  readWhereabouts,
  usualFolder,
  writeWhereabouts,
  type Whereabouts,
} from '../cellar/whereabouts.ts'
import type { BackupManifest, BackupReason } from '../../shared/schemas/safekeeping.ts'
import type { JobToStart } from './safekeeping-jobs.ts'
import type { ServiceOptions } from './service.ts'

interface ToBackUp {
  readonly jobId: string
  readonly reason: BackupReason
  readonly whereabouts: Whereabouts
  readonly live?: { readonly seq: number; readonly digest: string }
}

/** What becomes of it is noted beside the book, so that it can be told when the folder is away. */
export function backupJob(
  { ownFile, now, version }: ServiceOptions,
  { jobId, reason, whereabouts, live }: ToBackUp,
): JobToStart {
  const madeAt = now().toISOString()
  const folder = folderOf(ownFile, whereabouts)
  return {
    jobId,
    kind: 'backup',
    order: (workFolder): SafekeepingOrder => ({
      task: 'backup',
      bookFile: ownFile,
      folder,
      makesFolder: folder === usualFolder(ownFile),
      workFolder,
      reason,
      madeAt,
      programVersion: version,
      live,
    }),
    onEnd: ({ state, failure = 'internal', backup }) =>
      unlessInTheWay(() => {
        if (state === 'done' && backup?.manifest)
          noteMade(ownFile, { manifest: backup.manifest, file: backup.file, bytes: backup.bytes })
        else if (state === 'failed') note(ownFile, { lastFailure: { at: madeAt, failure } })
        if (state !== 'done')
          dropUnfinishedOf(folder, { bookName: basename(ownFile), madeAt, ending: backupEnding })
      }),
  }
}

export const noteMade = (
  ownFile: string,
  { manifest, file, bytes }: { manifest: BackupManifest; file: string; bytes: number },
): void =>
  note(ownFile, {
    lastMade: {
      madeAt: manifest.madeAt,
      file,
      lastSeq: manifest.lastMove?.seq ?? 0,
      bytes,
    },
    lastFailure: null,
  })

export const note = (ownFile: string, change: Partial<Whereabouts>): void =>
  writeWhereabouts(ownFile, { ...readWhereabouts(ownFile), ...change })

/** Where not even a note can be written, the next look at the backups finds one that is missed. */
function unlessInTheWay(write: () => void): void {
  try {
    write()
  } catch (error) {
    if (!failureOfSystem(error)) throw error
    console.error('ratafia: how the backup went could not be noted:', error)
  }
}
