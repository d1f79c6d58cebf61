/** The ways to look at the season, each with a path of its own. */
import { useWords } from '../../app/words/use-words.ts'
import { ViewLinks } from '../../parts/page/view-links.tsx'

export const seasonViews = ['plan', 'buy', 'wishes', 'fruit', 'compare'] as const
export type SeasonView = (typeof seasonViews)[number]

export const viewPath = (view: SeasonView): string =>
  view === 'plan' ? '/season' : `/season/${view}`

export const viewOf = (name: string | undefined): SeasonView =>
  seasonViews.find((view) => view === name) ?? 'plan'

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
