/** The curve and its readings as tables, for those who read rather than look. */
import { useWords } from '../app/words/use-words.ts'
import { Strength, Sugar } from '../parts/quantity/composition.tsx'
import { Table } from '../parts/table/table.tsx'
import { useTimes } from '../parts/time/use-times.ts'
import type { CurveQuantity } from './curve-quantities.ts'
import { rowAt, type CurveRow } from './curve-rows.ts'
import { CurveValue } from './curve-value.tsx'
import { stageAt, type CurveReadingPoint, type CurveView } from './curve-view.ts'

export interface CurveTableProps {
  view: CurveView
  shown: readonly CurveQuantity[]
  jarName: (jarId: string) => string
}

export function CurveTable({ view, shown, jarName }: CurveTableProps) {
  const t = useWords()
  const times = useTimes()
  const moment = (atMs: number) => times.moment(new Date(atMs).toISOString())
  const { changed } = view
  const drawn = view.rows.filter((row) => row.values !== null)
  const stageWords = (atMs: number) => {
    if (atMs > view.nowMs) return t('batch.curve.forecast')
    const stage = stageAt(view.bands, atMs)
    return stage && t(`codes.stage.${stage}`)
  }
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
          { key: 'stage', header: t('batch.curve.stage'), cell: ({ atMs }) => stageWords(atMs) },
          ...shown.flatMap((quantity) => [
            {
              key: quantity,
              header: t(`batch.curve.quantity.${quantity}`),
              align: 'end' as const,
              cell: (row: CurveRow) => <CurveValue quantity={quantity} row={row} />,
            },
            ...(changed
              ? [
                  {
                    key: `${quantity} changed`,
                    header: t('batch.curve.changed'),
                    align: 'end' as const,
                    cell: ({ atMs }: CurveRow) => {
                      const row = rowAt(changed.rows, atMs)
                      return row && <CurveValue quantity={quantity} row={row} />
                    },
                  },
                ]
              : []),
          ]),
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
                header: t('batch.curve.quantity.strengthPctVol'),
                align: 'end',
                cell: ({ strengthPctVol, strengthUncertaintyPctVol }) =>
                  strengthPctVol !== undefined && (
                    <Strength
                      pctVol={strengthPctVol}
                      uncertaintyPctVol={strengthUncertaintyPctVol}
                    />
                  ),
              },
              {
                key: 'sugar',
                header: t('batch.curve.quantity.sugarGPerL'),
                align: 'end',
                cell: ({ sugarGPerL, sugarUncertaintyGPerL }) =>
                  sugarGPerL !== undefined && (
                    <Sugar gPerL={sugarGPerL} uncertaintyGPerL={sugarUncertaintyGPerL} />
                  ),
              },
              {
                key: 'used',
                header: t('batch.curve.reading'),
                cell: ({ standing }) => t(`batch.curve.readingStands.${standing}`),
              },
            ]}
          />
        </>
      )}
    </>
  )
}
