/** How often each kind of task was done in a batch: this is what tells the second from the first. */
import type { TaskKind } from '../../../shared/schemas/tasks.ts'
import type { Move } from '../../../shared/schemas/moves.ts'
import type { JarState } from '../ledger/cellar-state.ts'
import type { Step } from '../ledger/fold.ts'

export interface DoneMoves {
  /** With a jar for what is done to the fruit of one jar, without for the batch as a whole. */
  count: (kind: TaskKind, jarId?: string) => number
  /** The last instant at which somebody had their hands on the jar. */
  handledMs: (jarId: string) => number | undefined
  /** The liquid stands racked: off its sediment, and not filtered since. */
  readonly isRacked: boolean
}

export function doneMoves(steps: readonly Step[], batchId: string): DoneMoves {
  const counts = new Map<string, number>()
  const handled = new Map<string, number>()
  const jars = new Map<string, JarState | null>()
  let isRacked = false
  const add = (key: string) => counts.set(key, (counts.get(key) ?? 0) + 1)
  for (const { recorded, effect, atMs } of steps) {
    const { move } = recorded
    const isOwn = !('batchId' in move) || move.batchId === batchId
    const done = isOwn ? doneBy(move, jars) : undefined
    if (done) {
      add(done.kind)
      if (done.jarId !== undefined) add(keyOf(done.kind, done.jarId))
    }
    if (move.kind === 'filter') isRacked = move.medium === 'racking'
    if (move.kind === 'marry') isRacked = false
    for (const [jarId, jar] of effect.jars ?? []) {
      jars.set(jarId, jar)
      if (isHandling(move)) handled.set(jarId, atMs)
    }
  }
  return {
    count: (kind, jarId) => counts.get(jarId === undefined ? kind : keyOf(kind, jarId)) ?? 0,
    handledMs: (jarId) => handled.get(jarId),
    isRacked,
  }
}

const keyOf = (kind: TaskKind, jarId: string) => `${kind} ${jarId}`

interface Done {
  readonly kind: TaskKind
  readonly jarId?: string
}

function doneBy(move: Move, jars: ReadonlyMap<string, JarState | null>): Done | undefined {
  switch (move.kind) {
    case 'charge':
      return { kind: 'charge' }
    case 'pourSpirit':
      return { kind: 'addSpirit', jarId: move.jarId }
    case 'drawOff': {
      const wasUnderSugar = jars.get(move.fromJarId)?.fruit?.isUnderSugar === true
      return { kind: wasUnderSugar ? 'pourOffSugarDraw' : 'drawOff', jarId: move.fromJarId }
    }
    case 'coverWithSugar':
      // More sugar on the same draw is still that draw.
      return jars.get(move.jarId)?.fruit?.isUnderSugar
        ? undefined
        : { kind: 'coverWithSugar', jarId: move.jarId }
    case 'press':
      return { kind: 'press', jarId: move.fromJarId }
    case 'discard':
      return 'jarId' in move.from ? { kind: 'clearJar', jarId: move.from.jarId } : undefined
    case 'marry':
      return { kind: 'marry' }
    case 'filter':
      return { kind: move.medium === 'racking' ? 'rack' : 'filter' }
    case 'bottle':
      return { kind: 'bottle' }
    default:
      return undefined
  }
}

/** Whoever reads a jar, pours or puts something in has seen it, and moved what stands in it. */
const isHandling = ({ kind }: Move): boolean => kind !== 'keep' && kind !== 'taste'
