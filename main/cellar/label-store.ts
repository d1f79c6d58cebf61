/** Sheets of labels of the maker's own, and what was chosen when labels were printed last. */
import { LabelSheet, LabelStyle } from '../../shared/schemas/labels.ts'
import type { Book } from './open-book.ts'

export const ownSheets = (book: Book): LabelSheet[] =>
  (book.prepare('SELECT content FROM label_sheet ORDER BY rowid').pluck().all() as string[]).map(
    (content) => LabelSheet.parse(JSON.parse(content)),
  )

/** Adds a sheet, or changes the one that has its id. */
export function putSheet(book: Book, sheet: LabelSheet): void {
  book
    .prepare(
      `INSERT INTO label_sheet (id, content) VALUES (:id, :content)
       ON CONFLICT (id) DO UPDATE SET content = excluded.content`,
    )
    .run({ id: sheet.id, content: JSON.stringify(sheet) })
}

export const removeSheet = (book: Book, id: string): boolean =>
  book.prepare('DELETE FROM label_sheet WHERE id = ?').run(id).changes > 0

/** A style that cannot be read counts as not kept: it must not keep labels from being printed. */
export function keptStyle(book: Book): LabelStyle | undefined {
  const content = book.prepare('SELECT content FROM label_style').pluck().get() as
    string | undefined
  return content === undefined ? undefined : LabelStyle.safeParse(JSON.parse(content)).data
}

export function putStyle(book: Book, style: LabelStyle): void {
  book
    .prepare(
      `INSERT INTO label_style (only, content) VALUES (1, ?)
       ON CONFLICT (only) DO UPDATE SET content = excluded.content`,
    )
    .run(JSON.stringify(style))
}
