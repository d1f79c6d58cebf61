/**
 * Ticking a line of the purchase list: one transaction for the purchase in the ledger and the tick.
 * Both ways answer which group of moves that made, null where the ledger keeps no account of it.
 */
import { nextSeq } from '../cellar/move-store.ts'
import { putTick, removeTick, type PurchaseTick } from '../cellar/purchase-store.ts'
import type { Goods } from '../../shared/schemas/goods.ts'
import type { Move, RecordedMove } from '../../shared/schemas/moves.ts'
import type { PurchaseLine, TickPurchase } from '../../shared/schemas/season.ts'
import { stepsOfMoves, withAmendment, withMoves } from './ledger-view.ts'
import { checkedMoves } from './move-checks.ts'
import { mustHold, write } from './move-writing.ts'
import { currentTicks } from './purchase-list.ts'
import { ServiceError } from './service-error.ts'
import type { Session } from './session.ts'

export function tick(session: Session, line: PurchaseLine, asked: TickPurchase): string | null {
  const { book, options } = session
  const bought = boughtOf(line, asked, options.now().toISOString())
  const goods = goodsOf(line)
  if (!goods) {
    book.transaction(() => putTick(book, bought)).immediate()
    return null
  }
  const { at, massG, volumeMl, priceMinor } = bought
  const lotId = options.newId()
  const move: Move = {
    kind: 'buy',
    at,
    lotId,
    goods,
    ...(massG !== undefined && { massG }),
    ...(volumeMl !== undefined && { volumeMl }),
    ...(priceMinor !== undefined && { priceMinor: Math.round(priceMinor) }),
  }
  const groupId = options.newId()
  const recorded: RecordedMove = {
    id: options.newId(),
    seq: nextSeq(book),
    groupId,
    recordedAt: options.now().toISOString(),
    version: 1,
    move: checkedMoves(session, [move])[0] as Move,
  }
  const view = withMoves(session.ledger, [recorded])
  mustHold(session.ledger, view, [recorded])
  book
    .transaction(() => {
      putTick(book, { ...bought, lotId, moveId: recorded.id })
      write(session, {
        requestKey: asked.key,
        groupId,
        rows: [{ id: recorded.id, version: 1, move: recorded.move }],
        view,
        newSteps: stepsOfMoves(view, new Set([recorded.id])),
      })
    })
    .immediate()
  return groupId
}

/**
 * Strikes the purchase again; refused once some of it was used. The tick stays with the struck
 * move and counts no longer: it is there again when the strike is taken back.
 */
export function untick(session: Session, line: PurchaseLine, { key }: TickPurchase): string | null {
  const { book, options } = session
  const { moveId } = currentTicks(session).get(line.key) as PurchaseTick
  if (moveId === undefined) {
    book.transaction(() => removeTick(book, line.key)).immediate()
    return null
  }
  if (!line.ticked?.canBeTakenBack)
    throw new ServiceError('stillInUse', `some of ${line.key} is used already`, { id: line.key })
  const current = session.ledger.moves.find(({ id }) => id === moveId) as RecordedMove
  const view = withAmendment(session.ledger, moveId, null)
  mustHold(session.ledger, view, [])
  const groupId = options.newId()
  const rows = [{ id: moveId, version: current.version + 1, move: null }]
  write(session, { requestKey: key, groupId, rows, view })
  return groupId
}

/** As planned where the maker says nothing else; the price goes with the amount. */
function boughtOf(line: PurchaseLine, asked: TickPurchase, now: string): PurchaseTick {
  const massG = line.massG === undefined ? undefined : (asked.massG ?? line.massG)
  const volumeMl = line.volumeMl === undefined ? undefined : (asked.volumeMl ?? line.volumeMl)
  const count = line.count === undefined ? undefined : (asked.count ?? line.count)
  const plannedAmount = line.massG ?? line.volumeMl ?? line.count ?? 1
  const share = (massG ?? volumeMl ?? count ?? 1) / plannedAmount
  const priceMinor =
    asked.priceMinor ??
    (line.priceMinor === undefined ? undefined : Math.round(line.priceMinor * share))
  return {
    lineKey: line.key,
    moveId: undefined,
    at: asked.at ?? now,
    ...(massG !== undefined && { massG }),
    ...(volumeMl !== undefined && { volumeMl }),
    ...(count !== undefined && { count }),
    ...(priceMinor !== undefined && { priceMinor }),
  }
}

/** Undefined for what the ledger keeps no account of. */
function goodsOf({ what, fruitId, strengthPctVol, sweetenerId }: PurchaseLine): Goods | undefined {
  switch (what) {
    case 'fruit':
      return fruitId === undefined ? undefined : { kind: 'fruit', fruitId }
    case 'spirit':
      return strengthPctVol === undefined ? undefined : { kind: 'spirit', strengthPctVol }
    case 'sweetener':
      return sweetenerId === undefined ? undefined : { kind: 'sweetener', sweetenerId }
    case 'bottle':
    case 'cork':
    case 'label':
      return undefined
  }
}
