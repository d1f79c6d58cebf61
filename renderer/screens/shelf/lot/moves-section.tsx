/** Every move of the lot and its opened bottles, the newest first. */
import { Link } from 'wouter'
import { useWords } from '../../../app/words/use-words.ts'
import { useMoveWords } from '../../../parts/moves/use-move-words.ts'
import { useBatches } from '../../../parts/names/use-names.ts'
import { Section } from '../../../parts/page/page.tsx'
import { Table } from '../../../parts/table/table.tsx'
import { useTimes } from '../../../parts/time/use-times.ts'
import type { LedgerStep } from '../../../../shared/schemas/cellar.ts'
import type { ShelfPage } from '../../../../shared/schemas/shelf.ts'
import styles from './lot.module.css'

export function MovesSection({ page: { steps, shelfLot } }: { page: ShelfPage }) {
  const t = useWords()
  const times = useTimes()
  const moveWords = useMoveWords()
  const batch = useBatches().get(shelfLot.lot.batchId)?.batch
  return (
    <Section title={t('shelf.lot.moves')}>
      <Table<LedgerStep>
        caption={t('shelf.lot.moves')}
        rows={steps.toReversed()}
        rowKey={({ recorded }) => recorded.id}
        columns={[
          {
            key: 'when',
            header: t('shelf.lot.when'),
            cell: ({ recorded: { move } }) => (
              <time dateTime={move.at} className={styles.when}>
                {times.moment(move.at)}
              </time>
            ),
          },
          {
            key: 'what',
            header: t('shelf.lot.what'),
            isRowHeader: true,
            cell: ({ recorded: { move } }) => (
              <>
                {moveWords(move)}
                {move.note && (
                  <>
                    <br />
                    <span className={styles.note}>{move.note}</span>
                  </>
                )}
              </>
            ),
          },
        ]}
      />
      {batch && (
        <p className={styles.quiet}>
          {t('shelf.lot.movesHint')}{' '}
          <Link href={`/batches/${encodeURIComponent(batch.id)}`}>{batch.name}</Link>
          {'.'}
        </p>
      )}
    </Section>
  )
}
