/**
 * The process in which a season is planned: facts come in, progress and the plan go out. A process,
 * not a thread: V8 of Node 24 may end the whole process when a thread with WebAssembly in it goes
 * (nodejs/node issue 64500), and the book's own must outlive any solver.
 */
import { planSeason, type SeasonFacts } from '../engine/index.ts'
import { integerSolver } from './integer-solver.ts'
import type { FromWorker, ToPlan } from './season-messages.ts'

const askerPid = process.ppid

const tell = (message: FromWorker) => process.send?.(message)

process.once('message', (asked) => void plan(asked as ToPlan))
// Whoever asked is gone.
process.once('disconnect', () => process.exit())

/** A solve holds up every event, the disconnect too: so it asks by itself whether anybody waits. */
function endIfAlone(): void {
  if (process.ppid !== askerPid || !isThere(askerPid)) process.exit()
}

/** Windows keeps telling the parent's number when the parent is gone. */
function isThere(pid: number): boolean {
  try {
    return process.kill(pid, 0)
  } catch {
    return false
  }
}

async function plan({ facts, isExplained, timeLimitSeconds }: ToPlan): Promise<void> {
  const solve = await integerSolver()
  const made = planSeason(facts satisfies SeasonFacts, {
    solve: (question) =>
      solve({
        ...question,
        onGap: (gap) => {
          endIfAlone()
          question.onGap(gap)
        },
      }),
    isExplained,
    timeLimitSeconds,
    // This process was started to plan: its own clock is the question's.
    clock: () => {
      endIfAlone()
      return performance.now() / 1000
    },
    onProgress: (progress) => tell({ kind: 'progress', progress }),
  })
  tell({ kind: 'done', plan: made })
}
