/** A purchase list in words and groups, as paper and spreadsheet tell it. */
import type { Settings } from '../../shared/channels.ts'
import type { Fruit } from '../../shared/schemas/fruits.ts'
import type { PurchaseLine, PurchaseList, Shop } from '../../shared/schemas/season.ts'
import type { PaperQuantities } from './paper-quantities.ts'

export interface PurchasesToTell {
  readonly list: PurchaseList
  readonly by: 'week' | 'shop'
  readonly settings: Settings
  readonly fruitOf: (fruitId: string) => Fruit
}

export interface PurchaseGroup {
  readonly title: string
  readonly lines: readonly PurchaseLine[]
}

export const shopWords: Record<Shop, string> = {
  market: 'Market',
  hedgerow: 'Hedgerow',
  grocer: 'Grocer',
  spirits: 'Spirit shop',
  supplies: 'Bottles and corks',
}

/** What is done there, as a calendar says it. */
export const shopDeeds: Record<Shop, string> = {
  market: 'Buy at the market',
  hedgerow: 'Gather from the hedgerow',
  grocer: 'Buy at the grocer',
  spirits: 'Buy at the spirit shop',
  supplies: 'Buy bottles and corks',
}

const shops = Object.keys(shopWords) as Shop[]

/** By week with the shops in order, or by shop with the weeks in order. */
export function purchaseGroups(
  { list, by }: Pick<PurchasesToTell, 'list' | 'by'>,
  q: PaperQuantities,
): PurchaseGroup[] {
  const inOrder = [...list.lines].sort((a, b) =>
    by === 'week'
      ? a.week - b.week || shops.indexOf(a.shop) - shops.indexOf(b.shop)
      : shops.indexOf(a.shop) - shops.indexOf(b.shop) || a.week - b.week,
  )
  const grouped = Map.groupBy(inOrder, (line) =>
    by === 'week' ? `Week of ${q.day(line.from)}` : shopWords[line.shop],
  )
  return [...grouped].map(([title, lines]) => ({ title, lines }))
}

/** What it is, without the amount. */
export function goodsWords(
  { what, fruitId, strengthPctVol, sweetenerId, bottleSizeMl }: PurchaseLine,
  fruitOf: PurchasesToTell['fruitOf'],
  q: PaperQuantities,
): string {
  switch (what) {
    case 'fruit':
      return fruitId === undefined ? 'fruit' : fruitOf(fruitId).nameEn
    case 'spirit':
      return `Spirit at ${q.strength(strengthPctVol ?? 0)}`
    case 'sweetener':
      return sweetenerId === 'honey' ? 'Honey' : 'Sugar'
    case 'bottle':
      return `Bottles of ${q.volume(bottleSizeMl ?? 0)}`
    case 'cork':
      return 'Corks'
    case 'label':
      return 'Labels'
  }
}

/** The kinds it is bought for, each once. */
export const purposeWords = (
  { batches }: PurchaseLine,
  fruitOf: PurchasesToTell['fruitOf'],
): string => [...new Set(batches.map(({ kindId }) => fruitOf(kindId).nameEn))].join(', ')

/** "Sugar, 2.00 kg, for Sour cherry, Damson": a line of a shopping note. */
export function shoppingWords(
  line: PurchaseLine,
  fruitOf: PurchasesToTell['fruitOf'],
  q: PaperQuantities,
): string {
  const goods = goodsWords(line, fruitOf, q)
  const purpose = purposeWords(line, fruitOf)
  const isPlain = purpose === '' || purpose === goods
  return `${goods}, ${amountWords(line, q)}${isPlain ? '' : `, for ${purpose}`}`
}

export function amountWords({ massG, volumeMl, count }: PurchaseLine, q: PaperQuantities): string {
  if (massG !== undefined) return q.mass(massG)
  return volumeMl !== undefined ? q.volume(volumeMl) : String(count ?? 0)
}
