/** A purchase list in words and groups, as paper and spreadsheet tell it. */
import type { Settings } from '../../shared/channels.ts'
import type { Fruit } from '../../shared/schemas/fruits.ts'
import { Shop, type PurchaseLine, type PurchaseList } from '../../shared/schemas/season.ts'
import type { PaperQuantities } from './paper-quantities.ts'
import type { PaperWords } from './words/paper-words.ts'

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

const shops = Shop.options

/** By week with the shops in order, or by shop with the weeks in order. */
export function purchaseGroups(
  { list, by }: Pick<PurchasesToTell, 'list' | 'by'>,
  q: PaperQuantities,
  { purchases: say }: PaperWords,
): PurchaseGroup[] {
  const inOrder = [...list.lines].sort((a, b) =>
    by === 'week'
      ? a.week - b.week || shops.indexOf(a.shop) - shops.indexOf(b.shop)
      : shops.indexOf(a.shop) - shops.indexOf(b.shop) || a.week - b.week,
  )
  const grouped = Map.groupBy(inOrder, (line) =>
    by === 'week' ? say.week(q.day(line.from)) : say.shop(line.shop),
  )
  return [...grouped].map(([title, lines]) => ({ title, lines }))
}

/** What it is, without the amount. */
export function goodsWords(
  { what, fruitId, strengthPctVol, sweetenerId, bottleSizeMl }: PurchaseLine,
  fruitOf: PurchasesToTell['fruitOf'],
  q: PaperQuantities,
  { purchases: say, fruitName }: PaperWords,
): string {
  switch (what) {
    case 'fruit':
      return fruitId === undefined ? say.anyFruit : fruitName(fruitOf(fruitId))
    case 'spirit':
      return say.spirit(q.strength(strengthPctVol ?? 0))
    case 'sweetener':
      return say.sweetener(sweetenerId ?? 'sugar')
    case 'bottle':
      return say.bottle(q.volume(bottleSizeMl ?? 0))
    case 'cork':
      return say.cork
    case 'label':
      return say.label
  }
}

/** The kinds it is bought for, each once. */
export const purposeWords = (
  { batches }: PurchaseLine,
  fruitOf: PurchasesToTell['fruitOf'],
  { fruitName }: PaperWords,
): string => [...new Set(batches.map(({ kindId }) => fruitName(fruitOf(kindId))))].join(', ')

/** "Sugar, 2.00 kg, for Sour cherry, Damson": a line of a shopping note. */
export function shoppingWords(
  line: PurchaseLine,
  fruitOf: PurchasesToTell['fruitOf'],
  q: PaperQuantities,
  words: PaperWords,
): string {
  const goods = goodsWords(line, fruitOf, q, words)
  const purpose = purposeWords(line, fruitOf, words)
  const isPlain = purpose === '' || purpose === goods
  return `${goods}, ${amountWords(line, q)}${isPlain ? '' : `, ${words.purchases.for(purpose)}`}`
}

export function amountWords({ massG, volumeMl, count }: PurchaseLine, q: PaperQuantities): string {
  if (massG !== undefined) return q.mass(massG)
  return volumeMl !== undefined ? q.volume(volumeMl) : String(count ?? 0)
}
