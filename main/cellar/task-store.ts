/** What the maker put off, and when they were last reminded: the tasks themselves are never kept. */
import type { Book } from './open-book.ts'

/** By task: the day until which it was put off. */
export function allPutOff(book: Book): Map<string, string> {
  const rows = book.prepare('SELECT task_id, until FROM put_off').all() as {
    task_id: string
    until: string
  }[]
  return new Map(rows.map(({ task_id, until }) => [task_id, until]))
}

/** `until` null puts it back on its own day. Answers with what was kept before. */
export function putOff(
  book: Book,
  taskId: string,
  until: string | null,
  at: string,
): string | null {
  const before = book.prepare('SELECT until FROM put_off WHERE task_id = ?').pluck().get(taskId) as
    string | undefined
  if (until === null) book.prepare('DELETE FROM put_off WHERE task_id = ?').run(taskId)
  else
    book
      .prepare(
        `INSERT INTO put_off (task_id, until, put_off_at) VALUES (:taskId, :until, :at)
         ON CONFLICT (task_id) DO UPDATE SET until = excluded.until, put_off_at = excluded.put_off_at`,
      )
      .run({ taskId, until, at })
  return before ?? null
}

/** True when nobody was reminded on that day yet; it counts as reminded from then on. */
export const remindedFirst = (book: Book, day: string): boolean =>
  book
    .prepare(
      `INSERT INTO reminder (only, day) VALUES (1, ?)
       ON CONFLICT (only) DO UPDATE SET day = excluded.day WHERE day <> excluded.day`,
    )
    .run(day).changes > 0
