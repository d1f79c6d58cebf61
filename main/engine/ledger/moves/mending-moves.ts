/** Throwing away, and putting the book right where the cellar shows something else. */
import {
  addMatter,
  massOf,
  matterOf,
  noMatter,
  scaleMatter,
  splitMatter,
  type Matter,
} from '../../../../shared/matter.ts'
import type { MoveOf } from '../../../../shared/schemas/moves.ts'
import { composeSolution } from '../../solution/compose-solution.ts'
import { liquidVolumeMl } from '../../solution/liquid-volume.ts'
import {
  jarPlace,
  lotPlace,
  type CellarState,
  type JarState,
  type LotState,
} from '../cellar-state.ts'
import { describeLiquid } from '../jar-liquid.ts'
import {
  allowed,
  nothingThere,
  notEnough,
  refused,
  shareOf,
  slackG,
  slackMl,
  type Outcome,
} from '../refusal.ts'
import { takeBottles } from './bottle-moves.ts'
import type { MoveContext } from './context.ts'
import { difference } from './difference.ts'
import { afterTaking, occupiedJar, wholeMatter } from './jar-access.ts'
import { correctOpened, pourAway } from './opened-moves.ts'
import { correctBottles } from './stocktake.ts'

export function discard(
  cellar: CellarState,
  { from }: MoveOf<'discard'>,
  { atMs }: MoveContext,
): Outcome {
  if ('bottleLotId' in from) return takeBottles(cellar, from, 'outside:waste')
  if ('openedId' in from) return pourAway(cellar, from)
  if ('lotId' in from) return discardFromLot(cellar, from)
  const jar = occupiedJar(cellar, from.jarId, undefined, atMs)
  if (!jar.ok) return jar
  const { left, thrown } = throwOut(jar.found, from.part)
  if (massOf(thrown) === 0) return nothingThere(jarPlace(from.jarId))
  const after = afterTaking(from.jarId, left)
  return allowed({
    jars: new Map([[from.jarId, after.left]]),
    transfers: [
      { from: jarPlace(from.jarId), to: 'outside:waste', matter: thrown },
      ...after.rinsed,
    ],
  })
}

function throwOut(jar: JarState, part: 'all' | 'pulp' | 'liquid') {
  const { free, held, bed } = jar.bodies
  if (part === 'liquid')
    return { thrown: free, left: { ...jar, bodies: { ...jar.bodies, free: noMatter } } }
  const left: JarState = {
    ...jar,
    fruit: null,
    bodies: { free: part === 'all' ? noMatter : free, held: noMatter, bed: noMatter },
  }
  return { thrown: part === 'all' ? wholeMatter(jar) : addMatter(held, bed), left }
}

function discardFromLot(
  cellar: CellarState,
  from: { lotId: string; massG?: number | undefined; volumeMl?: number | undefined },
): Outcome {
  const place = lotPlace(from.lotId)
  const lot = cellar.lots.get(from.lotId)
  if (!lot) return refused({ code: 'unknownPlace', place })
  const amount = lotAmount(lot)
  const asked = (amount.unit === 'ml' ? from.volumeMl : from.massG) ?? amount.available
  if (amount.available < amount.slack) return nothingThere(place)
  const share = shareOf(asked, amount.available, amount.slack)
  if (share === undefined) return notEnough(place, amount.unit, asked, amount.available)
  const { part, rest } = splitMatter(lot.matter, share)
  return allowed({
    lots: new Map([[from.lotId, { ...lot, matter: rest }]]),
    transfers: [{ from: place, to: 'outside:waste', matter: part }],
  })
}

/** Spirit is told by volume, everything else by mass. */
function lotAmount(lot: LotState) {
  return lot.goods.kind === 'spirit'
    ? ({ unit: 'ml', available: liquidVolumeMl(lot.matter), slack: slackMl } as const)
    : ({ unit: 'g', available: massOf(lot.matter), slack: slackG } as const)
}

export function correct(
  cellar: CellarState,
  { found }: MoveOf<'correct'>,
  { atMs }: MoveContext,
): Outcome {
  if ('bottleLotId' in found) return correctBottles(cellar, found)
  if ('openedId' in found) return correctOpened(cellar, found)
  if ('lotId' in found) return correctLot(cellar, found)
  const place = jarPlace(found.jarId)
  const jar = occupiedJar(cellar, found.jarId, undefined, atMs)
  if (!jar.ok) return jar
  const { free } = jar.found.bodies
  const corrected = correctedLiquid(free, found)
  if (corrected === 'nothing') return nothingThere(place)
  if (corrected === 'impossible') return refused({ code: 'noSuchMixture', place })
  const left = { ...jar.found, bodies: { ...jar.found.bodies, free: corrected } }
  return allowed({
    jars: new Map([[found.jarId, left]]),
    transfers: [difference(place, free, corrected)],
  })
}

function correctedLiquid(
  free: Matter,
  found: {
    volumeMl?: number | undefined
    strengthPctVol?: number | undefined
    sugarGPerL?: number | undefined
  },
): Matter | 'nothing' | 'impossible' {
  const booked = describeLiquid(free)
  if (!booked) return 'nothing'
  const volumeMl = found.volumeMl ?? booked.volumeMl
  if (found.strengthPctVol === undefined && found.sugarGPerL === undefined)
    return scaleMatter(free, volumeMl / booked.volumeMl)
  try {
    return matterOf(
      composeSolution({
        volumeMl,
        strengthPctVol: found.strengthPctVol ?? booked.strengthPctVol,
        sugarGPerL: found.sugarGPerL ?? booked.sugarGPerL,
        acidGPerL: booked.acidGPerL,
        solublesGPerL: (1000 * free.solublesG) / booked.volumeMl,
      }),
    )
  } catch (error) {
    if (error instanceof RangeError) return 'impossible'
    throw error
  }
}

function correctLot(
  cellar: CellarState,
  found: { lotId: string; massG?: number | undefined; volumeMl?: number | undefined },
): Outcome {
  const place = lotPlace(found.lotId)
  const lot = cellar.lots.get(found.lotId)
  if (!lot) return refused({ code: 'unknownPlace', place })
  const { unit, available } = lotAmount(lot)
  const amount = unit === 'ml' ? found.volumeMl : found.massG
  if (amount === undefined) return refused({ code: 'wrongGoods', place })
  // An emptied lot has no composition left to scale: what was bought tells it.
  const matter =
    available > 0
      ? scaleMatter(lot.matter, amount / available)
      : scaleMatter(lot.bought, amount / boughtAmount(lot))
  return allowed({
    lots: new Map([[found.lotId, { ...lot, matter }]]),
    transfers: [difference(place, lot.matter, matter)],
  })
}

const boughtAmount = (lot: LotState) => lotAmount({ ...lot, matter: lot.bought }).available
