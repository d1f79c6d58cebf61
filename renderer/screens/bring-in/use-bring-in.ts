/** Everything chosen and mended on the way from a file to the book; no step back loses any of it. */
import { useMemo, useState } from 'react'
import type { Sheet, SheetRow } from '../../../shared/schemas/sheets.ts'
import { newId } from '../../app/new-id.ts'
import { useRead, useWrite } from '../../app/queries.ts'
import { useSettings } from '../../app/settings.tsx'
import { useLanguage } from '../../app/words/use-words.ts'
import { useFruitColour } from '../../parts/names/use-fruit-colour.ts'
import { guessedPlan, type Measures, type SheetPlan } from './columns.ts'
import type { FieldId, SheetKind } from './fields.ts'
import { judgedRows, type JudgedRow, type RowChoices } from './judged-rows.ts'
import { cellKey, readRows, type ReadingContext } from './read-rows.ts'
import { readSheetFile, type FileChoices, type SheetTable } from './sheet-file.ts'

export interface ChosenFile {
  readonly name: string
  readonly bytes: Uint8Array
}

const unmended: ReadonlyMap<string, string> = new Map()
const none: ReadonlySet<number> = new Set()
const unmarked = { mended: unmended, leftOut: none, wanted: none }

/** What the maker did to rows, which holds for the table it was done to. */
interface Marks extends RowChoices {
  readonly of: SheetTable | undefined
  readonly kind: SheetKind
  /** By `cellKey`. */
  readonly mended: ReadonlyMap<string, string>
}

const ofTable = (marks: Marks, table: SheetTable | undefined, kind: SheetKind): Marks =>
  marks.of === table && marks.kind === kind ? marks : { of: table, kind, ...unmarked }

export function useFile(kindInMind: SheetKind) {
  // Only guesses letters: another language later must not read the file anew.
  const spoken = useLanguage()
  const [language] = useState(spoken)
  const [kind, setKind] = useState(kindInMind)
  const [file, setFile] = useState<ChosenFile>()
  const [choices, setChoices] = useState<FileChoices>({})
  const reading = useMemo(
    () => file && readSheetFile(file.bytes, choices, language),
    [file, choices, language],
  )
  return { kind, setKind, file, setFile, choices, setChoices, reading }
}
export type FileState = ReturnType<typeof useFile>

export function useColumns({ kind, reading }: FileState) {
  const { units, temperature, strength, currency } = useSettings()
  const language = useLanguage()
  const table = reading?.ok ? reading.table : undefined
  const measures: Measures = useMemo(
    () => ({ units, temperature, strength, currency, language }),
    [units, temperature, strength, currency, language],
  )
  const guessed = useMemo(
    () => table && guessedPlan(kind, table, measures),
    [kind, table, measures],
  )
  // What was chosen holds for the table it was chosen for.
  const [chosen, setChosen] = useState<{ of: SheetTable; kind: SheetKind; plan: SheetPlan }>()
  const plan = chosen && chosen.of === table && chosen.kind === kind ? chosen.plan : guessed
  const setPlan = (next: SheetPlan) => table && setChosen({ of: table, kind, plan: next })
  return { table, measures, plan, setPlan }
}
export type ColumnState = ReturnType<typeof useColumns>

export function useRows({ kind }: FileState, { table, plan, measures }: ColumnState) {
  const fruits = useRead('fruits.list', {})
  const shelves = useRead('shelves.list', {})
  const colourOf = useFruitColour()
  const [now] = useState(() => new Date())
  const [marked, setMarked] = useState<Marks>({ of: table, kind, ...unmarked })
  const marks = ofTable(marked, table, kind)
  const { mended, leftOut, wanted } = marks

  const context = useMemo((): ReadingContext | undefined => {
    if (!plan || !fruits.data || !shelves.data) return undefined
    const known = { fruits: fruits.data, shelves: shelves.data }
    return { kind, plan, measures, colourOf, now, mended: unmended, ...known }
  }, [kind, plan, measures, colourOf, now, fruits.data, shelves.data])
  const asWritten = useMemo(
    () => (context && table ? readRows(table.rows, context) : []),
    [context, table],
  )
  // Of thousands of rows only the mended ones are read again.
  const read = useMemo(() => {
    if (!context || !table || mended.size === 0) return asWritten
    const touched = new Set([...mended.keys()].map((key) => Number.parseInt(key, 10)))
    return asWritten.map((row, at) => {
      const line = table.rows[at]
      if (!line || !touched.has(row.line)) return row
      return readRows([line], { ...context, mended })[0] ?? row
    })
  }, [asWritten, context, table, mended])

  const typed = useMemo(() => read.flatMap(({ row }) => row ?? []), [read])
  const look = useRead(
    'sheets.look',
    { sheet: sheetOf(kind, typed) },
    { isEnabled: typed.length > 0, keptMs: 0 },
  )
  const verdicts = look.data?.verdicts
  const rows = useMemo(
    () => judgedRows(read, verdicts, { leftOut, wanted }),
    [read, verdicts, leftOut, wanted],
  )

  const mark = (change: (before: Marks) => Partial<Marks>) =>
    setMarked((before) => {
      const present = ofTable(before, table, kind)
      return { ...present, ...change(present) }
    })
  const mend = (line: number, field: FieldId, text: string) =>
    mark((before) => ({ mended: new Map(before.mended).set(cellKey(line, field), text) }))
  const take = ({ line, verdict }: JudgedRow, isTaken: boolean) => {
    const isTwin = verdict?.verdict === 'twin'
    mark(({ wanted: before, leftOut: out }) => ({
      wanted: isTwin ? withOrWithout(before, [line], isTaken) : before,
      // A row that was left out and then mended into a twin is taken by the same tick.
      leftOut: isTwin && !isTaken ? out : withOrWithout(out, [line], !isTaken),
    }))
  }
  const leaveOut = (lines: readonly number[]) =>
    mark((before) => ({ leftOut: withOrWithout(before.leftOut, lines, true) }))
  return { rows, typed, look, isRead: context !== undefined, mend, take, leaveOut }
}
export type RowState = ReturnType<typeof useRows>

/** Rows of a kind were all read as that kind. */
const sheetOf = (kind: SheetKind, rows: readonly SheetRow[]): Sheet =>
  kind === 'stock'
    ? { kind, rows: rows.flatMap((row) => ('goods' in row ? row : [])) }
    : { kind, rows: rows.flatMap((row) => ('goods' in row ? [] : row)) }

function withOrWithout(before: ReadonlySet<number>, lines: readonly number[], isIn: boolean) {
  const after = new Set(before)
  for (const line of lines) {
    if (isIn) after.add(line)
    else after.delete(line)
  }
  return after
}

/** Writes the rows that are ready; the same rows sent twice are written once. */
export function useAccept({ kind }: FileState, { rows }: RowState) {
  const bringIn = useWrite('sheets.bringIn')
  const [sent, setSent] = useState<{ key: string; rows: string }>()
  const ready = useMemo(
    () =>
      rows.flatMap(({ row, standing, verdict }): SheetRow[] => {
        if (!row || standing !== 'ready') return []
        return [verdict?.verdict === 'twin' ? { ...row, evenIfThere: true } : row]
      }),
    [rows],
  )
  function accept(onDone: () => void) {
    if (bringIn.isPending || ready.length === 0) return
    const asText = JSON.stringify(ready)
    const key = sent?.rows === asText && bringIn.isError ? sent.key : newId()
    setSent({ key, rows: asText })
    bringIn.mutate({ key, sheet: sheetOf(kind, ready) }, { onSuccess: onDone })
  }
  return { ready, accept, isPending: bringIn.isPending, error: bringIn.error }
}
