/** The shelf: what stands on it, what to drink first, and ways to look at it. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { useRead } from '../../app/queries.ts'
import { Button, ButtonLink } from '../../parts/button/button.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { Empty, Page } from '../../parts/page/page.tsx'
import type { ShelfLots } from '../../../shared/schemas/shelf.ts'
import { ActDialog } from './acts/act-dialog.tsx'
import { ToldNote } from './acts/told-note.tsx'
import { useActs, type Acts } from './acts/use-acts.ts'
import { AgeingView } from './ageing/ageing-view.tsx'
import { FirstView } from './first/first-view.tsx'
import { LotsView } from './lots/lots-view.tsx'
import { PlacesView } from './places/places-view.tsx'
import { Answer } from './answer.tsx'
import { StockView } from './stock/stock-view.tsx'
import { ShelfViews, type ShelfView } from './views.tsx'

export function ShelfScreen({ view }: { view: ShelfView }) {
  const t = useWords()
  const acts = useActs()
  const [withGone, setWithGone] = useState(false)
  const shelf = useRead('shelf.lots', { withGone }, { keepsLast: true })
  const lots = shelf.data?.lots ?? []
  const next = shelf.data && firstToDrink(shelf.data)
  return (
    <Page
      title={t('shelf.title')}
      lead={shelf.data && lots.length > 0 && <Answer shelf={shelf.data} />}
      actions={
        next && (
          <Button
            kind="primary"
            onPress={() => acts.begin({ kind: 'drawBottle', lot: next })}
            aria-label={t('shelf.lots.actOf', {
              act: t('shelf.act.drawBottle.name'),
              name: next.name,
            })}
          >
            {t('shelf.act.drawBottle.title', { name: next.name })}
          </Button>
        )
      }
    >
      <ShelfViews here={view} />
      <ToldNote acts={acts} />
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

/** The first full bottle worth taking, or else the ready lot that fades soonest. */
function firstToDrink({ lots, drinkFirst }: ShelfLots) {
  const standing = lots.filter(({ lot }) => lot.count > 0)
  const byId = new Map(standing.map(({ lot }) => [lot.id, lot]))
  const urgent = drinkFirst.find(({ bottleLotId }) => byId.has(bottleLotId))
  if (urgent) return byId.get(urgent.bottleLotId)
  const [soonest] = standing
    .filter(({ window }) => window.phase === 'ready')
    .toSorted((a, b) => a.window.fadingAt.likely.localeCompare(b.window.fadingAt.likely))
  return soonest?.lot
}
