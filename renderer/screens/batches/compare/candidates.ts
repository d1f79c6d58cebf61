/** What could be put beside the batches compared: those of the same fruit first, the newest first. */
import type { BatchSummary } from '../../../../shared/schemas/cellar.ts'

export function candidates(
  all: readonly BatchSummary[],
  ids: readonly string[],
): readonly BatchSummary[] {
  const fruits = new Set(
    all.filter(({ batch }) => ids.includes(batch.id)).flatMap(({ fruitIds }) => fruitIds),
  )
  const isAkin = ({ fruitIds }: BatchSummary) => fruitIds.some((id) => fruits.has(id))
  return all
    .filter(({ batch, startedAt }) => startedAt !== undefined && !ids.includes(batch.id))
    .toSorted(
      (a, b) =>
        Number(isAkin(b)) - Number(isAkin(a)) ||
        (b.startedAt ?? '').localeCompare(a.startedAt ?? ''),
    )
}
