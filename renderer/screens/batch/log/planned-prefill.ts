/** A form filled in as the plan has it: amounts and jars. What it is taken from is what is at hand. */
import type { PantryLot } from '../../../../shared/schemas/cellar.ts'
import type { Goods } from '../../../../shared/schemas/goods.ts'
import type { Move } from '../../../../shared/schemas/moves.ts'
import type { AddingDraft } from '../../../parts/moves/drafts/adding.ts'
import { fullBottles } from '../../../parts/moves/drafts/bottling.ts'
import type { Draft } from '../../../parts/moves/drafts/draft.ts'
import { freeMl, lotsOf, type LogContext } from '../../../parts/moves/drafts/log-context.ts'

type AtHand = Pick<LogContext, 'batchId' | 'jars' | 'pantry'>

/** `goods` is what the plan takes the move's matter from; undefined where it takes from no lot. */
export function asPlanned(
  draft: Draft,
  planned: Move,
  goods: Goods | undefined,
  atHand: AtHand,
): Draft {
  const jarId = 'jarId' in planned ? planned.jarId : undefined
  const jarIds = jarId !== undefined && isOurs(jarId, atHand) ? { jarIds: [jarId] } : {}
  if (draft.kind === 'charge' && planned.kind === 'charge') {
    const { massG, refuseG, cut } = planned
    return { ...draft, ...jarIds, ...source(draft, goods, atHand), amount: massG, refuseG, cut }
  }
  if (
    (draft.kind === 'sugar' && planned.kind === 'sugar') ||
    (draft.kind === 'coverWithSugar' && planned.kind === 'coverWithSugar')
  )
    return { ...draft, ...jarIds, ...source(draft, goods, atHand), amount: planned.massG }
  if (draft.kind === 'pourSpirit' && planned.kind === 'pourSpirit')
    return { ...draft, ...jarIds, ...source(draft, goods, atHand), amount: planned.volumeMl }
  if (draft.kind === 'pourWater' && planned.kind === 'pourWater')
    return { ...draft, ...jarIds, amount: planned.volumeMl }
  if (draft.kind === 'filter' && planned.kind === 'filter')
    return { ...draft, ...into(planned.toJarId, atHand), medium: planned.medium }
  // What is poured off, pressed, married or bottled is what stands there, not what was foreseen.
  if (draft.kind === 'bottle' && planned.kind === 'bottle') {
    const from = atHand.jars.find(({ jar }) => jar.id === draft.fromJarId)
    const { bottleSizeMl } = planned
    return { ...draft, bottleSizeMl, count: from && fullBottles(freeMl(from), bottleSizeMl) }
  }
  if (
    (draft.kind === 'drawOff' && planned.kind === 'drawOff') ||
    (draft.kind === 'press' && planned.kind === 'press') ||
    (draft.kind === 'marry' && planned.kind === 'marry')
  )
    return { ...draft, ...into(planned.toJarId, atHand) }
  return draft
}

/** Tells vessels that the batch may use from another's, and from those drawn on paper. */
const isOurs = (jarId: string, { jars, batchId }: AtHand): boolean =>
  jars.some(({ jar, contents }) => jar.id === jarId && (contents?.batchId ?? batchId) === batchId)

const into = (toJarId: string, atHand: AtHand) => (isOurs(toJarId, atHand) ? { toJarId } : {})

/** The lot bought last of such goods; without any, they are bought with the move. */
function source(
  draft: AddingDraft,
  goods: Goods | undefined,
  { pantry }: AtHand,
): Partial<AddingDraft> {
  if (!goods) return {}
  const lot = lotsOf({ pantry }, goods.kind).find((one) => isAlike(one, goods))
  if (lot) return { lotId: lot.id, isJustBought: false }
  const purchase = {
    ...draft.purchase,
    ...(goods.kind === 'fruit' && { fruitId: goods.fruitId }),
    ...(goods.kind === 'spirit' && { strengthPctVol: goods.strengthPctVol }),
    ...(goods.kind === 'sweetener' && { sweetenerId: goods.sweetenerId }),
  }
  return { isJustBought: true, purchase }
}

/** Spirit this much stronger or weaker does the same work. */
const alikePctVol = 2

function isAlike({ goods }: PantryLot, planned: Goods): boolean {
  switch (goods.kind) {
    case 'fruit':
      return planned.kind === 'fruit' && goods.fruitId === planned.fruitId
    case 'spirit':
      return (
        planned.kind === 'spirit' &&
        Math.abs(goods.strengthPctVol - planned.strengthPctVol) <= alikePctVol
      )
    case 'sweetener':
      return planned.kind === 'sweetener' && goods.sweetenerId === planned.sweetenerId
    case 'acid':
      return planned.kind === 'acid'
  }
}
