/** A maker's file as rows of text: which letters, which separator, which limits. Nothing in it is run. */
import Papa from 'papaparse'

export const encodings = ['utf-8', 'windows-1250', 'windows-1252', 'utf-16le', 'utf-16be'] as const
export type Encoding = (typeof encodings)[number]

export const delimiters = [';', ',', '\t', '|'] as const
export type Delimiter = (typeof delimiters)[number]

export const maxFileBytes = 5_000_000
export const maxFileRows = 5000
export const maxFileColumns = 100

/** What the maker chose; what is left out is guessed. */
export interface FileChoices {
  readonly encoding?: Encoding | undefined
  readonly delimiter?: Delimiter | undefined
  readonly hasHeads?: boolean | undefined
}

export interface SheetTable {
  readonly encoding: Encoding
  readonly delimiter: Delimiter
  readonly hasHeads: boolean
  /** One for each column; empty where the file names none. */
  readonly heads: readonly string[]
  readonly rows: readonly SheetLine[]
}

export interface SheetLine {
  /** As a spreadsheet numbers its rows. */
  readonly line: number
  readonly cells: readonly string[]
}

export type FileProblem =
  | { readonly code: 'tooLarge' | 'aSpreadsheet' | 'notText' | 'otherLetters' | 'noRows' }
  | { readonly code: 'tooManyRows' | 'tooManyColumns'; readonly count: number }
  | { readonly code: 'openQuote'; readonly line: number }

export type FileReading =
  | { readonly ok: true; readonly table: SheetTable }
  | { readonly ok: false; readonly problem: FileProblem }

export function readSheetFile(
  bytes: Uint8Array,
  choices: FileChoices,
  language: string,
): FileReading {
  if (bytes.length > maxFileBytes) return failed({ code: 'tooLarge' })
  // Spreadsheets' own files are zips, or the older compound files.
  if (startsWith(bytes, [0x50, 0x4b, 3, 4]) || startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0]))
    return failed({ code: 'aSpreadsheet' })
  const encoding = choices.encoding ?? guessedEncoding(bytes, language)
  const text = decoded(bytes, encoding)
  if (text === undefined) return failed({ code: 'otherLetters' })
  if (text.includes('\0')) return failed({ code: 'notText' })
  return readSheetText(text, encoding, choices)
}

function readSheetText(text: string, encoding: Encoding, choices: FileChoices): FileReading {
  const delimiter = choices.delimiter ?? guessedDelimiter(text)
  const parsed = Papa.parse<string[]>(text, { delimiter })
  // The rest of the file would be one cell.
  const open = parsed.errors.find(({ code }) => code === 'MissingQuotes')
  if (open) return failed({ code: 'openQuote', line: (open.row ?? 0) + 1 })
  const lines = parsed.data
    .map((cells, index) => ({ line: index + 1, cells: cells.map(asWritten) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''))
  const columnCount = Math.max(0, ...lines.map(({ cells }) => usedCells(cells)))
  if (columnCount > maxFileColumns) return failed({ code: 'tooManyColumns', count: columnCount })
  const [first] = lines
  const hasHeads = choices.hasHeads ?? (first !== undefined && looksLikeHeads(first.cells))
  const rows = hasHeads ? lines.slice(1) : lines
  if (rows.length === 0) return failed({ code: 'noRows' })
  if (rows.length > maxFileRows) return failed({ code: 'tooManyRows', count: rows.length })
  const heads = Array.from({ length: columnCount }, (_, at) =>
    hasHeads ? (first?.cells[at] ?? '') : '',
  )
  return { ok: true, table: { encoding, delimiter, hasHeads, heads, rows } }
}

/** By the beginning alone; empty lines, which the file's rows are numbered with, would mislead it. */
function guessedDelimiter(text: string): Delimiter {
  const { meta } = Papa.parse(text, {
    preview: 50,
    skipEmptyLines: 'greedy',
    delimitersToGuess: [...delimiters],
  })
  return delimiters.find((one) => one === meta.delimiter) ?? ','
}

/** Without the mark that keeps a spreadsheet from running it, which our own lists put there. */
const asWritten = (cell: string) => cell.trim().replace(/^'(?=[=+\-@])/, '')

const usedCells = (cells: readonly string[]) => cells.findLastIndex((cell) => cell !== '') + 1

/** Heads are words: a row with a number or a date in it is a row already. */
const looksLikeHeads = (cells: readonly string[]) => cells.every((cell) => !/^[-−]?\d/.test(cell))

const startsWith = (bytes: Uint8Array, head: readonly number[]) =>
  head.every((byte, at) => bytes[at] === byte)

function guessedEncoding(bytes: Uint8Array, language: string): Encoding {
  if (startsWith(bytes, [0xff, 0xfe])) return 'utf-16le'
  if (startsWith(bytes, [0xfe, 0xff])) return 'utf-16be'
  if (decoded(bytes, 'utf-8') !== undefined) return 'utf-8'
  return language === 'pl' ? 'windows-1250' : 'windows-1252'
}

/** Undefined where the bytes are no such text. A byte order mark is left out by the decoder. */
function decoded(bytes: Uint8Array, encoding: Encoding): string | undefined {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes)
  } catch {
    return undefined
  }
}

const failed = (problem: FileProblem): FileReading => ({ ok: false, problem })
