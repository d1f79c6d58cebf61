/** The ways to look at the season, each with a path of its own. */
export const seasonViews = ['plan', 'buy', 'wishes', 'fruit', 'compare'] as const
export type SeasonView = (typeof seasonViews)[number]

export const viewPath = (view: SeasonView): string =>
  view === 'plan' ? '/season' : `/season/${view}`

export const viewOf = (name: string | undefined): SeasonView =>
  seasonViews.find((view) => view === name) ?? 'plan'
