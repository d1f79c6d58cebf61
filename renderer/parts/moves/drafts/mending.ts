/** Throwing away, and putting the book right where the cellar shows something else. */
import type { PantryLot } from '../../../../shared/schemas/cellar.ts'
import type { Move, MoveOf } from '../../../../shared/schemas/moves.ts'
import {
  complete,
  given,
  headOf,
  headOfMove,
  incomplete,
  missing,
  type DraftHead,
  type Outcome,
} from './draft-basics.ts'
import { freeMl, hasFruit, ownJars, type LogContext } from './log-context.ts'

/** What a mending move is about. */
export type Subject = 'jar' | 'lot' | 'bottles' | 'opened'

interface MendingDraft extends DraftHead {
  readonly subject: Subject
  readonly jarId: string | undefined
  readonly lotId: string | undefined
  readonly bottleLotId: string | undefined
  readonly openedId: string | undefined
  /** Of bottles counted or thrown away: where they stand; undefined is wherever. */
  readonly shelfId: string | null | undefined
  /** Of a lot or an opened bottle: millilitres of a liquid, grams of everything else. */
  readonly amount: number | undefined
  readonly count: number | undefined
}

export interface DiscardDraft extends MendingDraft {
  readonly kind: 'discard'
  readonly part: 'all' | 'pulp' | 'liquid'
}

export interface CorrectDraft extends MendingDraft {
  readonly kind: 'correct'
  readonly volumeMl: number | undefined
  readonly strengthPctVol: number | undefined
  readonly sugarGPerL: number | undefined
}

function startMending(context: LogContext): MendingDraft {
  const own = ownJars(context)
  const spent = own.find((standing) => hasFruit(standing) && freeMl(standing) < 1)
  const bottles = context.bottleLots.find(({ count }) => count > 0) ?? context.bottleLots[0]
  return {
    at: context.now(),
    note: '',
    subject: own.length === 0 && bottles ? 'bottles' : 'jar',
    jarId: (spent ?? own[0])?.jar.id,
    lotId: undefined,
    bottleLotId: bottles?.id,
    openedId: undefined,
    shelfId: undefined,
    amount: undefined,
    count: undefined,
  }
}

export function startDiscard(context: LogContext): DiscardDraft {
  const draft = startMending(context)
  const jar = ownJars(context).find((standing) => standing.jar.id === draft.jarId)
  return { ...draft, kind: 'discard', part: jar && hasFruit(jar) ? 'pulp' : 'all' }
}

export const startCorrect = (context: LogContext): CorrectDraft => ({
  ...startMending(context),
  kind: 'correct',
  volumeMl: undefined,
  strengthPctVol: undefined,
  sugarGPerL: undefined,
})

/** A lot's amount under the name that its goods are measured by. */
function measured(lotId: string, amount: number | undefined, pantry: readonly PantryLot[]) {
  const isSpirit = pantry.find(({ id }) => id === lotId)?.goods.kind === 'spirit'
  return isSpirit ? given({ volumeMl: amount }) : given({ massG: amount })
}

export function discardMoves(draft: DiscardDraft, pantry: readonly PantryLot[]): Outcome<Move> {
  const { at, note, subject, jarId, lotId, bottleLotId, openedId, count, part, amount } = draft
  if (at === undefined) return missing({ at })
  const thrown = (from: MoveOf<'discard'>['from']) =>
    complete<Move>([{ ...headOf(at, note), kind: 'discard', from }])
  switch (subject) {
    case 'jar':
      return jarId === undefined ? missing({ jarId }) : thrown({ jarId, part })
    case 'lot':
      return lotId === undefined
        ? missing({ lotId })
        : thrown({ lotId, ...measured(lotId, amount, pantry) })
    case 'bottles':
      return bottleLotId === undefined || count === undefined
        ? missing({ bottleLotId, count })
        : thrown({ bottleLotId, count, ...(draft.shelfId && { shelfId: draft.shelfId }) })
    case 'opened':
      return openedId === undefined ? missing({ openedId }) : thrown({ openedId })
  }
}

export function correctMoves(draft: CorrectDraft, pantry: readonly PantryLot[]): Outcome<Move> {
  const { at, note, subject, jarId, lotId, bottleLotId, openedId, count, amount } = draft
  if (at === undefined) return missing({ at })
  const corrected = (found: MoveOf<'correct'>['found']) =>
    complete<Move>([{ ...headOf(at, note), kind: 'correct', found }])
  const { volumeMl, strengthPctVol, sugarGPerL } = draft
  const liquid = given({ volumeMl, strengthPctVol, sugarGPerL })
  switch (subject) {
    case 'jar':
      if (jarId === undefined) return missing({ jarId })
      if (Object.keys(liquid).length === 0)
        return incomplete({ field: 'volumeMl', code: 'nothingFound' })
      return corrected({ jarId, ...liquid })
    case 'lot':
      return lotId === undefined || amount === undefined
        ? missing({ lotId, amount })
        : corrected({ lotId, ...measured(lotId, amount, pantry) })
    case 'bottles':
      return bottleLotId === undefined || count === undefined
        ? missing({ bottleLotId, count })
        : corrected({ bottleLotId, count, ...whereCounted(draft) })
    case 'opened':
      return openedId === undefined || amount === undefined
        ? missing({ openedId, amount })
        : corrected({ openedId, volumeMl: amount })
  }
}

const whereCounted = ({ shelfId }: CorrectDraft) => (shelfId === undefined ? {} : { shelfId })

const noSubject = {
  jarId: undefined,
  lotId: undefined,
  bottleLotId: undefined,
  openedId: undefined,
  shelfId: undefined,
  amount: undefined,
  count: undefined,
}

export function discardOfMove(move: MoveOf<'discard'>): DiscardDraft {
  const { from } = move
  const shared = { kind: 'discard', ...headOfMove(move), ...noSubject, part: 'all' } as const
  if ('jarId' in from) return { ...shared, subject: 'jar', jarId: from.jarId, part: from.part }
  if ('lotId' in from)
    return { ...shared, subject: 'lot', lotId: from.lotId, amount: from.volumeMl ?? from.massG }
  if ('openedId' in from) return { ...shared, subject: 'opened', openedId: from.openedId }
  const { bottleLotId, count, shelfId } = from
  return { ...shared, subject: 'bottles', bottleLotId, count, shelfId }
}

export function correctOfMove(move: MoveOf<'correct'>): CorrectDraft {
  const { found } = move
  const shared = {
    kind: 'correct',
    ...headOfMove(move),
    ...noSubject,
    volumeMl: undefined,
    strengthPctVol: undefined,
    sugarGPerL: undefined,
  } as const
  if ('jarId' in found) {
    const { jarId, volumeMl, strengthPctVol, sugarGPerL } = found
    return { ...shared, subject: 'jar', jarId, volumeMl, strengthPctVol, sugarGPerL }
  }
  if ('lotId' in found)
    return { ...shared, subject: 'lot', lotId: found.lotId, amount: found.volumeMl ?? found.massG }
  if ('openedId' in found)
    return { ...shared, subject: 'opened', openedId: found.openedId, amount: found.volumeMl }
  const { bottleLotId, count, shelfId } = found
  return { ...shared, subject: 'bottles', bottleLotId, count, shelfId }
}
