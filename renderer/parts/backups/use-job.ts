/** Work on a backup or export that this window asked for: begun, asked after while it runs, stopped. */
import { useEffect, useState } from 'react'
import { useQueryClient } from '@tanstack/react-query'
import type { SafekeepingJob } from '../../../shared/schemas/safekeeping.ts'
import { newId } from '../../app/new-id.ts'
import { useAsk, useRead } from '../../app/queries.ts'

const pollMs = 300

export interface Work {
  readonly job: SafekeepingJob | undefined
  readonly isRunning: boolean
  readonly error: Error | null
  stop: () => void
  /** Forgets it, so that what it came to is no longer shown. */
  leave: () => void
}

interface Jobs extends Work {
  begin: (ask: Ask) => void
}

/** Begins the job that has this id. */
type Ask = (jobId: string) => Promise<SafekeepingJob>

function useJob(): Jobs {
  const client = useQueryClient()
  const [jobId, setJobId] = useState<string>()
  const [failed, setFailed] = useState<Error | null>(null)
  const state = useRead(
    'backups.job',
    { jobId: jobId ?? '' },
    {
      isEnabled: jobId !== undefined,
      everyMs: (last) => (last === undefined || last.state === 'running' ? pollMs : false),
    },
  )
  const cancel = useAsk('backups.cancel')
  const remember = (job: SafekeepingJob) =>
    client.setQueryData(['backups.job', { jobId: job.jobId }], job)
  const job = jobId === undefined ? undefined : state.data
  return {
    job,
    isRunning: jobId !== undefined && !state.error && (!job || job.state === 'running'),
    error: failed ?? cancel.error ?? (jobId === undefined ? null : state.error),
    begin: (ask) => {
      const asked = newId()
      setFailed(null)
      ask(asked).then(
        (begun) => {
          remember(begun)
          setJobId(asked)
        },
        (error: unknown) => setFailed(error instanceof Error ? error : new Error(String(error))),
      )
    },
    stop: () => {
      if (jobId !== undefined) cancel.mutate({ jobId }, { onSuccess: remember })
    },
    leave: () => {
      setFailed(null)
      setJobId(undefined)
    },
  }
}

export function useBackupJob(): Work & { begin: () => void } {
  const { begin, ...work } = useJob()
  const start = useAsk('backups.start')
  return { ...work, begin: () => begin((jobId) => start.mutateAsync({ jobId })) }
}

export function useLookJob(): Work & { begin: (file: string) => void } {
  const { begin, ...work } = useJob()
  const look = useAsk('backups.look')
  return { ...work, begin: (file) => begin((jobId) => look.mutateAsync({ jobId, file })) }
}

export function useSalvageJob(): Work & { begin: () => void } {
  const { begin, ...work } = useJob()
  const salvage = useAsk('rescue.salvage')
  return { ...work, begin: () => begin((jobId) => salvage.mutateAsync({ jobId })) }
}

export function useExportJob(): Work & { begin: (folder: string | undefined) => void } {
  const { begin, ...work } = useJob()
  const client = useQueryClient()
  const start = useAsk('exports.start')
  const isMade = work.job?.state === 'done'
  // A list of exports that stands open has one more.
  useEffect(() => {
    if (isMade) void client.invalidateQueries({ queryKey: ['exports.list'] })
  }, [client, isMade])
  return {
    ...work,
    begin: (folder) =>
      begin((jobId) => start.mutateAsync({ jobId, ...(folder !== undefined && { folder }) })),
  }
}

export function useLookIntoExportJob(): Work & { begin: (file: string) => void } {
  const { begin, ...work } = useJob()
  const look = useAsk('exports.look')
  return { ...work, begin: (file) => begin((jobId) => look.mutateAsync({ jobId, file })) }
}
