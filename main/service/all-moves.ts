/**
 * Every move of the book, newest first, a part at a time. Which of them match is worked out once for
 * a filter, and kept until the ledger changes: a list that is scrolled asks for the same again.
 */
import { allBatches } from '../cellar/batch-store.ts'
import { allJars } from '../cellar/jar-store.ts'
import { lastGroup, moveIdsOfGroup, struckMoves } from '../cellar/move-store.ts'
import { placesNamed } from '../cellar/places-named.ts'
import { plain } from '../../shared/plain.ts'
import type { MoveFilter, MovePage } from '../../shared/schemas/all-moves.ts'
import type { Move, RecordedMove } from '../../shared/schemas/moves.ts'
import { batchIdOf, dayOf, inLedgerOrder, type Step } from '../engine/index.ts'
import type { LedgerView } from './ledger-view.ts'
import { timeZoneOf } from './schedule.ts'
import type { Session } from './session.ts'

interface Listed {
  readonly recorded: RecordedMove
  readonly atMs: number
  readonly batchIds: ReadonlySet<string>
}

interface Found {
  readonly key: string
  readonly rows: readonly Listed[]
}
const kept = new WeakMap<LedgerView, Found>()

export function movePage(
  session: Session,
  asked: { filter: MoveFilter; from: number; count: number },
): MovePage {
  const { filter, from, count } = asked
  const rows = matching(session, filter)
  const groupId = lastGroup(session.book, undefined)
  return {
    total: rows.length,
    years: yearsOf(session),
    rows: rows.slice(from, from + count).map(({ recorded, batchIds }) => ({
      recorded,
      batchIds: [...batchIds],
    })),
    ...(groupId !== undefined && {
      last: { groupId, moveIds: moveIdsOfGroup(session.book, groupId) },
    }),
  }
}

function matching(session: Session, filter: MoveFilter): readonly Listed[] {
  const key = JSON.stringify(filter)
  const known = kept.get(session.ledger)
  if (known?.key === key) return known.rows
  const all = filter.isStruck === true ? struck(session) : counting(session.ledger)
  const rows = all.filter(matcher(session, filter)).toReversed()
  kept.set(session.ledger, { key, rows })
  return rows
}

/** Oldest first; what the ledger refuses, as in a book read from damage, stands among the rest. */
function counting({ folded: { steps, refused } }: LedgerView): readonly Listed[] {
  if (refused.length === 0) return steps
  const byMove = new Map<RecordedMove, Step>(steps.map((step) => [step.recorded, step]))
  return inLedgerOrder([...byMove.keys(), ...refused.map(({ recorded }) => recorded)]).map(
    (recorded) => byMove.get(recorded) ?? alone(recorded),
  )
}

const struck = ({ book }: Session): readonly Listed[] => inLedgerOrder(struckMoves(book)).map(alone)

/** A move without effect concerns the batch that it names. */
function alone(recorded: RecordedMove): Listed {
  const batchId = batchIdOf(recorded.move)
  return {
    recorded,
    atMs: Date.parse(recorded.move.at),
    batchIds: new Set(batchId === undefined ? [] : [batchId]),
  }
}

function matcher(session: Session, filter: MoveFilter): (listed: Listed) => boolean {
  const { batchId, jarId, kind, year, text = '' } = filter
  const span = year === undefined ? undefined : yearSpan(year, timeZoneOf(session))
  const words = plain(text).split(/\s+/).filter(Boolean)
  const named = words.length === 0 ? undefined : namesOf(session)
  return ({ recorded: { move }, atMs, batchIds }) =>
    (kind === undefined || move.kind === kind) &&
    (span === undefined || (atMs >= span.fromMs && atMs < span.untilMs)) &&
    (batchId === undefined || batchIds.has(batchId)) &&
    (jarId === undefined || placesNamed(move).jarIds.includes(jarId)) &&
    (named === undefined || holdsAll(named(move, batchIds), words))
}

const holdsAll = (text: string, words: readonly string[]) =>
  words.every((word) => text.includes(word))

const quarterHourMs = 15 * 60_000

/** From one New Year to the next where the maker is; zones differ from UTC by quarters of an hour. */
function yearSpan(year: number, timeZone: string) {
  const newYear = (of: number) => {
    const utcMs = Date.UTC(of, 0, 1)
    for (let ms = utcMs - 14 * 4 * quarterHourMs; ; ms += quarterHourMs)
      if (dayOf(ms, timeZone).startsWith(String(of))) return ms
  }
  return { fromMs: newYear(year), untilMs: newYear(year + 1) }
}

function yearsOf(session: Session): number[] {
  const { steps } = session.ledger.folded
  const timeZone = timeZoneOf(session)
  const [first, last] = [steps[0], steps.at(-1)]
  if (!first || !last) return []
  const yearOf = ({ atMs }: Step) => Number(dayOf(atMs, timeZone).slice(0, 4))
  const [from, to] = [yearOf(first), yearOf(last)]
  return Array.from({ length: to - from + 1 }, (_, back) => to - back)
}

/** What a move can be found by: its note, and the names of all that it names. */
function namesOf({ book, fruits, ledger }: Session) {
  const { lots, bottles } = ledger.folded.cellar
  const names = new Map<string, string>()
  const add = (id: string, name: string | undefined) => {
    if (name !== undefined) names.set(id, `${names.get(id) ?? ''} ${plain(name)}`)
  }
  for (const { id, name } of allJars(book)) add(id, name)
  for (const { id, name } of allBatches(book)) add(id, name)
  for (const [id, { name }] of bottles) add(id, name)
  for (const [id, { goods }] of lots) {
    add(id, goods.name)
    const fruit = goods.kind === 'fruit' ? fruits.find(goods.fruitId) : undefined
    add(id, fruit && `${fruit.nameEn} ${fruit.namePl}`)
  }
  return (move: Move, batchIds: ReadonlySet<string>): string => {
    const found = move.note === undefined ? [] : [plain(move.note)]
    for (const id of [...batchIds, ...idsIn(move)]) {
      const name = names.get(id)
      if (name !== undefined) found.push(name)
    }
    return found.join('\n')
  }
}

/** Every text of a move that may be an id, however deep it stands. */
function idsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(idsIn) : []
}
