/** How far the work on a backup is, a way to stop it, and why it failed. */
import { useWords } from '../../app/words/use-words.ts'
import { FailureNote } from '../failure/failure-note.tsx'
import { WorkProgress } from '../progress/work-progress.tsx'
import { Trouble } from './trouble.tsx'
import type { Work } from './use-job.ts'

export function JobProgress({ work, label }: { work: Work; label: string }) {
  const t = useWords()
  const { job, isRunning, error, stop } = work
  if (isRunning)
    return (
      <WorkProgress
        label={label}
        step={job ? t(`safekeeping.backups.step.${job.step}`) : t('safekeeping.backups.working')}
        share={job?.progress ?? 0}
        stopWord={t('safekeeping.backups.stop')}
        onStop={stop}
      />
    )
  if (error) return <FailureNote error={error} />
  if (job?.state === 'cancelled') return <p>{t('safekeeping.backups.cancelled')}</p>
  if (job?.state !== 'failed') return null
  return (
    <Trouble>
      {job.problem && job.kind === 'look'
        ? t(`safekeeping.backups.problem.${job.problem}`)
        : t(`safekeeping.backups.failure.${job.failure ?? 'internal'}`)}
    </Trouble>
  )
}
