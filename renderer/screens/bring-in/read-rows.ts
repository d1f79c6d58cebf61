/** Lines of a file as typed rows, or what is wrong with which cell. */
import { plainName } from '../../../shared/plain.ts'
import { BottlesRow, type SheetRow } from '../../../shared/schemas/sheets.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { Shelf } from '../../../shared/schemas/shelf.ts'
import type { CellProblem } from './cell-problem.ts'
import type { ColumnPlan, Measures, SheetPlan } from './columns.ts'
import { fieldsOf, isAmount, type FieldId, type SheetField, type SheetKind } from './fields.ts'
import { readAmount } from './read-amount.ts'
import { readDate } from './read-date.ts'
import type { SheetLine } from './sheet-file.ts'
import { stockOf, type CellValues } from './stock-row.ts'

export interface ReadRow {
  readonly line: number
  /** As written, or as mended by the maker. */
  readonly texts: Partial<Readonly<Record<FieldId, string>>>
  readonly problems: readonly { readonly field: FieldId; readonly problem: CellProblem }[]
  /** What goes to the book, where nothing is wrong. */
  readonly row: SheetRow | undefined
}

export interface ReadingContext {
  readonly kind: SheetKind
  readonly plan: SheetPlan
  /** Cells mended by the maker, by `cellKey`. */
  readonly mended: ReadonlyMap<string, string>
  readonly measures: Measures
  readonly fruits: readonly Fruit[]
  readonly shelves: readonly Shelf[]
  readonly colourOf: (fruitId: string | undefined) => string
  readonly now: Date
}

export const cellKey = (line: number, field: FieldId): string => `${line} ${field}`

export function readRows(lines: readonly SheetLine[], context: ReadingContext): ReadRow[] {
  const known = {
    fruits: byNames(context.fruits, ({ nameEn, namePl, latin }) => [nameEn, namePl, latin]),
    shelves: byNames(
      context.shelves.filter(({ isRetired }) => !isRetired),
      ({ name }) => [name],
    ),
  }
  return lines.map((line) => readRow(line, context, known))
}

interface Known {
  readonly fruits: ReadonlyMap<string, Fruit>
  readonly shelves: ReadonlyMap<string, Shelf>
}

function readRow({ line, cells }: SheetLine, context: ReadingContext, known: Known): ReadRow {
  const { plan, mended } = context
  const texts: Partial<Record<FieldId, string>> = {}
  const problems: { field: FieldId; problem: CellProblem }[] = []
  const values: CellValues = {}
  for (const field of fieldsOf[context.kind]) {
    const at = plan.columns.findIndex((column) => column.field === field.id)
    const written = at < 0 ? plan.same[field.id] : cells[at]
    const text = (mended.get(cellKey(line, field.id)) ?? written ?? '').trim()
    texts[field.id] = text
    if (text === '') {
      if (field.isRequired)
        problems.push({ field: field.id, problem: { kind: 'text', code: 'missing' } })
      continue
    }
    const read = readCell(text, field, plan.columns[at] ?? {}, context, known)
    if (read.ok) values[field.id] = read.value
    else problems.push({ field: field.id, problem: read.problem })
  }
  if (problems.length > 0) return { line, texts, problems, row: undefined }
  if (context.kind === 'stock') return { line, texts, ...stockOf(values, known.fruits) }
  return { line, texts, problems, row: bottlesOf(values, context) }
}

type CellReading =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problem: CellProblem }

function readCell(
  text: string,
  { id, reads }: SheetField,
  column: ColumnPlan,
  { measures, now }: ReadingContext,
  known: Known,
): CellReading {
  if (isAmount(reads)) {
    const { unit, decimalMark } = column
    const reading = readAmount(text, { ...measures, dimension: reads, unit, decimalMark })
    return reading.ok
      ? reading
      : failed({ kind: 'amount', dimension: reads, problem: reading.problem })
  }
  switch (reads) {
    case 'date': {
      const reading = readDate(text, column.dateOrder, now)
      return reading.ok
        ? { ok: true, value: reading.at }
        : failed({ kind: 'date', code: reading.code })
    }
    case 'fruits':
      return readFruits(text, known)
    case 'shelf': {
      const shelf = known.shelves.get(plainName(text))
      return shelf
        ? { ok: true, value: shelf.id }
        : failed({ kind: 'name', code: 'noShelf', name: shortened(text) })
    }
    case 'text':
      return text.length > (id === 'note' ? 4000 : 120)
        ? failed({ kind: 'text', code: 'tooLong' })
        : { ok: true, value: text }
  }
}

/** "quince, honey" or "sloe + damson"; a name with such a mark in it is found whole first. */
function readFruits(text: string, { fruits }: Known): CellReading {
  const whole = fruits.get(plainName(text))
  if (whole) return { ok: true, value: [whole.id] }
  const names = text.split(/[,;/+&]|\s(?:and|i|oraz)\s/u).flatMap((name) => name.trim() || [])
  const found = names.map((name) => fruits.get(plainName(name))?.id)
  const unknown = found.indexOf(undefined)
  if (unknown >= 0)
    return failed({ kind: 'name', code: 'noFruit', name: shortened(names[unknown] ?? '') })
  const ids = [...new Set(found)]
  return ids.length > 12 ? failed({ kind: 'text', code: 'tooLong' }) : { ok: true, value: ids }
}

/** What was read cell by cell, held against the contract once more as a whole. */
function bottlesOf(values: CellValues, { colourOf }: ReadingContext): BottlesRow {
  const fruitIds = (values.fruits ?? []) as string[]
  return BottlesRow.parse({
    name: values.name,
    colour: colourOf(fruitIds[0]),
    fruitIds,
    bottledAt: values.date,
    count: values.count,
    bottleSizeMl: values.size,
    strengthPctVol: values.strength,
    sugarGPerL: values.sugar,
    ...(values.shelf !== undefined && { shelfId: values.shelf }),
    ...(values.note !== undefined && { note: values.note }),
  })
}

const byNames = <Thing>(things: readonly Thing[], namesOf: (thing: Thing) => string[]) =>
  new Map(things.flatMap((thing) => namesOf(thing).map((name) => [plainName(name), thing])))

const shortened = (text: string) => (text.length > 40 ? `${text.slice(0, 40)}…` : text)

const failed = (problem: CellProblem): CellReading => ({ ok: false, problem })
