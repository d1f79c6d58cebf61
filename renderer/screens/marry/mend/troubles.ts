/** What can be wrong with a jar: which quantity it is about, what is kept, and what helps. */
import type { Liquid } from '../../../../shared/schemas/cellar.ts'
import type { Trouble } from '../../../../shared/schemas/marrying.ts'
import type { WishedFor } from '../entries.ts'
import { acid, tap, type PlaceShown } from '../places.ts'

export type Means = 'water' | 'acid'

export interface Cure {
  readonly target: WishedFor
  /** A first guess of how it shall be, from how it is. */
  readonly guess: (liquid: Liquid) => number
  readonly isUp: boolean
  /** What may be kept as it is, and whether it is at first. */
  readonly holds: readonly WishedFor[]
  readonly holdsAtFirst: boolean
  readonly helps: (place: PlaceShown) => boolean
}

export type SumTrouble = Exclude<Trouble, 'hazy'>

const isSpirit = ({ place, unit }: PlaceShown) => place.startsWith('lot:') && unit === 'ml'
const isSweet = ({ place, unit }: PlaceShown) => place.startsWith('lot:') && unit === 'g'
const isWater = ({ place }: PlaceShown) => place === tap
const isAcid = ({ place }: PlaceShown) => place === acid
const any =
  (...tests: readonly ((place: PlaceShown) => boolean)[]) =>
  (place: PlaceShown) =>
    tests.some((test) => test(place))

const to = (value: number, step: number) => Math.max(Math.round(value / step) * step, 0)

export const cures: Readonly<Record<SumTrouble, Cure>> = {
  tooSweet: {
    target: 'sugarGPerL',
    guess: ({ sugarGPerL }) => to(sugarGPerL * 0.85, 5),
    isUp: false,
    holds: ['strengthPctVol'],
    holdsAtFirst: true,
    helps: any(isWater, isSpirit),
  },
  tooWeak: {
    target: 'strengthPctVol',
    guess: ({ strengthPctVol }) => to(strengthPctVol + 3, 0.5),
    isUp: true,
    holds: ['sugarGPerL'],
    holdsAtFirst: true,
    helps: any(isSpirit, isSweet),
  },
  tooStrong: {
    target: 'strengthPctVol',
    guess: ({ strengthPctVol }) => to(strengthPctVol - 3, 0.5),
    isUp: false,
    holds: ['sugarGPerL'],
    holdsAtFirst: true,
    helps: any(isWater, isSweet),
  },
  tooSour: {
    target: 'acidGPerL',
    guess: ({ acidGPerL }) => to(acidGPerL * 0.85, 0.5),
    isUp: false,
    holds: ['strengthPctVol', 'sugarGPerL'],
    holdsAtFirst: true,
    helps: any(isWater, isSpirit, isSweet),
  },
  tooFlat: {
    target: 'acidGPerL',
    guess: ({ acidGPerL }) => to(acidGPerL + 1.5, 0.5),
    isUp: true,
    holds: ['strengthPctVol', 'sugarGPerL'],
    holdsAtFirst: false,
    helps: isAcid,
  },
}

/** One lot of each kind that helps; the maker adds others. */
export function helpersOf({ helps }: Cure, places: readonly PlaceShown[]): string[] {
  const chosen = new Map<string, string>()
  for (const place of places) {
    const kind = place.place.startsWith('lot:') ? `lot ${place.unit}` : place.place
    if (helps(place) && !chosen.has(kind)) chosen.set(kind, place.place)
  }
  return [...chosen.values()]
}
