/**
 * Plans in the making, each in a process of its own, so that the service answers meanwhile and a
 * cancelled one ends at once. Jobs live in memory: a plan is in the book only once it is kept.
 */
import type { SeasonJob, SeasonPlan } from '../../shared/schemas/season.ts'
import type { Book } from '../cellar/open-book.ts'
import type { Progress } from '../engine/index.ts'
import { startPlanning } from './planning-process.ts'
import type { ToPlan } from './season-messages.ts'
import { notFound } from './service-error.ts'
import type { Session } from './session.ts'

interface Job {
  readonly jobId: string
  /** The book it was asked of: its plan belongs in no other. */
  readonly book: Book
  readonly begunAtMs: number
  stop: (() => void) | undefined
  state: SeasonJob['state']
  endedAtMs: number | undefined
  last: Progress
  plan: SeasonPlan | undefined
}

/** Finished ones are kept for a while: a screen may come back to them. */
const mostJobs = 6

const jobsBySession = new WeakMap<Session, Map<string, Job>>()

function jobsOf(session: Session): Map<string, Job> {
  const known = jobsBySession.get(session) ?? new Map<string, Job>()
  jobsBySession.set(session, known)
  return known
}

/** The same job again is the one that there is; a new one ends what is still running. */
export function startJob(session: Session, jobId: string, asked: () => ToPlan): SeasonJob {
  const jobs = jobsOf(session)
  const known = jobs.get(jobId)
  if (known) return told(known)
  const toPlan = asked()
  for (const job of jobs.values()) end(job, 'cancelled')
  for (const oldest of [...jobs.keys()].slice(0, Math.max(0, jobs.size - mostJobs + 1)))
    jobs.delete(oldest)
  const job: Job = {
    jobId,
    book: session.book,
    begunAtMs: performance.now(),
    stop: undefined,
    state: 'running',
    endedAtMs: undefined,
    last: { step: 'recipes', progress: 0 },
    plan: undefined,
  }
  job.stop = startPlanning(toPlan, {
    onMessage: (message) => {
      if (job.state !== 'running') return
      if (message.kind === 'done') {
        job.plan = message.plan
        job.last = { step: job.last.step, progress: 1 }
        end(job, 'done')
      } else {
        job.last = message.progress
        job.plan = message.progress.plan ?? job.plan
      }
    },
    onEnded: () => end(job, 'failed'),
  })
  jobs.set(jobId, job)
  return told(job)
}

export const jobState = (session: Session, jobId: string): SeasonJob => told(oneJob(session, jobId))

export function cancelJob(session: Session, jobId: string): SeasonJob {
  const job = oneJob(session, jobId)
  end(job, 'cancelled')
  return told(job)
}

/** The plan of a job of this book; its explanations may still be missing. */
export function planOfJob(session: Session, jobId: string): SeasonPlan {
  const { plan, book } = oneJob(session, jobId)
  if (!plan || book !== session.book) throw notFound('plan of job', jobId)
  return plan
}

export function stopSeasonJobs(session: Session): void {
  for (const job of jobsOf(session).values()) end(job, 'cancelled')
}

function oneJob(session: Session, jobId: string): Job {
  const job = jobsOf(session).get(jobId)
  if (!job) throw notFound('job', jobId)
  return job
}

function end(job: Job, state: SeasonJob['state']): void {
  if (job.state !== 'running') return
  job.state = state
  job.endedAtMs = performance.now()
  job.stop?.()
}

const told = ({ jobId, state, last, begunAtMs, endedAtMs, plan }: Job): SeasonJob => ({
  jobId,
  state,
  step: last.step,
  progress: last.progress,
  ...(last.gapShare !== undefined && { gapShare: last.gapShare }),
  seconds: ((endedAtMs ?? performance.now()) - begunAtMs) / 1000,
  ...(plan && { plan }),
})
