/** What the service and the threads of its safekeeping say to each other. */
import type { ExportProblem, FoundExport, ImportPreview } from '../../shared/schemas/exports.ts'
import type {
  BackupFailure,
  BackupProblem,
  FoundBackup,
  RestorePreview,
  SafekeepingJob,
  SalvageReport,
} from '../../shared/schemas/safekeeping.ts'
import type { BackupOrder } from './make-backup.ts'
import type { ExportOrder } from './open-export/make-export.ts'

export type BackupTask =
  | ({ readonly task: 'backup' } & BackupOrder)
  | {
      readonly task: 'look'
      readonly file: string
      readonly workFolder: string
      readonly bookFile: string | null
    }
  /** As `look`, but what came out stays at `into`. */
  | { readonly task: 'unpack'; readonly file: string; readonly into: string }
  | { readonly task: 'salvage'; readonly damagedFile: string; readonly into: string }

export type ExportTask =
  | ({ readonly task: 'export' } & ExportOrder)
  | {
      readonly task: 'lookIntoExport'
      readonly file: string
      readonly workFolder: string
      readonly bookFile: string | null
    }
  /** As `lookIntoExport`, but the book that came out stays at `into`. */
  | { readonly task: 'readExport'; readonly file: string; readonly into: string }

export type SafekeepingOrder = BackupTask | ExportTask

export type Step = SafekeepingJob['step']

export interface Outcome {
  readonly backup?: FoundBackup
  readonly preview?: RestorePreview
  readonly salvage?: SalvageReport
  readonly exported?: FoundExport
  readonly importPreview?: ImportPreview
}

export type FromThread =
  | { readonly kind: 'progress'; readonly step: Step; readonly share: number }
  | { readonly kind: 'done'; readonly outcome: Outcome }
  | {
      readonly kind: 'failed'
      readonly failure: BackupFailure
      readonly problem?: BackupProblem
      readonly exportProblem?: ExportProblem
      /** For the log only. */
      readonly message: string
    }
