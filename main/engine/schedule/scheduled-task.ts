/**
 * A task as the engine knows it: instants are numbers, and nothing is said of today yet.
 *
 * Its id is batch, kind, jar where the fruit of one jar is meant, and which of its kind it is. It is
 * made of what the moves say was done and never of their instants or amounts, so that amending
 * those leaves it as it was, and undoing a move brings back the very task that it had done.
 */
import type { Effort, Loss, Proposal, TaskKind, TaskSource } from '../../../shared/schemas/tasks.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { Days } from '../ledger/usual-days.ts'

export interface Window {
  readonly earlyMs: number
  readonly dueMs: number
  /** From then on waiting costs something; undefined where it never does. */
  readonly lateMs: number | undefined
}

export interface ScheduledTask extends Window {
  readonly id: string
  readonly kind: TaskKind
  readonly batchId: string
  readonly jarIds: readonly string[]
  readonly bottleLotId?: string
  readonly openedId?: string
  readonly ordinal: number
  readonly from: TaskSource
  readonly loss: Loss
  readonly isWaiting: boolean
  readonly log?: Proposal
}

export const taskId = (
  batchId: string,
  kind: TaskKind,
  jarId: string | undefined,
  ordinal: number,
): string => [batchId, kind, ...(jarId === undefined ? [] : [jarId]), ordinal].join('.')

export const windowFrom = (baseMs: number, [early, due, late]: Days): Window => ({
  earlyMs: baseMs + early * msPerDay,
  dueMs: baseMs + due * msPerDay,
  lateMs: baseMs + late * msPerDay,
})

/**
 * What is lost by waiting. Fermenting, mould and stones: craft reference, section 5 (common practice
 * and, for stones, found); that over-long steeping brings bitterness and costs colour: section 2.3,
 * found for walnut and myrtle, common practice for the rest. The others: common practice, no source.
 */
export const usualLoss: Readonly<Record<TaskKind, Loss>> = {
  addSpirit: 'ferments',
  strengthen: 'ferments',
  coverFruit: 'mould',
  lookIn: 'mould',
  turn: 'idle',
  drawOff: 'oversteeps',
  pourOffSugarDraw: 'oversteeps',
  // Drained fruit is soaked in spirit: it keeps, and takes up its jar.
  coverWithSugar: 'idle',
  press: 'idle',
  clearJar: 'idle',
  drinkUp: 'fades',
  finishOpened: 'fades',
  marry: 'idle',
  rack: 'idle',
  filter: 'idle',
  bottle: 'idle',
  charge: 'nothing',
  taste: 'nothing',
}

/** What has to be out for it. */
export const effortOf: Readonly<Record<TaskKind, Effort>> = {
  charge: 'fruit',
  addSpirit: 'spirit',
  strengthen: 'spirit',
  coverFruit: 'spirit',
  lookIn: 'turning',
  turn: 'turning',
  drawOff: 'funnel',
  pourOffSugarDraw: 'funnel',
  press: 'funnel',
  clearJar: 'funnel',
  marry: 'funnel',
  coverWithSugar: 'sugar',
  rack: 'filters',
  filter: 'filters',
  bottle: 'bottles',
  taste: 'glass',
  drinkUp: 'glass',
  finishOpened: 'glass',
}
