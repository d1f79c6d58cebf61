/** What the service and its safekeeping thread say to each other. */
import type {
  BackupFailure,
  BackupProblem,
  FoundBackup,
  RestorePreview,
  SafekeepingJob,
  SalvageReport,
} from '../../shared/schemas/safekeeping.ts'
import type { BackupOrder } from './make-backup.ts'

export type SafekeepingOrder =
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

export type Step = SafekeepingJob['step']

export interface Outcome {
  readonly backup?: FoundBackup
  readonly preview?: RestorePreview
  readonly salvage?: SalvageReport
}

export type FromThread =
  | { readonly kind: 'progress'; readonly step: Step; readonly share: number }
  | { readonly kind: 'done'; readonly outcome: Outcome }
  | {
      readonly kind: 'failed'
      readonly failure: BackupFailure
      readonly problem?: BackupProblem
      /** For the log only. */
      readonly message: string
    }
