/** Which batches the list shows, and in what order. */
import type { BatchSummary } from '../../../shared/schemas/cellar.ts'
import { plain } from '../../../shared/plain.ts'
import { stageGroupOf, type StageGroup } from './stage-groups.ts'
import { Stage } from '../../../shared/schemas/cellar.ts'
import { collatorOf } from '../../parts/formatters/formatters.ts'

export const sortKeys = ['name', 'stage', 'age', 'volume', 'strength', 'sugar', 'next'] as const
export type SortKey = (typeof sortKeys)[number]

export interface Order {
  readonly by: SortKey
  readonly isDescending: boolean
}

export interface Wanted {
  readonly group: StageGroup | 'all'
  readonly search: string
  readonly order: Order
  readonly locale: string
  /** Names by which a batch is also found: of its fruits and jars. */
  readonly alsoNamed: (summary: BatchSummary) => readonly string[]
}

export function listOfBatches(
  all: readonly BatchSummary[],
  { group, search, order, locale, alsoNamed }: Wanted,
): BatchSummary[] {
  const words = plain(search).split(/\s+/).filter(Boolean)
  const isWanted = (summary: BatchSummary) => {
    const text = plain([summary.batch.name, ...alsoNamed(summary)].join(' '))
    return words.every((word) => text.includes(word))
  }
  const collator = collatorOf(locale)
  const direction = order.isDescending ? -1 : 1
  return all
    .filter(({ stage }) => group === 'all' || stageGroupOf(stage) === group)
    .filter(isWanted)
    .toSorted((a, b) => compare(a, b, order.by, direction, collator))
}

function compare(
  a: BatchSummary,
  b: BatchSummary,
  by: SortKey,
  direction: 1 | -1,
  collator: Intl.Collator,
): number {
  const byName = collator.compare(a.batch.name, b.batch.name)
  if (by === 'name') return direction * byName
  const [left, right] = [measure(a, by), measure(b, by)]
  // What has no value stands last, whichever way the list runs.
  if (left === undefined || right === undefined)
    return Number(left === undefined) - Number(right === undefined) || byName
  return direction * (left - right) || byName
}

/** Bottles can wait to be tasted: they stand after everything that can't. */
function nextMs(next: BatchSummary['next']): number | undefined {
  if (next === undefined) return undefined
  return new Date(next.due).getTime() + (next.kind === 'taste' ? 1e14 : 0)
}

function measure(summary: BatchSummary, by: Exclude<SortKey, 'name'>): number | undefined {
  const { stage, startedAt, liquid, next } = summary
  switch (by) {
    case 'stage':
      return Stage.options.indexOf(stage)
    case 'age':
      return startedAt === undefined ? undefined : -new Date(startedAt).getTime()
    case 'volume':
      return liquid?.volumeMl
    case 'strength':
      return liquid?.strengthPctVol
    case 'sugar':
      return liquid?.sugarGPerL
    case 'next':
      return nextMs(next)
  }
}
