/** The curve and its readings as tables, for those who read rather than look. */
import { useWords } from '../app/words/use-words.ts'
import { Strength, Sugar } from '../parts/quantity/composition.tsx'
import { Quantity } from '../parts/quantity/quantity.tsx'
import { Table } from '../parts/table/table.tsx'
import { useTimes } from '../parts/time/use-times.ts'
import { stageAt, type CurveReadingPoint, type CurveView } from './curve-view.ts'
import type { CurveRow } from './curve-rows.ts'

export interface CurveTableProps {
  view: CurveView
  jarName: (jarId: string) => string
}

export function CurveTable({ view, jarName }: CurveTableProps) {
  const t = useWords()
  const times = useTimes()
  const moment = (atMs: number) => times.moment(new Date(atMs).toISOString())
  const drawn = view.rows.filter((row) => row.strengthPctVol !== null)
  return (
    <>
      <Table<CurveRow>
        caption={t('batch.curve.tableCaption')}
        rows={drawn}
        rowKey={({ atMs }) => String(atMs)}
        columns={[
          {
            key: 'at',
            header: t('batch.curve.when'),
            isRowHeader: true,
            cell: ({ atMs }) => moment(atMs),
          },
          {
            key: 'stage',
            header: t('batch.curve.stage'),
            cell: ({ atMs }) => {
              const stage = stageAt(view.bands, atMs)
              return stage && t(`codes.stage.${stage}`)
            },
          },
          {
            key: 'strength',
            header: t('batch.curve.strength'),
            align: 'end',
            cell: ({ strengthPctVol }) => <Strength pctVol={strengthPctVol ?? 0} />,
          },
          {
            key: 'sugar',
            header: t('batch.curve.sugar'),
            align: 'end',
            cell: ({ sugarGPerL }) => <Sugar gPerL={sugarGPerL ?? 0} />,
          },
          {
            key: 'volume',
            header: t('batch.curve.volume'),
            align: 'end',
            cell: ({ volumeMl }) => <Quantity value={volumeMl ?? 0} dimension="volume" />,
          },
        ]}
      />
      {view.readings.length > 0 && (
        <>
          <h3>{t('batch.curve.readings')}</h3>
          <Table<CurveReadingPoint>
            caption={t('batch.curve.readingsCaption')}
            rows={view.readings}
            rowKey={({ moveId }) => moveId}
            columns={[
              {
                key: 'at',
                header: t('batch.curve.when'),
                isRowHeader: true,
                cell: ({ atMs }) => moment(atMs),
              },
              {
                key: 'jar',
                header: t('batch.timeline.vessel'),
                cell: ({ jarId }) => jarName(jarId),
              },
              {
                key: 'strength',
                header: t('batch.curve.strength'),
                align: 'end',
                cell: ({ strengthPctVol }) =>
                  strengthPctVol !== undefined && <Strength pctVol={strengthPctVol} />,
              },
              {
                key: 'sugar',
                header: t('batch.curve.sugar'),
                align: 'end',
                cell: ({ sugarGPerL }) => sugarGPerL !== undefined && <Sugar gPerL={sugarGPerL} />,
              },
              {
                key: 'used',
                header: t('batch.curve.reading'),
                cell: ({ isUsed }) => t(isUsed ? 'batch.curve.used' : 'batch.curve.notUsed'),
              },
            ]}
          />
        </>
      )}
    </>
  )
}
