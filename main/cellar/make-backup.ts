/**
 * Makes one backup of a book that is in use: a copy of one instant, packed under another name, looked
 * into as if it were to be gone back to, and only then given its name. Runs in a thread of its own.
 */
import { mkdirSync, renameSync, rmSync, statSync } from 'node:fs'
import { readdir } from 'node:fs/promises'
import { basename, join } from 'node:path'
import Database from 'better-sqlite3'
import { msPerDay } from '../../shared/spans-of-time.ts'
import type { BackupManifest, BackupReason, FoundBackup } from '../../shared/schemas/safekeeping.ts'
import {
  BackupUnfit,
  backupEnding,
  backupName,
  backupsIn,
  foundBackup,
  packBackup,
  sha256Of,
} from './backup-file.ts'
import { backupsToDrop } from './backup-rule.ts'
import { bookFacts, digestUpTo } from './book-facts.ts'
import { freeNameIn, isUnfinished, unfinishedName } from './dated-file.ts'
import { verifyBackup } from './look-into-backup.ts'
import { syncFolder } from './sync-folder.ts'

export interface BackupOrder {
  readonly bookFile: string
  readonly folder: string
  /** The folder beside the book may be made; a stick that is not there must not be. */
  readonly makesFolder: boolean
  readonly workFolder: string
  readonly reason: BackupReason
  readonly madeAt: string
  readonly programVersion: string
  /** What the program holds in memory, and the last row that went into it. */
  readonly live: { readonly seq: number; readonly digest: string } | undefined
}

export type BackupStep = 'copying' | 'packing' | 'checking'
type OnStep = (step: BackupStep, progress: number) => void

export async function makeBackup(order: BackupOrder, onStep: OnStep): Promise<FoundBackup> {
  const { folder, workFolder } = order
  if (order.makesFolder) mkdirSync(folder, { recursive: true, mode: 0o700 })
  // Said before the work is done, when the folder is not there.
  dropUnfinished(folder, await readdir(folder), order)
  const copy = join(workFolder, 'copy.ratafia')
  onStep('copying', 0)
  await copyOnline(order.bookFile, copy, (share) => onStep('copying', share))
  const manifest = await manifestOf(copy, order)

  const name = backupName(basename(order.bookFile), order.madeAt)
  const target = join(folder, freeNameIn(folder, name))
  const unfinished = unfinishedName(target)
  try {
    let packed = 0
    onStep('packing', 0)
    await packBackup(unfinished, { manifest, bookFile: copy }, (bytes) => {
      packed += bytes
      onStep('packing', Math.min(1, packed / Math.max(1, manifest.bytes)))
    })
    onStep('checking', 0)
    await mustBeSound(unfinished, { manifest, order })
    renameSync(unfinished, target)
    syncFolder(folder)
  } finally {
    rmSync(unfinished, { force: true })
  }
  await dropOld(folder, manifest)
  return foundBackup(target)
}

/** A read transaction holds one instant still, however much is written meanwhile. */
async function copyOnline(bookFile: string, into: string, onShare: (share: number) => void) {
  const source = new Database(bookFile, { readonly: true, fileMustExist: true, timeout: 5000 })
  try {
    source.exec('BEGIN')
    source.prepare('SELECT count(*) FROM sqlite_master').get()
    await source.backup(into, {
      progress: ({ totalPages, remainingPages }) => {
        onShare(totalPages === 0 ? 0 : 1 - remainingPages / totalPages)
        return 200
      },
    })
  } finally {
    source.close()
  }
  const copy = new Database(into)
  // One file that stands alone, without a log beside it.
  copy.pragma('journal_mode = DELETE')
  copy.close()
}

async function manifestOf(copy: string, order: BackupOrder): Promise<BackupManifest> {
  const book = new Database(copy, { readonly: true })
  try {
    const facts = bookFacts(book)
    return {
      format: 1,
      madeAt: order.madeAt,
      reason: order.reason,
      programVersion: order.programVersion,
      bookName: basename(order.bookFile),
      ...facts,
      ...(await sha256Of(copy)),
    }
  } finally {
    book.close()
  }
}

/** What a killed program left behind; a day old, so that it is nobody's work in hand. */
function dropUnfinished(folder: string, names: readonly string[], { madeAt }: BackupOrder): void {
  for (const name of names.filter((each) => isUnfinished(each, backupEnding))) {
    const file = join(folder, name)
    const ageMs = Date.parse(madeAt) - (statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0)
    if (ageMs > msPerDay) rmSync(file, { force: true })
  }
}

async function mustBeSound(
  file: string,
  { manifest, order }: { manifest: BackupManifest; order: BackupOrder },
): Promise<void> {
  const into = join(order.workFolder, 'checked.ratafia')
  const { facts } = await verifyBackup(file, { into, onStep: () => {} })
  if (facts.ledgerDigest !== manifest.ledgerDigest)
    throw new BackupUnfit('otherState', 'the moves in the backup come to another state')
  const { live } = order
  if (!live) return
  const book = new Database(into, { readonly: true })
  try {
    const isSameRow = facts.lastMove?.seq === live.seq
    const digest = isSameRow ? facts.ledgerDigest : digestUpTo(book, live.seq)
    if (digest !== live.digest)
      throw new BackupUnfit('otherState', 'the backup comes to another state than the open book')
  } finally {
    book.close()
  }
}

/** Of this cellar only: other books may keep their backups in the same folder. */
async function dropOld(folder: string, { firstMoveId, madeAt }: BackupManifest): Promise<void> {
  const own = (await backupsIn(folder)).flatMap(({ file, manifest }) =>
    manifest && manifest.firstMoveId === firstMoveId
      ? [{ file, madeAtMs: Date.parse(manifest.madeAt) }]
      : [],
  )
  for (const file of backupsToDrop(own, Date.parse(madeAt))) rmSync(file, { force: true })
}
