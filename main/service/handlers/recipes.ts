/** House recipes: kept from drafts or from batches, scaled, and compared with what happened. */
import { allJars } from '../../cellar/jar-store.ts'
import type { Book } from '../../cellar/open-book.ts'
import { allRecipes, keepRecipe, recipeVersions, removeRecipe } from '../../cellar/recipe-store.ts'
import { compareStages, draftOfBatch, outcomeOf, scaledDraft, stepsOf } from '../../engine/index.ts'
import { DraftSpec, type DraftVessel, type Recipe } from '../../../shared/schemas/drafts.ts'
import { doable } from '../doable.ts'
import { draftFacts } from '../draft-facts.ts'
import { movesOfBatch } from '../plan-moves.ts'
import { batchOf } from '../one-batch.ts'
import { notFound, ServiceError } from '../service-error.ts'
import type { Session } from '../session.ts'
import { withinContract } from '../within-contract.ts'
import { nowMs, type ChannelsOf, type Handlers } from './handler.ts'

function newest(session: Session, recipeId: string): Recipe {
  const [recipe] = recipeVersions(session.book, recipeId)
  if (!recipe) throw notFound('recipe', recipeId)
  return recipe
}

/** What is retired stands in no cellar any more: only its size is kept. */
function vesselsOf(book: Book) {
  const jars = new Map(allJars(book).map((jar) => [jar.id, jar]))
  return (jarId: string): DraftVessel | undefined => {
    const jar = jars.get(jarId)
    if (!jar) return undefined
    const { name, shape, capacityMl } = jar
    return jar.isRetired ? { shape, capacityMl } : { jarId, name, shape, capacityMl }
  }
}

export const recipeHandlers: Handlers<ChannelsOf<'recipes'>> = {
  'recipes.list': ({ book }) => allRecipes(book),
  'recipes.versions': (session, { recipeId }) => {
    newest(session, recipeId)
    return recipeVersions(session.book, recipeId)
  },
  'recipes.keep': (session, recipe) => {
    const { book, options } = session
    const at = options.now().toISOString()
    book.transaction(() => keepRecipe(book, recipe, at)).immediate()
    return newest(session, recipe.id)
  },
  'recipes.keepBatch': (session, { batchId, ...recipe }) => {
    const { book, options, ledger } = session
    batchOf(session, batchId)
    const steps = stepsOf(ledger.folded.steps, batchId)
    const spec = draftOfBatch(steps, ledger.folded.cellar, batchId, vesselsOf(book))
    if (!spec)
      throw new ServiceError('noFruit', `batch ${batchId} has no fruit under spirit`, { batchId })
    // Several pours together may be more than a recipe can say.
    withinContract(DraftSpec, spec)
    const at = options.now().toISOString()
    const kept = { ...recipe, spec, fromBatchId: batchId }
    book.transaction(() => keepRecipe(book, kept, at)).immediate()
    return newest(session, recipe.id)
  },
  'recipes.remove': ({ book }, { recipeId }) => {
    if (!book.transaction(() => removeRecipe(book, recipeId)).immediate())
      throw notFound('recipe', recipeId)
    return {}
  },
  'recipes.scale': (session, { spec, scale }) => {
    const facts = draftFacts(session)
    const scaled = scaledDraft(spec, scale, facts)
    withinContract(DraftSpec, scaled)
    return { spec: scaled, outcome: doable(outcomeOf(scaled, facts)) }
  },
  'recipes.compare': (session, { spec, batchId }) => {
    batchOf(session, batchId)
    const facts = draftFacts(session)
    const { folded } = session.ledger
    const plan = {
      batchId,
      startedAt: spec.startAt,
      spec,
      moves: movesOfBatch(doable(outcomeOf(spec, facts)).moves, batchId),
    }
    const steps = stepsOf(folded.steps, batchId)
    return compareStages({ plan, steps, nowMs: nowMs(session) }, facts)
  },
}
