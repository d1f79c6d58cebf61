/**
 * Backups and exports being made and looked into, one of each at a time, in threads of their own. Nothing here
 * needs the book to be open: it is asked for most when the book cannot be.
 */
import { mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import type {
  ExportTask,
  FromThread,
  Outcome,
  SafekeepingOrder,
} from '../cellar/safekeeping-orders.ts'
import type { ExportProblem } from '../../shared/schemas/exports.ts'
import type {
  BackupFailure,
  BackupProblem,
  SafekeepingJob,
} from '../../shared/schemas/safekeeping.ts'
import { notFound, ServiceError } from './service-error.ts'
import { startThread, type Thread } from './thread.ts'

type Kind = SafekeepingJob['kind']
type State = SafekeepingJob['state']

interface Job {
  readonly jobId: string
  readonly kind: Kind
  readonly begunAtMs: number
  readonly workFolder: string
  readonly onEnd: (job: SafekeepingJob) => void
  thread: Thread | undefined
  state: State
  endedAtMs: number | undefined
  step: SafekeepingJob['step']
  share: number
  outcome: Outcome
  failure: BackupFailure | undefined
  problem: BackupProblem | undefined
  exportProblem: ExportProblem | undefined
}

export interface JobToStart {
  readonly jobId: string
  readonly kind: Kind
  readonly order: (workFolder: string) => SafekeepingOrder
  /** Called once, however it ends. */
  readonly onEnd?: (job: SafekeepingJob) => void
}

export interface SafekeepingJobs {
  /** The same job again is the one that there is; a new one ends another of its kind. */
  start: (job: JobToStart) => SafekeepingJob
  /** Waits for it; throws when it fails. */
  run: (job: JobToStart) => Promise<SafekeepingJob>
  state: (jobId: string) => SafekeepingJob
  cancel: (jobId: string) => SafekeepingJob
  running: (kind: Kind) => SafekeepingJob | undefined
  /** Told whenever a backup was made, has failed or was stopped. */
  onBackup: (listener: () => void) => void
  /** Ends whatever runs; resolves when no thread has the book open any more. */
  stop: () => Promise<void>
}

/** Finished ones are kept for a while: a screen may come back to them. */
const mostJobs = 8

/** Shares of the whole by what each step usually takes. */
const stepBegins = { copying: 0, packing: 0.3, checking: 0.75, comparing: 0.9 } as const
const stepTakes = { copying: 0.3, packing: 0.45, checking: 0.15, comparing: 0.1 } as const

export function safekeepingJobs(bookFile: string): SafekeepingJobs {
  const jobs = new Map<string, Job>()
  const ending = new Set<Promise<void>>()
  const listeners = new Set<() => void>()

  function end(job: Job, state: State) {
    if (job.state !== 'running') return
    job.state = state
    job.endedAtMs = performance.now()
    if (state === 'failed') job.failure ??= 'internal'
    const ended = Promise.resolve(job.thread?.end()).then(() => {
      rmSync(job.workFolder, { recursive: true, force: true })
      ending.delete(ended)
    })
    ending.add(ended)
    job.onEnd(told(job))
    if (job.kind === 'backup') for (const listener of listeners) listener()
  }

  function start({ jobId, kind, order, onEnd = () => {} }: JobToStart): SafekeepingJob {
    const known = jobs.get(jobId)
    if (known) return told(known)
    for (const job of jobs.values()) if (job.kind === kind) end(job, 'cancelled')
    for (const oldest of [...jobs.keys()].slice(0, Math.max(0, jobs.size - mostJobs + 1)))
      if (jobs.get(oldest)?.state !== 'running') jobs.delete(oldest)
    if (![...jobs.values()].some(({ state }) => state === 'running')) dropLeftWork(bookFile)
    const workFolder = mkdtempSync(workPrefix(bookFile))
    const job: Job = {
      jobId,
      kind,
      begunAtMs: performance.now(),
      workFolder,
      onEnd,
      thread: undefined,
      state: 'running',
      endedAtMs: undefined,
      step: 'copying',
      share: 0,
      outcome: {},
      failure: undefined,
      problem: undefined,
      exportProblem: undefined,
    }
    jobs.set(jobId, job)
    const ordered = order(workFolder)
    job.thread = startThread<FromThread>(threadFor(ordered), ordered, {
      onMessage: (message) => heard(job, message),
      onBroken: () => end(job, 'failed'),
    })
    return told(job)
  }

  function heard(job: Job, message: FromThread) {
    if (job.state !== 'running') return
    switch (message.kind) {
      case 'progress':
        job.step = message.step
        job.share = message.share
        return
      case 'done':
        job.outcome = message.outcome
        end(job, 'done')
        return
      case 'failed':
        job.failure = message.failure
        job.problem = message.problem
        job.exportProblem = message.exportProblem
        if (message.failure === 'internal') console.error('ratafia:', message.message)
        end(job, 'failed')
    }
  }

  const one = (jobId: string) => {
    const job = jobs.get(jobId)
    if (!job) throw notFound('job', jobId)
    return job
  }

  return {
    start,
    run: (asked) =>
      new Promise((done, failed) => {
        start({
          ...asked,
          onEnd: (job) => {
            asked.onEnd?.(job)
            if (job.state === 'done') done(job)
            else failed(failedJob(job))
          },
        })
      }),
    state: (jobId) => told(one(jobId)),
    cancel: (jobId) => {
      end(one(jobId), 'cancelled')
      return told(one(jobId))
    },
    running: (kind) => {
      const job = [...jobs.values()].find((each) => each.kind === kind && each.state === 'running')
      return job && told(job)
    },
    onBackup: (listener) => void listeners.add(listener),
    stop: async () => {
      for (const job of jobs.values()) end(job, 'cancelled')
      await Promise.all(ending)
    },
  }
}

/** What a job failed with, as a refusal. */
function failedJob({ failure, problem, exportProblem, state }: SafekeepingJob): ServiceError {
  const why = failure ?? (state === 'cancelled' ? 'stopped' : 'internal')
  return new ServiceError('backupFailed', `it failed: ${problem ?? exportProblem ?? why}`, {
    failure: why,
    ...(problem && { problem }),
    ...(exportProblem && { exportProblem }),
  })
}

const exportTasks: ReadonlySet<SafekeepingOrder['task']> = new Set<ExportTask['task']>([
  'export',
  'lookIntoExport',
  'readExport',
])

/** Exports are written with tables that are papers, which the cellar does not know. */
const threadFor = ({ task }: SafekeepingOrder): string =>
  exportTasks.has(task) ? './export-thread' : '../cellar/safekeeping-thread'

/** Beside the book: there is room for a second one, and nobody else may look. */
const workPrefix = (bookFile: string) => `${bookFile}.at-work-`

/** What a killed program left behind. */
function dropLeftWork(bookFile: string): void {
  const folder = dirname(bookFile)
  const prefix = basename(workPrefix(bookFile))
  for (const name of readdirSync(folder).filter((each) => each.startsWith(prefix)))
    rmSync(join(folder, name), { recursive: true, force: true })
}

const told = (job: Job): SafekeepingJob => ({
  jobId: job.jobId,
  kind: job.kind,
  state: job.state,
  step: job.step,
  progress:
    job.state === 'done'
      ? 1
      : Math.min(1, stepBegins[job.step] + stepTakes[job.step] * Math.min(1, job.share)),
  seconds: ((job.endedAtMs ?? performance.now()) - job.begunAtMs) / 1000,
  ...(job.failure && { failure: job.failure }),
  ...(job.problem && { problem: job.problem }),
  ...(job.exportProblem && { exportProblem: job.exportProblem }),
  ...job.outcome,
})
