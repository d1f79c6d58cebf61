/** Brings a book up to this program's schema, one transaction a step; refuses a newer book. */
import type { Database } from 'better-sqlite3'
import { BookError } from './book-error.ts'
import { migrations, type Migration } from './migrations.ts'

export const newestVersion = migrations.at(-1)?.version ?? 0

/** The book's schema version; throws when this program is older than the book. */
export function knownVersion(db: Database, steps: readonly Migration[] = migrations): number {
  const newest = steps.at(-1)?.version ?? 0
  const version = db.pragma('user_version', { simple: true }) as number
  if (version > newest)
    throw new BookError(
      'bookNewer',
      `this book has schema ${version}, this program knows up to ${newest}`,
    )
  return version
}

export function migrate(db: Database, steps: readonly Migration[] = migrations): void {
  const version = knownVersion(db, steps)
  let last = 0
  for (const step of steps) {
    if (step.version <= last) throw new Error(`migration ${step.version} is out of order`)
    last = step.version
    if (step.version <= version) continue
    db.transaction(() => {
      db.exec(step.sql)
      db.pragma(`user_version = ${step.version}`)
    }).immediate()
  }
}
