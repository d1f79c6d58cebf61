/** The shelf: what stands on it, what to drink first, and ways to look at it. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { useRead } from '../../app/queries.ts'
import { Button, ButtonLink } from '../../parts/button/button.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { Empty, Page } from '../../parts/page/page.tsx'
import type { ShelfLot, ShelfLots } from '../../../shared/schemas/shelf.ts'
import { nameOfAct, type Act } from './acts/act.ts'
import { ActDialog } from './acts/act-dialog.tsx'
import { useActs, type Acts } from './acts/use-acts.ts'
import { AgeingView } from './ageing/ageing-view.tsx'
import { FirstView } from './first/first-view.tsx'
import { LotsView } from './lots/lots-view.tsx'
import { PlacesView } from './places/places-view.tsx'
import { Answer } from './answer.tsx'
import { StockView } from './stock/stock-view.tsx'
import { ShelfViews } from './shelf-views.tsx'
import type { ShelfView } from './views.ts'

export function ShelfScreen({ view }: { view: ShelfView }) {
  const t = useWords()
  const acts = useActs()
  const [withGone, setWithGone] = useState(false)
  const shelf = useRead('shelf.lots', { withGone }, { keepsLast: true })
  const lots = shelf.data?.lots ?? []
  const next = shelf.data && firstAct(shelf.data)
  return (
    <Page
      title={t('shelf.title')}
      lead={shelf.data && lots.length > 0 && <Answer shelf={shelf.data} />}
      actions={
        <>
          {next && (
            <Button kind="primary" onPress={() => acts.begin(next)}>
              {t(`shelf.act.${next.kind}.title`, { name: nameOfAct(next) })}
            </Button>
          )}
          <ButtonLink href="/bring-in" kind="quiet">
            {t('sheets.open')}
          </ButtonLink>
        </>
      }
    >
      <ShelfViews here={view} />
      <ReadState query={shelf}>
        {(found) => (
          <Shown
            view={view}
            shelf={found}
            acts={acts}
            withGone={withGone}
            onWithGone={setWithGone}
          />
        )}
      </ReadState>
      <ActDialog acts={acts} />
    </Page>
  )
}

interface ShownProps {
  view: ShelfView
  shelf: ShelfLots
  acts: Acts
  withGone: boolean
  onWithGone: (withGone: boolean) => void
}

function Shown({ view, shelf, acts, withGone, onWithGone }: ShownProps) {
  const t = useWords()
  if (view === 'places') return <PlacesView lots={shelf.lots} />
  if (shelf.lots.length === 0 && !withGone)
    return (
      <Empty action={<ButtonLink href="/batches">{t('shelf.lots.toBatches')}</ButtonLink>}>
        {t('shelf.lots.empty')}
      </Empty>
    )
  switch (view) {
    case 'lots':
      return <LotsView lots={shelf.lots} acts={acts} withGone={withGone} onWithGone={onWithGone} />
    case 'ageing':
      return <AgeingView lots={shelf.lots} />
    case 'stock':
      return <StockView />
    case 'first':
      return <FirstView shelf={shelf} acts={acts} />
  }
}

/** What helps most: the opened bottle that is best drunk up, or the first full one worth taking. */
function firstAct({ lots, opened, drinkFirst }: ShelfLots): Act | undefined {
  const standing = lots.filter(({ lot }) => lot.count > 0)
  for (const { bottleLotId, because } of drinkFirst) {
    const bottle = opened.find((one) => one.bottleLotId === bottleLotId && one.liquid)
    if (because === 'opened' && bottle)
      return { kind: 'pourGlass', opened: bottle, others: opened.filter((one) => one !== bottle) }
    const full = draw(standing.find(({ lot }) => lot.id === bottleLotId))
    if (full) return full
  }
  const ready = standing.filter(({ window }) => window.phase === 'ready')
  return draw(
    ready.toSorted((a, b) => a.window.fadingAt.likely.localeCompare(b.window.fadingAt.likely))[0],
  )
}

const draw = (found: ShelfLot | undefined): Act | undefined =>
  found && { kind: 'drawBottle', lot: found.lot }
