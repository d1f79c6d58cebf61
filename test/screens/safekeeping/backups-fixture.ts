/** Backups to show: how they stand, a folder with one, a job, and what going back would change. */
import type {
  BackupFolder,
  BackupManifest,
  BackupState,
  RestorePreview,
  SafekeepingJob,
} from '../../../shared/schemas/safekeeping.ts'

export const backupState = (change: Partial<BackupState> = {}): BackupState => ({
  standing: 'fresh',
  folder: '/home/maker/backups',
  isUsualFolder: true,
  schedule: { isOn: true, everyMoves: 25 },
  lastMade: {
    madeAt: '2026-11-24T18:00:00Z',
    file: '/home/maker/backups/a.ratafia.zip',
    lastSeq: 41,
    bytes: 123_456,
  },
  unsaved: { rows: 2, since: '2026-11-25T08:00:00Z' },
  lastFailure: null,
  job: null,
  ...change,
})

const counts = { moves: 41, jars: 3, batches: 2, bottleLots: 1, bottles: 12, refusedMoves: 0 }

export const manifest: BackupManifest = {
  format: 1,
  madeAt: '2026-11-24T18:00:00Z',
  reason: 'daily',
  programVersion: '0.1.0',
  schemaVersion: 70,
  bookName: 'cellar.ratafia',
  counts,
  firstMoveId: 'm1',
  lastMove: { id: 'm41', seq: 41, recordedAt: '2026-11-24T17:00:00Z' },
  bytes: 400_000,
  sha256: 'a'.repeat(64),
  ledgerDigest: 'b'.repeat(64),
}

const file = '/home/maker/backups/a.ratafia.zip'

export const noBackups: BackupFolder = { folder: '/home/maker/backups', failure: null, backups: [] }

export const twoBackups: BackupFolder = {
  ...noBackups,
  backups: [
    { file, bytes: 123_456, manifest, problem: null },
    { file: '/home/maker/backups/b.ratafia.zip', bytes: 77, manifest: null, problem: 'cutShort' },
  ],
}

export const backupJob = (change: Partial<SafekeepingJob> = {}): SafekeepingJob => ({
  jobId: 'job',
  kind: 'backup',
  state: 'running',
  step: 'packing',
  progress: 0.5,
  seconds: 1,
  ...change,
})

const none = { count: 0, newest: [] }

export const preview: RestorePreview = {
  file,
  manifest,
  there: { counts, lastMove: manifest.lastMove },
  here: {
    counts: { ...counts, moves: 43 },
    lastMove: { id: 'm43', seq: 43, recordedAt: '2026-11-25T08:00:00Z' },
  },
  isAnotherCellar: false,
  onlyHere: {
    count: 2,
    newest: [
      {
        moveId: 'm43',
        move: {
          at: '2026-11-25T08:00:00Z',
          kind: 'remark',
          batchId: 'sloe',
          note: 'clear at last',
        },
        recordedAt: '2026-11-25T08:00:00Z',
        batchName: 'Sloe',
      },
    ],
  },
  onlyThere: none,
  changed: none,
}
