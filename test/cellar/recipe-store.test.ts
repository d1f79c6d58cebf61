import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { allDrafts, putDraft } from '../../main/cellar/draft-store.ts'
import { migrate } from '../../main/cellar/migrate.ts'
import { migrations } from '../../main/cellar/migrations.ts'
import { addPlan, allPlans, planOfBatch } from '../../main/cellar/plan-store.ts'
import {
  allRecipes,
  keepRecipe,
  recipeVersions,
  removeRecipe,
} from '../../main/cellar/recipe-store.ts'
import { fruitOf, usualDraft } from '../../main/engine/index.ts'

const spec = usualDraft({
  fruit: fruitOf('damson'),
  fruitG: 3000,
  spiritPctVol: 70,
  startAt: '2026-09-01T08:00:00.000Z',
})

const at = '2026-11-25T12:00:00.000Z'

/** A book of the schema before drafts, with a batch in it. */
function olderBook() {
  const db = new Database(':memory:')
  db.pragma('foreign_keys = ON')
  migrate(
    db,
    migrations.filter(({ version }) => version < 30),
  )
  db.prepare(`INSERT INTO batch VALUES ('b1', 'Damson', '#4a2545', '', ?)`).run(at)
  return db
}

describe('the step that brings drafts, recipes and plans', () => {
  it('leaves an older book as it was, with room for them', () => {
    const db = olderBook()
    migrate(db)
    expect(db.prepare('SELECT name FROM batch').pluck().all()).toEqual(['Damson'])
    expect([allDrafts(db), allRecipes(db), allPlans(db)]).toEqual([[], [], []])
    const draft = { id: 'd', name: 'Damsons', spec, pins: [], note: '' }
    putDraft(db, draft, at)
    expect(allDrafts(db)).toEqual([{ draft, createdAt: at, changedAt: at }])
  })
})

describe('keepRecipe', () => {
  it('adds a version where the amounts changed, and never changes one', () => {
    const db = olderBook()
    migrate(db)
    const recipe = { id: 'r', name: 'Damson', note: '', spec, fromBatchId: 'b1' }
    keepRecipe(db, recipe, at)
    keepRecipe(db, { ...recipe, name: 'House damson' }, at)
    keepRecipe(db, { ...recipe, spec: { ...spec, finishSugarG: 90 } }, at)
    expect(recipeVersions(db, 'r').map(({ version }) => version)).toEqual([2, 1])
    expect(() => db.exec(`UPDATE recipe_version SET kept_at = ''`)).toThrow(/only ever added/)
  })

  it('names the batches started from it, which keep their plans when it goes', () => {
    const db = olderBook()
    migrate(db)
    keepRecipe(db, { id: 'r', name: 'Damson', note: '', spec }, at)
    const plan = { batchId: 'b1', startedAt: at, spec, moves: [], recipeId: 'r', recipeVersion: 1 }
    addPlan(db, plan)
    expect(allRecipes(db)[0]?.batchIds).toEqual(['b1'])
    expect(removeRecipe(db, 'r')).toBe(true)
    expect(removeRecipe(db, 'r')).toBe(false)
    expect(planOfBatch(db, 'b1')).toEqual(plan)
    expect(planOfBatch(db, 'b2')).toBeUndefined()
  })
})
