/** The list of lots with its filters, its order and its sums. */
import { useQueryClient, type QueryClient } from '@tanstack/react-query'
import { useCallback, useMemo, useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { useSettings } from '../../../app/settings.tsx'
import { Button } from '../../../parts/button/button.tsx'
import { useCostWords } from '../../../parts/cost/use-costs.ts'
import { Empty } from '../../../parts/page/page.tsx'
import { Term } from '../../../parts/term/term.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import type { ShelfLot } from '../../../../shared/schemas/shelf.ts'
import type { LotActKind } from '../acts/act.ts'
import type { Acts } from '../acts/use-acts.ts'
import { LotFilterBar } from './lot-filter.tsx'
import {
  filteredLots,
  noFilter,
  sortedLots,
  sumOfLots,
  type LotFilter,
  type LotSums,
  type Order,
} from './list-of-lots.ts'
import { LotTable } from './lot-table.tsx'
import { useListed } from './use-listed.ts'
import styles from './lots-view.module.css'

interface LotsViewProps {
  lots: readonly ShelfLot[]
  acts: Acts
  withGone: boolean
  onWithGone: (withGone: boolean) => void
}

interface ListState {
  readonly filter: LotFilter
  readonly order: Order
}

/** How the list was left: whoever comes back from a lot finds it so, while the window is open. */
const leftAs = new WeakMap<QueryClient, ListState>()
const firstSeen: ListState = { filter: noFilter, order: { by: 'phase', isDescending: false } }

export function LotsView({ lots, acts, withGone, onWithGone }: LotsViewProps) {
  const t = useWords()
  const { locale } = useSettings()
  const window = useQueryClient()
  const [state, setState] = useState(() => leftAs.get(window) ?? firstSeen)
  const { filter, order } = state
  const all = useListed(lots)
  const shown = useMemo(
    () => sortedLots(filteredLots(all, filter), order, locale),
    [all, filter, order, locale],
  )
  const { begin } = acts
  const act = useCallback((kind: LotActKind, lot: ShelfLot['lot']) => begin({ kind, lot }), [begin])
  function change(part: Partial<ListState>) {
    const next = { ...state, ...part }
    leftAs.set(window, next)
    setState(next)
  }
  return (
    <>
      <LotFilterBar
        all={all}
        filter={filter}
        onChange={(changed) => change({ filter: changed })}
        withGone={withGone}
        onWithGone={onWithGone}
      />
      <div className={styles.list}>
        <div className={styles.sums}>
          <Sums sums={sumOfLots(shown, filter.shelfId)} />
          {shown.length < all.length && shown.length > 0 && (
            <Button kind="quiet" onPress={() => change({ filter: noFilter })}>
              {t('shelf.lots.clear')}
            </Button>
          )}
        </div>
        {shown.length === 0 ? (
          <Empty
            action={
              <Button onPress={() => change({ filter: noFilter })}>{t('shelf.lots.clear')}</Button>
            }
          >
            {t('shelf.lots.noMatch')}
          </Empty>
        ) : (
          <LotTable
            lots={shown}
            order={order}
            onOrder={(changed) => change({ order: changed })}
            onAct={act}
          />
        )}
      </div>
    </>
  )
}

function Sums({ sums }: { sums: LotSums }) {
  const t = useWords()
  const { text } = useQuantities()
  const costWords = useCostWords()
  const cost = sums.cost && costWords(sums.cost)
  const words = {
    lots: t('shelf.answer.lots', { count: sums.lots }),
    bottles: t('parts.bottles', { count: sums.bottles }),
    volume: text(sums.volumeMl, 'volume'),
  }
  return (
    <p>
      <output>
        {cost === undefined
          ? t('shelf.lots.sums', words)
          : t('shelf.lots.sumsCost', { ...words, cost })}
      </output>
      <Term id="lot" />
    </p>
  )
}
