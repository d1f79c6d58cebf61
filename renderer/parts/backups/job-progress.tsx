/** How far the work on a backup is, a way to stop it, and why it failed. */
import type { SafekeepingJob } from '../../../shared/schemas/safekeeping.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../button/button.tsx'
import { FailureNote } from '../failure/failure-note.tsx'
import styles from './job-progress.module.css'
import { Trouble } from './trouble.tsx'
import type { Work } from './use-job.ts'

export function JobProgress({ work, label }: { work: Work; label: string }) {
  const t = useWords()
  const { job, isRunning, error, stop } = work
  if (isRunning) return <Running job={job} label={label} stop={stop} />
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

interface RunningProps {
  job: SafekeepingJob | undefined
  label: string
  stop: () => void
}

function Running({ job, label, stop }: RunningProps) {
  const t = useWords()
  return (
    <div className={styles.work}>
      <div className={styles.words}>
        <p aria-live="polite">
          {job ? t(`safekeeping.backups.step.${job.step}`) : t('safekeeping.backups.working')}
        </p>
        <progress className={styles.bar} max={1} value={job?.progress ?? 0} aria-label={label} />
      </div>
      <Button onPress={stop}>{t('safekeeping.backups.stop')}</Button>
    </div>
  )
}
