import { createHash } from 'node:crypto'
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  truncateSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import { dirname, join } from 'node:path'
import { unzipSync } from 'fflate'
import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { BackupUnfit, backupName, backupsIn, foundBackup } from '../../main/cellar/backup-file.ts'
import { bookFacts } from '../../main/cellar/book-facts.ts'
import { lookIntoBackup } from '../../main/cellar/look-into-backup.ts'
import { makeBackup, type BackupOrder } from '../../main/cellar/make-backup.ts'
import { closeBook, integrityOf, openBook } from '../../main/cellar/open-book.ts'
import { addWater, filledBook } from './filled-book.ts'

const orderFor = (bookFile: string, change: Partial<BackupOrder> = {}): BackupOrder => ({
  bookFile,
  folder: join(dirname(bookFile), 'backups'),
  makesFolder: true,
  workFolder: mkdtempSync(`${bookFile}.at-work-`),
  reason: 'asked',
  madeAt: '2026-11-25T18:03:07.000Z',
  programVersion: '1.2.3',
  live: undefined,
  ...change,
})

const backUp = (order: BackupOrder) => makeBackup(order, () => {})

const look = (file: string, bookFile: string | null) =>
  lookIntoBackup(file, {
    workFolder: mkdtempSync(`${file}.work-`),
    bookFile,
    onStep: () => {},
  })

const problemOf = async (read: () => Promise<unknown>) => {
  try {
    await read()
  } catch (error) {
    if (error instanceof BackupUnfit) return error.problem
    throw error
  }
  return 'sound'
}

describe('makeBackup', () => {
  it('copies a book in use into a zip that anything opens, with what it holds', async () => {
    const bookFile = filledBook({ moves: 5 })
    const book = openBook(bookFile)
    const found = await backUp(orderFor(bookFile))
    expect(found.file).toBe(
      join(dirname(bookFile), 'backups', 'cellar-2026-11-25-180307Z.ratafia.zip'),
    )
    const inside = unzipSync(readFileSync(found.file))
    expect(Object.keys(inside)).toEqual(['manifest.json', 'by hand.txt', 'cellar.ratafia'])
    const copy = inside['cellar.ratafia'] ?? new Uint8Array()
    expect(found.manifest).toMatchObject({
      format: 1,
      reason: 'asked',
      programVersion: '1.2.3',
      bookName: 'cellar.ratafia',
      counts: { moves: 5, jars: 1, batches: 1, refusedMoves: 0 },
      firstMoveId: 'm1',
      lastMove: { id: 'm5', seq: 5 },
      bytes: copy.length,
      sha256: createHash('sha256').update(copy).digest('hex'),
      ledgerDigest: bookFacts(book).ledgerDigest,
    })
    closeBook(book)
    const byHand = `${bookFile}.by-hand`
    writeFileSync(byHand, copy)
    const reopened = openBook(byHand)
    expect(integrityOf(reopened)).toBe('ok')
    expect(bookFacts(reopened).ledgerDigest).toBe(found.manifest?.ledgerDigest)
    closeBook(reopened)
  })

  it('holds one instant, whatever is written while it copies', async () => {
    const bookFile = filledBook({ moves: 3, remarks: 6000 })
    const book = openBook(bookFile)
    let steps = 0
    const found = await makeBackup(orderFor(bookFile), (step) => {
      if (step !== 'copying' || steps >= 3) return
      steps += 1
      addWater(book, `meanwhile-${steps}`, 10)
    })
    expect(steps).toBe(3)
    const made = found.manifest?.lastMove?.seq ?? 0
    // The first was written before the copy began; the others belong to the next backup.
    expect(made).toBe(6004)
    expect(bookFacts(book).lastMove?.seq).toBe(6006)
    closeBook(book)
  })

  it('is refused when it does not come to the state of the open book', async () => {
    const bookFile = filledBook()
    const live = { seq: 5, digest: 'f'.repeat(64) }
    expect(await problemOf(() => backUp(orderFor(bookFile, { live })))).toBe('otherState')
    expect(readdirSync(join(dirname(bookFile), 'backups'))).toEqual([])
    const book = openBook(bookFile)
    const { ledgerDigest } = bookFacts(book)
    addWater(book, 'later', 10)
    closeBook(book)
    const earlier = { seq: 5, digest: ledgerDigest }
    expect(await problemOf(() => backUp(orderFor(bookFile, { live: earlier })))).toBe('sound')
  })

  it('takes a name of its own when two fall into one second', async () => {
    const bookFile = filledBook()
    await backUp(orderFor(bookFile))
    const second = await backUp(orderFor(bookFile))
    expect(second.file).toMatch(/180307Z-2\.ratafia\.zip$/)
  })

  it('drops by the rule what is its own, and nothing else', async () => {
    const bookFile = filledBook()
    const folder = join(dirname(bookFile), 'backups')
    const on = (madeAt: string) => backUp(orderFor(bookFile, { madeAt }))
    await on('2026-10-12T10:00:00.000Z')
    await on('2026-10-13T10:00:00.000Z')
    const other = filledBook({ moves: 0, remarks: 1 })
    await backUp({ ...orderFor(other, { madeAt: '2026-10-12T09:00:00.000Z' }), folder })
    writeFileSync(join(folder, 'holiday.ratafia.zip'), 'not one of ours')
    await on('2026-11-25T10:00:00.000Z')
    expect(readdirSync(folder).sort()).toEqual([
      'cellar-2026-10-12-090000Z.ratafia.zip',
      'cellar-2026-10-13-100000Z.ratafia.zip',
      'cellar-2026-11-25-100000Z.ratafia.zip',
      'holiday.ratafia.zip',
    ])
  })

  it('takes away what a killed program left a day ago, and leaves what may be in the making', async () => {
    const bookFile = filledBook()
    const folder = join(dirname(bookFile), 'backups')
    mkdirSync(folder)
    for (const name of ['old', 'new'])
      writeFileSync(join(folder, `${name}.ratafia.zip.unfinished`), 'half')
    utimesSync(join(folder, 'old.ratafia.zip.unfinished'), 0, 0)
    await backUp(orderFor(bookFile, { madeAt: new Date().toISOString() }))
    const left = readdirSync(folder).filter((name) => name.endsWith('.unfinished'))
    expect(left).toEqual(['new.ratafia.zip.unfinished'])
  })

  it('does not make a folder that is away, nor anything in its place', async () => {
    const bookFile = filledBook()
    const folder = join(dirname(bookFile), 'stick', 'backups')
    const made = backUp(orderFor(bookFile, { folder, makesFolder: false }))
    await expect(made).rejects.toMatchObject({ code: 'ENOENT' })
    expect(readdirSync(dirname(bookFile))).not.toContain('stick')
  })

  // The rights of a folder do not bind root.
  it.skipIf(process.getuid?.() === 0)('says so of a folder that cannot be written to', async () => {
    const bookFile = filledBook()
    const folder = join(dirname(bookFile), 'locked')
    mkdirSync(folder, { mode: 0o500 })
    const made = backUp(orderFor(bookFile, { folder, makesFolder: false }))
    await expect(made).rejects.toMatchObject({ code: 'EACCES' })
    chmodSync(folder, 0o700)
  })
})

describe('a backup', () => {
  it('that is cut short, turned, newer or something else is refused with the reason', async () => {
    const bookFile = filledBook({ remarks: 50 })
    const { file } = await backUp(orderFor(bookFile))
    const sound = readFileSync(file)
    expect(await problemOf(() => look(file, null))).toBe('sound')
    truncateSync(file, sound.length - 200)
    expect(await problemOf(() => look(file, null))).toBe('cutShort')
    expect(await foundBackup(file)).toMatchObject({ manifest: null, problem: 'cutShort' })
    const turned = Buffer.from(sound)
    turned[3000] = (turned[3000] ?? 0) ^ 1
    writeFileSync(file, turned)
    expect(await problemOf(() => look(file, null))).toBe('damagedInside')
    writeFileSync(file, 'plums')
    expect(await problemOf(() => look(file, null))).toBe('notABackup')
    const newer = new Database(bookFile)
    newer.pragma('user_version = 99990')
    newer.close()
    const ofNewer = await problemOf(() => backUp(orderFor(bookFile)))
    expect(ofNewer).toBe('newerProgram')
  })

  it('is held against the present book, move by move', async () => {
    const bookFile = filledBook({ moves: 4 })
    const { file } = await backUp(orderFor(bookFile))
    const book = openBook(bookFile)
    addWater(book, 'new', 10)
    const strike = book.prepare(
      'INSERT INTO move (id, version, group_id, payload) VALUES (?, 2, ?, ?)',
    )
    strike.run('m1', 'g-new', null)
    strike.run('m2', 'g-new', JSON.stringify({ ...readMove(book, 'm2'), volumeMl: 77 }))
    closeBook(book)
    const preview = await look(file, bookFile)
    expect(preview).toMatchObject({
      isAnotherCellar: false,
      there: { counts: { moves: 4 } },
      here: { counts: { moves: 4 }, lastMove: { id: 'm2', seq: 7 } },
      onlyHere: {
        count: 1,
        newest: [{ moveId: 'new', move: { kind: 'pourWater' }, batchName: 'Plum' }],
      },
      onlyThere: { count: 1, newest: [{ moveId: 'm1' }] },
      changed: { count: 1, newest: [{ moveId: 'm2' }] },
    })
  })

  it('of another cellar says so, and is compared with nothing where there is no book', async () => {
    const { file } = await backUp(orderFor(filledBook({ moves: 2 })))
    const other = filledBook({ moves: 0, remarks: 2 })
    expect((await look(file, other)).isAnotherCellar).toBe(true)
    expect((await look(file, null)).here).toBeNull()
    rmSync(other)
    writeFileSync(other, 'ruined')
    expect((await look(file, other)).here).toBeNull()
  })
})

const readMove = (book: ReturnType<typeof openBook>, id: string) =>
  JSON.parse(
    book.prepare('SELECT payload FROM move WHERE id = ?').pluck().get(id) as string,
  ) as object

describe('backupName', () => {
  it('keeps letters and digits of the book’s name, and no path', () => {
    const at = '2026-01-02T03:04:05.678Z'
    expect(backupName('Möwe 2.ratafia', at)).toBe('Möwe 2-2026-01-02-030405Z.ratafia.zip')
    expect(backupName('../x.db', at)).toBe('xdb-2026-01-02-030405Z.ratafia.zip')
  })
})

describe('backupsIn', () => {
  it('lists the newest first, with those that cannot be read', async () => {
    const bookFile = filledBook()
    const { file } = await backUp(orderFor(bookFile))
    const folder = dirname(file)
    writeFileSync(join(folder, 'cellar-2020.ratafia.zip'), '')
    const found = await backupsIn(folder)
    expect(found.map(({ problem }) => problem)).toEqual([null, 'notABackup'])
  })
})
