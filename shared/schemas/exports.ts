/** The whole cellar in an open form: what an export says of itself, and bringing one in. */
import * as z from 'zod'
import { Id, Instant } from './basics.ts'
import { BookCounts, BooksCompared, LastMove } from './books-compared.ts'

const count = z.number().int().nonnegative()
const Sha256 = z.string().regex(/^[0-9a-f]{64}$/)

/** A file inside an export. */
const ExportPart = z.object({
  name: z.string().max(200),
  rows: count,
  bytes: count,
  sha256: Sha256,
})
export type ExportPart = z.infer<typeof ExportPart>

export const exportFormat = 'ratafia-cellar'
export const exportVersion = 1

/** `manifest.json` of an export. Unknown fields of later programs are let pass. */
export const ExportManifest = z.object({
  format: z.literal(exportFormat),
  /** Raised when an older program could no longer bring it in. */
  version: z.literal(exportVersion),
  madeAt: Instant,
  programVersion: z.string().max(40),
  /** Of the book: says which tables and columns there are. */
  schemaVersion: count,
  /** The book's file name, without its folder. */
  bookName: z.string().max(300),
  /** Of prices, whose amounts are in its smallest unit. */
  currency: z.string().max(10),
  counts: BookCounts,
  firstMoveId: Id.nullable(),
  lastMove: LastMove.nullable(),
  /** Of the state that the moves come to, as the program that made it reckons. */
  ledgerDigest: Sha256,
  /** All that is truth, one file a table of the book. */
  data: z.array(ExportPart).max(200),
  /** For people and spreadsheets; they are not read back. */
  tables: z.array(ExportPart).max(200),
})
export type ExportManifest = z.infer<typeof ExportManifest>

/** Why a file cannot be brought in. */
export const ExportProblem = z.enum([
  'notAnExport',
  'cutShort',
  'unreadable',
  'checksum',
  'damagedInside',
  'notBySchema',
  'unsafeNames',
  'tooLarge',
  'otherState',
  'newerProgram',
])
export type ExportProblem = z.infer<typeof ExportProblem>

export const FoundExport = z.strictObject({
  file: z.string(),
  bytes: count,
  /** Null where it cannot be read. */
  manifest: ExportManifest.nullable(),
  problem: ExportProblem.nullable(),
})
export type FoundExport = z.infer<typeof FoundExport>

/** An export beside the present book. */
export const ImportPreview = z.strictObject({
  file: z.string(),
  manifest: ExportManifest,
  ...BooksCompared.shape,
})
export type ImportPreview = z.infer<typeof ImportPreview>
