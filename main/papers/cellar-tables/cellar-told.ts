/** What the tables of a whole cellar are made from, and how they name and round it. */
import type {
  BatchSummary,
  BottleLot,
  Jar,
  JarContents,
  PantryLot,
} from '../../../shared/schemas/cellar.ts'
import type { Goods } from '../../../shared/schemas/goods.ts'
import type { RecordedMove } from '../../../shared/schemas/moves.ts'
import type { Interpretation } from '../../../shared/schemas/readings.ts'
import type { Shelf } from '../../../shared/schemas/shelf.ts'
import type { Cell } from '../csv.ts'
import type { PaperWords } from '../words/paper-words.ts'

export interface CellarTold {
  readonly words: PaperWords['tables']
  readonly currency: string
  readonly batches: readonly BatchSummary[]
  readonly jars: readonly { readonly jar: Jar; readonly contents: JarContents | undefined }[]
  readonly shelves: readonly Shelf[]
  readonly pantry: readonly PantryLot[]
  readonly bottleLots: readonly BottleLot[]
  /** As they stand now, by their own instants. */
  readonly moves: readonly RecordedMove[]
  /** What each reading meant, by its move. */
  readonly interpretations: ReadonlyMap<string, Interpretation>
  readonly fruitName: (fruitId: string) => string
}

/** A table for a spreadsheet; the head names each column with its unit. */
export interface CellarTable {
  readonly name: string
  readonly head: readonly string[]
  readonly rowCount: number
  readonly rows: () => Iterable<readonly Cell[]>
}

export interface CellarNames {
  readonly batch: (id: string | undefined) => string | undefined
  readonly jar: (id: string | undefined) => string | undefined
  readonly shelf: (id: string | null | undefined) => string | undefined
  readonly pantryLot: (id: string | undefined) => string | undefined
  readonly bottleLot: (id: string | undefined) => string | undefined
  readonly goods: (goods: Goods) => string
}

export function cellarNames(told: CellarTold): CellarNames {
  const batches = new Map(told.batches.map(({ batch: { id, name } }) => [id, name]))
  const jars = new Map(told.jars.map(({ jar: { id, name } }) => [id, name]))
  const shelves = new Map(told.shelves.map(({ id, name }) => [id, name]))
  const goods = new Map(told.pantry.map((lot) => [lot.id, lot.goods]))
  const bottles = new Map(told.bottleLots.map(({ id, name }) => [id, name]))
  const ofGoods = (each: Goods) => goodsName(each, told)
  return {
    batch: named(batches),
    jar: named(jars),
    shelf: named(shelves),
    bottleLot: named(bottles),
    goods: ofGoods,
    pantryLot: (id) => {
      const known = goods.get(id ?? '')
      return known ? ofGoods(known) : id
    },
  }
}

const named = (names: ReadonlyMap<string, string>) => (id: string | null | undefined) =>
  id === undefined || id === null ? undefined : (names.get(id) ?? id)

function goodsName(goods: Goods, { fruitName, words }: CellarTold): string {
  if (goods.name !== undefined) return goods.name
  switch (goods.kind) {
    case 'fruit':
      return fruitName(goods.fruitId)
    case 'spirit':
      return words.spirit(goods.strengthPctVol)
    case 'sweetener':
      return words.sweetener(goods.sweetenerId === 'honey' ? 'honey' : 'sugar')
    case 'acid':
      return words.acid
  }
}

/** Exact numbers stand under data/; these are for reading. */
export const rounded = (amount: number | undefined, digits = 0): number | undefined =>
  amount === undefined ? undefined : Number(amount.toFixed(digits))

/** Prices in the currency, not in its smallest unit. */
export function pricedIn(currency: string): (minor: number | undefined) => number | undefined {
  const digits =
    new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions()
      .maximumFractionDigits ?? 2
  return (minor) => (minor === undefined ? undefined : rounded(minor / 10 ** digits, digits))
}
