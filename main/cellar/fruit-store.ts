/** The maker's own fruits: copies of library rows that they edited, and kinds the library lacks. */
import { Fruit } from '../../shared/schemas/fruits.ts'
import type { Book } from './open-book.ts'

export interface OwnFruit {
  readonly fruit: Fruit
  readonly origin: 'edited' | 'own'
  readonly changedAt: string
}

interface FruitRow {
  facts: string
  origin: OwnFruit['origin']
  changed_at: string
}

export const ownFruits = (book: Book): OwnFruit[] =>
  (book.prepare('SELECT facts, origin, changed_at FROM fruit ORDER BY id').all() as FruitRow[]).map(
    ({ facts, origin, changed_at }) => ({
      fruit: Fruit.parse(JSON.parse(facts)),
      origin,
      changedAt: changed_at,
    }),
  )

/** Keeps a fruit, in place of an earlier version of it. */
export function putFruit(book: Book, { fruit, origin, changedAt }: OwnFruit): void {
  book
    .prepare(
      `INSERT INTO fruit (id, origin, facts, changed_at) VALUES (?, ?, ?, ?)
       ON CONFLICT (id) DO UPDATE SET origin = excluded.origin, facts = excluded.facts,
         changed_at = excluded.changed_at`,
    )
    .run(fruit.id, origin, JSON.stringify(fruit), changedAt)
}

export function removeFruit(book: Book, id: string): void {
  book.prepare('DELETE FROM fruit WHERE id = ?').run(id)
}

/**
 * Whether anything names the fruit: a purchase or bottles from elsewhere (struck ones too, an undo
 * may bring them back), a draft, a recipe, the plan of a batch, a season's wishes or plan.
 */
export const isFruitNamed = (book: Book, id: string): boolean =>
  book
    .prepare(
      `SELECT EXISTS (
         SELECT 1 FROM move WHERE kind = 'buy' AND payload ->> '$.goods.fruitId' = :id
         UNION ALL
         SELECT 1 FROM move, json_each(payload, '$.fruitIds') AS made
         WHERE kind = 'bringIn' AND made.value = :id
         UNION ALL
         SELECT 1 FROM (
           SELECT content AS paper FROM draft
           UNION ALL SELECT spec FROM recipe_version
           UNION ALL SELECT spec FROM plan
           UNION ALL SELECT content FROM season_plan
           UNION ALL SELECT content FROM season_wishes
         ), json_tree(paper) AS node
         WHERE node.key IN ('fruitId', 'kindId') AND node.atom = :id)`,
    )
    .pluck()
    .get({ id }) === 1
