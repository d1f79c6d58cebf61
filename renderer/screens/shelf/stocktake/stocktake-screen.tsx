/** Counting one place: what is booked there, what is there, and putting the book right in one go. */
import { Link } from 'wouter'
import { useWords } from '../../../app/words/use-words.ts'
import { useRead } from '../../../app/queries.ts'
import { ButtonLink } from '../../../parts/button/button.tsx'
import { ReadState } from '../../../parts/failure/read-state.tsx'
import { Empty, Page } from '../../../parts/page/page.tsx'
import { bookedOn } from './stocktake.ts'
import { StocktakeForm } from './stocktake-form.tsx'

/** `shelfId` null counts what has no place. */
export function StocktakeScreen({ shelfId }: { shelfId: string | null }) {
  const t = useWords()
  const shelves = useRead('shelves.list', {})
  const bottles = useRead('bottles.list', {})
  const shelf = shelves.data?.find(({ id }) => id === shelfId)
  const place = shelfId === null ? t('shelf.places.withoutPlace') : (shelf?.name ?? '')
  const count = bottles.data?.filter((lot) => bookedOn(lot, shelfId) > 0).length
  const isUnknown = shelfId !== null && shelves.data !== undefined && !shelf
  return (
    <Page
      title={t('shelf.stocktake.title', { place })}
      before={<Link href="/shelf/view/places">{t('shelf.places.title')}</Link>}
      lead={
        count !== undefined &&
        !isUnknown &&
        (count === 0 ? t('shelf.stocktake.leadNone') : t('shelf.stocktake.lead', { count }))
      }
    >
      <ReadState query={shelves}>
        {() =>
          isUnknown ? (
            <Empty action={<ButtonLink href="/shelf">{t('shelf.stocktake.toShelf')}</ButtonLink>}>
              {t('shelf.stocktake.unknownPlace')}
            </Empty>
          ) : (
            <ReadState query={bottles}>
              {(lots) => <StocktakeForm lots={lots} shelfId={shelfId} place={place} />}
            </ReadState>
          )
        }
      </ReadState>
    </Page>
  )
}
