/** Bottles: tasting what has rested, drinking up what fades, finishing what stands open. */
import { msPerDay } from '../../../shared/spans-of-time.ts'
import { restDays } from '../ledger/usual-days.ts'
import type { BatchToSchedule, LotToTaste } from './batch-to-schedule.ts'
import { taskId, usualLoss, type ScheduledTask } from './scheduled-task.ts'

/** What became of a bottle longer ago than this is no task any more. */
export const staleMs = 90 * msPerDay

/**
 * A bottle that rests longer than it must loses nothing. Told by the place of the lot in its batch,
 * so that one still to be filled keeps its id. `ahead` is the bottling to come, if there is one.
 */
export function tastings(
  batch: BatchToSchedule,
  ahead: ScheduledTask | undefined,
): ScheduledTask[] {
  const fruitIds = batch.progress?.fruitIds ?? []
  const [, typical] = restDays(fruitIds.map(batch.fruitOf))
  const tasting = (
    index: number,
    bottledAtMs: number,
    { id: lotId, readyAtMs }: Partial<LotToTaste> = {},
  ): ScheduledTask => {
    const dueMs = readyAtMs ?? bottledAtMs + typical * msPerDay
    return {
      id: taskId(batch.batchId, 'taste', undefined, index + 1),
      kind: 'taste',
      batchId: batch.batchId,
      jarIds: [],
      ...(lotId !== undefined && { bottleLotId: lotId }),
      ordinal: index + 1,
      earlyMs: dueMs,
      dueMs,
      lateMs: undefined,
      from: readyAtMs === undefined ? 'fruit' : 'shelf',
      loss: usualLoss.taste,
      isWaiting: lotId === undefined,
      ...(lotId !== undefined && { log: { kind: 'taste', jarIds: [], bottleLotId: lotId } }),
    }
  }
  const resting = batch.lots
    .map((lot, index) => tasting(index, lot.bottledAtMs, lot))
    .filter(({ dueMs, bottleLotId }, index) => {
      const isThere = (batch.lots[index]?.count ?? 0) > 0
      return isThere && dueMs > batch.nowMs - staleMs && !isTasted(batch, bottleLotId, dueMs)
    })
  return ahead ? [...resting, tasting(batch.lots.length, ahead.dueMs)] : resting
}

/** Tasted, or opened and drunk, since it had rested; an early look does not count. */
function isTasted({ steps }: BatchToSchedule, lotId: string | undefined, dueMs: number): boolean {
  return steps.some(({ recorded: { move }, atMs }) => {
    if (atMs < dueMs) return false
    return (
      (move.kind === 'taste' || move.kind === 'drawBottle' || move.kind === 'openBottle') &&
      move.bottleLotId === lotId
    )
  })
}

/** A lot of the shelf with its window, or an opened bottle with the day it is best drunk by. */
export interface FadingBottles {
  readonly batchId: string
  readonly bottleLotId: string
  readonly openedId?: string
  /** When it begins to fade, or an opened one is past its best. */
  readonly earlyMs: number
  readonly likelyMs: number
}

/** Room to plan a gift or an evening before a lot begins to fade; its band is years wide. */
const warningMs = 60 * msPerDay

export function fadingTasks(bottles: readonly FadingBottles[], nowMs: number): ScheduledTask[] {
  return bottles
    .filter(({ likelyMs }) => likelyMs > nowMs - staleMs)
    .map(({ batchId, bottleLotId, openedId, earlyMs, likelyMs }): ScheduledTask => {
      const isOpened = openedId !== undefined
      const kind = isOpened ? 'finishOpened' : 'drinkUp'
      return {
        id: taskId(batchId, kind, openedId ?? bottleLotId, 1),
        kind,
        batchId,
        jarIds: [],
        bottleLotId,
        ...(isOpened && { openedId }),
        ordinal: 1,
        earlyMs: isOpened ? earlyMs : likelyMs - warningMs,
        dueMs: likelyMs,
        lateMs: undefined,
        from: 'shelf',
        loss: usualLoss[kind],
        isWaiting: false,
        log: isOpened
          ? { kind: 'pourGlass', jarIds: [], openedId }
          : { kind: 'drawBottle', jarIds: [], bottleLotId, count: 1 },
      }
    })
}
