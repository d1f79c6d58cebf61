/** Random cellars for properties of the ledger: wishes played against what stands there. */
import fc from 'fast-check'
import { massOf } from '../../../shared/matter.ts'
import type { RecordedMove } from '../../../shared/schemas/moves.ts'
import { fold, fruitOf, liquidVolumeMl, type CellarState } from '../../../main/engine/index.ts'
import { buyAcid, buyFruit, buySpirit, buySugar, recorded, type Deed } from './book-of-moves.ts'
import { fromShelf, pick, shelfDeedOf, shelfKinds, shelfOf, type Wish } from './shelf-wishes.ts'

const jarIds = ['north', 'south', 'big', 'small', 'spare'] as const
const fruitIds = ['sour_cherry', 'raspberry', 'quince', 'ginger', 'dried_plum'] as const

/** Kinds of wishes beyond this are for the shelf. */
const lastJarKind = 21

const wish: fc.Arbitrary<Wish> = fc.record({
  kind: fc.nat(lastJarKind + shelfKinds),
  jar: fc.nat(jarIds.length - 1),
  other: fc.nat(jarIds.length - 1),
  share: fc.double({ min: 0.01, max: 1, noNaN: true }),
  waitDays: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 120, noNaN: true })),
})

const wishOf = (kind: number, jar = 0, share = 1): Wish => ({
  kind,
  jar,
  other: 2,
  share,
  waitDays: 1,
})

/** Spirit and water in two jars, and bottles of half a litre on the shelf. */
const bottled = [
  ...[1, 8, 8, 8, 6].map((kind) => wishOf(kind)),
  ...[1, 8, 8, 6].map((kind) => wishOf(kind, 1, 0.8)),
  wishOf(lastJarKind + 1),
]

/** Anything at all, or mostly what happens on a shelf with bottles. */
export const histories = (size: fc.ArrayConstraints) =>
  fc.oneof(
    fc.array(wish, size),
    fc
      .array(
        fc.oneof(
          { weight: 1, arbitrary: wish },
          {
            weight: 4,
            arbitrary: fc
              .tuple(wish, fc.nat(shelfKinds - 1))
              .map(([any, kind]) => ({ ...any, kind: lastJarKind + 1 + kind })),
          },
        ),
        size,
      )
      .map((wishes) => [...bottled, ...wishes]),
  )

function deedOf(w: Wish, cellar: CellarState, serial: number): Deed {
  const jarId = pick(jarIds, w.jar)
  const otherId = pick(jarIds, w.other)
  const batchId = cellar.jars.get(jarId)?.batchId ?? `batch${w.other}`
  const jar = cellar.jars.get(jarId)
  const freeMl = jar ? liquidVolumeMl(jar.bodies.free) : 0
  const lots = [...cellar.lots]
  const lot = (kind: string) =>
    pick(
      lots.filter(([, l]) => l.goods.kind === kind),
      w.other,
    )
  const bottleLot = pick([...cellar.bottles], w.other)
  const id = `made${serial}`
  if (w.kind > lastJarKind) return shelfDeedOf(w.kind - lastJarKind - 1, w, cellar, id)
  const shelfId = shelfOf(w)
  switch (w.kind) {
    case 0:
      return buyFruit(id, pick(fruitIds, w.other), 200 + 5000 * w.share)
    case 1:
      return buySpirit(id, 200 + 3000 * w.share, 40 + 56 * w.share)
    case 2:
      return buySugar(id, 100 + 3000 * w.share)
    case 3:
    case 4: {
      const found = lot('fruit')
      if (!found) return buyFruit(id, 'sour_cherry', 2000)
      const massG = Math.max(1, massOf(found[1].matter) * w.share)
      const cut = pick(['whole', 'cut', 'frozen', 'crushed', 'pricked'] as const, w.other)
      const pieces = w.share < 0.3 ? { pieceMm: 1 + 100 * w.share } : {}
      const refuseG = massG * 0.08
      return { kind: 'charge', batchId, jarId, lotId: found[0], massG, refuseG, cut, ...pieces }
    }
    case 5: {
      const found = lot('sweetener')
      if (!found) return buySugar(id, 2000)
      return {
        kind: 'sugar',
        batchId,
        jarId,
        lotId: found[0],
        massG: Math.max(1, massOf(found[1].matter) * w.share),
      }
    }
    case 20: {
      const found = lot('acid')
      if (!found) return buyAcid(id, 20 + 200 * w.share)
      return {
        kind: 'addAcid',
        batchId,
        jarId,
        lotId: found[0],
        massG: Math.max(1, massOf(found[1].matter) * w.share),
      }
    }
    case 6:
    case 7: {
      const found = lot('spirit')
      if (!found) return buySpirit(id, 3000, 95)
      const volumeMl = Math.max(1, liquidVolumeMl(found[1].matter) * w.share)
      return { kind: 'pourSpirit', batchId, jarId, lotId: found[0], volumeMl }
    }
    case 8:
      return { kind: 'pourWater', batchId, jarId, volumeMl: 20 + 1500 * w.share }
    case 9:
      return {
        kind: 'drawOff',
        batchId,
        fromJarId: jarId,
        toJarId: otherId,
        ...(w.share < 0.5 && { volumeMl: Math.max(1, freeMl * 2 * w.share) }),
      }
    case 10:
      return { kind: 'press', batchId, fromJarId: jarId, toJarId: otherId }
    case 11:
      return { kind: 'crush', batchId, jarId }
    case 12: {
      const found = lot('sweetener')
      if (!found) return buySugar(id, 2000)
      return {
        kind: 'coverWithSugar',
        batchId,
        jarId,
        lotId: found[0],
        massG: Math.max(1, massOf(found[1].matter) * w.share),
      }
    }
    case 13:
      return {
        kind: 'marry',
        batchId,
        parts: jarIds
          .filter((_, i) => (w.other >> (i % 3)) % 2 === 0)
          .map((part) => ({ jarId: part }))
          .concat([{ jarId }])
          .filter((part, i, all) => all.findIndex((p) => p.jarId === part.jarId) === i),
        toJarId: otherId,
      }
    case 14:
      return { kind: 'filter', batchId, fromJarId: jarId, toJarId: otherId, medium: 'paper' }
    case 15:
      return {
        kind: 'bottle',
        batchId,
        fromJarId: jarId,
        bottleLotId: id,
        bottleSizeMl: 500,
        count: Math.max(1, Math.floor((freeMl / 500) * w.share)),
        ...(shelfId !== null && { shelfId }),
      }
    case 16:
      return bottleLot
        ? {
            kind: w.share < 0.5 ? 'drawBottle' : 'give',
            bottleLotId: bottleLot[0],
            count: 1,
            ...fromShelf(w),
          }
        : { kind: 'stir', batchId, jarId }
    case 17:
      return {
        kind: 'discard',
        from: { jarId, part: pick(['all', 'pulp', 'liquid'] as const, w.other) },
      }
    case 18:
      return bottleLot
        ? {
            kind: 'unbottle',
            batchId,
            bottleLotId: bottleLot[0],
            count: 1,
            toJarId: jarId,
            ...fromShelf(w),
          }
        : { kind: 'stir', batchId, jarId }
    case 19:
      return {
        kind: 'keep',
        batchId,
        jarId,
        temperatureC: 40 * w.share,
        turned: pick(['daily', 'weekly', 'never'] as const, w.other),
      }
    default:
      return {
        kind: 'correct',
        found: { jarId, volumeMl: Math.max(1, freeMl * (0.8 + 0.4 * w.share)) },
      }
  }
}

export interface History {
  readonly cellar: CellarState
  readonly moves: readonly RecordedMove[]
  readonly refused: number
}

/** Plays wishes one by one, calling `look` before and after each move that the ledger allows. */
export function play(
  wishes: readonly Wish[],
  look: (
    before: CellarState,
    after: CellarState,
    step: ReturnType<typeof fold>['steps'][number],
  ) => void,
): History {
  let cellar: CellarState = fold([], { fruitOf }).cellar
  const moves: RecordedMove[] = []
  let day = 0
  let refused = 0
  for (const [index, w] of wishes.entries()) {
    day += w.waitDays
    const [made] = recorded([[day, deedOf(w, cellar, index)]])
    const move = { ...(made as RecordedMove), id: `m${index}`, seq: index + 1 }
    const next = fold([move], { fruitOf, from: cellar })
    const step = next.steps[0]
    if (!step) refused += 1
    else {
      look(cellar, next.cellar, step)
      moves.push(move)
    }
    cellar = next.cellar
  }
  return { cellar, moves, refused }
}
