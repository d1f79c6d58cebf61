/** The backups in a folder, each with what it holds and whether it can be read. */
import type { BackupFolder, FoundBackup } from '../../../shared/schemas/safekeeping.ts'
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../button/button.tsx'
import { numberFormat } from '../formatters/formatters.ts'
import { Table, type Column } from '../table/table.tsx'
import { useTimes } from '../time/use-times.ts'
import { formatSize } from './format-size.ts'
import { Trouble } from './trouble.tsx'
import styles from './restore.module.css'

export interface FoundBackupsProps {
  found: BackupFolder
  onLook: (file: string) => void
}

export function FoundBackups({ found, onLook }: FoundBackupsProps) {
  const t = useWords()
  const columns = useColumns(onLook)
  if (found.failure) return <Trouble>{t(`safekeeping.backups.failure.${found.failure}`)}</Trouble>
  if (found.backups.length === 0)
    return <p className={styles.quiet}>{t('safekeeping.restore.none')}</p>
  return (
    <Table
      caption={t('safekeeping.restore.list')}
      columns={columns}
      rows={found.backups}
      rowKey={({ file }) => file}
    />
  )
}

function useColumns(onLook: (file: string) => void): Column<FoundBackup>[] {
  const t = useWords()
  const times = useTimes()
  const { locale } = useSettings()
  const number = (count: number) => numberFormat(locale).format(count)
  const none = t('safekeeping.restore.nothing')
  const named = ({ file, manifest }: FoundBackup) =>
    manifest ? times.moment(manifest.madeAt) : fileName(file)
  return [
    { key: 'made', header: t('safekeeping.restore.made'), isRowHeader: true, cell: named },
    {
      key: 'what',
      header: t('safekeeping.restore.what'),
      isMinor: true,
      cell: ({ manifest }) =>
        manifest ? t(`safekeeping.backups.reason.${manifest.reason}`) : none,
    },
    {
      key: 'moves',
      header: t('safekeeping.restore.moves'),
      align: 'end',
      cell: ({ manifest }) => (manifest ? number(manifest.counts.moves) : none),
    },
    {
      key: 'bottles',
      header: t('safekeeping.restore.bottles'),
      align: 'end',
      isMinor: true,
      cell: ({ manifest }) => (manifest ? number(manifest.counts.bottles) : none),
    },
    {
      key: 'size',
      header: t('safekeeping.restore.size'),
      align: 'end',
      cell: ({ bytes }) => formatSize(bytes, locale),
    },
    {
      key: 'look',
      header: t('safekeeping.restore.verdict'),
      cell: (backup) =>
        backup.problem ? (
          <span className={styles.bad}>{t(`safekeeping.backups.problem.${backup.problem}`)}</span>
        ) : (
          <span className={styles.verdict}>
            {t('safekeeping.restore.wasSound')}
            <Button
              kind="quiet"
              onPress={() => onLook(backup.file)}
              aria-label={t('safekeeping.restore.lookIntoOne', { when: named(backup) })}
            >
              {t('safekeeping.restore.lookInto')}
            </Button>
          </span>
        ),
    },
  ]
}

const fileName = (path: string): string => path.split(/[\\/]/).at(-1) ?? path
