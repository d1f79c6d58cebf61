/** The backups in a folder, each with why it was made. */
import type { BackupFolder } from '../../../shared/schemas/safekeeping.ts'
import { useWords } from '../../app/words/use-words.ts'
import { FoundFiles } from './found-files.tsx'

export interface FoundBackupsProps {
  found: BackupFolder
  onLook: (file: string) => void
}

export function FoundBackups({ found: { backups, failure }, onLook }: FoundBackupsProps) {
  const t = useWords()
  return (
    <FoundFiles
      files={backups}
      failure={failure}
      of="backup"
      also={{
        key: 'what',
        header: t('safekeeping.restore.what'),
        isMinor: true,
        cell: ({ manifest }) =>
          manifest
            ? t(`safekeeping.backups.reason.${manifest.reason}`)
            : t('safekeeping.restore.nothing'),
      }}
      problemOf={({ problem }) =>
        problem ? t(`safekeeping.backups.problem.${problem}`) : undefined
      }
      sound={t('safekeeping.restore.wasSound')}
      onLook={onLook}
    />
  )
}
