/** Uncorked bottles: each has a level of its own, until it is drunk, poured away or topped up. */
import { addMatter, noMatter, scaleMatter, splitMatter } from '../../../../shared/matter.ts'
import type { MoveOf } from '../../../../shared/schemas/moves.ts'
import { liquidVolumeMl } from '../../solution/liquid-volume.ts'
import {
  bottlesPlace,
  isStanding,
  openedPlace,
  type CellarState,
  type OpenedState,
} from '../cellar-state.ts'
import {
  allowed,
  nothingThere,
  notEnough,
  refused,
  shareOf,
  slackMl,
  type Outcome,
  type Refused,
} from '../refusal.ts'
import { takeBottles } from './bottle-moves.ts'
import type { MoveContext } from './context.ts'
import { difference } from './difference.ts'
import { neverFilled, openedOf } from './stocktake.ts'

export function openBottle(
  cellar: CellarState,
  move: MoveOf<'openBottle'>,
  { atMs }: MoveContext,
): Outcome {
  const { bottleLotId, openedId, shelfId } = move
  const to = openedPlace(openedId)
  if (cellar.opened.has(openedId)) return refused({ code: 'alreadyThere', place: to })
  const outcome = takeBottles(cellar, { bottleLotId, count: 1, shelfId }, to)
  const lot = cellar.bottles.get(bottleLotId)
  if (!outcome.ok || !lot) return outcome
  const { batchId, bottleSizeMl, perBottle } = lot
  const opened = { bottleLotId, batchId, openedAtMs: atMs, bottleSizeMl, matter: perBottle }
  return allowed({ ...outcome.effect, opened: new Map([[openedId, opened]]) })
}

export function pourGlass(cellar: CellarState, move: MoveOf<'pourGlass'>): Outcome {
  const bottle = standing(cellar, move.openedId)
  if (!bottle.ok) return bottle
  const availableMl = liquidVolumeMl(bottle.found.matter)
  const askedMl = move.volumeMl ?? availableMl
  const share = shareOf(askedMl, availableMl, slackMl)
  const place = openedPlace(move.openedId)
  if (share === undefined) return notEnough(place, 'ml', askedMl, availableMl)
  const { part, rest } = splitMatter(bottle.found.matter, share)
  return allowed({
    opened: new Map([[move.openedId, { ...bottle.found, matter: rest }]]),
    transfers: [{ from: place, to: 'outside:glass', matter: part }],
  })
}

/** Fills up one opened bottle from another, of whatever lot: never above its size. */
export function topUp(cellar: CellarState, move: MoveOf<'topUp'>): Outcome {
  const { openedId, fromOpenedId } = move
  const place = openedPlace(openedId)
  if (openedId === fromOpenedId) return refused({ code: 'sameJar', place })
  const source = standing(cellar, fromOpenedId)
  if (!source.ok) return source
  const into = standing(cellar, openedId)
  if (!into.ok) return into
  const target = into.found
  const availableMl = liquidVolumeMl(source.found.matter)
  const fits = fittingShare(target, source.found)
  const fitsMl = fits * availableMl
  const share = move.volumeMl === undefined ? fits : shareOf(move.volumeMl, availableMl, slackMl)
  if (share === undefined)
    return notEnough(
      openedPlace(fromOpenedId),
      'ml',
      move.volumeMl ?? availableMl,
      availableMl,
      fitsMl,
    )
  const askedMl = move.volumeMl ?? availableMl
  if (fitsMl < slackMl || share * availableMl > fitsMl + slackMl)
    return refused({
      code: 'noRoom',
      place,
      unit: 'ml',
      asked: askedMl,
      available: fitsMl,
      nearest: fitsMl,
    })
  const { part, rest } = splitMatter(source.found.matter, share)
  return allowed({
    opened: new Map([
      [openedId, { ...target, matter: addMatter(target.matter, part) }],
      [fromOpenedId, { ...source.found, matter: rest }],
    ]),
    transfers: [{ from: openedPlace(fromOpenedId), to: place, matter: part }],
  })
}

/**
 * The share of one bottle's liquid that fits into another. Two liqueurs do not quite take the room
 * they had apart, so the share is found by halving, to a hundredth of a millilitre.
 */
function fittingShare(target: OpenedState, source: OpenedState): number {
  const volumeWith = (share: number) =>
    liquidVolumeMl(addMatter(target.matter, scaleMatter(source.matter, share)))
  if (volumeWith(1) <= target.bottleSizeMl) return 1
  let [fits, tooMuch] = [0, 1]
  const fineEnough = 0.01 / liquidVolumeMl(source.matter)
  while (tooMuch - fits > fineEnough) {
    const middle = (fits + tooMuch) / 2
    if (volumeWith(middle) <= target.bottleSizeMl) fits = middle
    else tooMuch = middle
  }
  return fits
}

export function pourAway(cellar: CellarState, { openedId }: { openedId: string }): Outcome {
  const bottle = standing(cellar, openedId)
  if (!bottle.ok) return bottle
  const { matter } = bottle.found
  return allowed({
    opened: new Map([[openedId, { ...bottle.found, matter: noMatter }]]),
    transfers: [{ from: openedPlace(openedId), to: 'outside:waste', matter }],
  })
}

export function correctOpened(
  cellar: CellarState,
  { openedId, volumeMl }: { openedId: string; volumeMl: number },
): Outcome {
  const place = openedPlace(openedId)
  const bottle = cellar.opened.get(openedId)
  const lot = bottle && cellar.bottles.get(bottle.bottleLotId)
  if (!bottle || !lot) return refused({ code: 'unknownPlace', place })
  const { bottleLotId, bottleSizeMl } = bottle
  if (!isStanding(bottle) && volumeMl > 0) {
    // What was thought empty stands again, beside all that is full.
    const asked = lot.count + openedOf(cellar, bottleLotId, lot) + 1
    const most = lot.filledCount
    if (asked > most) return neverFilled(bottlesPlace(bottleLotId), asked, most, most)
  }
  if (volumeMl > bottleSizeMl + slackMl)
    return refused({
      code: 'noRoom',
      place,
      unit: 'ml',
      asked: volumeMl,
      available: bottleSizeMl,
      nearest: bottleSizeMl,
    })
  // An empty bottle has no composition left to scale: its lot tells it.
  const like = isStanding(bottle) ? bottle.matter : lot.perBottle
  const matter = scaleMatter(like, volumeMl / liquidVolumeMl(like))
  return allowed({
    opened: new Map([[openedId, { ...bottle, matter }]]),
    transfers: [difference(place, bottle.matter, matter)],
  })
}

type Found = { ok: true; found: OpenedState } | Refused

/** The opened bottle, with something left in it. */
function standing(cellar: CellarState, openedId: string): Found {
  const bottle = cellar.opened.get(openedId)
  if (!bottle) return refused({ code: 'unknownPlace', place: openedPlace(openedId) })
  return isStanding(bottle) ? { ok: true, found: bottle } : nothingThere(openedPlace(openedId))
}
