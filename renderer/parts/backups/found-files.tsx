/** Files in a folder that a book can be made of, each with what it holds and whether it can be read. */
import type { BackupFailure } from '../../../shared/schemas/safekeeping.ts'
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../button/button.tsx'
import { numberFormat } from '../formatters/formatters.ts'
import { Table, type Column } from '../table/table.tsx'
import { useTimes } from '../time/use-times.ts'
import { formatSize } from './format-size.ts'
import { Trouble } from './trouble.tsx'
import styles from './restore.module.css'

interface FoundFile {
  readonly file: string
  readonly bytes: number
  readonly manifest: {
    readonly madeAt: string
    readonly counts: { readonly moves: number; readonly bottles: number }
  } | null
}

const wordsOf = {
  backup: {
    none: 'safekeeping.restore.none',
    list: 'safekeeping.restore.list',
    made: 'safekeeping.restore.made',
    lookIntoOne: 'safekeeping.restore.lookIntoOne',
  },
  export: {
    none: 'exports.in.none',
    list: 'exports.in.list',
    made: 'exports.in.made',
    lookIntoOne: 'exports.in.lookIntoOne',
  },
} as const

export interface FoundFilesProps<File extends FoundFile> {
  files: readonly File[]
  failure: BackupFailure | null
  of: keyof typeof wordsOf
  /** What only this sort of file tells, after when it was made. */
  also: Column<File>
  /** Why it cannot be used. */
  problemOf: (file: File) => string | undefined
  /** Said of one that can. */
  sound?: string
  onLook: (file: string) => void
}

export function FoundFiles<File extends FoundFile>({
  files,
  failure,
  of,
  also,
  problemOf,
  sound,
  onLook,
}: FoundFilesProps<File>) {
  const t = useWords()
  const times = useTimes()
  const { locale } = useSettings()
  const words = wordsOf[of]
  if (failure) return <Trouble>{t(`safekeeping.backups.failure.${failure}`)}</Trouble>
  if (files.length === 0) return <p className={styles.quiet}>{t(words.none)}</p>
  const number = (count: number) => numberFormat(locale).format(count)
  const none = t('safekeeping.restore.nothing')
  const named = ({ file, manifest }: File) =>
    manifest ? times.moment(manifest.madeAt) : (file.split(/[\\/]/).at(-1) ?? file)
  const columns: Column<File>[] = [
    { key: 'made', header: t(words.made), isRowHeader: true, cell: named },
    also,
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
      cell: (found) => {
        const problem = problemOf(found)
        if (problem !== undefined) return <span className={styles.bad}>{problem}</span>
        return (
          <span className={styles.verdict}>
            {sound}
            <Button
              kind="quiet"
              onPress={() => onLook(found.file)}
              aria-label={t(words.lookIntoOne, { when: named(found) })}
            >
              {t('safekeeping.restore.lookInto')}
            </Button>
          </span>
        )
      },
    },
  ]
  return (
    <Table caption={t(words.list)} columns={columns} rows={files} rowKey={({ file }) => file} />
  )
}
