/** What lies in a folder that a page or the cellar names, or why it cannot be read. */
import { failureOfSystem } from '../cellar/backup-file.ts'
import type { BackupFailure } from '../../shared/schemas/safekeeping.ts'
import { mustBePath } from './machine-path.ts'

export interface ListedFolder<File> {
  readonly folder: string
  readonly failure: BackupFailure | null
  readonly files: File[]
}

/** `usual` is made with the first file of its kind: that it is not there yet is no failure. */
export async function listedFolder<File>(
  folder: string,
  { usual, read }: { usual: string; read: (folder: string) => Promise<File[]> },
): Promise<ListedFolder<File>> {
  try {
    return { folder, failure: null, files: await read(mustBePath(folder)) }
  } catch (error) {
    const failure = failureOfSystem(error)
    if (!failure) throw error
    const isToCome = folder === usual && failure === 'folderGone'
    return { folder, failure: isToCome ? null : failure, files: [] }
  }
}
