/** Which wishes a draft does not meet, why not, and where the limit lies. */
import type { Liquid } from '../../../shared/schemas/cellar.ts'
import type { DraftSpec, DraftWishes, UnmetWish, WishName } from '../../../shared/schemas/drafts.ts'
import { rootBetween } from '../root.ts'
import { describeSolution } from '../solution/describe-solution.ts'
import { sucroseSolubility } from '../solution/sucrose-solubility.ts'

/** What is promised: nearer than this counts as met. */
const promised = { volumeShare: 0.001, strengthPctVol: 0.05, sugarGPerL: 0.5, acidGPerL: 0.05 }

/** Bottles are filled to the last: a hair more than they hold. */
const sparePerBottleMl = 0.02

export const wishedVolumeMl = (
  { volumeMl, bottles }: DraftWishes,
  bottleSizeMl: number,
): number | undefined =>
  bottles === undefined ? volumeMl : bottles * (bottleSizeMl + sparePerBottleMl)

export function unmetNames(
  wishes: DraftWishes,
  bottleSizeMl: number,
  liquid: Liquid | undefined,
): WishName[] {
  const names: WishName[] = []
  const wantedMl = wishedVolumeMl(wishes, bottleSizeMl)
  if (wantedMl !== undefined && isOff(wantedMl, liquid?.volumeMl, promised.volumeShare * wantedMl))
    names.push(wishes.bottles === undefined ? 'volumeMl' : 'bottles')
  for (const name of ['strengthPctVol', 'sugarGPerL', 'acidGPerL'] as const) {
    const wanted = wishes[name]
    if (wanted !== undefined && isOff(wanted, liquid?.[name], promised[name])) names.push(name)
  }
  return names
}

const isOff = (wanted: number, got: number | undefined, tolerance: number): boolean =>
  Math.abs((got ?? 0) - wanted) > tolerance

export interface Asking {
  readonly wish: WishName
  readonly wishes: DraftWishes
  readonly spec: DraftSpec
  readonly finished: Liquid | undefined
  readonly isMetUnpinned: boolean
}

export function whyUnmet({ wish, wishes, spec, finished, isMetUnpinned }: Asking): UnmetWish {
  const nearest = nearestOf(wish, spec, finished)
  const wanted = wishes[wish] ?? 0
  const strongest = strongestOf(spec)
  if (wish === 'strengthPctVol' && wanted > strongest)
    return { wish, wanted, nearest, reason: 'strongerThanSpirit', limit: strongest }
  if (wish === 'sugarGPerL') {
    const limit = saturationGPerL(wishes.strengthPctVol ?? finished?.strengthPctVol ?? 0)
    if (wanted > limit) return { wish, wanted, nearest, reason: 'sweeterThanSaturation', limit }
  }
  const reason = isMetUnpinned ? 'heldByPins' : 'outOfReach'
  return { wish, wanted, nearest, reason, limit: nearest }
}

const strongestOf = ({ spirits }: DraftSpec): number =>
  Math.max(...spirits.map(({ strengthPctVol }) => strengthPctVol))

/** The wishes brought down to what any liquid can be, so that the others need not suffer. */
export function withinPhysics(wishes: DraftWishes, spec: DraftSpec): DraftWishes {
  const { strengthPctVol, sugarGPerL } = wishes
  const strongest = strongestOf(spec)
  const strength = strengthPctVol === undefined ? undefined : Math.min(strengthPctVol, strongest)
  const sweetest = strength === undefined ? Infinity : nearSaturation * saturationGPerL(strength)
  return {
    ...wishes,
    ...(strength !== undefined && { strengthPctVol: strength }),
    ...(sugarGPerL !== undefined && { sugarGPerL: Math.min(sugarGPerL, sweetest) }),
  }
}

/** The last of the sugar dissolves ever more slowly: a draft aims a little below. */
const nearSaturation = 0.98

function nearestOf(wish: WishName, spec: DraftSpec, finished: Liquid | undefined): number {
  if (!finished) return 0
  if (wish === 'bottles') return Math.floor(finished.volumeMl / spec.bottleSizeMl)
  return finished[wish]
}

/** The most sugar that a liquid of a strength holds dissolved at 20 °C, g/L. */
export function saturationGPerL(strengthPctVol: number): number {
  if (strengthPctVol >= saturated(1).strengthPctVol) return 0
  const share = rootBetween((x) => saturated(x).strengthPctVol - strengthPctVol, 0, 1, 1e-9)
  return saturated(share).sugarGPerL
}

function saturated(ethanolMassFraction: number) {
  const waterG = 1 - ethanolMassFraction
  const sugarG = waterG * sucroseSolubility({ ethanolMassFraction, temperatureC: 20 })
  return describeSolution({ ethanolG: ethanolMassFraction, waterG, sugarG })
}
