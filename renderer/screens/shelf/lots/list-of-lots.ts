/** Which lots the list shows, in what order, and what they come to together. */
import { Verdict } from '../../../../shared/schemas/moves.ts'
import type { ShelfLot } from '../../../../shared/schemas/shelf.ts'
import { plain } from '../../../../shared/plain.ts'
import { collatorOf } from '../../../parts/formatters/formatters.ts'

/** A lot with the names that it is found and sorted by. */
export interface ListedLot {
  readonly shelfLot: ShelfLot
  readonly kind: string
  /** What it is found by, made plain once. */
  readonly searched: string
}

export const lotColumns = [
  'name',
  'vintage',
  'size',
  'left',
  'place',
  'phase',
  'strength',
  'sugar',
  'cost',
] as const
export type LotColumn = (typeof lotColumns)[number]

/** Sorting by place would sort lots that stand in several. */
export const sortColumns = lotColumns.filter((column) => column !== 'place')
export type SortColumn = Exclude<LotColumn, 'place'>

export interface Order {
  readonly by: SortColumn
  readonly isDescending: boolean
}

export interface LotFilter {
  readonly search: string
  readonly kindId: string | undefined
  readonly vintage: number | undefined
  readonly sizeMl: number | undefined
  /** Null is bottles without a place. */
  readonly shelfId: string | null | undefined
  readonly phase: Verdict | undefined
}

export const noFilter: LotFilter = {
  search: '',
  kindId: undefined,
  vintage: undefined,
  sizeMl: undefined,
  shelfId: undefined,
  phase: undefined,
}

export function filteredLots(
  all: readonly ListedLot[],
  { search, kindId, vintage, sizeMl, shelfId, phase }: LotFilter,
): ListedLot[] {
  const words = plain(search).split(/\s+/).filter(Boolean)
  return all.filter(
    ({ shelfLot, searched }) =>
      (kindId === undefined || shelfLot.kindId === kindId) &&
      (vintage === undefined || shelfLot.vintage === vintage) &&
      (sizeMl === undefined || shelfLot.lot.bottleSizeMl === sizeMl) &&
      (shelfId === undefined || shelfLot.lot.places.some((place) => place.shelfId === shelfId)) &&
      (phase === undefined || shelfLot.window.phase === phase) &&
      words.every((word) => searched.includes(word)),
  )
}

export function sortedLots(all: readonly ListedLot[], order: Order, locale: string): ListedLot[] {
  const collator = collatorOf(locale)
  const direction = order.isDescending ? -1 : 1
  const byName = (a: ListedLot, b: ListedLot) =>
    collator.compare(a.shelfLot.lot.name, b.shelfLot.lot.name) ||
    a.shelfLot.lot.id.localeCompare(b.shelfLot.lot.id)
  if (order.by === 'name') return all.toSorted((a, b) => direction * byName(a, b))
  const { by } = order
  return all.toSorted((a, b) => {
    const [left, right] = [measure(a.shelfLot, by), measure(b.shelfLot, by)]
    // What has no value stands last, whichever way the list runs.
    if (left === undefined || right === undefined)
      return Number(left === undefined) - Number(right === undefined) || byName(a, b)
    return direction * (left - right) || byName(a, b)
  })
}

/** By window: what fades first stands first. */
function measure(
  { lot, vintage, window, costPerBottle }: ShelfLot,
  by: Exclude<SortColumn, 'name'>,
): number | undefined {
  switch (by) {
    case 'vintage':
      return vintage
    case 'size':
      return lot.bottleSizeMl
    case 'left':
      return lot.count
    case 'phase':
      return Date.parse(window.fadingAt.likely)
    case 'strength':
      return lot.liquid?.strengthPctVol
    case 'sugar':
      return lot.liquid?.sugarGPerL
    case 'cost':
      return costPerBottle
  }
}

export interface LotSums {
  readonly lots: number
  readonly bottles: number
  readonly volumeMl: number
  /** Absent where no price is known; `isComplete` is false where one is missing. */
  readonly cost: { readonly minor: number; readonly isComplete: boolean } | undefined
}

/** On one place only the bottles that stand there count. */
export function sumOfLots(shown: readonly ListedLot[], shelfId: LotFilter['shelfId']): LotSums {
  let [bottles, volumeMl, minor, priced] = [0, 0, 0, 0]
  for (const { shelfLot } of shown) {
    const count = bottlesAt(shelfLot, shelfId)
    bottles += count
    volumeMl += count * shelfLot.lot.bottleSizeMl
    if (shelfLot.costPerBottle === undefined) continue
    minor += count * shelfLot.costPerBottle
    priced += 1
  }
  const isComplete = priced === shown.length
  return {
    lots: shown.length,
    bottles,
    volumeMl,
    cost: priced === 0 ? undefined : { minor, isComplete },
  }
}

const bottlesAt = ({ lot }: ShelfLot, shelfId: LotFilter['shelfId']): number =>
  shelfId === undefined
    ? lot.count
    : (lot.places.find((place) => place.shelfId === shelfId)?.count ?? 0)

/** What there is to filter by, and how many lots are in each phase. */
export function choicesOf(all: readonly ListedLot[]) {
  const kinds = new Map(all.map(({ shelfLot, kind }) => [shelfLot.kindId, kind]))
  return {
    kinds: [...kinds].map(([id, name]) => ({ id, name })),
    vintages: distinct(all.map(({ shelfLot }) => shelfLot.vintage)).sort((a, b) => b - a),
    sizesMl: distinct(all.map(({ shelfLot }) => shelfLot.lot.bottleSizeMl)).sort((a, b) => a - b),
    shelfIds: distinct(
      all.flatMap(({ shelfLot }) => shelfLot.lot.places.map(({ shelfId }) => shelfId)),
    ),
    phases: Verdict.options.map((phase) => ({
      phase,
      count: all.filter(({ shelfLot }) => shelfLot.window.phase === phase).length,
    })),
  }
}

const distinct = <Value>(values: readonly Value[]): Value[] => [...new Set(values)]
