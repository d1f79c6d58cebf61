/** The ways to look at the shelf, each with a path of its own. */
export const shelfViews = ['lots', 'ageing', 'stock', 'first', 'places'] as const
export type ShelfView = (typeof shelfViews)[number]

/** `/shelf` alone is the lots: a view's path has two parts, so that no lot's id can be one. */
export const viewPath = (view: ShelfView): string =>
  view === 'lots' ? '/shelf' : `/shelf/view/${view}`

export const viewOf = (name: string | undefined): ShelfView =>
  shelfViews.find((view) => view === name) ?? 'lots'
