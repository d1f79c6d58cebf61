/**
 * The plan that this window had made last: begun, asked after while it runs, stopped, kept. Its
 * id is remembered with the answers of the book, so that another screen may be opened meanwhile.
 */
import { skipToken, useQuery, useQueryClient } from '@tanstack/react-query'
import type { SeasonJob, SeasonWishes } from '../../../shared/schemas/season.ts'
import { newId } from '../../app/new-id.ts'
import { useAsk, useRead, useWrite } from '../../app/queries.ts'

const jobIdKey = ['season: the job of this window']
const pollMs = 400

export interface SeasonWork {
  readonly job: SeasonJob | undefined
  readonly isMaking: boolean
  readonly error: Error | null
  make: (wishes: SeasonWishes, timeLimitSeconds: number) => void
  stop: () => void
  keep: () => void
  readonly isKeeping: boolean
}

export function useSeasonJob(): SeasonWork {
  const client = useQueryClient()
  const { data: jobId } = useQuery<string>({
    queryKey: jobIdKey,
    queryFn: skipToken,
    gcTime: Infinity,
    staleTime: Infinity,
  })
  const state = useRead(
    'season.planState',
    { jobId: jobId ?? '' },
    {
      isEnabled: jobId !== undefined,
      keptMs: Infinity,
      everyMs: (last) => (last === undefined || last.state === 'running' ? pollMs : false),
    },
  )
  const start = useAsk('season.startPlan')
  const cancel = useAsk('season.cancelPlan')
  const keep = useWrite('season.keepPlan')

  const remember = (job: SeasonJob) =>
    client.setQueryData(['season.planState', { jobId: job.jobId }], job)

  // What is known of a job outlives the service's memory of it.
  const job = state.data
  const isLost = state.error !== null && job?.state === 'running'
  const isMaking = start.isPending || (job?.state === 'running' && !isLost)
  return {
    job,
    isMaking,
    error: start.error ?? cancel.error ?? keep.error ?? (isLost ? state.error : null),
    make: (wishes, timeLimitSeconds) => {
      keep.reset()
      cancel.reset()
      start.mutate(
        { jobId: newId(), wishes, isExplained: true, timeLimitSeconds },
        {
          onSuccess: (begun) => {
            remember(begun)
            client.setQueryData(jobIdKey, begun.jobId)
          },
        },
      )
    },
    stop: () => {
      if (jobId !== undefined) cancel.mutate({ jobId }, { onSuccess: remember })
    },
    // A job is kept once: its id is the plan's.
    keep: () => {
      if (jobId !== undefined) keep.mutate({ id: jobId, jobId })
    },
    isKeeping: keep.isPending,
  }
}
