/** Backups, going back to one, and what is left of a damaged book. */
import * as z from 'zod'
import { Id, Instant } from './basics.ts'
import { BookCounts, BooksCompared, LastMove, MoveInBook } from './books-compared.ts'
import { ExportProblem, FoundExport, ImportPreview } from './exports.ts'

const count = z.number().int().nonnegative()

/** A file or folder as this machine names it; it is looked at by the service, never by a page. */
export const MachinePath = z
  .string()
  .trim()
  .min(1)
  .max(1000)
  .refine((path) => !path.includes('\0'), 'not a path')

export const BackupReason = z.enum(['asked', 'daily', 'moves', 'migration'])
export type BackupReason = z.infer<typeof BackupReason>

/** `manifest.json` of a backup. Unknown fields of later programs are let pass. */
export const BackupManifest = z.object({
  format: z.literal(1),
  madeAt: Instant,
  reason: BackupReason,
  programVersion: z.string().max(40),
  schemaVersion: count,
  /** The book's file name, without its folder. */
  bookName: z.string().max(300),
  counts: BookCounts,
  /** Two books that begin with the same move are the same cellar. */
  firstMoveId: Id.nullable(),
  lastMove: LastMove.nullable(),
  /** Of the book inside. */
  bytes: count,
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  /** Of the state that the moves come to. */
  ledgerDigest: z.string().regex(/^[0-9a-f]{64}$/),
})
export type BackupManifest = z.infer<typeof BackupManifest>

/** Why a file is no backup to go back to. */
export const BackupProblem = z.enum([
  'notABackup',
  'cutShort',
  'unreadable',
  'checksum',
  'damagedInside',
  'otherState',
  'newerProgram',
])
export type BackupProblem = z.infer<typeof BackupProblem>

export const FoundBackup = z.strictObject({
  file: z.string(),
  bytes: count,
  /** Null where it cannot be read. */
  manifest: BackupManifest.nullable(),
  problem: BackupProblem.nullable(),
})
export type FoundBackup = z.infer<typeof FoundBackup>

/** Why there is no backup although there should be. */
export const BackupFailure = z.enum([
  'folderGone',
  'folderReadOnly',
  'diskFull',
  'bookDamaged',
  'notVerified',
  'stopped',
  'internal',
])
export type BackupFailure = z.infer<typeof BackupFailure>

export const BackupSchedule = z.strictObject({
  isOn: z.boolean(),
  /** A backup after so many moves; daily besides, whenever there is something new. */
  everyMoves: z.number().int().min(1).max(10_000),
})
export type BackupSchedule = z.infer<typeof BackupSchedule>

/** The backup beside the present book. */
export const RestorePreview = z.strictObject({
  file: z.string(),
  manifest: BackupManifest,
  ...BooksCompared.shape,
})
export type RestorePreview = z.infer<typeof RestorePreview>

/** What could be read of a damaged book. */
export const SalvageReport = z.strictObject({
  tables: z.array(z.strictObject({ table: z.string(), rows: count, isWhole: z.boolean() })),
  movesRead: count,
  /** Order numbers that are missing among the moves, and what is known of each. */
  lostMoves: z.array(
    z.strictObject({
      seq: count,
      why: z.enum(['gone', 'unreadable']),
      /** When the moves before and after it were recorded. */
      after: Instant.nullable(),
      before: Instant.nullable(),
    }),
  ),
  /** All of them; no more than some are listed. */
  lostCount: count,
  /** Read, but not possible without those that are lost. */
  refusedMoves: z.array(MoveInBook).max(200),
  refusedCount: count,
  /** Named by a move but not readable: made again with what is known. */
  madeAgain: z.strictObject({ batches: count, jars: count, shelves: count }),
  counts: BookCounts,
})
export type SalvageReport = z.infer<typeof SalvageReport>

export const SafekeepingJob = z.strictObject({
  jobId: Id,
  kind: z.enum(['backup', 'look', 'salvage', 'export', 'lookIntoExport']),
  state: z.enum(['running', 'done', 'cancelled', 'failed']),
  step: z.enum(['copying', 'packing', 'checking', 'comparing']),
  /** 0 to 1 of all the steps. */
  progress: z.number().min(0).max(1),
  seconds: z.number().nonnegative(),
  /** With `failed`. */
  failure: BackupFailure.optional(),
  /** With `failed`, when a backup was looked into. */
  problem: BackupProblem.optional(),
  /** With `failed`, when an export was looked into, or a fresh one did not come out the same. */
  exportProblem: ExportProblem.optional(),
  /** With `done`: what was made, seen or read. */
  backup: FoundBackup.optional(),
  preview: RestorePreview.optional(),
  salvage: SalvageReport.optional(),
  exported: FoundExport.optional(),
  importPreview: ImportPreview.optional(),
})
export type SafekeepingJob = z.infer<typeof SafekeepingJob>

/**
 * `fresh`: all is backed up, or will be in time. `missed`: moves have been without a backup for too
 * long. `failed`: the last try failed. `off`: the maker wants none. `demo`: the demo has none.
 */
export const BackupStanding = z.enum(['nothingYet', 'fresh', 'missed', 'failed', 'off', 'demo'])
export type BackupStanding = z.infer<typeof BackupStanding>

export const BackupState = z.strictObject({
  standing: BackupStanding,
  folder: z.string(),
  /** The folder beside the book: it is lost with the disk. */
  isUsualFolder: z.boolean(),
  schedule: BackupSchedule,
  lastMade: z
    .strictObject({ madeAt: Instant, file: z.string(), lastSeq: count, bytes: count })
    .nullable(),
  /** Rows of the ledger that are in no backup yet, and since when. */
  unsaved: z.strictObject({ rows: count, since: Instant.nullable() }),
  /** Since the last backup that was made. */
  lastFailure: z.strictObject({ at: Instant, failure: BackupFailure }).nullable(),
  /** A backup being made. */
  job: SafekeepingJob.nullable(),
})
export type BackupState = z.infer<typeof BackupState>

export const BackupFolder = z.strictObject({
  folder: z.string(),
  /** Null when it can be read. */
  failure: BackupFailure.nullable(),
  /** The newest first. */
  backups: z.array(FoundBackup),
})
export type BackupFolder = z.infer<typeof BackupFolder>

export const ExportFolder = z.strictObject({
  folder: z.string(),
  /** Null when it can be read. */
  failure: BackupFailure.nullable(),
  /** The newest first. */
  exports: z.array(FoundExport),
})
export type ExportFolder = z.infer<typeof ExportFolder>

/** Why the maker's own book cannot be opened. */
export const RescueState = z.strictObject({
  file: z.string(),
  trouble: z.enum(['empty', 'damaged']),
  /** What SQLite says, for those who can use it. */
  message: z.string(),
  /** The folder in which backups of this book were kept. */
  folder: z.string(),
})
export type RescueState = z.infer<typeof RescueState>
