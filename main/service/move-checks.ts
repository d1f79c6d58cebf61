/** What a move must satisfy before the ledger looks at it, and how its refusal is told. */
import { batchById } from '../cellar/batch-store.ts'
import { allJars } from '../cellar/jar-store.ts'
import { allShelves } from '../cellar/shelf-store.ts'
import { sweetenerComposition, batchIdOf } from '../engine/index.ts'
import type { Refusal } from '../../shared/schemas/errors.ts'
import type { Move } from '../../shared/schemas/moves.ts'
import { tissueFor } from './learned-fruit.ts'
import type { LedgerView } from './ledger-view.ts'
import { instant } from './lot-rows.ts'
import { notFound, ServiceError } from './service-error.ts'
import { nowMs } from './handlers/handler.ts'
import type { Session } from './session.ts'

/** Clocks of a laptop and a phone differ a little; more than this is a plan, not a move. */
const clockSlackMs = 5 * 60_000

export const isInFuture = (session: Session, at: string): boolean =>
  Date.parse(at) > nowMs(session) + clockSlackMs

/**
 * The moves with what the library knows filled in; throws when they name what is not there. Batches
 * that are opened together with them are there.
 */
export function checkedMoves(
  session: Session,
  moves: readonly Move[],
  opening: ReadonlySet<string> = new Set(),
): Move[] {
  const jarIds = new Set(allJars(session.book).map((jar) => jar.id))
  const shelfIds = new Set(allShelves(session.book).map((shelf) => shelf.id))
  const named = new Set(moves.map(batchIdOf))
  const missing = [...named].find(
    (id) => id !== undefined && !opening.has(id) && !batchById(session.book, id),
  )
  if (missing !== undefined) throw notFound('batch', missing)
  return moves.map((move, index) => {
    if (isInFuture(session, move.at))
      throw new ServiceError('inTheFuture', 'a move cannot lie in the future', {
        at: move.at,
        index,
      })
    for (const jarId of jarsNamed(move)) if (!jarIds.has(jarId)) throw notFound('jar', jarId)
    for (const id of shelvesNamed(move)) if (!shelfIds.has(id)) throw notFound('shelf', id)
    return completed(session, move, moves)
  })
}

function jarsNamed(move: Move): string[] {
  switch (move.kind) {
    case 'charge':
    case 'sugar':
    case 'addAcid':
    case 'pourSpirit':
    case 'pourWater':
    case 'keep':
    case 'stir':
    case 'read':
    case 'crush':
    case 'coverWithSugar':
      return [move.jarId]
    case 'drawOff':
    case 'press':
    case 'filter':
      return [move.fromJarId, move.toJarId]
    case 'marry':
      return [...move.parts.map((part) => part.jarId), move.toJarId]
    case 'bottle':
      return [move.fromJarId]
    case 'unbottle':
      return [move.toJarId]
    case 'discard':
      return 'jarId' in move.from ? [move.from.jarId] : []
    case 'correct':
      return 'jarId' in move.found ? [move.found.jarId] : []
    case 'taste':
      return move.jarId === undefined ? [] : [move.jarId]
    case 'buy':
    case 'bringIn':
    case 'drawBottle':
    case 'give':
    case 'breakBottle':
    case 'shelve':
    case 'openBottle':
    case 'pourGlass':
    case 'topUp':
    case 'remark':
      return []
  }
}

const named = (...ids: (string | null | undefined)[]): string[] =>
  ids.filter((id) => id !== null && id !== undefined)

function shelvesNamed(move: Move): string[] {
  switch (move.kind) {
    case 'shelve':
      return named(move.fromShelfId, move.toShelfId)
    case 'discard':
      return 'shelfId' in move.from ? named(move.from.shelfId) : []
    case 'correct':
      return 'shelfId' in move.found ? named(move.found.shelfId) : []
    default:
      return 'shelfId' in move ? named(move.shelfId) : []
  }
}

/** A purchase keeps the composition of its day, and a charge how its fruit was known to steep. */
function completed(session: Session, move: Move, together: readonly Move[]): Move {
  if (move.kind === 'charge' && !move.tissue) {
    const fruitId = fruitIdOfLot(session, move.lotId, together)
    return fruitId === undefined ? move : { ...move, tissue: tissueFor(session, fruitId) }
  }
  if (move.kind !== 'buy') return move
  const { goods } = move
  switch (goods.kind) {
    case 'spirit':
    case 'acid':
      return move
    case 'sweetener': {
      const composition = goods.composition ?? sweetenerComposition(goods.sweetenerId)
      return { ...move, goods: { ...goods, composition } }
    }
    case 'fruit': {
      const fruit = session.fruits.find(goods.fruitId)
      if (!fruit) throw notFound('fruit', goods.fruitId)
      return { ...move, goods: { ...goods, composition: goods.composition ?? fruit.composition } }
    }
  }
}

/** The fruit of a pantry lot, bought earlier or in the same breath; undefined for anything else. */
function fruitIdOfLot(session: Session, lotId: string, together: readonly Move[]) {
  const bought = together.find((move) => move.kind === 'buy' && move.lotId === lotId)
  const goods =
    bought?.kind === 'buy' ? bought.goods : session.ledger.folded.cellar.lots.get(lotId)?.goods
  return goods?.kind === 'fruit' ? goods.fruitId : undefined
}

/** Where the matter came only later, that is the reason worth telling. */
export function dateAware(view: LedgerView, move: Move, refusal: Refusal): Refusal {
  if (refusal.code !== 'unknownPlace' && refusal.code !== 'nothingThere') return refusal
  const atMs = Date.parse(move.at)
  const later = view.folded.steps.find(
    (step) =>
      step.atMs > atMs && step.effect.transfers.some((transfer) => transfer.to === refusal.place),
  )
  if (!later) return refusal
  return { code: 'beforeItExisted', place: refusal.place, from: instant(later.atMs) }
}
