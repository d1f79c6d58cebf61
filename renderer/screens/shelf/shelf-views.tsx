/** Links between the ways to look at the shelf. */
import { useWords } from '../../app/words/use-words.ts'
import { ViewLinks } from '../../parts/page/view-links.tsx'
import { shelfViews, viewPath, type ShelfView } from './views.ts'

export function ShelfViews({ here }: { here: ShelfView }) {
  const t = useWords()
  return (
    <ViewLinks
      label={t('shelf.views')}
      links={shelfViews.map((view) => ({
        path: viewPath(view),
        words: t(`shelf.view.${view}`),
        isHere: view === here,
      }))}
    />
  )
}
