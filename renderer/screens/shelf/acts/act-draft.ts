/** An act in the making: what its form holds, what is still missing, and the move it comes to. */
import type { Move } from '../../../../shared/schemas/moves.ts'
import { isJudged, noTasting, tastingPart, type Tasting } from '../../../parts/tasting/tasting.ts'
import type { Act, ActLot, LotActKind } from './act.ts'

export interface ActDraft {
  /** Undefined while what stands in the date field cannot be read. */
  readonly at: string | undefined
  readonly note: string
  readonly count: number | undefined
  /** Where from; undefined is wherever it stands, null where it has no place. */
  readonly fromShelfId: string | null | undefined
  /** Where to; undefined while nothing is chosen, null for no place. */
  readonly toShelfId: string | null | undefined
  /** Of an opened bottle: poured, or found in it. */
  readonly volumeMl: number | undefined
  readonly fromOpenedId: string | undefined
  readonly tasting: Tasting
}

export type ActField = 'at' | 'count' | 'from' | 'to' | 'volume' | 'fromOpened' | 'taste'

export type ActOutcome =
  | { readonly ok: true; readonly move: Move }
  | { readonly ok: false; readonly missing: readonly ActField[] }

/** A glass as the bench counts it; a bottle with less holds less. */
const usualGlassMl = 40

export function startAct(act: Act, at: string): ActDraft {
  const empty = {
    at,
    note: '',
    count: 1,
    fromShelfId: undefined,
    toShelfId: undefined,
    volumeMl: undefined,
    fromOpenedId: undefined,
    tasting: noTasting,
  }
  if ('lot' in act) return act.kind === 'shelve' ? { ...empty, ...carried(act.lot) } : empty
  const left = act.opened.liquid?.volumeMl ?? 0
  if (act.kind === 'pourGlass') return { ...empty, volumeMl: Math.min(usualGlassMl, left) }
  if (act.kind === 'topUp') return { ...empty, fromOpenedId: act.others[0]?.id }
  return empty
}

/** All that stands at the place where most stands. */
function carried({ places }: ActLot): Pick<ActDraft, 'count' | 'fromShelfId'> {
  const [most] = places.toSorted((a, b) => b.count - a.count)
  return { count: most?.count ?? 1, fromShelfId: most?.shelfId ?? null }
}

/** How many bottles the act can take as its place is chosen. */
export function thereFor({ count, places }: ActLot, fromShelfId: ActDraft['fromShelfId']): number {
  if (fromShelfId === undefined) return count
  return places.find(({ shelfId }) => shelfId === fromShelfId)?.count ?? 0
}

/** `newOpenedId` names the bottle that is opened. */
export function moveOfAct(act: Act, draft: ActDraft, newOpenedId: string): ActOutcome {
  const { at, note } = draft
  if (at === undefined) return { ok: false, missing: ['at'] }
  const head = { at, ...(note.trim() !== '' && { note: note.trim() }) }
  return 'lot' in act
    ? lotMove(act.kind, act.lot, draft, head, newOpenedId)
    : openedMove(act, draft, head)
}

type Head = Pick<Move, 'at' | 'note'>

const done = (move: Move): ActOutcome => ({ ok: true, move })
const without = (...missing: ActField[]): ActOutcome => ({ ok: false, missing })

function lotMove(
  kind: LotActKind,
  lot: ActLot,
  draft: ActDraft,
  head: Head,
  newOpenedId: string,
): ActOutcome {
  const bottleLotId = lot.id
  const { count, fromShelfId, toShelfId, tasting } = draft
  // The book takes bottles without a place by leaving the place out.
  const from = fromShelfId ? { shelfId: fromShelfId } : {}
  switch (kind) {
    case 'drawBottle':
    case 'give':
    case 'breakBottle':
      return count === undefined
        ? without('count')
        : done({ ...head, kind, bottleLotId, count, ...from })
    case 'discard':
      return count === undefined
        ? without('count')
        : done({ ...head, kind, from: { bottleLotId, count, ...from } })
    case 'openBottle':
      return done({ ...head, kind, bottleLotId, openedId: newOpenedId, ...from })
    case 'shelve':
      return count === undefined || toShelfId === undefined
        ? without(
            ...(count === undefined ? (['count'] as const) : []),
            ...(toShelfId === undefined ? (['to'] as const) : []),
          )
        : done({ ...head, kind, bottleLotId, count, fromShelfId: fromShelfId ?? null, toShelfId })
    case 'taste':
      return isJudged(tasting) || head.note !== undefined
        ? done({ ...head, kind, batchId: lot.batchId, bottleLotId, ...tastingPart(tasting) })
        : without('taste')
  }
}

function openedMove(
  act: Extract<Act, { opened: unknown }>,
  draft: ActDraft,
  head: Head,
): ActOutcome {
  const openedId = act.opened.id
  const { volumeMl, fromOpenedId } = draft
  const poured = volumeMl === undefined ? {} : { volumeMl }
  switch (act.kind) {
    case 'pourGlass':
      return done({ ...head, kind: 'pourGlass', openedId, ...poured })
    case 'topUp':
      return fromOpenedId === undefined
        ? without('fromOpened')
        : done({ ...head, kind: 'topUp', openedId, fromOpenedId, ...poured })
    case 'discardOpened':
      return done({ ...head, kind: 'discard', from: { openedId } })
    case 'correctOpened':
      return volumeMl === undefined
        ? without('volume')
        : done({ ...head, kind: 'correct', found: { openedId, volumeMl } })
  }
}
