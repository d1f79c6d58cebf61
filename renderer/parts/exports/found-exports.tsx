/** The exported cellars in a folder, each with the book that it was made from. */
import type { ExportFolder } from '../../../shared/schemas/safekeeping.ts'
import { useWords } from '../../app/words/use-words.ts'
import { FoundFiles } from '../backups/found-files.tsx'

export interface FoundExportsProps {
  found: ExportFolder
  onLook: (file: string) => void
}

export function FoundExports({ found: { exports, failure }, onLook }: FoundExportsProps) {
  const t = useWords()
  return (
    <FoundFiles
      files={exports}
      failure={failure}
      of="export"
      also={{
        key: 'book',
        header: t('exports.in.book'),
        isMinor: true,
        cell: ({ manifest }) => manifest?.bookName ?? t('safekeeping.restore.nothing'),
      }}
      problemOf={({ problem }) => (problem ? t(`exports.problem.${problem}`) : undefined)}
      onLook={onLook}
    />
  )
}
