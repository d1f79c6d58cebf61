/** Seasons as the maker keeps them: the region, what is wished, and the plans that were kept. */
import { KeptSeasonPlan, Region, SeasonPlan, SeasonWishes } from '../../shared/schemas/season.ts'
import type { Book } from './open-book.ts'

const usualRegion: Region = { zone: 'northTemperate', ownShiftWeeks: 0 }

export function seasonRegion(book: Book): Region {
  const kept = only(book, 'season_region')
  return kept === undefined ? usualRegion : Region.parse(kept)
}

export const keepRegion = (book: Book, region: Region): void => put(book, 'season_region', region)

/** Undefined while the maker kept none. */
export function seasonWishes(book: Book): SeasonWishes | undefined {
  const kept = only(book, 'season_wishes')
  return kept === undefined ? undefined : SeasonWishes.parse(kept)
}

export const keepWishes = (book: Book, wishes: SeasonWishes): void =>
  put(book, 'season_wishes', wishes)

type OneRow = 'season_region' | 'season_wishes'

function only(book: Book, table: OneRow): unknown {
  const content = book.prepare(`SELECT content FROM ${table}`).pluck().get()
  return content === undefined ? undefined : JSON.parse(content as string)
}

function put(book: Book, table: OneRow, content: unknown): void {
  book
    .prepare(
      `INSERT INTO ${table} (only, content) VALUES (1, ?)
       ON CONFLICT (only) DO UPDATE SET content = excluded.content`,
    )
    .run(JSON.stringify(content))
}

interface PlanRow {
  id: string
  kept_at: string
  content: string
}

const planOf = (row: PlanRow): KeptSeasonPlan => ({
  id: row.id,
  keptAt: row.kept_at,
  plan: SeasonPlan.parse(JSON.parse(row.content)),
})

export function seasonPlanById(book: Book, id: string): KeptSeasonPlan | undefined {
  const row = book.prepare('SELECT id, kept_at, content FROM season_plan WHERE id = ?').get(id)
  return row === undefined ? undefined : planOf(row as PlanRow)
}

/** The newest first. */
export const keptSeasonPlans = (book: Book): KeptSeasonPlan[] =>
  (
    book
      .prepare('SELECT id, kept_at, content FROM season_plan ORDER BY kept_at DESC, id DESC')
      .all() as PlanRow[]
  ).map(planOf)

export function newestSeasonPlan(book: Book): KeptSeasonPlan | undefined {
  const row = book
    .prepare('SELECT id, kept_at, content FROM season_plan ORDER BY kept_at DESC, id DESC LIMIT 1')
    .get()
  return row === undefined ? undefined : planOf(row as PlanRow)
}

export function addSeasonPlan(book: Book, { id, keptAt, plan }: KeptSeasonPlan): void {
  book
    .prepare('INSERT INTO season_plan (id, kept_at, content) VALUES (?, ?, ?)')
    .run(id, keptAt, JSON.stringify(plan))
}
