/** Beside which field of an act's form a refusal belongs, and the one-click way out of it. */
import type { Refusal } from '../../../../shared/schemas/errors.ts'
import type { Act } from './act.ts'
import type { ActDraft, ActField } from './act-draft.ts'

export function fieldOfRefusal({ code }: Refusal, act: Act): ActField | undefined {
  switch (code) {
    case 'inTheFuture':
    case 'beforeItExisted':
      return 'at'
    case 'notEnough':
    case 'nothingThere':
    case 'noRoom':
    case 'neverFilled':
      if (!('lot' in act)) return act.kind === 'discardOpened' ? undefined : 'volume'
      return act.kind === 'openBottle' || act.kind === 'taste' ? undefined : 'count'
    case 'sameJar':
    case 'alreadyThere':
      return 'lot' in act && act.kind === 'shelve' ? 'to' : undefined
    default:
      return undefined
  }
}

export interface Remedy {
  readonly draft: ActDraft
  /** What the button says: a number of bottles, a volume, or a time. */
  readonly count?: number
  readonly volumeMl?: number
  readonly at?: string
}

/** Undefined where no single number would mend it. */
export function remedyOf(refusal: Refusal, draft: ActDraft): Remedy | undefined {
  const { code, from, nearest, unit } = refusal
  if (code === 'beforeItExisted' && from !== undefined)
    return { draft: { ...draft, at: from }, at: from }
  if (nearest === undefined || !(nearest > 0)) return undefined
  if (unit === 'bottles') {
    const count = Math.floor(nearest)
    return { draft: { ...draft, count }, count }
  }
  if (unit !== 'ml') return undefined
  // Never more than there is: a tenth of a millilitre is below what anyone measures.
  const volumeMl = Math.floor(nearest * 10) / 10
  return { draft: { ...draft, volumeMl }, volumeMl }
}
