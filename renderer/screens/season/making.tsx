/** How far a plan in the making is, how good the best so far, and a way to stop it. */
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { WorkProgress } from '../../parts/progress/work-progress.tsx'
import { formatShare } from '../../parts/quantity/format-share.ts'
import { formatSeconds } from './format-seconds.ts'
import type { SeasonWork } from './use-season-job.ts'
import styles from './making.module.css'

export interface MakingProps {
  work: SeasonWork
  /** An earlier plan stands below. */
  hasOlder: boolean
}

export function Making({ work: { job, isMaking, stop }, hasOlder }: MakingProps) {
  const t = useWords()
  const { locale } = useSettings()
  const isEnded = job?.state === 'cancelled' || job?.state === 'failed'
  const told = [
    ...(job ? [t('season.making.soFar', { seconds: formatSeconds(job.seconds, locale) })] : []),
    ...(job?.gapShare !== undefined && job.plan === undefined
      ? [t('season.making.gap', { gap: formatShare(job.gapShare, locale) })]
      : []),
  ]
  return (
    <>
      <output>{!isMaking && isEnded && t(`season.jobState.${job.state}`)}</output>
      {isMaking && (
        <WorkProgress
          label={t('season.making.label')}
          step={t(job ? `season.step.${job.step}` : 'season.jobState.running')}
          share={job?.progress ?? 0}
          stopWord={t('season.making.cancel')}
          onStop={stop}
          isProminent
        >
          <p className={styles.quiet}>{told.join(' · ')}</p>
          {(hasOlder || job?.plan) && (
            <p className={styles.quiet}>
              {t(job?.plan ? 'season.making.explaining' : 'season.making.stays')}
            </p>
          )}
        </WorkProgress>
      )}
    </>
  )
}
