/**
 * Kills the host at random moments while it is written to, and looks after every death: is each move
 * that was acknowledged in the book, is none there in part, is the file sound, does the ledger hold.
 */
import { randomUUID } from 'node:crypto'
import { mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, dirname, join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { findingsIn, keysIn, type Asked } from './acknowledged.ts'
import { hosted, hostFiles, HostGone, type Hosted } from './hosted.ts'
import { furnish, workUpon } from './load.ts'

export interface KillCounts {
  kills: number
  /** Killed while going back to a backup. */
  killedRestoring: number
  restored: number
  acknowledged: number
  records: number
  amendments: number
  undos: number
  backupsBegun: number
  backupsKept: number
  /** Written, but killed before the answer was out. */
  unanswered: number
  lost: number
  torn: number
  unsound: number
}

export interface KillOptions {
  readonly kills: number
  readonly seed: number
  readonly isBuilt: boolean
  /** A new book after so many, so that opening it stays quick. */
  readonly killsPerBook?: number
  readonly onKill?: (counts: KillCounts) => void
}

const hands = 4
const longestLifeMs = 1500
const restoresOneIn = 8

export async function killHosts(options: KillOptions): Promise<KillCounts> {
  const random = seeded(options.seed)
  const counts: KillCounts = {
    kills: 0,
    killedRestoring: 0,
    restored: 0,
    acknowledged: 0,
    records: 0,
    amendments: 0,
    undos: 0,
    backupsBegun: 0,
    backupsKept: 0,
    unanswered: 0,
    lost: 0,
    torn: 0,
    unsound: 0,
  }
  while (counts.kills < options.kills) {
    const left = options.kills - counts.kills
    await oneBook(Math.min(left, options.killsPerBook ?? 25), { counts, random, options })
  }
  return counts
}

interface Round {
  readonly counts: KillCounts
  readonly random: () => number
  readonly options: KillOptions
}

async function oneBook(kills: number, { counts, random, options }: Round): Promise<void> {
  const hostFile = options.isBuilt ? hostFiles.built : hostFiles.sources
  const folder = mkdtempSync(join(tmpdir(), 'ratafia-soak-'))
  const file = join(folder, 'cellar.ratafia')
  let asked: Asked[] = []
  let host = await hosted(file, hostFile)
  await furnish(host)
  // One to go back to: those begun later are killed as often as not.
  await backUp(host)
  const last = counts.kills + kills
  while (counts.kills < last) {
    const load = workUpon(host, hands, random)
    await pause(random() * longestLifeMs)
    await host.kill()
    await load.stopped
    asked = asked.concat(load.asked)
    counts.kills += 1
    counts.records += load.counts.record
    counts.amendments += load.counts.amend
    counts.undos += load.counts.undo
    counts.backupsBegun += load.counts.backup
    counts.acknowledged += load.asked.filter(({ isAcknowledged }) => isAcknowledged).length

    // Opening it at all shows that the lock went with the dead host.
    host = await hosted(file, hostFile)
    await look(host, { file, asked, counts })
    if (counts.kills < last && random() < 1 / restoresOneIn) {
      asked = await killRestoring(host, { file, asked, counts, random })
      host = await hosted(file, hostFile)
      await look(host, { file, asked, counts })
    }
    options.onKill?.(counts)
  }
  const { backups } = await host.ask('backups.list', {})
  counts.backupsKept += backups.filter(({ problem }) => problem === null).length
  counts.unsound += backups.filter(({ problem }) => problem !== null).length
  counts.unanswered += findingsIn(file, asked).unanswered
  await host.kill()
  rmSync(folder, { recursive: true, force: true })
}

async function backUp(host: Hosted): Promise<void> {
  const jobId = randomUUID()
  await host.ask('backups.start', { jobId })
  for (;;) {
    const { state } = await host.ask('backups.job', { jobId })
    if (state === 'done') return
    if (state !== 'running') throw new Error(`the first backup: ${state}`)
    await pause(50)
  }
}

interface Looked {
  readonly file: string
  readonly asked: readonly Asked[]
  readonly counts: KillCounts
}

async function look(host: Hosted, { file, asked, counts }: Looked): Promise<void> {
  const { lost, torn, integrity } = findingsIn(file, asked)
  const told = await host.ask('cellar.check', {})
  counts.lost += lost.length
  counts.torn += torn.length
  const isSound =
    integrity === 'ok' &&
    told.integrity === 'ok' &&
    told.refusedMoves.length + told.lotsDiffering.length + told.bottleLotsDiffering.length === 0
  if (!isSound) counts.unsound += 1
}

/**
 * Going back to a backup, killed on the way: the book is then either as it was, or that of the backup
 * with the former one beside it, whole. Answers with what was asked of the book that is there now.
 */
async function killRestoring(
  host: Hosted,
  { file, asked, counts, random }: Looked & { random: () => number },
): Promise<Asked[]> {
  const { backups } = await host.ask('backups.list', {})
  const backup = backups.find(({ problem }) => problem === null)
  if (!backup) {
    await host.kill()
    return [...asked]
  }
  const before = keysIn(file)
  const present = () => keysIn(file)
  const restoring = host.ask('backups.restore', { file: backup.file }).catch((error: unknown) => {
    if (!(error instanceof HostGone)) throw error
  })
  await Promise.race([pause(random() * longestLifeMs), restoring])
  await host.kill()
  await restoring
  counts.kills += 1
  counts.killedRestoring += 1
  const now = present()
  if (isSame(now, before)) return [...asked]
  counts.restored += 1
  const isKept = keptBooks(file).some((kept) => isSame(keysIn(kept), before))
  if (!isKept) counts.lost += before.size
  return asked.filter(({ key }) => now.has(key))
}

const isSame = (a: ReadonlySet<string>, b: ReadonlySet<string>): boolean =>
  a.size === b.size && [...a].every((key) => b.has(key))

function keptBooks(file: string): string[] {
  const folder = dirname(file)
  const begins = `${basename(file, '.ratafia')} kept `
  return readdirSync(folder)
    .filter((name) => name.startsWith(begins) && name.endsWith('.ratafia'))
    .map((name) => join(folder, name))
}

/** The same seed kills at the same moments, as far as a machine keeps time. */
function seeded(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return state / 2 ** 32
  }
}
