/** The purchase list for a spreadsheet: one row a line, plain numbers in the units that the head names. */
import { csv, type Cell } from './csv.ts'
import { paperQuantities } from './paper-quantities.ts'
import {
  goodsWords,
  purchaseGroups,
  purposeWords,
  shopWords,
  type PurchasesToTell,
} from './purchase-lines.ts'

export function purchaseCsv(purchases: PurchasesToTell): string {
  const { settings, fruitOf } = purchases
  const q = paperQuantities(settings)
  const perMinor = 10 ** -minorDigits(settings.locale, settings.currency)
  const head = [
    'Week of',
    'Shop',
    'Goods',
    'g',
    'mL',
    'Count',
    `Price (${settings.currency})`,
    'Bought on',
    'For',
  ]
  const rows = purchaseGroups(purchases, q).flatMap(({ lines }) =>
    lines.map((line): Cell[] => [
      line.from.slice(0, 10),
      shopWords[line.shop],
      goodsWords(line, fruitOf, q),
      rounded(line.massG),
      rounded(line.volumeMl),
      line.count,
      line.priceMinor === undefined ? undefined : Number((line.priceMinor * perMinor).toFixed(4)),
      line.ticked?.at.slice(0, 10),
      purposeWords(line, fruitOf),
    ]),
  )
  return csv([head, ...rows])
}

const rounded = (amount: number | undefined): number | undefined =>
  amount === undefined ? undefined : Math.round(amount)

const minorDigits = (locale: string, currency: string): number =>
  new Intl.NumberFormat(locale, { style: 'currency', currency }).resolvedOptions()
    .maximumFractionDigits ?? 2
