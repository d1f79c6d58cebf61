/** Rows of a spreadsheet: judged, written in one go, and taken back in one. */
import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { ledgerDigest } from '../../main/cellar/ledger-digest.ts'
import { viewOfBook } from '../../main/service/ledger-view.ts'
import { maxSheetRows, type BottlesRow, type StockRow } from '../../shared/schemas/sheets.ts'
import { trial, withPantry, type Trial } from './with-service.ts'

const sloe: BottlesRow = {
  name: 'Sloe on rye',
  colour: '#6d1f3c',
  fruitIds: ['sloe'],
  bottledAt: '2021-12-04T11:00:00.000Z',
  count: 6,
  bottleSizeMl: 500,
  strengthPctVol: 31,
  sugarGPerL: 160,
}
const quince: BottlesRow = {
  ...sloe,
  name: 'Quince with honey',
  fruitIds: ['quince'],
  bottledAt: '2022-11-19T11:00:00.000Z',
  count: 9,
  note: 'from the tree behind the barn',
}

const look = async (t: Trial, ...rows: BottlesRow[]) =>
  (await t.ask('sheets.look', { sheet: { kind: 'bottles', rows } })).verdicts
const bringIn = (t: Trial, key: string, ...rows: BottlesRow[]) =>
  t.ask('sheets.bringIn', { key, sheet: { kind: 'bottles', rows } })
const refusal = (t: Trial, ...rows: BottlesRow[]) =>
  t.refusal('sheets.bringIn', { key: 'refused', sheet: { kind: 'bottles', rows } })

function digestOf({ options }: Trial): string {
  const book = new Database(options.ownFile, { readonly: true })
  const digest = ledgerDigest(viewOfBook(book).folded.cellar)
  book.close()
  return digest
}

async function begun(): Promise<Trial> {
  const t = await trial()
  await withPantry(t)
  await t.ask('shelves.add', {
    id: 'cold',
    name: 'Cold larder',
    temperatureC: 12,
    light: 'dark',
    isRetired: false,
  })
  return t
}

describe('sheets.look', () => {
  it('tells for each row what it would become, and writes nothing', async () => {
    const t = await begun()
    const before = digestOf(t)
    const rows = [
      sloe,
      { ...sloe, name: '  DAMSON ' },
      { ...sloe, name: 'Sloe on RYE' },
      { ...quince, shelfId: 'attic' },
      { ...quince, fruitIds: ['moonberry'] },
      { ...quince, bottledAt: '2027-01-01T11:00:00.000Z' },
      { ...quince, strengthPctVol: 90, sugarGPerL: 900 },
    ]
    expect(await look(t, ...rows)).toEqual([
      { verdict: 'ready', batchId: null },
      { verdict: 'ready', batchId: 'damson' },
      { verdict: 'twin', of: { rowIndex: 0 } },
      { verdict: 'refused', code: 'notFound', details: { what: 'shelf', id: 'attic' } },
      { verdict: 'refused', code: 'notFound', details: { what: 'fruit', id: 'moonberry' } },
      {
        verdict: 'refused',
        code: 'inTheFuture',
        details: { at: '2027-01-01T11:00:00.000Z' },
      },
      expect.objectContaining({ verdict: 'refused', code: 'noSuchMixture' }),
    ])
    expect(digestOf(t)).toBe(before)
    expect(await t.ask('batches.list', {})).toHaveLength(1)
  })

  it('knows the bottles of the book again, however many are left of them', async () => {
    const t = await begun()
    await bringIn(t, 'first', sloe)
    const [lot] = await t.ask('bottles.list', {})
    expect(
      await look(
        t,
        { ...sloe, bottledAt: '2021-12-04T18:30:00.000Z', count: 2 },
        { ...sloe, bottleSizeMl: 250 },
        { ...sloe, bottledAt: '2020-12-04T11:00:00.000Z' },
      ),
    ).toMatchObject([
      { verdict: 'twin', of: { lotId: lot?.id } },
      { verdict: 'ready', batchId: lot?.batchId },
      { verdict: 'ready', batchId: lot?.batchId },
    ])
  })

  it('takes one filling that stands on two shelves for two rows', async () => {
    const t = await begun()
    const verdicts = await look(t, sloe, { ...sloe, shelfId: 'cold' })
    expect(verdicts.map(({ verdict }) => verdict)).toEqual(['ready', 'ready'])
  })
})

describe('sheets.bringIn', () => {
  it('opens a batch for each new name and fills the shelf with what the rows say', async () => {
    const t = await begun()
    const older = { ...sloe, name: 'sloe on rye', bottledAt: '2019-12-01T11:00:00.000Z' }
    await bringIn(t, 'all', sloe, older, { ...quince, shelfId: 'cold' })
    const batches = (await t.ask('batches.list', {})).map(({ batch }) => batch)
    expect(batches.map(({ name, openedAt, colour }) => [name, openedAt, colour])).toEqual([
      ['Sloe on rye', older.bottledAt, sloe.colour],
      ['Quince with honey', quince.bottledAt, quince.colour],
      ['Damson', '2026-09-01T08:00:00Z', '#4a2545'],
    ])
    const lots = await t.ask('bottles.list', {})
    const told = lots.map(({ name, bottledAt, count, bottleSizeMl, places }) => ({
      name,
      bottledAt,
      count,
      bottleSizeMl,
      places,
    }))
    expect(told).toHaveLength(3)
    expect(told).toContainEqual({
      name: 'Quince with honey',
      bottledAt: quince.bottledAt,
      count: 9,
      bottleSizeMl: 500,
      places: [{ shelfId: 'cold', count: 9 }],
    })
    expect(lots[0]?.liquid?.strengthPctVol).toBeCloseTo(31, 6)
    expect(lots[0]?.liquid?.sugarGPerL).toBeCloseTo(160, 6)
    const checked = await t.ask('cellar.check', {})
    expect(checked).toMatchObject({ lotsDiffering: [], bottleLotsDiffering: [], refusedMoves: [] })
  })

  it('is one group: taken back at once, to the digest, and put back at once', async () => {
    const t = await begun()
    const before = digestOf(t)
    const { groupId, changes } = await bringIn(t, 'all', sloe, quince)
    const after = digestOf(t)
    expect(after).not.toBe(before)
    expect(changes.map((change) => change.after?.kind)).toEqual(['bringIn', 'bringIn'])
    const undone = await t.ask('moves.undo', { key: 'undo', groupId })
    expect(digestOf(t)).toBe(before)
    // A batch that came with moves of which none stands goes with them.
    expect((await t.ask('batches.list', {})).map(({ batch }) => batch.id)).toEqual(['damson'])
    expect((await look(t, sloe))[0]).toEqual({ verdict: 'ready', batchId: null })
    await t.ask('moves.undo', { key: 'redo', groupId: undone.groupId })
    expect(digestOf(t)).toBe(after)
    expect(await t.ask('batches.list', {})).toHaveLength(3)
  })

  it('answers the same key with what it did the first time', async () => {
    const t = await begun()
    const first = await bringIn(t, 'once', sloe, quince)
    expect(await bringIn(t, 'once', sloe, quince)).toEqual(first)
    expect(await t.ask('bottles.list', {})).toHaveLength(2)
  })

  it('writes none of the rows when one cannot be', async () => {
    const t = await begun()
    const before = digestOf(t)
    expect(await refusal(t, sloe, { ...quince, shelfId: 'attic' })).toMatchObject({
      code: 'notFound',
      details: { what: 'shelf', index: 1 },
    })
    expect(
      await refusal(t, sloe, { ...quince, strengthPctVol: 95, sugarGPerL: 900 }),
    ).toMatchObject({ code: 'noSuchMixture', details: { index: 1 } })
    expect(digestOf(t)).toBe(before)
    expect(await t.ask('batches.list', {})).toHaveLength(1)
  })

  it('writes a twin only where that is wished', async () => {
    const t = await begun()
    await bringIn(t, 'first', sloe)
    expect(await refusal(t, quince, sloe)).toMatchObject({
      code: 'alreadyThere',
      details: { index: 1 },
    })
    await bringIn(t, 'again', quince, { ...sloe, evenIfThere: true })
    expect(await t.ask('bottles.list', {})).toHaveLength(3)
  })

  it('takes as many rows as it says, and refuses one more', async () => {
    const t = await begun()
    const rows = Array.from({ length: maxSheetRows }, (_, index) => ({
      ...sloe,
      bottledAt: new Date(Date.UTC(2000, 0, 1) + index * 86_400_000).toISOString(),
    }))
    await bringIn(t, 'many', ...rows)
    expect(await t.ask('bottles.list', {})).toHaveLength(maxSheetRows)
    expect(await refusal(t, ...rows, sloe)).toMatchObject({ code: 'badInput' })
  })
})

describe('goods for the pantry', () => {
  const rye: StockRow = {
    goods: { kind: 'spirit', name: 'Rye spirit', strengthPctVol: 70 },
    boughtAt: '2026-10-03T10:00:00.000Z',
    volumeMl: 3000,
    priceMinor: 5400,
  }
  const honey: StockRow = {
    goods: { kind: 'sweetener', sweetenerId: 'honey' },
    boughtAt: '2026-09-12T10:00:00.000Z',
    massG: 1400,
  }
  const sloes: StockRow = {
    goods: { kind: 'fruit', fruitId: 'sloe' },
    boughtAt: '2026-11-08T10:00:00.000Z',
    massG: 2500,
    note: 'after the first frost',
  }
  const lookAt = async (t: Trial, ...rows: StockRow[]) =>
    (await t.ask('sheets.look', { sheet: { kind: 'stock', rows } })).verdicts

  it('are judged row by row', async () => {
    const t = await begun()
    expect(
      await lookAt(
        t,
        rye,
        rye,
        { ...sloes, goods: { kind: 'fruit', fruitId: 'moonberry' } },
        { ...honey, boughtAt: '2027-01-01T10:00:00.000Z' },
        { goods: honey.goods, boughtAt: honey.boughtAt, volumeMl: 1000 },
        { ...sloes, goods: { kind: 'fruit', fruitId: 'damson' }, boughtAt: '2026-09-01T15:00:00Z' },
      ),
    ).toMatchObject([
      { verdict: 'ready', batchId: null },
      { verdict: 'twin', of: { rowIndex: 0 } },
      { verdict: 'refused', code: 'notFound', details: { what: 'fruit' } },
      { verdict: 'refused', code: 'inTheFuture' },
      { verdict: 'refused', code: 'wrongGoods' },
      { verdict: 'twin', of: { lotId: 'damsons' } },
    ])
  })

  it('come in as one group of purchases, known again and taken back at once', async () => {
    const t = await begun()
    const before = digestOf(t)
    const sheet = { kind: 'stock' as const, rows: [rye, honey, sloes] }
    const { groupId } = await t.ask('sheets.bringIn', { key: 'pantry-list', sheet })
    const lots = await t.ask('pantry.list', {})
    expect(lots).toHaveLength(6)
    const spirit = lots.find(({ goods }) => goods.name === 'Rye spirit')
    expect(spirit).toMatchObject({ boughtAt: rye.boughtAt, priceMinor: 5400 })
    expect(spirit?.volumeMl).toBeCloseTo(3000, 3)
    expect((await lookAt(t, rye, honey, sloes)).map(({ verdict }) => verdict)).toEqual([
      'twin',
      'twin',
      'twin',
    ])
    await t.ask('moves.undo', { key: 'undo', groupId })
    expect(digestOf(t)).toBe(before)
  })
})
