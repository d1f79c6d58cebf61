/**
 * What the extracts of a batch go through: marrying, settling and racking where the fruit hazes,
 * filtering, bottling. What stands at a stage can be done now; what is still to come waits.
 */
import type { JarState } from '../ledger/cellar-state.ts'
import { freeVolumeMl } from '../ledger/jar-liquid.ts'
import { usualDays } from '../ledger/usual-days.ts'
import type { Proposal } from '../../../shared/schemas/tasks.ts'
import type { BatchToSchedule } from './batch-to-schedule.ts'
import type { DoneMoves } from './done-moves.ts'
import { givesExtract } from './fruit-tasks.ts'
import { taskId, usualLoss, windowFrom, type ScheduledTask } from './scheduled-task.ts'

type Phase = 'marry' | 'rack' | 'filter' | 'bottle'

/** Less than this is a wet jar. */
const leastMl = 1

/** `fruit` are the tasks of the jars that still hold fruit: they bring extracts of their own. */
export function liquidTasks(
  batch: BatchToSchedule,
  done: DoneMoves,
  fruit: readonly ScheduledTask[],
): ScheduledTask[] {
  const liquids = [...batch.jars].filter(
    ([, jar]) => jar.fruit === null && freeVolumeMl(jar) >= leastMl,
  )
  const at = (...stages: JarState['stage'][]) =>
    liquids.filter(([, jar]) => stages.includes(jar.stage))
  const married = at('married')
  const filtered = at('filtered')
  const raw = liquids.filter((entry) => !married.includes(entry) && !filtered.includes(entry))
  const toCome = fruit.filter(({ kind }) => givesExtract(kind))
  const needsMarrying = raw.length + toCome.length > 1
  // A single extract is poured together with nothing: it goes straight to the filter.
  const toFilter = needsMarrying || toCome.length > 0 ? married : [...married, ...raw]

  const tasks: ScheduledTask[] = []
  let baseMs = Math.max(sinceMs(raw), ...toCome.map(({ dueMs }) => dueMs))
  if (toCome.length > 0) baseMs = Math.max(baseMs, batch.nowMs)
  const add = (kind: Phase, jars: typeof liquids, isNow: boolean) => {
    const isReady = isNow && jars.length > 0
    const fromMs = isReady ? sinceMs(jars) : baseMs
    if (!Number.isFinite(fromMs)) return
    const days = kind === 'filter' && hazes(batch) ? usualDays.filterRacked : usualDays[kind]
    const ordinal = done.count(kind) + 1
    const window = windowFrom(fromMs, days)
    tasks.push({
      id: taskId(batch.batchId, kind, undefined, ordinal),
      kind,
      batchId: batch.batchId,
      jarIds: jars.map(([id]) => id),
      ordinal,
      ...window,
      from: 'trade',
      loss: usualLoss[kind],
      isWaiting: !isReady,
      log: proposalOf(kind, jars),
    })
    baseMs = Math.max(baseMs, window.dueMs, batch.nowMs)
  }

  const isAhead = raw.length + toCome.length > 0
  if (needsMarrying) add('marry', raw, toCome.length === 0)
  const hasToFilter = isAhead || toFilter.length > 0
  const isRacked = hazes(batch) && done.isRacked && filtered.length > 0
  if (hazes(batch) && hasToFilter) add('rack', toFilter, true)
  if (hasToFilter || isRacked)
    add('filter', isRacked ? filtered : toFilter, isRacked || !hazes(batch))
  if (hasToFilter || filtered.length > 0) add('bottle', filtered, !isRacked)
  return tasks
}

const sinceMs = (jars: readonly (readonly [string, JarState])[]): number =>
  Math.max(Number.NEGATIVE_INFINITY, ...jars.map(([, jar]) => jar.stageSinceMs))

/** Pectin that is likely to cloud it: it settles before any paper sees it; craft reference, section 6. */
const hazes = ({ progress, fruitOf }: BatchToSchedule): boolean =>
  (progress?.fruitIds ?? []).some((id) => fruitOf(id).pectinHaze === 'high')

function proposalOf(kind: Phase, jars: readonly (readonly [string, JarState])[]): Proposal {
  const jarIds = jars.map(([id]) => id)
  switch (kind) {
    case 'marry':
      return { kind: 'marry', jarIds }
    case 'rack':
      return { kind: 'filter', jarIds: jarIds.slice(0, 1), medium: 'racking' }
    case 'filter':
      return { kind: 'filter', jarIds: jarIds.slice(0, 1), medium: 'paper' }
    case 'bottle':
      return { kind: 'bottle', jarIds: jarIds.slice(0, 1) }
  }
}
