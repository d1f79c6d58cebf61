/** The purchase list of the newest plan kept, with what of it is bought. */
import { massOf } from '../../shared/matter.ts'
import { purchaseTicks, type PurchaseTick } from '../cellar/purchase-store.ts'
import { newestSeasonPlan } from '../cellar/season-store.ts'
import type {
  PurchaseLine,
  PurchaseList,
  SeasonPlan,
  SeasonPurchase,
} from '../../shared/schemas/season.ts'
import { msPerDay } from '../../shared/spans-of-time.ts'
import { instant } from './lot-rows.ts'
import type { Session } from './session.ts'

export function purchaseList(session: Session): PurchaseList {
  const kept = newestSeasonPlan(session.book)
  if (!kept) return { weekStarts: [], lines: [], openMinor: 0, paidMinor: 0 }
  const { id, plan, keptAt } = kept
  const ticks = currentTicks(session)
  const lines = [...plan.purchases]
    .sort((a, b) => a.week - b.week || compare(a.shop, b.shop) || compare(a.key, b.key))
    .map((purchase) => {
      const told = { ...purchase, batches: batchesOf(plan, purchase) }
      return lineOf(session, told, ticks.get(purchase.key))
    })
  const lastWeek = Math.max(plan.weekCount - 1, ...lines.map(({ week }) => week))
  return {
    planId: id,
    planKeptAt: keptAt,
    weekStarts: Array.from({ length: lastWeek + 1 }, (_, week) =>
      instant(Date.parse(plan.startAt) + week * 7 * msPerDay),
    ),
    lines,
    openMinor: sum(
      lines.filter(({ ticked }) => !ticked),
      ({ priceMinor }) => priceMinor,
    ),
    paidMinor: sum(lines, ({ ticked }) => ticked?.priceMinor),
  }
}

const sum = (
  lines: readonly PurchaseLine[],
  of: (line: PurchaseLine) => number | undefined,
): number => lines.reduce((total, line) => total + (of(line) ?? 0), 0)

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)

/** A purchase that was undone in the ledger is bought no more. */
export function currentTicks({ book, ledger }: Session): Map<string, PurchaseTick> {
  const there = new Set(ledger.moves.map(({ id }) => id))
  return new Map(
    [...purchaseTicks(book)].filter(([, { moveId }]) => moveId === undefined || there.has(moveId)),
  )
}

const batchesOf = ({ batches }: SeasonPlan, { batchKeys }: SeasonPurchase) =>
  batches
    .filter(({ key }) => batchKeys.includes(key))
    .map(({ kindId, startAt }) => ({ kindId, startAt }))
    .sort((a, b) => compare(a.startAt, b.startAt) || compare(a.kindId, b.kindId))

function lineOf(
  session: Session,
  open: PurchaseLine,
  tick: PurchaseTick | undefined,
): PurchaseLine {
  if (!tick) return open
  const { lineKey: _key, moveId: _move, ...told } = tick
  return { ...open, ticked: { ...told, canBeTakenBack: isUnused(session, tick.lotId) } }
}

/** As much is there as was bought; what the pantry keeps no account of can always be taken back. */
function isUnused({ ledger }: Session, lotId: string | undefined): boolean {
  if (lotId === undefined) return true
  const lot = ledger.folded.cellar.lots.get(lotId)
  return lot !== undefined && massOf(lot.bought) - massOf(lot.matter) < 0.01
}
