/** The one-click way out of a refusal: the draft with the nearest amount that can be. */
import type { Refusal } from '../../../shared/schemas/errors.ts'
import type { Draft } from './drafts/draft.ts'

export interface RefusedMove {
  readonly refusal: Refusal
  /** How many moves of the draft take from the same place before this one. */
  readonly before: number
}

export interface Remedy {
  readonly draft: Draft
  /** What the button says: an amount, a number of bottles, or a time. */
  readonly amount?: { readonly value: number; readonly unit: 'ml' | 'g' | 'bottles' }
  readonly at?: string
}

/** Undefined where no single number would mend it. */
export function remedyOf(draft: Draft, refused: RefusedMove): Remedy | undefined {
  const { refusal } = refused
  if (refusal.code === 'beforeItExisted' && refusal.from !== undefined)
    return { draft: { ...draft, at: refusal.from }, at: refusal.from }
  const { nearest, unit } = refusal
  if (refusal.code !== 'notEnough' || nearest === undefined || unit === undefined) return undefined
  const value = roundedDown(evenly(draft, refused, nearest), unit)
  if (!(value > 0)) return undefined
  const mended = withAmount(draft, refusal.place, value)
  return mended && { draft: mended, amount: { value, unit } }
}

/** Jars served before this one have had their share of the lot: what is left is shared anew. */
function evenly(draft: Draft, { before, refusal }: RefusedMove, nearest: number): number {
  const isShared = refusal.place.startsWith('lot:') && 'jarIds' in draft && draft.kind !== 'marry'
  if (!isShared || !('amount' in draft)) return nearest
  return ((draft.amount ?? 0) * before + nearest) / draft.jarIds.length
}

/** Never more than there is: a tenth of a millilitre or gram is below what anyone measures. */
const roundedDown = (value: number, unit: 'ml' | 'g' | 'bottles') =>
  unit === 'bottles' ? Math.floor(value) : Math.floor(value * 10) / 10

function withAmount(draft: Draft, place: string, value: number): Draft | undefined {
  switch (draft.kind) {
    case 'charge':
    case 'sugar':
    case 'addAcid':
    case 'coverWithSugar':
    case 'pourSpirit':
    case 'pourWater':
      return { ...draft, amount: value }
    case 'drawOff':
    case 'press':
      return { ...draft, volumeMl: value }
    case 'marry': {
      const [, jarId = ''] = place.split(':')
      return { ...draft, volumeMlByJar: { ...draft.volumeMlByJar, [jarId]: value } }
    }
    case 'filter':
      return { ...draft, lossMl: value }
    case 'bottle':
    case 'unbottle':
    case 'drawBottle':
    case 'give':
    case 'breakBottle':
    case 'shelve':
      return { ...draft, count: value }
    case 'pourGlass':
    case 'topUp':
      return { ...draft, volumeMl: value }
    case 'discard':
    case 'correct':
      return draft.subject === 'bottles' ? { ...draft, count: value } : { ...draft, amount: value }
    default:
      return undefined
  }
}
