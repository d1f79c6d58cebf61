/** Looks at the files from outside, past the program that writes them: was anything written? */
import { existsSync, statSync } from 'node:fs'
import Database from 'better-sqlite3'

export interface WatchedBooks {
  /** The same as long as no row of any book was written, nor what stands beside it. */
  mark: () => string
  close: () => void
}

interface Watched {
  readonly inode: number
  readonly serial: number
  readonly book: Database.Database
}

/** `besides` are small files that are replaced whole. */
export function watchBooks(files: readonly string[], besides: readonly string[]): WatchedBooks {
  const open = new Map<string, Watched>()
  let serial = 0

  function letGo(file: string) {
    open.get(file)?.book.close()
    open.delete(file)
  }

  /** SQLite's own count of what others have written, which holds for one connection only. */
  function markOf(file: string): string {
    if (!existsSync(file)) {
      letGo(file)
      return 'none'
    }
    const inode = statSync(file).ino
    if (open.get(file)?.inode !== inode) {
      letGo(file)
      serial += 1
      open.set(file, { inode, serial, book: new Database(file, { readonly: true }) })
    }
    const watched = open.get(file) as Watched
    return `${watched.serial}:${String(watched.book.pragma('data_version', { simple: true }))}`
  }

  return {
    mark: () =>
      [
        ...files.map(markOf),
        ...besides.map((file) => statSync(file, { throwIfNoEntry: false })?.ino ?? 'none'),
      ].join(' '),
    close: () => {
      for (const file of files) letGo(file)
    },
  }
}
