/** The path that puts batches side by side; ids hold no commas. */
import type { BatchSummary } from '../../../shared/schemas/cellar.ts'

export const comparePath = (ids: readonly string[]): string => `/compare/${ids.join(',')}`

/** At most so many others are put beside a batch at once. */
const mostOthers = 4

/** A batch beside the newest others of the same fruit. */
export function compareWithAkin(of: BatchSummary, all: readonly BatchSummary[]): string {
  const akin = all
    .filter(({ batch }) => batch.id !== of.batch.id)
    .filter(({ fruitIds }) => fruitIds.some((id) => of.fruitIds.includes(id)))
    .toSorted((a, b) => (b.startedAt ?? '').localeCompare(a.startedAt ?? ''))
    .slice(0, mostOthers)
  return comparePath([of.batch.id, ...akin.map(({ batch }) => batch.id)])
}
