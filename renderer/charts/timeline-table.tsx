/** The jar timeline as a table. */
import { useWords } from '../app/words/use-words.ts'
import { useSettings } from '../app/settings.tsx'
import { Strength, Sugar } from '../parts/quantity/composition.tsx'
import { formatShare } from '../parts/quantity/format-share.ts'
import { Quantity } from '../parts/quantity/quantity.tsx'
import { Table } from '../parts/table/table.tsx'
import { formatSpan } from '../parts/time/format-time.ts'
import { useTimes } from '../parts/time/use-times.ts'
import { steepsStill, type Timeline, type TimelineBar } from './timeline-rows.ts'

const iso = (atMs: number) => new Date(atMs).toISOString()

type Row = TimelineBar & { jarId: string }

export interface TimelineTableProps {
  timeline: Timeline
  jarName: (jarId: string) => string
  /** As in the drawing. */
  extracted: ReadonlyMap<string, number>
}

export function TimelineTable({ timeline, jarName, extracted }: TimelineTableProps) {
  const t = useWords()
  const { locale } = useSettings()
  const times = useTimes()
  const rows = timeline.rows.flatMap(({ jarId, bars }) => bars.map((bar) => ({ ...bar, jarId })))
  return (
    <Table<Row>
      caption={t('batch.timeline.caption')}
      rows={rows}
      rowKey={({ jarId, fromMs }) => `${jarId} ${fromMs}`}
      columns={[
        {
          key: 'vessel',
          header: t('batch.timeline.vessel'),
          isRowHeader: true,
          cell: ({ jarId }) => jarName(jarId),
        },
        {
          key: 'stage',
          header: t('batch.timeline.stage'),
          cell: ({ stage }) => t(`codes.stage.${stage}`),
        },
        {
          key: 'from',
          header: t('batch.timeline.from'),
          cell: ({ fromMs }) => times.moment(iso(fromMs)),
        },
        {
          key: 'to',
          header: t('batch.timeline.to'),
          cell: ({ toMs, isOpen }) =>
            isOpen ? t('batch.timeline.stillThere') : times.moment(iso(toMs)),
        },
        {
          key: 'span',
          header: t('batch.timeline.howLong'),
          cell: ({ fromMs, toMs }) => formatSpan(iso(fromMs), new Date(toMs), locale),
        },
        {
          key: 'strength',
          header: t('batch.curve.quantity.strengthPctVol'),
          align: 'end',
          cell: ({ contents: { liquid } }) => liquid && <Strength pctVol={liquid.strengthPctVol} />,
        },
        {
          key: 'sugar',
          header: t('batch.curve.quantity.sugarGPerL'),
          align: 'end',
          cell: ({ contents: { liquid } }) => liquid && <Sugar gPerL={liquid.sugarGPerL} />,
        },
        {
          key: 'volume',
          header: t('batch.curve.quantity.volumeMl'),
          align: 'end',
          cell: ({ contents: { liquid } }) =>
            liquid && <Quantity value={liquid.volumeMl} dimension="volume" />,
        },
        {
          key: 'extract',
          header: t('batch.timeline.extract'),
          align: 'end',
          cell: (row) => {
            const share = steepsStill(row) ? extracted.get(row.jarId) : undefined
            return share !== undefined && formatShare(share, locale)
          },
        },
      ]}
    />
  )
}
