/** Puts a book in place of another, which is kept aside under a name of its own. */
import { closeSync, constants, copyFileSync, existsSync, fsyncSync, linkSync } from 'node:fs'
import { openSync, renameSync, rmSync } from 'node:fs'
import { dirname } from 'node:path'
import { lockBook } from './book-lock.ts'
import { syncFolder } from './sync-folder.ts'

/** What SQLite keeps beside a book and cannot do without. */
const logs = ['-wal', '-journal']

/**
 * `nextFile` must be a whole book that nobody has open, in the same folder. At no instant is the
 * place empty: the former book has both names before the next one takes the first from it. Returns
 * the name under which it is kept; null when there was none.
 */
export function putInPlace(
  file: string,
  { nextFile, at }: { nextFile: string; at: Date },
): string | null {
  const lock = lockBook(file)
  try {
    const aside = asideName(file, at)
    const parts = ['', ...logs].filter((suffix) => existsSync(file + suffix))
    try {
      for (const suffix of parts) keepAlso(file + suffix, aside + suffix)
      // A log must never meet another book than its own.
      for (const suffix of [...logs, '-shm']) rmSync(file + suffix, { force: true })
      renameSync(nextFile, file)
    } catch (error) {
      takeBack(file, { aside, parts })
      throw error
    }
    syncFolder(dirname(file))
    return parts.includes('') ? aside : null
  } finally {
    lock.release()
  }
}

/** `cellar kept 2026-11-25 180307.ratafia`, or with a number when there is one already. */
function asideName(file: string, at: Date): string {
  const stamp = at.toISOString().slice(0, 19).replace('T', ' ').replaceAll(':', '')
  const stem = file.replace(/\.ratafia$/, '')
  for (let serial = 1; ; serial += 1) {
    const name = `${stem} kept ${stamp}${serial === 1 ? '' : ` ${serial}`}.ratafia`
    if (['', ...logs].every((suffix) => !existsSync(name + suffix))) return name
  }
}

/** A second name for the same file; where the disk knows no such thing, a copy. */
function keepAlso(from: string, to: string): void {
  try {
    linkSync(from, to)
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') throw error
    copyFileSync(from, to, constants.COPYFILE_EXCL)
    const copy = openSync(to, 'r+')
    fsyncSync(copy)
    closeSync(copy)
  }
}

function takeBack(file: string, { aside, parts }: { aside: string; parts: readonly string[] }) {
  for (const suffix of parts) {
    if (!existsSync(aside + suffix)) continue
    if (!existsSync(file + suffix)) keepAlso(aside + suffix, file + suffix)
    rmSync(aside + suffix)
  }
}
