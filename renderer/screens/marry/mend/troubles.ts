/** What can be wrong with a jar: which quantity it is about, what is kept, and what helps. */
import type { Liquid } from '../../../../shared/schemas/cellar.ts'
import type { Trouble } from '../../../../shared/schemas/marrying.ts'
import type { WishedFor } from '../entries.ts'
import type { PlaceKind, PlaceShown } from '../places.ts'

export interface Cure {
  readonly target: WishedFor
  /** A first guess of how it shall be, from how it is. */
  readonly guess: (liquid: Liquid) => number
  readonly isUp: boolean
  /** What may be kept as it is, and whether it is at first. */
  readonly holds: readonly WishedFor[]
  readonly holdsAtFirst: boolean
  readonly helps: readonly PlaceKind[]
}

export type SumTrouble = Exclude<Trouble, 'hazy'>

const to = (value: number, step: number) => Math.max(Math.round(value / step) * step, 0)

export const cures: Readonly<Record<SumTrouble, Cure>> = {
  tooSweet: {
    target: 'sugarGPerL',
    guess: ({ sugarGPerL }) => to(sugarGPerL * 0.85, 5),
    isUp: false,
    holds: ['strengthPctVol'],
    holdsAtFirst: true,
    helps: ['water', 'spirit'],
  },
  tooWeak: {
    target: 'strengthPctVol',
    guess: ({ strengthPctVol }) => to(strengthPctVol + 3, 0.5),
    isUp: true,
    holds: ['sugarGPerL'],
    holdsAtFirst: true,
    helps: ['spirit', 'sweetener'],
  },
  tooStrong: {
    target: 'strengthPctVol',
    guess: ({ strengthPctVol }) => to(strengthPctVol - 3, 0.5),
    isUp: false,
    holds: ['sugarGPerL'],
    holdsAtFirst: true,
    helps: ['water', 'sweetener'],
  },
  tooSour: {
    target: 'acidGPerL',
    guess: ({ acidGPerL }) => to(acidGPerL * 0.85, 0.5),
    isUp: false,
    holds: ['strengthPctVol', 'sugarGPerL'],
    holdsAtFirst: true,
    helps: ['water', 'spirit', 'sweetener'],
  },
  tooFlat: {
    target: 'acidGPerL',
    guess: ({ acidGPerL }) => to(acidGPerL + 1.5, 0.5),
    isUp: true,
    holds: ['strengthPctVol', 'sugarGPerL'],
    holdsAtFirst: false,
    helps: ['acid'],
  },
}

/** One place of each kind that helps, the first there is; the maker adds others. */
export function helpersOf({ helps }: Cure, places: readonly PlaceShown[]): string[] {
  const chosen = new Map<PlaceKind, string>()
  for (const { kind, place } of places)
    if (helps.includes(kind) && !chosen.has(kind)) chosen.set(kind, place)
  return [...chosen.values()]
}
