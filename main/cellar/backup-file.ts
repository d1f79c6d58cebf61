/**
 * A backup as a file: a zip that anything can open, with the book as it is, what it holds, and how
 * to go back to it by hand. Its name ends in `.ratafia.zip`.
 */
import { createHash } from 'node:crypto'
import { createReadStream, rmSync } from 'node:fs'
import { open, readdir, stat } from 'node:fs/promises'
import { join } from 'node:path'
import {
  BackupManifest,
  type BackupFailure,
  type BackupProblem,
  type FoundBackup,
} from '../../shared/schemas/safekeeping.ts'
import { datedName } from './dated-file.ts'
import { writeZip } from './zip-writer.ts'
import { contentOf, textOf, withZip, ZipProblem, type ZipProblemKind } from './zip-reader.ts'

export const backupEnding = '.ratafia.zip'
const bookEntry = 'cellar.ratafia'
const manifestEntry = 'manifest.json'
const byHandEntry = 'by hand.txt'
const mostManifestBytes = 100_000

const byHand = `This is a backup of a cellar book kept with Ratafia.

cellar.ratafia is the whole book, an SQLite database. To go back to it without Ratafia's own
screen for that: close Ratafia, rename the present book, and put cellar.ratafia in its place.
manifest.json says when this backup was made, by which version, and what it holds.
`

export class BackupUnfit extends Error {
  override name = 'BackupUnfit'
  readonly problem: BackupProblem
  constructor(problem: BackupProblem, message: string, options?: ErrorOptions) {
    super(message, options)
    this.problem = problem
  }
}

/** Why a folder or disk would not do, by the system's code; undefined for anything else. */
export function failureOfSystem(error: unknown): BackupFailure | undefined {
  const code = error instanceof Error && 'code' in error ? error.code : undefined
  switch (code) {
    case 'ENOENT':
    case 'ENOTDIR':
    case 'EEXIST':
    case 'ENODEV':
    case 'EIO':
      return 'folderGone'
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return 'folderReadOnly'
    case 'ENOSPC':
    case 'EDQUOT':
    case 'EFBIG':
      return 'diskFull'
    default:
      return undefined
  }
}

/** `cellar-2026-11-25-180307Z.ratafia.zip`: sorted by name is sorted by time. */
export const backupName = (bookName: string, madeAt: string): string =>
  datedName(bookName, madeAt, backupEnding)

const inBytes = (words: string) => () => Buffer.from(words)

export async function packBackup(
  target: string,
  { manifest, bookFile }: { manifest: BackupManifest; bookFile: string },
  onBytes: (bytes: number) => void,
): Promise<void> {
  const at = new Date(manifest.madeAt)
  await writeZip(
    target,
    [
      { name: manifestEntry, at, content: inBytes(`${JSON.stringify(manifest, null, 2)}\n`) },
      { name: byHandEntry, at, content: inBytes(byHand) },
      { name: bookEntry, at, content: () => createReadStream(bookFile) },
    ],
    onBytes,
  )
}

export const readManifest = (file: string): Promise<BackupManifest> =>
  asBackup(() =>
    withZip(file, async (zip) => {
      const read = BackupManifest.safeParse(
        json(await textOf(zip, manifestEntry, mostManifestBytes)),
      )
      if (!read.success) throw new BackupUnfit('notABackup', 'its manifest is not one of ours')
      return read.data
    }),
  )

/** Writes the book inside to `into`, which must not exist, and holds it against its checksum. */
export const unpackBackup = (
  file: string,
  { into, onShare }: { into: string; onShare: (share: number) => void },
): Promise<BackupManifest> =>
  asBackup(async () => {
    const manifest = await readManifest(file)
    const hash = createHash('sha256')
    let unpacked = 0
    const target = await open(into, 'wx', 0o600)
    try {
      await withZip(file, async (zip) => {
        for await (const piece of contentOf(zip, bookEntry)) {
          hash.update(piece)
          await target.writeFile(piece)
          unpacked += piece.length
          onShare(Math.min(1, unpacked / Math.max(1, manifest.bytes)))
        }
      })
      await target.sync()
    } finally {
      await target.close()
    }
    if (hash.digest('hex') !== manifest.sha256)
      throw new BackupUnfit('checksum', 'the book inside is not the one that was packed')
    return manifest
  })

const problems: Readonly<Record<ZipProblemKind, BackupProblem>> = {
  notAZip: 'notABackup',
  cutShort: 'cutShort',
  damaged: 'damagedInside',
  unsafeNames: 'damagedInside',
}

async function asBackup<T>(read: () => Promise<T>): Promise<T> {
  try {
    return await read()
  } catch (error) {
    if (error instanceof ZipProblem)
      throw new BackupUnfit(problems[error.kind], error.message, { cause: error })
    throw error
  }
}

function json(words: string): unknown {
  try {
    return JSON.parse(words)
  } catch {
    return undefined
  }
}

/** What a backup says of itself; nothing is unpacked. */
export async function foundBackup(file: string): Promise<FoundBackup> {
  let bytes = 0
  try {
    bytes = (await stat(file)).size
    return { file, bytes, manifest: await readManifest(file), problem: null }
  } catch (error) {
    const problem = error instanceof BackupUnfit ? error.problem : 'unreadable'
    return { file, bytes, manifest: null, problem }
  }
}

/** More than anybody keeps: a folder of something else is not read through. */
const mostListed = 500

/** What cannot be read has no date; it comes last. */
const when = ({ manifest }: FoundBackup): string => manifest?.madeAt ?? ''

/** The backups in a folder, the newest first, and then what cannot be read. */
export async function backupsIn(folder: string): Promise<FoundBackup[]> {
  const names = (await readdir(folder)).filter((name) => name.endsWith(backupEnding)).sort()
  const found: FoundBackup[] = []
  for (const name of names.slice(-mostListed)) found.push(await foundBackup(join(folder, name)))
  return found.sort((a, b) => (when(a) < when(b) ? 1 : -1))
}

export async function sha256Of(file: string): Promise<{ sha256: string; bytes: number }> {
  const hash = createHash('sha256')
  let bytes = 0
  for await (const piece of createReadStream(file)) {
    const chunk = piece as Buffer
    hash.update(chunk)
    bytes += chunk.length
  }
  return { sha256: hash.digest('hex'), bytes }
}

/** Throws unless something can be written there. */
export async function tryFolder(folder: string): Promise<void> {
  const trial = join(folder, `.ratafia-trial-${process.pid}`)
  const handle = await open(trial, 'wx', 0o600)
  try {
    await handle.writeFile('ratafia')
  } finally {
    await handle.close()
    rmSync(trial, { force: true })
  }
}
