/** What of a purchase list is bought, line by line. */
import * as z from 'zod'
import { Instant } from '../../shared/schemas/basics.ts'
import type { Book } from './open-book.ts'

export const TickContent = z.strictObject({
  at: Instant,
  lotId: z.string().optional(),
  massG: z.number().optional(),
  volumeMl: z.number().optional(),
  count: z.number().int().optional(),
  priceMinor: z.number().optional(),
})

export interface PurchaseTick extends z.infer<typeof TickContent> {
  readonly lineKey: string
  /** The purchase in the ledger; undefined for what the pantry keeps no account of. */
  readonly moveId: string | undefined
}

interface TickRow {
  line_key: string
  move_id: string | null
  content: string
}

export const purchaseTicks = (book: Book): Map<string, PurchaseTick> =>
  new Map(
    (book.prepare('SELECT line_key, move_id, content FROM purchase_tick').all() as TickRow[]).map(
      (row) => [
        row.line_key,
        {
          ...TickContent.parse(JSON.parse(row.content)),
          lineKey: row.line_key,
          moveId: row.move_id ?? undefined,
        },
      ],
    ),
  )

export function putTick(book: Book, { lineKey, moveId, ...content }: PurchaseTick): void {
  book
    .prepare(
      `INSERT INTO purchase_tick (line_key, move_id, content) VALUES (:lineKey, :moveId, :content)
       ON CONFLICT (line_key) DO UPDATE SET move_id = excluded.move_id, content = excluded.content`,
    )
    .run({ lineKey, moveId: moveId ?? null, content: JSON.stringify(content) })
}

export function removeTick(book: Book, lineKey: string): void {
  book.prepare('DELETE FROM purchase_tick WHERE line_key = ?').run(lineKey)
}
