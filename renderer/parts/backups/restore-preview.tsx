/** What another book in its place would change: counts side by side, and the moves that differ. */
import type { BooksCompared } from '../../../shared/schemas/books-compared.ts'
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { numberFormat } from '../formatters/formatters.ts'
import { Table } from '../table/table.tsx'
import { useTimes } from '../time/use-times.ts'
import { SomeMoves } from './some-moves.tsx'
import styles from './restore.module.css'

const counted = ['moves', 'jars', 'batches', 'bottleLots', 'bottles'] as const

interface Row {
  key: string
  name: string
  there: string
  here: string
}

const wordsOf = {
  backup: {
    sound: 'safekeeping.restore.sound',
    refused: 'safekeeping.restore.refused',
    compare: 'safekeeping.restore.compare',
    there: 'safekeeping.restore.there',
    onlyThere: 'safekeeping.restore.onlyThere',
  },
  export: {
    sound: 'exports.in.sound',
    refused: 'exports.in.refused',
    compare: 'exports.in.compare',
    there: 'exports.in.there',
    onlyThere: 'exports.in.onlyThere',
  },
} as const

export interface PreviewOfRestoreProps {
  compared: BooksCompared
  /** What the other book came out of. */
  of: keyof typeof wordsOf
}

export function PreviewOfRestore({ compared, of }: PreviewOfRestoreProps) {
  const t = useWords()
  const words = wordsOf[of]
  const { there, here, onlyHere, onlyThere, changed } = compared
  const isSame = here !== null && onlyHere.count + onlyThere.count + changed.count === 0
  const refusedCount = there.counts.refusedMoves
  return (
    <>
      <p className={styles.sound}>{t(words.sound)}</p>
      {refusedCount > 0 && <p>{t(words.refused, { count: refusedCount })}</p>}
      {compared.isAnotherCellar && <p>{t('safekeeping.restore.another')}</p>}
      <Table
        caption={t(words.compare)}
        columns={[
          {
            key: 'row',
            header: t('safekeeping.restore.row'),
            isRowHeader: true,
            cell: ({ name }: Row) => name,
          },
          {
            key: 'there',
            header: t(words.there),
            align: 'end',
            cell: ({ there: told }: Row) => told,
          },
          {
            key: 'here',
            header: t('safekeeping.restore.here'),
            align: 'end',
            cell: ({ here: told }: Row) => told,
          },
        ]}
        rows={useRows(compared)}
        rowKey={({ key }) => key}
      />
      {isSame && <p>{t('safekeeping.restore.same')}</p>}
      <SomeMoves
        title={t('safekeeping.restore.onlyHere', { count: onlyHere.count })}
        count={onlyHere.count}
        moves={onlyHere.newest}
      />
      {/* Without a book of before, all of it is new, and a list says nothing. */}
      {here && (
        <SomeMoves
          title={t(words.onlyThere, { count: onlyThere.count })}
          count={onlyThere.count}
          moves={onlyThere.newest}
        />
      )}
      <SomeMoves
        title={t('safekeeping.restore.changed', { count: changed.count })}
        count={changed.count}
        moves={changed.newest}
      />
    </>
  )
}

function useRows({ there, here }: BooksCompared): Row[] {
  const t = useWords()
  const times = useTimes()
  const { locale } = useSettings()
  const number = (count: number) => numberFormat(locale).format(count)
  const none = t('safekeeping.restore.nothing')
  const recorded = (side: BooksCompared['here']) =>
    side?.lastMove ? times.moment(side.lastMove.recordedAt) : none
  return [
    ...counted.map((key) => ({
      key,
      name: t(`safekeeping.restore.counts.${key}`),
      there: number(there.counts[key]),
      here: here ? number(here.counts[key]) : none,
    })),
    {
      key: 'lastMove',
      name: t('safekeeping.restore.lastMove'),
      there: recorded(there),
      here: recorded(here),
    },
  ]
}
