/** Every move of the book, newest first, whatever it was done to; each can be changed from here. */
import { useState } from 'react'
import type { MoveFilter } from '../../../shared/schemas/all-moves.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Button, ButtonLink } from '../../parts/button/button.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { useSettled } from '../../parts/moves/use-preview.ts'
import { Empty, Page } from '../../parts/page/page.tsx'
import { MoveFilterBar } from './move-filter-bar.tsx'
import { MoveTable } from './move-table.tsx'
import { useMoveList } from './use-move-rows.ts'

const noFilter: MoveFilter = {}

export function MovesScreen() {
  const t = useWords()
  const [wanted, setWanted] = useState(noFilter)
  const { head, filter } = useMoveList(useSettled(wanted))
  const count = head.data?.total ?? 0
  const isFiltered = Object.keys(filter).length > 0
  const lead = filter.isStruck
    ? t('moves.leadStruck', { count })
    : t(isFiltered ? 'moves.leadMatching' : 'moves.lead', { count })
  return (
    <Page title={t('moves.title')} lead={head.data && lead}>
      <MoveFilterBar filter={wanted} years={head.data?.years} onChange={setWanted} />
      <ReadState query={head}>
        {({ total, last }) =>
          total > 0 ? (
            <MoveTable filter={filter} total={total} last={last} />
          ) : isFiltered ? (
            <Empty action={<Button onPress={() => setWanted(noFilter)}>{t('moves.clear')}</Button>}>
              {t('moves.noMatch')}
            </Empty>
          ) : (
            <Empty action={<ButtonLink href="/batches">{t('shelf.lots.toBatches')}</ButtonLink>}>
              {t('moves.empty')}
            </Empty>
          )
        }
      </ReadState>
    </Page>
  )
}
