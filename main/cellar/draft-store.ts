/** Drafts: batches on paper, kept to go on with. They touch no ledger. */
import { Draft, type KeptDraft } from '../../shared/schemas/drafts.ts'
import type { Book } from './open-book.ts'

interface DraftRow {
  content: string
  created_at: string
  changed_at: string
}

const keptOf = ({ content, created_at, changed_at }: DraftRow): KeptDraft => ({
  draft: Draft.parse(JSON.parse(content)),
  createdAt: created_at,
  changedAt: changed_at,
})

/** The one changed last comes first. */
export const allDrafts = (book: Book): KeptDraft[] =>
  (
    book.prepare('SELECT * FROM draft ORDER BY changed_at DESC, rowid DESC').all() as DraftRow[]
  ).map(keptOf)

export function draftById(book: Book, id: string): KeptDraft | undefined {
  const row = book.prepare('SELECT * FROM draft WHERE id = ?').get(id) as DraftRow | undefined
  return row && keptOf(row)
}

export function putDraft(book: Book, draft: Draft, at: string): void {
  book
    .prepare(
      `INSERT INTO draft (id, content, created_at, changed_at) VALUES (:id, :content, :at, :at)
       ON CONFLICT (id) DO UPDATE SET content = excluded.content, changed_at = excluded.changed_at`,
    )
    .run({ id: draft.id, content: JSON.stringify(draft), at })
}

export const removeDraft = (book: Book, id: string): boolean =>
  book.prepare('DELETE FROM draft WHERE id = ?').run(id).changes > 0
