/** The ledger of a damaged book: which of its rows still are moves, and which are gone. */
import { Move } from '../../shared/schemas/moves.ts'
import type { SalvageReport } from '../../shared/schemas/safekeeping.ts'
import type { Row } from './readable-rows.ts'

export interface SalvagedMove {
  readonly seq: number
  readonly id: string
  readonly version: number
  readonly groupId: string
  readonly payload: string | null
}

export interface SalvagedGroup {
  readonly id: string
  readonly requestKey: string
  readonly recordedAt: string
  readonly undoes: string | null
}

export interface SalvagedLedger {
  readonly moves: readonly SalvagedMove[]
  readonly groups: readonly SalvagedGroup[]
  readonly lostMoves: SalvageReport['lostMoves']
}

export function salvagedLedger(
  moveRows: readonly Row[],
  groupRows: readonly Row[],
): SalvagedLedger {
  const read = moveRows.map(moveOf).filter((move) => move !== undefined)
  const moves = renumbered(read)
  const known = new Map(groupRows.flatMap(groupOf).map((group) => [group.id, group]))
  const ids = new Set(moves.map(({ groupId }) => groupId))
  const groups = [...ids].map((id) => known.get(id) ?? groupMadeAgain(id, moves))
  // An undo can only name a group that is there.
  const named = (undoes: string | null) => (undoes !== null && ids.has(undoes) ? undoes : null)
  return {
    moves,
    groups: groups.map((group) => ({ ...group, undoes: named(group.undoes) })),
    lostMoves: lostAmong(moveRows, read, known),
  }
}

function moveOf(row: Row): SalvagedMove | undefined {
  const { seq, id, version, group_id: groupId, payload } = row
  const isRow =
    typeof seq === 'number' &&
    typeof id === 'string' &&
    typeof version === 'number' &&
    typeof groupId === 'string'
  if (!isRow) return undefined
  if (payload === null) return { seq, id, version, groupId, payload }
  if (typeof payload !== 'string' || !isMove(payload)) return undefined
  return { seq, id, version, groupId, payload }
}

function isMove(payload: string): boolean {
  try {
    return Move.safeParse(JSON.parse(payload)).success
  } catch {
    return false
  }
}

/** Versions count from 1 without a gap: a move whose first recording is lost begins with its next. */
function renumbered(moves: readonly SalvagedMove[]): SalvagedMove[] {
  const counts = new Map<string, number>()
  return [...moves]
    .sort((a, b) => a.seq - b.seq)
    .flatMap((move) => {
      const version = (counts.get(move.id) ?? 0) + 1
      // A strike of what was never seen says nothing.
      if (version === 1 && move.payload === null) return []
      counts.set(move.id, version)
      return { ...move, version }
    })
}

function groupOf(row: Row): SalvagedGroup[] {
  const { id, request_key: requestKey, recorded_at: recordedAt, undoes } = row
  if (typeof id !== 'string' || typeof requestKey !== 'string' || !isInstant(recordedAt)) return []
  return [{ id, requestKey, recordedAt, undoes: typeof undoes === 'string' ? undoes : null }]
}

const isInstant = (value: unknown): value is string =>
  typeof value === 'string' && Number.isFinite(Date.parse(value))

/** Recorded, as far as anybody can tell, when its first move says it happened. */
function groupMadeAgain(id: string, moves: readonly SalvagedMove[]): SalvagedGroup {
  const first = moves.find((move) => move.groupId === id && move.payload !== null)
  const at = first?.payload ? Move.parse(JSON.parse(first.payload)).at : new Date(0).toISOString()
  return { id, requestKey: `salvaged-${id}`, recordedAt: at, undoes: null }
}

function lostAmong(
  rows: readonly Row[],
  read: readonly SalvagedMove[],
  groups: ReadonlyMap<string, SalvagedGroup>,
): SalvageReport['lostMoves'] {
  const bySeq = new Map(read.map((move) => [move.seq, move]))
  const seen = new Set(rows.map(({ seq }) => seq))
  const last = Math.max(0, ...[...seen].filter((seq) => typeof seq === 'number'))
  const lost: SalvageReport['lostMoves'] = []
  let after: string | null = null
  for (let seq = 1; seq <= last; seq += 1) {
    const move = bySeq.get(seq)
    if (move) {
      after = groups.get(move.groupId)?.recordedAt ?? after
      for (let at = lost.length - 1; at >= 0 && lost[at]?.before === null; at -= 1)
        lost[at] = { ...(lost[at] as (typeof lost)[number]), before: after }
    } else lost.push({ seq, why: seen.has(seq) ? 'unreadable' : 'gone', after, before: null })
  }
  return lost
}
