/** Books to write out and bring back: one with something in every table, and random ones. */
import { randomUUID } from 'node:crypto'
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { openBatchWithMoves, putBatch } from '../../../main/cellar/batch-store.ts'
import { putPublished, setFeedSecret } from '../../../main/cellar/calendar-store.ts'
import { putDraft } from '../../../main/cellar/draft-store.ts'
import { putFruit } from '../../../main/cellar/fruit-store.ts'
import { putJar } from '../../../main/cellar/jar-store.ts'
import { putSheet, putStyle } from '../../../main/cellar/label-store.ts'
import { addGroup } from '../../../main/cellar/move-store.ts'
import { closeBook, openBook, type Book } from '../../../main/cellar/open-book.ts'
import { makeExport } from '../../../main/cellar/open-export/make-export.ts'
import { addPlan } from '../../../main/cellar/plan-store.ts'
import { putTick } from '../../../main/cellar/purchase-store.ts'
import { keepRecipe } from '../../../main/cellar/recipe-store.ts'
import { addSeasonPlan, keepRegion, keepWishes } from '../../../main/cellar/season-store.ts'
import { changeSettings } from '../../../main/cellar/setting-store.ts'
import { putShelf } from '../../../main/cellar/shelf-store.ts'
import { sayShut } from '../../../main/cellar/spirit-store.ts'
import { putOff, remindedFirst } from '../../../main/cellar/task-store.ts'
import { fruitOf, usualDraft } from '../../../main/engine/index.ts'
import type { RecordedMove } from '../../../shared/schemas/moves.ts'
import { plainWishes } from '../../engine/season/season-cellar.ts'
import { seasonPlan } from '../../screens/season/season-fixture.ts'
import { filledBook, newBookFile, water } from '../filled-book.ts'

const at = '2026-03-01T10:00:00.000Z'
const fruit = fruitOf('damson')
const spec = usualDraft({ fruit, fruitG: 3000, spiritPctVol: 70, startAt: at })

/** Texts that formats stumble over. */
export const oddText = 'ł "quoted", \\back\u2028line\n=cmd|\u0000\u001f 🍒 \ufeff</script>'

/** A book with rows in every table, with an amended, a struck and an undone move. */
export function fullBook(): string {
  const file = filledBook({ moves: 3 })
  const book = openBook(file)
  const amend = (groupId: string, move: ReturnType<typeof water> | null, version: number) =>
    addGroup(book, {
      id: groupId,
      requestKey: randomUUID(),
      recordedAt: at,
      rows: [{ id: 'm1', version, move }],
      ...(groupId === 'undo' && { undoes: 'amended' }),
    })
  amend('amended', { ...water(1 / 3), note: oddText }, 2)
  amend('undo', water(101), 3)
  amend('struck', null, 4)
  const brought = { id: 'brought', name: 'Brought', colour: '#112233', note: '', openedAt: at }
  openBatchWithMoves(book, brought)
  changeSettings(book, { currency: 'PLN', units: 'us' })
  putShelf(book, { id: 's', name: 'Cellar', temperatureC: 12.1, light: 'dim', isRetired: true })
  putFruit(book, { fruit: { ...fruit, nameEn: oddText.trim() }, origin: 'edited', changedAt: at })
  putDraft(book, { id: 'd', name: 'Damsons', spec, pins: [], note: oddText }, at)
  keepRecipe(book, { id: 'r', name: 'House', note: '', spec, fromBatchId: 'plum' }, at)
  keepRecipe(book, { id: 'r', name: 'House', note: '', spec: { ...spec, startAt: at } }, at)
  const plan = { startedAt: at, spec, moves: [water(0.1 + 0.2)] }
  addPlan(book, { batchId: 'plum', ...plan, recipeId: 'r', recipeVersion: 1 })
  putSheet(book, {
    id: 'sheet',
    name: 'Mine',
    pageWidthMm: 210,
    pageHeightMm: 297,
    columns: 2,
    rows: 4,
    labelWidthMm: 99.1,
    labelHeightMm: 67.7,
    marginLeftMm: 4.65,
    marginTopMm: 13.1,
    gapXMm: 2.5,
    gapYMm: 0,
  })
  putStyle(book, {
    design: 'ledger',
    part: 'front',
    shown: [],
    hasCode: true,
    hasEmblem: false,
    hasCutMarks: true,
    strengthPrefix: 'alc',
    sheetId: 'sheet',
  })
  keepRegion(book, { zone: 'mediterranean', ownShiftWeeks: -1 })
  keepWishes(book, plainWishes)
  addSeasonPlan(book, { id: 'season', keptAt: at, plan: seasonPlan() })
  putTick(book, { lineKey: 'cork@2027-08-02', moveId: undefined, at, count: 5 })
  putOff(book, 'plum.drawOff.jar.1', '2026-12-01', at)
  const entry = { uid: 'plum.drawOff@ratafia', firstDay: '2026-03-01', lastDay: '2026-03-02' }
  putPublished(book, [
    {
      uid: entry.uid,
      entry: JSON.stringify({ ...entry, summary: oddText, description: '' }),
      sequence: 3,
      isCancelled: true,
      changedAt: at,
    },
  ])
  setFeedSecret(book, 'feed-secret')
  remindedFirst(book, '2026-03-01')
  sayShut(book, 'lot', at)
  closeBook(book)
  return file
}

/** A book with the moves of a random history, some of them amended, struck, and told in odd words. */
export function bookOf(moves: readonly RecordedMove[], note: string): string {
  const file = newBookFile()
  const book = openBook(file)
  book.transaction(() => fillRandom(book, moves, note)).immediate()
  closeBook(book)
  return file
}

function fillRandom(book: Book, moves: readonly RecordedMove[], note: string): void {
  const shape = 'jar'
  for (const id of ['north', 'south', 'big', 'small', 'spare'])
    putJar(book, { id, name: id, shape, capacityMl: 20_000 / 3, isRetired: false })
  for (const id of ['rack', 'sill', 'pantry'])
    putShelf(book, { id, name: id, temperatureC: 12, light: 'dark', isRetired: false })
  const batchIds = new Set(moves.flatMap(({ move }) => ('batchId' in move ? move.batchId : [])))
  for (const id of batchIds)
    putBatch(book, { id, name: `Batch ${id}`, colour: '#7a1f3d', note, openedAt: at })
  for (const [index, { id, move }] of moves.entries()) {
    const rows = [{ id, version: 1, move: { ...move, note } }]
    addGroup(book, { id: `g${id}`, requestKey: `k${id}`, recordedAt: at, rows })
    if (index % 5 !== 0) continue
    const again = [{ id, version: 2, move: index % 10 === 0 ? move : null }]
    addGroup(book, { id: `a${id}`, requestKey: `ka${id}`, recordedAt: at, rows: again })
  }
}

export async function exportOf(bookFile: string): Promise<string> {
  const workFolder = mkdtempSync(join(tmpdir(), 'export-'))
  const made = await makeExport(
    {
      bookFile,
      folder: dirname(bookFile),
      makesFolder: false,
      workFolder,
      madeAt: '2026-11-25T18:03:07.123Z',
      programVersion: '0.0.0',
    },
    { onStep: () => undefined, peopleTables: () => [] },
  )
  return made.file
}
