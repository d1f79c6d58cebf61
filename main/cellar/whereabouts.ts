/**
 * Where the backups of a book are, and how the last ones went: a small file beside the book. It is
 * this machine's own: a book carried elsewhere must not look for a stick of its former place, going
 * back to an older book must not go back to an older folder, and it has to be there when the book
 * cannot be read, which is when it is needed most.
 */
import { readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import * as z from 'zod'
import { Instant } from '../../shared/schemas/basics.ts'
import {
  BackupFailure,
  BackupSchedule,
  BackupState,
  MachinePath,
} from '../../shared/schemas/safekeeping.ts'

export const Whereabouts = z.object({
  /** Null: the usual folder, beside the book. */
  folder: MachinePath.nullable(),
  schedule: BackupSchedule,
  lastMade: BackupState.shape.lastMade,
  lastFailure: z.strictObject({ at: Instant, failure: BackupFailure }).nullable(),
})
export type Whereabouts = z.infer<typeof Whereabouts>

export const usualWhereabouts: Whereabouts = {
  folder: null,
  schedule: { isOn: true, everyMoves: 25 },
  lastMade: null,
  lastFailure: null,
}

export const whereaboutsFile = (bookFile: string): string => `${bookFile}.safekeeping.json`

export const usualFolder = (bookFile: string): string => join(dirname(bookFile), 'backups')

export const folderOf = (bookFile: string, { folder }: Whereabouts): string =>
  folder ?? usualFolder(bookFile)

/** What cannot be read counts as not set: it must not keep the book shut. */
export function readWhereabouts(bookFile: string): Whereabouts {
  try {
    const text = readFileSync(whereaboutsFile(bookFile), 'utf8')
    return Whereabouts.parse(JSON.parse(text))
  } catch {
    return usualWhereabouts
  }
}

export function writeWhereabouts(bookFile: string, whereabouts: Whereabouts): void {
  const file = whereaboutsFile(bookFile)
  const unfinished = `${file}.new`
  try {
    writeFileSync(unfinished, `${JSON.stringify(whereabouts, null, 2)}\n`, {
      mode: 0o600,
      flush: true,
    })
    renameSync(unfinished, file)
  } finally {
    rmSync(unfinished, { force: true })
  }
}
