/** A plan beside what really happened, stage by stage: day, volume, strength, sugar. */
import type { ReactNode } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { ChainStage, FollowedStage } from '../../../shared/schemas/drafts.ts'
import { Empty } from '../page/page.tsx'
import { Quantity } from '../quantity/quantity.tsx'
import { QuantityMark } from '../quantity/quantity-mark.tsx'
import { Table, type Column } from '../table/table.tsx'
import { useTimes } from '../time/use-times.ts'

export interface StagesTableProps {
  stages: readonly FollowedStage[]
  caption: string
  plannedName: string
  /** Left out, nothing is foretold. */
  expectedName?: string
}

interface Row {
  key: string
  name: string
  whose: string
  stage: ChainStage | undefined
  isFirst: boolean
}

export function StagesTable({ stages, caption, plannedName, expectedName }: StagesTableProps) {
  const t = useWords()
  const times = useTimes()
  if (stages.length === 0) return <Empty>{t('draft.compare.none')}</Empty>
  const rows = stages.flatMap((followed): Row[] => {
    const { key, ordinal, planned, real, expected } = followed
    const word = t(`draft.stage.${key}`)
    const isRepeated = stages.some((other) => other.key === key && other.ordinal !== ordinal)
    const name = isRepeated ? t('draft.chain.numbered', { stage: word, count: ordinal }) : word
    const foretold =
      expectedName !== undefined && !real
        ? [{ whose: expectedName, stage: expected }]
        : [{ whose: t('draft.compare.real'), stage: real }]
    return [{ whose: plannedName, stage: planned }, ...foretold].map((row, at) => ({
      ...row,
      key: `${key} ${ordinal} ${at}`,
      name: at === 0 ? name : '',
      isFirst: at === 0,
    }))
  })
  const columns: Column<Row>[] = [
    { key: 'stage', header: t('draft.compare.stage'), cell: ({ name }) => name },
    {
      key: 'whose',
      header: t('draft.compare.whose'),
      isRowHeader: true,
      cell: ({ whose }) => whose,
    },
    {
      key: 'day',
      header: t('draft.compare.day'),
      cell: ({ stage }) => (stage ? times.day(stage.to) : '–'),
    },
    numberColumn('volumeMl', 'volume', t('draft.compare.volume')),
    numberColumn(
      'strengthPctVol',
      'strength',
      <>
        <QuantityMark kind="strength" /> {t('parts.quantity.strength')}
      </>,
    ),
    numberColumn(
      'sugarGPerL',
      'sugar',
      <>
        <QuantityMark kind="sugar" /> {t('parts.quantity.sugar')}
      </>,
    ),
  ]
  return (
    <Table
      caption={caption}
      columns={columns}
      rows={rows}
      rowKey={({ key }) => key}
      startsGroup={({ isFirst }) => isFirst}
    />
  )
}

const numberColumn = (
  key: 'volumeMl' | 'strengthPctVol' | 'sugarGPerL',
  dimension: 'volume' | 'strength' | 'sugar',
  header: ReactNode,
): Column<Row> => ({
  key,
  header,
  align: 'end',
  cell: ({ stage }) =>
    stage?.liquid ? <Quantity value={stage.liquid[key]} dimension={dimension} /> : '–',
})
