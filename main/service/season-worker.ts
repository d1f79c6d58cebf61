/** The thread in which a season is planned: facts come in, progress and the plan go out. */
import { parentPort, workerData } from 'node:worker_threads'
import { planSeason, type SeasonFacts } from '../engine/index.ts'
import { integerSolver } from './integer-solver.ts'
import type { FromWorker, ToPlan } from './season-messages.ts'

const { facts, isExplained, timeLimitSeconds } = workerData as ToPlan
// oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread has no origin
const tell = (message: FromWorker) => parentPort?.postMessage(message)

const solve = await integerSolver()
const plan = planSeason(facts satisfies SeasonFacts, {
  solve,
  isExplained,
  timeLimitSeconds,
  onProgress: (progress) => tell({ kind: 'progress', progress }),
})
tell({ kind: 'done', plan })
