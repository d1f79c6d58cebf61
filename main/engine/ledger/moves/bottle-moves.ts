/** Full bottles: filling them, and where they go: the table, a friend, the floor, back into a jar. */
import { scaleMatter, splitMatter, sumMatter } from '../../../../shared/matter.ts'
import type { MoveOf } from '../../../../shared/schemas/moves.ts'
import { bottlesPlace, jarPlace, type CellarState } from '../cellar-state.ts'
import { freeVolumeMl } from '../jar-liquid.ts'
import {
  allowed,
  nothingThere,
  notEnough,
  refused,
  shareOf,
  slackMl,
  type Outcome,
} from '../refusal.ts'
import { added, standingOn, without } from '../shelf-counts.ts'
import type { MoveContext } from './context.ts'
import { afterTaking, occupiedJar, pourInto, receivingJar } from './jar-access.ts'

export function bottle(
  cellar: CellarState,
  move: MoveOf<'bottle'>,
  { atMs }: MoveContext,
): Outcome {
  const source = jarPlace(move.fromJarId)
  const lot = bottlesPlace(move.bottleLotId)
  if (cellar.bottles.has(move.bottleLotId)) return refused({ code: 'alreadyThere', place: lot })
  const jar = occupiedJar(cellar, move.fromJarId, move.batchId, atMs)
  if (!jar.ok) return jar
  const availableMl = freeVolumeMl(jar.found)
  if (availableMl < slackMl) return nothingThere(source)
  const { count, bottleSizeMl } = move
  const share = shareOf(count * bottleSizeMl, availableMl, slackMl)
  if (share === undefined) {
    const fits = Math.floor((availableMl + slackMl) / bottleSizeMl)
    return notEnough(source, 'bottles', count, availableMl / bottleSizeMl, fits)
  }
  const { part, rest } = splitMatter(jar.found.bodies.free, share)
  const after = afterTaking(move.fromJarId, {
    ...jar.found,
    bodies: { ...jar.found.bodies, free: rest },
  })
  return allowed({
    jars: new Map([[move.fromJarId, after.left]]),
    bottles: new Map([
      [
        move.bottleLotId,
        {
          batchId: move.batchId,
          name: move.name,
          bottledAtMs: atMs,
          bottleSizeMl,
          filledCount: count,
          count,
          shelves: new Map([[move.shelfId ?? null, count]]),
          perBottle: scaleMatter(part, 1 / count),
        },
      ],
    ]),
    transfers: [{ from: source, to: lot, matter: part }, ...after.rinsed],
    // A rest too small for one more bottle does not keep the batch from resting.
    ...(availableMl - count * bottleSizeMl < bottleSizeMl && { stage: 'resting' as const }),
  })
}

/** What a lot was made from is not kept with it: no spirit that could be bought is stronger than this. */
const strongestSpiritPctVol = 97.2

/** Opens bottles of any batch into a jar of this one, or an empty one. */
export function unbottle(
  cellar: CellarState,
  move: MoveOf<'unbottle'>,
  { atMs }: MoveContext,
): Outcome {
  const { toJarId, batchId } = move
  const opened = takeBottles(cellar, move, jarPlace(toJarId))
  if (!opened.ok) return opened
  const jar = receivingJar(cellar, toJarId, batchId, atMs, 'married')
  if (!jar.ok) return jar
  const poured = sumMatter(opened.effect.transfers.map(({ matter }) => matter))
  const filled = { ...pourInto(jar.found, poured), strongestPctVol: strongestSpiritPctVol }
  return allowed({
    ...opened.effect,
    jars: new Map([[toJarId, filled]]),
    stage: filled.stage,
  })
}

export const drawBottle = (cellar: CellarState, move: MoveOf<'drawBottle'>): Outcome =>
  takeBottles(cellar, move, 'outside:glass')

export const give = (cellar: CellarState, move: MoveOf<'give'>): Outcome =>
  takeBottles(cellar, move, 'outside:gift')

export const breakBottle = (cellar: CellarState, move: MoveOf<'breakBottle'>): Outcome =>
  takeBottles(cellar, move, 'outside:waste')

export interface BottlesAsked {
  readonly bottleLotId: string
  readonly count: number
  /** Left out: from wherever they stand. */
  readonly shelfId?: string | undefined
}

export function takeBottles(
  cellar: CellarState,
  { bottleLotId, count, shelfId }: BottlesAsked,
  to: string,
): Outcome {
  const place = bottlesPlace(bottleLotId)
  const lot = cellar.bottles.get(bottleLotId)
  if (!lot) return refused({ code: 'unknownPlace', place })
  const available = shelfId === undefined ? lot.count : standingOn(lot.shelves, shelfId)
  if (available === 0) return nothingThere(place)
  if (count > available) return notEnough(place, 'bottles', count, available)
  const shelves =
    shelfId === undefined ? without(lot.shelves, count) : added(lot.shelves, shelfId, -count)
  return allowed({
    bottles: new Map([[bottleLotId, { ...lot, count: lot.count - count, shelves }]]),
    transfers: [{ from: place, to, matter: scaleMatter(lot.perBottle, count) }],
  })
}

/** Carries bottles from one shelf to another; they stay the same lot. */
export function shelve(cellar: CellarState, move: MoveOf<'shelve'>): Outcome {
  const { bottleLotId, count, fromShelfId, toShelfId } = move
  const place = bottlesPlace(bottleLotId)
  const lot = cellar.bottles.get(bottleLotId)
  if (!lot) return refused({ code: 'unknownPlace', place })
  const available = standingOn(lot.shelves, fromShelfId)
  if (available === 0) return nothingThere(place)
  if (count > available) return notEnough(place, 'bottles', count, available)
  const shelves = added(added(lot.shelves, fromShelfId, -count), toShelfId, count)
  return allowed({ bottles: new Map([[bottleLotId, { ...lot, shelves }]]), transfers: [] })
}
