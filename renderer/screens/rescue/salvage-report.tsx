/** What could be read of a damaged book, what is lost, and what no longer holds without it. */
import type { SalvageReport } from '../../../shared/schemas/safekeeping.ts'
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { SomeMoves } from '../../parts/backups/some-moves.tsx'
import { listFormat } from '../../parts/formatters/formatters.ts'
import { Table } from '../../parts/table/table.tsx'
import { useTimes } from '../../parts/time/use-times.ts'
import styles from './rescue.module.css'

type TableRow = SalvageReport['tables'][number]

export function ReportOfSalvage({ report }: { report: SalvageReport }) {
  const t = useWords()
  if (report.movesRead === 0) return <p>{t('safekeeping.rescue.salvage.nothing')}</p>
  return (
    <>
      <p className={styles.strong}>
        {t('safekeeping.rescue.salvage.read', { count: report.movesRead })}
      </p>
      <Lost report={report} />
      <SomeMoves
        title={t('safekeeping.rescue.salvage.refused', { count: report.refusedCount })}
        count={report.refusedCount}
        moves={report.refusedMoves}
      />
      <MadeAgain made={report.madeAgain} />
      <Table
        caption={t('safekeeping.rescue.salvage.tables')}
        columns={[
          {
            key: 'table',
            header: t('safekeeping.rescue.salvage.table'),
            isRowHeader: true,
            cell: ({ table }: TableRow) => table,
          },
          {
            key: 'rows',
            header: t('safekeeping.rescue.salvage.rows'),
            align: 'end',
            cell: ({ rows }: TableRow) => rows,
          },
          {
            key: 'state',
            header: t('safekeeping.rescue.salvage.state'),
            cell: ({ isWhole }: TableRow) =>
              isWhole ? (
                t('safekeeping.rescue.salvage.whole')
              ) : (
                <span className={styles.bad}>{t('safekeeping.rescue.salvage.gaps')}</span>
              ),
          },
        ]}
        rows={report.tables.filter(({ rows, isWhole }) => rows > 0 || !isWhole)}
        rowKey={({ table }) => table}
      />
    </>
  )
}

const listedAtOnce = 10

function Lost({ report: { lostMoves, lostCount } }: { report: SalvageReport }) {
  const t = useWords()
  const times = useTimes()
  if (lostCount === 0) return <p>{t('safekeeping.rescue.salvage.lostNone')}</p>
  const moment = (instant: string | null) =>
    instant === null ? t('safekeeping.rescue.salvage.unknown') : times.moment(instant)
  const spans = spansOf(lostMoves).slice(0, listedAtOnce)
  const listed = spans.reduce((sum, { from, to }) => sum + to - from + 1, 0)
  return (
    <div>
      <p className={styles.bad}>{t('safekeeping.rescue.salvage.lost', { count: lostCount })}</p>
      <ul className={styles.list}>
        {spans.map(({ from, to, after, before }) => (
          <li key={from}>
            {t(`safekeeping.rescue.salvage.${from === to ? 'lostLine' : 'lostLines'}`, {
              from,
              to,
              after: moment(after),
              before: moment(before),
            })}
          </li>
        ))}
        {lostCount > listed && (
          <li className={styles.quiet}>
            {t('safekeeping.restore.more', { count: lostCount - listed })}
          </li>
        )}
      </ul>
    </div>
  )
}

type LostMove = SalvageReport['lostMoves'][number]

/** Lines lost side by side, as where a page is gone, are told together. */
function spansOf(lost: readonly LostMove[]) {
  const spans: {
    from: number
    to: number
    after: LostMove['after']
    before: LostMove['before']
  }[] = []
  for (const { seq, after, before } of lost) {
    const last = spans.at(-1)
    if (last?.to === seq - 1) last.to = seq
    else spans.push({ from: seq, to: seq, after, before })
  }
  return spans
}

function MadeAgain({ made }: { made: SalvageReport['madeAgain'] }) {
  const t = useWords()
  const { locale } = useSettings()
  const told = (['batches', 'jars', 'shelves'] as const)
    .filter((kind) => made[kind] > 0)
    .map((kind) => t(`safekeeping.rescue.salvage.${kind}`, { count: made[kind] }))
  if (told.length === 0) return null
  const what = listFormat(locale, { type: 'conjunction' }).format(told)
  return <p>{t('safekeeping.rescue.salvage.madeAgain', { what })}</p>
}
