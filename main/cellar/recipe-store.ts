/** House recipes with all their versions. A version once kept is never changed. */
import { DraftSpec, type Recipe } from '../../shared/schemas/drafts.ts'
import type { Book } from './open-book.ts'

interface RecipeRow {
  id: string
  name: string
  note: string
  from_batch_id: string | null
  version: number
  kept_at: string
  spec: string
}

const versionsOf = (book: Book, where: string, ...values: string[]): Recipe[] =>
  (
    book
      .prepare(
        `SELECT recipe.id, name, note, from_batch_id, version, kept_at, spec
         FROM recipe JOIN recipe_version ON recipe_id = recipe.id
         WHERE ${where} ORDER BY name COLLATE NOCASE, recipe.id, version DESC`,
      )
      .all(...values) as RecipeRow[]
  ).map((row) => ({
    id: row.id,
    name: row.name,
    note: row.note,
    version: row.version,
    keptAt: row.kept_at,
    spec: DraftSpec.parse(JSON.parse(row.spec)),
    ...(row.from_batch_id !== null && { fromBatchId: row.from_batch_id }),
    batchIds: batchesOf(book, row.id),
  }))

const batchesOf = (book: Book, recipeId: string): string[] =>
  book
    .prepare('SELECT batch_id FROM plan WHERE recipe_id = ? ORDER BY started_at')
    .pluck()
    .all(recipeId) as string[]

/** Each recipe by its newest version. */
export const allRecipes = (book: Book): Recipe[] =>
  versionsOf(
    book,
    `version = (SELECT max(version) FROM recipe_version AS newest
                WHERE newest.recipe_id = recipe.id)`,
  )

/** All versions of one recipe, the newest first. */
export const recipeVersions = (book: Book, id: string): Recipe[] =>
  versionsOf(book, 'recipe.id = ?', id)

export interface KeptRecipe {
  readonly id: string
  readonly name: string
  readonly note: string
  readonly spec: DraftSpec
  readonly fromBatchId?: string | undefined
}

/** Adds a recipe, or a version to the one that has its id when the amounts have changed. */
export function keepRecipe(book: Book, recipe: KeptRecipe, at: string): void {
  const { id, name, note, fromBatchId } = recipe
  book
    .prepare(
      `INSERT INTO recipe (id, name, note, from_batch_id) VALUES (:id, :name, :note, :fromBatchId)
       ON CONFLICT (id) DO UPDATE SET name = excluded.name, note = excluded.note`,
    )
    .run({ id, name, note, fromBatchId: fromBatchId ?? null })
  const spec = JSON.stringify(recipe.spec)
  const newest = book
    .prepare('SELECT version, spec FROM recipe_version WHERE recipe_id = ? ORDER BY version DESC')
    .get(id) as { version: number; spec: string } | undefined
  if (newest?.spec === spec) return
  book
    .prepare('INSERT INTO recipe_version (recipe_id, version, kept_at, spec) VALUES (?, ?, ?, ?)')
    .run(id, (newest?.version ?? 0) + 1, at, spec)
}

/** The batches made by it keep their plans. */
export const removeRecipe = (book: Book, id: string): boolean =>
  book.prepare('DELETE FROM recipe WHERE id = ?').run(id).changes > 0
