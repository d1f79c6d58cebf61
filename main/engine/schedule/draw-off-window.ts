/**
 * When is a jar drawn off?
 *
 * From the moment its strength is within half a per cent of where it rests, as the steeping forecast
 * has it: drawing off then loses no spirit. Due at the fruit's usual time, because taste goes on
 * when strength has come to rest; later where the forecast sees the extract come out later. Own
 * readings are believed over the usual time, but never under the fruit's shortest. Late at the
 * fruit's longest; with whole stones in, after eight weeks (common practice, no source).
 */
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { TaskSource } from '../../../shared/schemas/tasks.ts'
import { hasStones, stonesLimitDays } from '../cautions/jar-cautions.ts'
import type { JarState } from '../ledger/cellar-state.ts'
import { steepingDays } from '../ledger/usual-days.ts'
import type { BatchToSchedule } from './batch-to-schedule.ts'
import type { Window } from './scheduled-task.ts'

export interface DrawOffWindow extends Window {
  readonly from: TaskSource
  readonly isForStones: boolean
}

/** Time to find a free hour, however soon the fruit would suffer. */
const leastSpanMs = 3 * msPerDay

export function drawOffWindow(
  { fruitOf, forecasts }: Pick<BatchToSchedule, 'fruitOf' | 'forecasts'>,
  jarId: string,
  jar: JarState,
  sinceMs: number,
): DrawOffWindow {
  const fruits = (jar.fruit?.fruits ?? []).map(({ fruitId }) => fruitOf(fruitId))
  const [low, typical, high] = steepingDays(fruits).map((days) => sinceMs + days * msPerDay) as [
    number,
    number,
    number,
  ]
  const forecast = forecasts.get(jarId)
  const { settledMs, extractedMs } = forecast ?? {}
  const usualMs = forecast?.hasReadings ? low : typical
  const wantedMs = Math.max(usualMs, extractedMs ?? typical)
  const stonesMs = hasStones(jar, fruitOf) ? sinceMs + stonesLimitDays * msPerDay : Infinity
  const oversteepsMs = Math.max(high, wantedMs + leastSpanMs)
  const lateMs = Math.min(oversteepsMs, stonesMs)
  const dueMs = Math.min(wantedMs, lateMs - leastSpanMs)
  return {
    earlyMs: Math.min(settledMs ?? low, dueMs),
    dueMs,
    lateMs,
    from: settledMs === undefined && extractedMs === undefined ? 'fruit' : 'forecast',
    isForStones: stonesMs < oversteepsMs,
  }
}
