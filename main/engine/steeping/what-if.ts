/**
 * The same batch, handled otherwise: warmer, cut smaller, turned more often, drawn off earlier.
 *
 * Method: from the start, the batch's moves are told again with its charges cut so and its jars
 * kept so from their first charge on. From now on, the jars as they stand are handled so and their
 * clocks started anew. The same ledger and the same steeping either way; nothing is written.
 */
import type { Cut, Move, RecordedMove, Turned } from '../../../shared/schemas/moves.ts'
import type { CurveValues } from '../../../shared/schemas/steeping.ts'
import { curveValues } from '../ledger/batch-curve.ts'
import { restarted, settledJar, type JarState } from '../ledger/cellar-state.ts'
import type { Step } from '../ledger/fold.ts'
import { handled } from '../ledger/fruit-charge.ts'
import type { Tuning } from '../ledger/moves/context.ts'
import { extractOut, isSteeping, jarsAfter, restAfterMs } from './forecast.ts'
import { replay, type Replay } from './replay.ts'

export interface Handling {
  readonly temperatureC?: number | undefined
  readonly turned?: Turned | undefined
  readonly cut?: Cut | undefined
  readonly pieceScale?: number | undefined
}

export function handledFromStart(told: Replay, tuning: Tuning, change: Handling): readonly Step[] {
  const moves = withHandling(told.moves, change)
  return replay({ ...told, moves }, { ...tuning, pieceScale: change.pieceScale ?? 1 }).steps
}

function withHandling(
  moves: readonly RecordedMove[],
  { temperatureC, turned, cut }: Handling,
): RecordedMove[] {
  const kept = new Set<string>()
  return moves.flatMap((recorded) => {
    const { move } = recorded
    if (move.kind === 'keep') {
      const left = without(move, temperatureC, turned)
      return [{ ...recorded, move: left }]
    }
    if (move.kind !== 'charge') return [recorded]
    const charged = { ...recorded, move: cut ? { ...move, cut } : move }
    if (kept.has(move.jarId) || (temperatureC === undefined && turned === undefined))
      return [charged]
    kept.add(move.jarId)
    const { at, batchId, jarId } = move
    const stood: Move = {
      kind: 'keep',
      at,
      batchId,
      jarId,
      ...(temperatureC !== undefined && { temperatureC }),
      ...(turned !== undefined && { turned }),
    }
    return [charged, { ...recorded, id: `${recorded.id}-kept`, move: stood }]
  })
}

/** What the question asks overrules what the maker did later. */
function without(
  move: Extract<Move, { kind: 'keep' }>,
  temperatureC: number | undefined,
  turned: Turned | undefined,
): Move {
  const { temperatureC: was, turned: wasTurned, ...rest } = move
  return {
    ...rest,
    ...(temperatureC === undefined && was !== undefined && { temperatureC: was }),
    ...(turned === undefined && wasTurned !== undefined && { turned: wasTurned }),
  }
}

/** The steps with one more at the end, in which every jar with fruit is handled otherwise. */
export function handledFromNow(
  steps: readonly Step[],
  batchId: string,
  change: Handling,
  nowMs: number,
): readonly Step[] {
  const last = steps.at(-1)
  if (!last) return steps
  const atMs = Math.max(nowMs, last.atMs)
  const jars = new Map<string, JarState>()
  for (const [id, jar] of jarsAfter(steps, batchId))
    if (jar.fruit) jars.set(id, handledJar(settledJar(jar, atMs), change))
  return [...steps, { ...last, atMs, effect: { jars, transfers: [] } }]
}

function handledJar(jar: JarState, { temperatureC, turned, cut, pieceScale }: Handling): JarState {
  const fruit =
    jar.fruit &&
    handled(jar.fruit, (part) => ({
      ...part,
      cut: cut ?? part.cut,
      pieceScale: part.pieceScale * (pieceScale ?? 1),
    }))
  const keeping = {
    temperatureC: temperatureC ?? jar.keeping.temperatureC,
    turned: turned ?? jar.keeping.turned,
  }
  return restarted({ ...jar, fruit, keeping }, 0)
}

export interface OutcomeFound {
  readonly jarId: string
  readonly atMs: number
  readonly values: CurveValues
  readonly extractFraction: number
  readonly colourFraction: number
}

/** What each jar of steeping fruit would give if it were drawn off then, and not before. */
export function outcomesAt(steps: readonly Step[], batchId: string, atMs: number): OutcomeFound[] {
  return [...jarsUndrawn(steps, batchId, atMs)].flatMap(([jarId, jar]) => {
    if (!isSteeping(jar)) return []
    const then = settledJar(jar, Math.max(atMs, jar.atMs))
    const values = curveValues(then.bodies.free, then.bodies.held.ethanolG)
    if (!values) return []
    return {
      jarId,
      atMs: then.atMs,
      values,
      extractFraction: extractOut(jar, then.atMs, then.atMs + restAfterMs),
      colourFraction: then.colourFraction,
    }
  })
}

/** Each jar of the batch as it stood before the first liquid was taken off its fruit. */
function jarsUndrawn(steps: readonly Step[], batchId: string, atMs: number) {
  const jars = new Map<string, JarState>()
  const drawn = new Set<string>()
  for (const { recorded, effect, atMs: stepMs } of steps) {
    if (stepMs > atMs) break
    for (const [id, jar] of effect.jars ?? []) {
      if (jars.get(id)?.fruit && pouringOff.has(recorded.move.kind)) drawn.add(id)
      if (!drawn.has(id) && jar?.batchId === batchId) jars.set(id, jar)
    }
  }
  return jars
}

/** Moves that take liquid off the fruit, or come after that. */
const pouringOff: ReadonlySet<Move['kind']> = new Set([
  'drawOff',
  'press',
  'coverWithSugar',
  'marry',
  'filter',
  'bottle',
  'discard',
])
