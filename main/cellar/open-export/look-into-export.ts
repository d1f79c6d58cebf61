/** Can an export be brought in, and in what does it differ from the present book? */
import { join } from 'node:path'
import type { ImportPreview } from '../../../shared/schemas/exports.ts'
import { besideBook } from '../look-into-backup.ts'
import { removeBookFiles } from '../open-book.ts'
import { readExport, type Reading } from './read-export.ts'

export interface LookingIntoExport {
  readonly workFolder: string
  readonly bookFile: string | null
  readonly onStep: (step: 'packing' | 'checking' | 'comparing', share: number) => void
}

export async function lookIntoExport(
  file: string,
  { workFolder, bookFile, onStep }: LookingIntoExport,
): Promise<ImportPreview> {
  const into = join(workFolder, 'looked-into.ratafia')
  const onReading: Reading['onStep'] = onStep
  try {
    const { manifest, facts } = await readExport(file, { into, onStep: onReading })
    onStep('comparing', 0)
    return { file, manifest, ...besideBook(into, { facts, bookFile }) }
  } finally {
    removeBookFiles(into)
  }
}
