/** All batches: what stage each is at, what it is now, what comes next. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { useRead } from '../../app/queries.ts'
import { useSettings } from '../../app/settings.tsx'
import { Button } from '../../parts/button/button.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { useFruitName, useFruits, useJars } from '../../parts/names/use-names.ts'
import { Empty, Page } from '../../parts/page/page.tsx'
import { FirstRows } from '../../parts/table/first-rows.tsx'
import type { BatchSummary } from '../../../shared/schemas/cellar.ts'
import { BatchTable } from './batch-table.tsx'
import { BatchFilter } from './batch-filter.tsx'
import { ComparePicker } from './compare/compare-picker.tsx'
import { listOfBatches, type Order } from './list-of-batches.ts'
import { NewBatchDialog } from './new-batch-dialog.tsx'
import type { StageGroup } from './stage-groups.ts'

export function BatchesScreen() {
  const t = useWords()
  const batches = useRead('batches.list', {})
  const [isOpening, setOpening] = useState(false)
  const [picked, setPicked] = useState<ReadonlySet<string>>()
  const count = batches.data?.length ?? 0
  const open = (
    <Button kind="primary" onPress={() => setOpening(true)}>
      {t('batches.new')}
    </Button>
  )
  return (
    <Page
      title={t('batches.title')}
      lead={count > 0 ? t('batches.lead', { count }) : undefined}
      actions={
        count > 0 ? (
          <ComparePicker picked={picked} onPick={setPicked}>
            {open}
          </ComparePicker>
        ) : undefined
      }
    >
      <ReadState query={batches}>
        {(all) =>
          all.length === 0 ? (
            <Empty action={open}>{t('batches.empty')}</Empty>
          ) : (
            <FilteredBatches all={all} picked={picked} onPick={setPicked} />
          )
        }
      </ReadState>
      <NewBatchDialog isOpen={isOpening} onClose={() => setOpening(false)} />
    </Page>
  )
}

/** Each draws its vessels, and a step of the arrows looks at all of them. */
const rowsAtOnce = 40

interface FilteredBatchesProps {
  all: readonly BatchSummary[]
  picked: ReadonlySet<string> | undefined
  onPick: (ids: ReadonlySet<string>) => void
}

function FilteredBatches({ all, picked, onPick }: FilteredBatchesProps) {
  const t = useWords()
  const { locale } = useSettings()
  const fruits = useFruits()
  const fruitName = useFruitName()
  const jars = useJars()
  const [group, setGroup] = useState<StageGroup | 'all'>('all')
  const [search, setSearch] = useState('')
  const [order, setOrder] = useState<Order>({ by: 'next', isDescending: false })

  const alsoNamed = (summary: BatchSummary) => [
    ...summary.fruitIds.flatMap((id) => {
      const fruit = fruits.get(id)
      return fruit ? [fruitName(fruit)] : []
    }),
    ...summary.jars.flatMap(({ jarId }) => jars.get(jarId)?.jar.name ?? []),
  ]
  const shown = listOfBatches(all, { group, search, order, locale, alsoNamed })
  return (
    <>
      <BatchFilter
        all={all}
        group={group}
        onGroup={setGroup}
        search={search}
        onSearch={setSearch}
        shown={shown.length}
      />
      {shown.length === 0 ? (
        <Empty
          action={
            <Button
              onPress={() => {
                setGroup('all')
                setSearch('')
              }}
            >
              {t('batches.showAll')}
            </Button>
          }
        >
          {t('batches.noMatch')}
        </Empty>
      ) : (
        <FirstRows rows={shown} atOnce={rowsAtOnce}>
          {(rows) => (
            <BatchTable
              batches={rows}
              order={order}
              onOrder={setOrder}
              picked={picked}
              onPick={onPick}
            />
          )}
        </FirstRows>
      )}
    </>
  )
}
