/** Batches on paper: kept, reckoned, solved backward, printed, and started. */
import { batchById, putBatch } from '../../cellar/batch-store.ts'
import { allDrafts, draftById, putDraft, removeDraft } from '../../cellar/draft-store.ts'
import { addPlan } from '../../cellar/plan-store.ts'
import { readSettings } from '../../cellar/setting-store.ts'
import { outcomeOf, solveDraft, usualDraft } from '../../engine/index.ts'
import { planPaper } from '../../papers/plan-paper.ts'
import { DraftSpec, type DraftWishes } from '../../../shared/schemas/drafts.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import { doable } from '../doable.ts'
import { draftFacts } from '../draft-facts.ts'
import { tissueFor } from '../learned-fruit.ts'
import { asKnownToday, movesOfBatch } from '../plan-moves.ts'
import { notFound, ServiceError } from '../service-error.ts'
import type { Session } from '../session.ts'
import { withinContract } from '../within-contract.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

function kept(session: Session, draftId: string) {
  const found = draftById(session.book, draftId)
  if (!found) throw notFound('draft', draftId)
  return found
}

/** As strong and as sweet as the trade finishes it. */
function usualWishes(fruit: Fruit, bottles: number): DraftWishes {
  const { finishedStrengthPctVol, finishedSugarGPerL } = fruit
  return {
    bottles: Math.max(1, bottles),
    ...(finishedStrengthPctVol && { strengthPctVol: finishedStrengthPctVol.typical }),
    ...(finishedSugarGPerL && { sugarGPerL: finishedSugarGPerL.typical }),
  }
}

export const draftHandlers: Handlers<ChannelsOf<'drafts'>> = {
  'drafts.list': ({ book }) => allDrafts(book),
  'drafts.page': (session, { draftId }) => kept(session, draftId),
  'drafts.keep': (session, draft) => {
    const { book, options } = session
    const at = options.now().toISOString()
    book.transaction(() => putDraft(book, draft, at)).immediate()
    return kept(session, draft.id)
  },
  'drafts.remove': ({ book }, { draftId }) => {
    if (!book.transaction(() => removeDraft(book, draftId)).immediate())
      throw notFound('draft', draftId)
    return {}
  },

  'drafts.usual': (session, { fruitId, massG, spiritPctVol }) => {
    const facts = draftFacts(session)
    const fruit = facts.fruitOf(fruitId)
    const startAt = session.options.now().toISOString()
    const begun = usualDraft({ fruit, fruitG: massG, spiritPctVol, startAt })
    const { strengthPctVol, sugarGPerL } = usualWishes(fruit, 1)
    const wishes = {
      ...(strengthPctVol !== undefined && { strengthPctVol }),
      ...(sugarGPerL !== undefined && { sugarGPerL }),
    }
    const { spec, outcome } = solveDraft({ spec: begun, pins: ['fruit'], wishes }, facts)
    return { spec: withinContract(DraftSpec, spec), wishes: usualWishes(fruit, outcome.bottles) }
  },
  'drafts.reckon': (session, { spec }) => doable(outcomeOf(spec, draftFacts(session))),
  'drafts.solve': (session, { spec, pins, wishes }) => {
    const solution = solveDraft({ spec, pins, wishes }, draftFacts(session))
    withinContract(DraftSpec, solution.spec)
    return { ...solution, outcome: doable(solution.outcome) }
  },

  'drafts.start': (session, { batchId, name, colour, spec, recipeId, recipeVersion }) => {
    const { book, options } = session
    if (batchById(book, batchId))
      throw new ServiceError('alreadyThere', `batch ${batchId} exists`, { id: batchId })
    const { moves } = doable(outcomeOf(spec, draftFacts(session)))
    const startedAt = options.now().toISOString()
    const batch = { id: batchId, name, colour, note: '', openedAt: startedAt }
    const plan = {
      batchId,
      startedAt,
      spec,
      moves: asKnownToday(movesOfBatch(moves, batchId), (fruitId) => tissueFor(session, fruitId)),
      ...(recipeId !== undefined && { recipeId }),
      ...(recipeVersion !== undefined && { recipeVersion }),
    }
    book
      .transaction(() => {
        putBatch(book, batch)
        addPlan(book, plan)
      })
      .immediate()
    return batch
  },

  'drafts.paper': async (session, { name, note, spec, size }) => {
    const { fruitOf } = draftFacts(session)
    const outcome = doable(outcomeOf(spec, { fruitOf }))
    const settings = readSettings(session.book)
    const pdf = await planPaper({ name, note, spec, outcome, size, settings, fruitOf })
    return { fileName: fileNameOf(name, spec), pdfBase64: Buffer.from(pdf).toString('base64') }
  },
}

/** Letters of any language stay; what a file system may refuse does not. */
const fileNameOf = (name: string, { startAt }: DraftSpec): string =>
  `${name.replace(/[^\p{L}\p{N} -]/gu, '').trim() || 'plan'} ${startAt.slice(0, 10)}.pdf`
