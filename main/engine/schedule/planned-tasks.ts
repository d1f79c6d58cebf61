/**
 * What a plan still asks for, on its own days: shifted with the last planned move that was met, in
 * the jars really used. The moves at its head that are of one kind can be done, the rest waits.
 * What only goes with another move (water and sugar stirred into the married liquid, how a jar is
 * kept) is no task of its own.
 */
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { Move } from '../../../shared/schemas/moves.ts'
import type { Proposal, TaskKind } from '../../../shared/schemas/tasks.ts'
import { asThingsStand, matchedPlan, movesToCome } from '../drafting/match-plan.ts'
import type { BatchToSchedule } from './batch-to-schedule.ts'
import type { DoneMoves } from './done-moves.ts'
import { taskId, usualLoss, type ScheduledTask, type Window } from './scheduled-task.ts'

/** A planned day may slip by so much before it is late; common practice, no source. */
const graceDays = 7
/** A sugar night may not: it ferments after a day. */
const sugarNightGraceDays = 8 / 24

export function plannedTasks(batch: BatchToSchedule, done: DoneMoves): ScheduledTask[] {
  const { plan } = batch
  if (!plan) return []
  const met = matchedPlan(
    plan,
    batch.steps.map(({ recorded }) => recorded),
  )
  const moves = movesToCome(met).map((move) => asThingsStand(move, met))
  const underSugar = new Map<string, boolean>()
  const counts = new Map<string, number>()
  const tasks: ScheduledTask[] = []
  for (const move of moves) {
    const found = kindOf(move, (jarId) => isUnderSugar(batch, underSugar, jarId))
    if (!found) continue
    const { kind, jarIds, isOfJar } = found
    const [jarId] = jarIds
    if (kind === 'coverWithSugar' && jarId) underSugar.set(jarId, true)
    if (kind === 'pourOffSugarDraw' && jarId) underSugar.set(jarId, false)
    const last = tasks.at(-1)
    // Sieve, cloth and paper of one afternoon are one filtering.
    if (kind === 'filter' && last?.kind === 'filter' && sameDay(last.dueMs, move)) continue
    const own = jarIds.filter((id) => batch.capacityMlOf(id) !== undefined)
    const ofJar = isOfJar ? own[0] : undefined
    const key = `${kind} ${ofJar ?? ''}`
    const ordinal = (counts.get(key) ?? done.count(kind, ofJar)) + 1
    counts.set(key, ordinal)
    const log = proposalOf(move, own)
    tasks.push({
      id: taskId(batch.batchId, kind, ofJar, ordinal),
      kind,
      batchId: batch.batchId,
      jarIds: own,
      ordinal,
      ...windowOf(kind, Date.parse(move.at)),
      from: 'plan',
      loss: usualLoss[kind],
      isWaiting: tasks.some((task) => task.kind !== kind || task.isWaiting),
      ...(log && { log }),
    })
  }
  return afterOverdue(tasks, batch.nowMs)
}

/** What is overdue is done today at the earliest, and the rest as much later. */
function afterOverdue(tasks: readonly ScheduledTask[], nowMs: number): ScheduledTask[] {
  const overdueMs = Math.max(
    0,
    ...tasks.filter(({ isWaiting }) => !isWaiting).map(({ dueMs }) => nowMs - dueMs),
  )
  return tasks.map((task) =>
    task.isWaiting
      ? {
          ...task,
          earlyMs: task.earlyMs + overdueMs,
          dueMs: task.dueMs + overdueMs,
          lateMs: task.lateMs === undefined ? undefined : task.lateMs + overdueMs,
        }
      : task,
  )
}

function isUnderSugar(
  { jars }: BatchToSchedule,
  planned: ReadonlyMap<string, boolean>,
  jarId: string,
): boolean {
  return planned.get(jarId) ?? jars.get(jarId)?.fruit?.isUnderSugar ?? false
}

const sameDay = (dueMs: number, { at }: Move): boolean =>
  Math.abs(Date.parse(at) - dueMs) < msPerDay / 2

interface PlannedKind {
  readonly kind: TaskKind
  readonly jarIds: readonly string[]
  /** The fruit of one jar is meant. */
  readonly isOfJar: boolean
}

function kindOf(move: Move, underSugar: (jarId: string) => boolean): PlannedKind | undefined {
  switch (move.kind) {
    case 'charge':
      return { kind: 'charge', jarIds: [move.jarId], isOfJar: false }
    case 'pourSpirit':
      return { kind: 'addSpirit', jarIds: [move.jarId], isOfJar: true }
    case 'drawOff': {
      const kind = underSugar(move.fromJarId) ? 'pourOffSugarDraw' : 'drawOff'
      return { kind, jarIds: [move.fromJarId], isOfJar: true }
    }
    case 'coverWithSugar':
      return { kind: 'coverWithSugar', jarIds: [move.jarId], isOfJar: true }
    case 'press':
      return { kind: 'press', jarIds: [move.fromJarId], isOfJar: true }
    case 'discard':
      return 'jarId' in move.from
        ? { kind: 'clearJar', jarIds: [move.from.jarId], isOfJar: true }
        : undefined
    case 'marry':
      return { kind: 'marry', jarIds: move.parts.map(({ jarId }) => jarId), isOfJar: false }
    case 'filter':
      return {
        kind: move.medium === 'racking' ? 'rack' : 'filter',
        jarIds: [move.fromJarId],
        isOfJar: false,
      }
    case 'bottle':
      return { kind: 'bottle', jarIds: [move.fromJarId], isOfJar: false }
    default:
      return undefined
  }
}

function windowOf(kind: TaskKind, dueMs: number): Window {
  const grace = kind === 'addSpirit' ? sugarNightGraceDays : graceDays
  const ahead = kind === 'addSpirit' ? sugarNightGraceDays : 1
  return {
    earlyMs: dueMs - ahead * msPerDay,
    dueMs,
    lateMs: dueMs + grace * msPerDay,
  }
}

/** What is poured off, married or filtered is what stands there then, not what was foreseen. */
function proposalOf(move: Move, jarIds: readonly string[]): Proposal | undefined {
  const into = { jarIds: [...jarIds] }
  switch (move.kind) {
    case 'charge': {
      const { massG, refuseG, cut } = move
      return {
        kind: 'charge',
        ...into,
        amount: massG,
        cut,
        ...(refuseG !== undefined && { refuseG }),
      }
    }
    case 'pourSpirit':
      return { kind: 'pourSpirit', ...into, amount: move.volumeMl }
    case 'coverWithSugar':
      return { kind: 'coverWithSugar', ...into, amount: move.massG }
    case 'drawOff':
    case 'press':
    case 'marry':
    case 'discard':
      return { kind: move.kind, ...into }
    case 'filter':
      return { kind: 'filter', ...into, medium: move.medium }
    case 'bottle':
      return { kind: 'bottle', ...into, bottleSizeMl: move.bottleSizeMl, count: move.count }
    default:
      return undefined
  }
}
