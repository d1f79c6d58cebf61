/** Links between the ways to look at the season. */
import { useWords } from '../../app/words/use-words.ts'
import { ViewLinks } from '../../parts/page/view-links.tsx'
import { seasonViews, viewPath, type SeasonView } from './views.ts'

export function SeasonViews({ here }: { here: SeasonView }) {
  const t = useWords()
  return (
    <ViewLinks
      label={t('season.views')}
      links={seasonViews.map((view) => ({
        path: viewPath(view),
        words: t(`season.view.${view}`),
        isHere: view === here,
      }))}
    />
  )
}
