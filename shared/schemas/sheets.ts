/** Rows of a spreadsheet, read and typed, on their way into the book. */
import * as z from 'zod'
import {
  Colour,
  Count,
  Id,
  Instant,
  MassG,
  Name,
  Note,
  StrengthPctVol,
  SugarGPerL,
  VolumeMl,
} from './basics.ts'
import { ErrorCode } from './errors.ts'
import { Goods } from './goods.ts'

/** More than a house has bottled in forty years; a file beyond it is no cellar list. */
export const maxSheetRows = 5000

/** The maker has seen that this is in the book already, or in the sheet twice, and wants it all the same. */
const evenIfThere = z.boolean().optional()

/** Bottles that stand on the shelf, one kind and filling to a row. */
export const BottlesRow = z.strictObject({
  /** Of the batch they come from: opened with them where the book has none of that name. */
  name: Name,
  /** In which that batch is drawn, where it is opened. */
  colour: Colour,
  fruitIds: z.array(Id).max(12),
  bottledAt: Instant,
  count: Count,
  bottleSizeMl: VolumeMl,
  strengthPctVol: StrengthPctVol,
  sugarGPerL: SugarGPerL,
  shelfId: Id.optional(),
  note: Note.optional(),
  evenIfThere,
})
export type BottlesRow = z.infer<typeof BottlesRow>

/** Goods in the pantry, one lot to a row; fruit and sweeteners by mass, spirit by volume. */
export const StockRow = z.strictObject({
  goods: Goods,
  boughtAt: Instant,
  massG: MassG.optional(),
  volumeMl: VolumeMl.optional(),
  /** In the smallest unit of the cellar's currency. */
  priceMinor: z.number().int().nonnegative().optional(),
  note: Note.optional(),
  evenIfThere,
})
export type StockRow = z.infer<typeof StockRow>

export type SheetRow = BottlesRow | StockRow

/** Rows of one kind; answers name them by their place in the list. */
export const Sheet = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('bottles'),
    rows: z.array(BottlesRow).min(1).max(maxSheetRows),
  }),
  z.strictObject({
    kind: z.literal('stock'),
    rows: z.array(StockRow).min(1).max(maxSheetRows),
  }),
])
export type Sheet = z.infer<typeof Sheet>

/** What becomes of a row. */
export const RowVerdict = z.discriminatedUnion('verdict', [
  z.strictObject({
    verdict: z.literal('ready'),
    /** The batch it goes into; null where one is opened, or none is needed. */
    batchId: Id.nullable(),
  }),
  /** The same is in the book, or in an earlier row of the sheet. */
  z.strictObject({
    verdict: z.literal('twin'),
    of: z.union([
      z.strictObject({ lotId: Id }),
      z.strictObject({ rowIndex: z.number().int().nonnegative() }),
    ]),
  }),
  z.strictObject({
    verdict: z.literal('refused'),
    code: ErrorCode,
    details: z.record(z.string(), z.unknown()),
  }),
])
export type RowVerdict = z.infer<typeof RowVerdict>
