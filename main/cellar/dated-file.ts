/** Files that are named after the book and the instant they were made at, and never over another. */
import { readdirSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'

const unfinishedEnding = '.unfinished'

/** `cellar-2026-11-25-180307Z` and the ending: sorted by name is sorted by time. */
export function datedName(bookName: string, madeAt: string, ending: string): string {
  const stem = bookName.replace(/\.ratafia$/, '').replace(/[^\p{L}\p{N} _-]/gu, '') || 'cellar'
  const stamp = madeAt.slice(0, 19).replace('T', '-').replaceAll(':', '')
  return `${stem}-${stamp}Z${ending}`
}

/** Two within a second, or a file of somebody else's, must not be written over. */
export function freeNameIn(folder: string, name: string): string {
  const taken = new Set(readdirSync(folder))
  for (let serial = 1; ; serial += 1) {
    const tried = serial === 1 ? name : name.replace('Z.', `Z-${serial}.`)
    if (!taken.has(tried) && !taken.has(tried + unfinishedEnding)) return tried
  }
}

/** The name a file has until it is whole. */
export const unfinishedName = (file: string): string => file + unfinishedEnding

export const isUnfinished = (name: string, ending: string): boolean =>
  name.endsWith(ending + unfinishedEnding)

export interface StoppedWork {
  readonly bookName: string
  readonly madeAt: string
  readonly ending: string
}

/** Takes away what was left behind by work that was stopped before its file was whole. */
export function dropUnfinishedOf(folder: string, { bookName, madeAt, ending }: StoppedWork): void {
  if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory()) return
  const begins = datedName(bookName, madeAt, '')
  for (const name of readdirSync(folder))
    if (name.startsWith(begins) && isUnfinished(name, ending))
      rmSync(join(folder, name), { force: true })
}
