/** How far the work on a backup or export is, a way to stop it, and why it failed. */
import type { SafekeepingJob } from '../../../shared/schemas/safekeeping.ts'
import { useWords, type WordKey } from '../../app/words/use-words.ts'
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
  if (job?.state === 'cancelled') return <p>{t(stoppedWord(job))}</p>
  if (job?.state !== 'failed') return null
  return <Trouble>{t(failureWord(job))}</Trouble>
}

const stoppedWord = ({ kind }: SafekeepingJob): WordKey =>
  kind === 'export' ? 'exports.out.stopped' : 'safekeeping.backups.cancelled'

function failureWord({
  kind,
  failure = 'internal',
  problem,
  exportProblem,
}: SafekeepingJob): WordKey {
  // The file itself, or the stick it was on, is gone.
  if (failure === 'folderGone' && (kind === 'look' || kind === 'lookIntoExport'))
    return 'safekeeping.backups.problem.unreadable'
  if (exportProblem && kind === 'lookIntoExport') return `exports.problem.${exportProblem}`
  if (problem && kind === 'look') return `safekeeping.backups.problem.${problem}`
  if (kind === 'export' && failure === 'notVerified') return 'exports.out.notVerified'
  return `safekeeping.backups.failure.${failure}`
}
