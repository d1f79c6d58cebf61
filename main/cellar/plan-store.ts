/** The plan that a batch was started with. It is never changed: real moves stand in the ledger. */
import { Plan } from '../../shared/schemas/drafts.ts'
import type { Book } from './open-book.ts'

interface PlanRow {
  batch_id: string
  started_at: string
  spec: string
  moves: string
  recipe_id: string | null
  recipe_version: number | null
}

const planOf = (row: PlanRow): Plan =>
  Plan.parse({
    batchId: row.batch_id,
    startedAt: row.started_at,
    spec: JSON.parse(row.spec),
    moves: JSON.parse(row.moves),
    ...(row.recipe_id !== null && { recipeId: row.recipe_id }),
    ...(row.recipe_version !== null && { recipeVersion: row.recipe_version }),
  })

export function planOfBatch(book: Book, batchId: string): Plan | undefined {
  const row = book.prepare('SELECT * FROM plan WHERE batch_id = ?').get(batchId)
  return row === undefined ? undefined : planOf(row as PlanRow)
}

export const allPlans = (book: Book): Plan[] =>
  (book.prepare('SELECT * FROM plan ORDER BY started_at').all() as PlanRow[]).map(planOf)

export function addPlan(book: Book, plan: Plan): void {
  book
    .prepare(
      `INSERT INTO plan (batch_id, started_at, spec, moves, recipe_id, recipe_version)
       VALUES (:batchId, :startedAt, :spec, :moves, :recipeId, :recipeVersion)`,
    )
    .run({
      batchId: plan.batchId,
      startedAt: plan.startedAt,
      spec: JSON.stringify(plan.spec),
      moves: JSON.stringify(plan.moves),
      recipeId: plan.recipeId ?? null,
      recipeVersion: plan.recipeVersion ?? null,
    })
}
