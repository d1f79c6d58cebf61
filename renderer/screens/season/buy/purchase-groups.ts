/** The purchase list in the order it is worked through: what is due first, what is bought last. */
import { msPerDay } from '../../../../shared/spans-of-time.ts'
import { Shop, type PurchaseLine } from '../../../../shared/schemas/season.ts'

export interface PurchaseGroup {
  readonly key: string
  readonly of: 'now' | 'week' | 'shop' | 'bought'
  /** Of the week, or of the shop. */
  readonly from: string
  readonly shop: Shop | undefined
  readonly lines: readonly PurchaseLine[]
}

/** 1970 began on a Thursday. */
const firstMondayMs = 4 * msPerDay

/** Monday of the next week in UTC, as the plan counts its weeks. */
const nextMondayMs = (now: Date): number =>
  firstMondayMs + (Math.floor((now.getTime() - firstMondayMs) / (7 * msPerDay)) + 1) * 7 * msPerDay

/** Wanted by the end of this week, and not bought yet. */
export const isDue = ({ ticked, from }: PurchaseLine, now: Date): boolean =>
  ticked === undefined && Date.parse(from) < nextMondayMs(now)

export function purchaseGroups(
  lines: readonly PurchaseLine[],
  by: 'week' | 'shop',
  now: Date,
): PurchaseGroup[] {
  const inOrder = lines.toSorted(
    (a, b) => a.week - b.week || Shop.options.indexOf(a.shop) - Shop.options.indexOf(b.shop),
  )
  const open = inOrder.filter(({ ticked }) => ticked === undefined)
  const due = open.filter((line) => isDue(line, now))
  const later = open.filter((line) => !isDue(line, now))
  const bought = inOrder.filter(({ ticked }) => ticked !== undefined)
  const grouped = by === 'week' ? byWeek(later) : byShop(later)
  return [...group('now', 'now', due), ...grouped, ...group('bought', 'bought', bought)]
}

const byWeek = (lines: readonly PurchaseLine[]) =>
  [...Map.groupBy(lines, ({ week }) => week)].flatMap(([week, own]) =>
    group(`week ${week}`, 'week', own),
  )

const byShop = (lines: readonly PurchaseLine[]) =>
  Shop.options.flatMap((shop) =>
    group(
      `shop ${shop}`,
      'shop',
      lines.filter((line) => line.shop === shop),
    ),
  )

function group(
  key: string,
  of: PurchaseGroup['of'],
  lines: readonly PurchaseLine[],
): PurchaseGroup[] {
  const [first] = lines
  return first ? [{ key, of, from: first.from, shop: first.shop, lines }] : []
}
