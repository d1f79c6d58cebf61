/** Rows of a spreadsheet as the moves they stand for, each judged against the book as it is. */
import { allBatches } from '../cellar/batch-store.ts'
import { allShelves } from '../cellar/shelf-store.ts'
import { plainName } from '../../shared/plain.ts'
import type { Batch } from '../../shared/schemas/cellar.ts'
import type { Goods } from '../../shared/schemas/goods.ts'
import type { Move, MoveOf, RecordedMove } from '../../shared/schemas/moves.ts'
import type {
  BottlesRow,
  RowVerdict,
  Sheet,
  SheetRow,
  StockRow,
} from '../../shared/schemas/sheets.ts'
import { msPerDay } from '../../shared/spans-of-time.ts'
import { withMoves, type LedgerView } from './ledger-view.ts'
import { isInFuture } from './move-checks.ts'
import { judged } from './move-writing.ts'
import { newlyRecorded } from './newly-recorded.ts'
import { notFound, refusedMove, ServiceError } from './service-error.ts'
import type { Session } from './session.ts'

export interface JudgedSheet {
  /** One for each row. */
  readonly verdicts: readonly RowVerdict[]
  /** What the rows that are not refused come to, in their order. */
  readonly recorded: readonly RecordedMove[]
  /** Batches that are opened for them. */
  readonly opened: readonly Batch[]
  /** The ledger with all of that in it. */
  readonly view: LedgerView
}

/** Nothing is written: who asks decides by the verdicts. */
export function judgedSheet(session: Session, sheet: Sheet, groupId: string): JudgedSheet {
  const rows: readonly SheetRow[] = sheet.rows
  const shelfIds = new Set(allShelves(session.book).map(({ id }) => id))
  const errors = rows.map((row) => whatIsMissing(session, row, shelfIds))
  const sound = rows.flatMap((_, index) => (errors[index] ? [] : [index]))
  const { moves, opened, knownBatchIds } = movesOfRows(
    session,
    sound.map((index) => rows[index] as SheetRow),
  )
  const recorded = newlyRecorded(session, moves, groupId, new Set(opened.map(({ id }) => id)))
  const view = withMoves(session.ledger, recorded)
  for (const { index, refusal } of judged(session.ledger, view, recorded).refusals) {
    const rowIndex = sound[index] as number
    errors[rowIndex] = refusedMove(refusal, rowIndex)
  }
  const batchIds = new Map(sound.map((rowIndex, at) => [rowIndex, batchIdOf(moves[at])]))
  const twinOf = twins(session)
  const verdicts = rows.map((row, index): RowVerdict => {
    const error = errors[index]
    if (error) return { verdict: 'refused', code: error.code, details: error.details }
    const of = twinOf(row, index)
    if (of) return { verdict: 'twin', of }
    const batchId = batchIds.get(index)
    return {
      verdict: 'ready',
      batchId: batchId !== undefined && knownBatchIds.has(batchId) ? batchId : null,
    }
  })
  return { verdicts, recorded, opened, view }
}

const isStock = (row: SheetRow): row is StockRow => 'goods' in row

const batchIdOf = (move: Move | undefined) => (move?.kind === 'bringIn' ? move.batchId : undefined)

const dayOf = (row: SheetRow): string => (isStock(row) ? row.boughtAt : row.bottledAt)

const fruitIdsOf = (row: SheetRow): readonly string[] => {
  if (!isStock(row)) return row.fruitIds
  return row.goods.kind === 'fruit' ? [row.goods.fruitId] : []
}

/** What the ledger itself does not look at; undefined where all is well. */
function whatIsMissing(
  session: Session,
  row: SheetRow,
  shelfIds: ReadonlySet<string>,
): ServiceError | undefined {
  const at = dayOf(row)
  if (isInFuture(session, at))
    return new ServiceError('inTheFuture', 'what is there cannot be of a day to come', { at })
  const fruitId = fruitIdsOf(row).find((id) => !session.fruits.find(id))
  if (fruitId !== undefined) return notFound('fruit', fruitId)
  const shelfId = isStock(row) ? undefined : row.shelfId
  if (shelfId !== undefined && !shelfIds.has(shelfId)) return notFound('shelf', shelfId)
  return undefined
}

/** A batch of that name takes the bottles, whoever wrote it in which case; else one is opened. */
function movesOfRows({ book, options }: Session, rows: readonly SheetRow[]) {
  const known = allBatches(book)
  const byName = new Map(known.map((batch) => [plainName(batch.name), batch]))
  const opened = new Map<string, Batch>()
  const moves = rows.map((row): Move => {
    if (isStock(row)) return buyOf(row, options.newId())
    const name = plainName(row.name)
    const batch = byName.get(name) ?? opened.get(name)
    const { bottledAt } = row
    const openedAt =
      batch && Date.parse(batch.openedAt) <= Date.parse(bottledAt) ? batch.openedAt : bottledAt
    const id = batch?.id ?? options.newId()
    if (!byName.has(name))
      opened.set(name, {
        id,
        name: batch?.name ?? row.name,
        colour: batch?.colour ?? row.colour,
        note: '',
        openedAt,
      })
    return bringInOf(row, id, options.newId())
  })
  return {
    moves,
    opened: [...opened.values()],
    knownBatchIds: new Set(known.map((batch) => batch.id)),
  }
}

const buyOf = (
  { goods, boughtAt, massG, volumeMl, priceMinor, note }: StockRow,
  lotId: string,
): MoveOf<'buy'> => ({
  kind: 'buy',
  at: boughtAt,
  lotId,
  goods,
  ...(massG !== undefined && { massG }),
  ...(volumeMl !== undefined && { volumeMl }),
  ...(priceMinor !== undefined && { priceMinor }),
  ...(note !== undefined && { note }),
})

const bringInOf = (row: BottlesRow, batchId: string, bottleLotId: string): MoveOf<'bringIn'> => ({
  kind: 'bringIn',
  at: row.bottledAt,
  batchId,
  bottleLotId,
  bottleSizeMl: row.bottleSizeMl,
  count: row.count,
  strengthPctVol: row.strengthPctVol,
  sugarGPerL: row.sugarGPerL,
  ...(row.fruitIds.length > 0 && { fruitIds: row.fruitIds }),
  ...(row.shelfId !== undefined && { shelfId: row.shelfId }),
  ...(row.note !== undefined && { note: row.note }),
})

type TwinOf = Extract<RowVerdict, { verdict: 'twin' }>['of']

/**
 * Looks for the same. In the book: bottles of that name and size, or goods of that kind, within a
 * day; how much is left of them may have changed since. In the sheet, where one filling may stand on
 * two shelves: the very same row.
 */
function twins(session: Session) {
  const bottlesOf = bottleTwins(session)
  const goodsOf = stockTwins(session)
  const seen = new Map<string, number>()
  return (row: SheetRow, rowIndex: number): TwinOf | undefined => {
    const key = isStock(row) ? sameStockRow(row) : sameRow(row)
    const earlier = seen.get(key)
    if (earlier === undefined) seen.set(key, rowIndex)
    const lotId = isStock(row) ? goodsOf(row) : bottlesOf(row)
    if (lotId !== undefined) return { lotId }
    return earlier === undefined ? undefined : { rowIndex: earlier }
  }
}

const isSameDay = (ms: number, at: string) => Math.abs(ms - Date.parse(at)) < msPerDay

function bottleTwins({ ledger, book }: Session) {
  const batchNames = new Map(allBatches(book).map(({ id, name }) => [id, name]))
  const lots = Map.groupBy(ledger.folded.cellar.bottles, ([, lot]) =>
    plainName(lot.name ?? batchNames.get(lot.batchId) ?? ''),
  )
  return ({ name, bottledAt, bottleSizeMl }: BottlesRow): string | undefined =>
    lots
      .get(plainName(name))
      ?.find(
        ([, lot]) =>
          isSameDay(lot.bottledAtMs, bottledAt) && Math.abs(lot.bottleSizeMl - bottleSizeMl) < 1,
      )?.[0]
}

function stockTwins({ ledger }: Session) {
  const lots = Map.groupBy(ledger.folded.cellar.lots, ([, lot]) => sameGoods(lot.goods))
  return ({ goods, boughtAt }: StockRow): string | undefined =>
    lots.get(sameGoods(goods))?.find(([, lot]) => isSameDay(lot.boughtAtMs, boughtAt))?.[0]
}

/** Without what the library fills in. */
function sameGoods(goods: Goods): string {
  const name = goods.name === undefined ? '' : plainName(goods.name)
  switch (goods.kind) {
    case 'fruit':
      return JSON.stringify([goods.kind, name, goods.fruitId])
    case 'spirit':
      return JSON.stringify([goods.kind, name, goods.strengthPctVol])
    case 'sweetener':
      return JSON.stringify([goods.kind, name, goods.sweetenerId])
    case 'acid':
      return JSON.stringify([goods.kind, name])
  }
}

const sameStockRow = ({ goods, boughtAt, massG, volumeMl, priceMinor, note }: StockRow): string =>
  JSON.stringify([sameGoods(goods), boughtAt, massG, volumeMl, priceMinor, note])

const sameRow = (row: BottlesRow): string =>
  JSON.stringify([
    plainName(row.name),
    row.fruitIds,
    row.bottledAt,
    row.count,
    row.bottleSizeMl,
    row.strengthPctVol,
    row.sugarGPerL,
    row.shelfId,
    row.note,
  ])
