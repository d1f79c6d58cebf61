/** The purchase list for a spreadsheet: one row a line, plain numbers in the units that the head names. */
import type { Settings } from '../../shared/channels.ts'
import { csv, type Cell } from './csv.ts'
import { paperQuantities } from './paper-quantities.ts'
import { paperWords } from './words/paper-words.ts'
import { goodsWords, purchaseGroups, purposeWords, type PurchasesToTell } from './purchase-lines.ts'

export function purchaseCsv(purchases: PurchasesToTell): string {
  const { settings, fruitOf } = purchases
  const q = paperQuantities(settings)
  const words = paperWords(settings)
  const perMinor = 10 ** -minorDigits(settings.locale, settings.currency)
  const { columns, shop } = words.purchases
  const { mass, volume } = measures[settings.units]
  const head = [
    columns.week,
    columns.shop,
    columns.goods,
    mass.symbol,
    volume.symbol,
    columns.count,
    columns.price(settings.currency),
    columns.bought,
    columns.for,
  ]
  const rows = purchaseGroups(purchases, q, words).flatMap(({ lines }) =>
    lines.map((line): Cell[] => [
      line.from.slice(0, 10),
      shop(line.shop),
      goodsWords(line, fruitOf, q, words),
      measured(line.massG, mass),
      measured(line.volumeMl, volume),
      line.count,
      line.priceMinor === undefined ? undefined : Number((line.priceMinor * perMinor).toFixed(4)),
      line.ticked?.at.slice(0, 10),
      purposeWords(line, fruitOf, words),
    ]),
  )
  return csv([head, ...rows])
}

interface Measure {
  readonly symbol: string
  /** Grams or millilitres in one. */
  readonly size: number
  readonly decimals: number
}

const measures: Readonly<
  Record<Settings['units'], { readonly mass: Measure; readonly volume: Measure }>
> = {
  metric: {
    mass: { symbol: 'g', size: 1, decimals: 0 },
    volume: { symbol: 'ml', size: 1, decimals: 0 },
  },
  us: {
    mass: { symbol: 'lb', size: 453.59237, decimals: 2 },
    volume: { symbol: 'qt', size: 946.352946, decimals: 2 },
  },
}

const measured = (amount: number | undefined, { size, decimals }: Measure): number | undefined =>
  amount === undefined ? undefined : Number((amount / size).toFixed(decimals))

const minorDigits = (locale: string, currency: string): number =>
  new Intl.NumberFormat(locale, { style: 'currency', currency }).resolvedOptions()
    .maximumFractionDigits ?? 2
