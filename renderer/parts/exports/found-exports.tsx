/** The exported cellars in a folder, each with what it holds and whether it can be read. */
import type { FoundExport } from '../../../shared/schemas/exports.ts'
import type { ExportFolder } from '../../../shared/schemas/safekeeping.ts'
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { formatSize } from '../backups/format-size.ts'
import styles from '../backups/restore.module.css'
import { Trouble } from '../backups/trouble.tsx'
import { Button } from '../button/button.tsx'
import { numberFormat } from '../formatters/formatters.ts'
import { Table, type Column } from '../table/table.tsx'
import { useTimes } from '../time/use-times.ts'

export interface FoundExportsProps {
  found: ExportFolder
  onLook: (file: string) => void
}

export function FoundExports({ found, onLook }: FoundExportsProps) {
  const t = useWords()
  const columns = useColumns(onLook)
  if (found.failure) return <Trouble>{t(`safekeeping.backups.failure.${found.failure}`)}</Trouble>
  if (found.exports.length === 0) return <p className={styles.quiet}>{t('exports.in.none')}</p>
  return (
    <Table
      caption={t('exports.in.list')}
      columns={columns}
      rows={found.exports}
      rowKey={({ file }) => file}
    />
  )
}

function useColumns(onLook: (file: string) => void): Column<FoundExport>[] {
  const t = useWords()
  const times = useTimes()
  const { locale } = useSettings()
  const number = (count: number) => numberFormat(locale).format(count)
  const none = t('safekeeping.restore.nothing')
  const named = ({ file, manifest }: FoundExport) =>
    manifest ? times.moment(manifest.madeAt) : (file.split(/[\\/]/).at(-1) ?? file)
  return [
    { key: 'made', header: t('exports.in.made'), isRowHeader: true, cell: named },
    {
      key: 'book',
      header: t('exports.in.book'),
      isMinor: true,
      cell: ({ manifest }) => manifest?.bookName ?? none,
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
      cell: (found) =>
        found.problem ? (
          <span className={styles.bad}>{t(`exports.problem.${found.problem}`)}</span>
        ) : (
          <Button
            kind="quiet"
            onPress={() => onLook(found.file)}
            aria-label={t('exports.in.lookIntoOne', { when: named(found) })}
          >
            {t('safekeeping.restore.lookInto')}
          </Button>
        ),
    },
  ]
}
