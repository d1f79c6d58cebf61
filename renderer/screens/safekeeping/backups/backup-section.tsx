/** Whether the book is backed up, and a backup at the press of a button. */
import type { BackupState, SafekeepingJob } from '../../../../shared/schemas/safekeeping.ts'
import { useSettings } from '../../../app/settings.tsx'
import { useWords } from '../../../app/words/use-words.ts'
import { formatSize } from '../../../parts/backups/format-size.ts'
import { JobProgress } from '../../../parts/backups/job-progress.tsx'
import { Trouble } from '../../../parts/backups/trouble.tsx'
import { useBackupJob } from '../../../parts/backups/use-job.ts'
import { Button } from '../../../parts/button/button.tsx'
import { Section } from '../../../parts/page/page.tsx'
import { useTimes } from '../../../parts/time/use-times.ts'
import { BackupSettings } from './backup-settings.tsx'
import styles from './backups.module.css'

export function BackupSection({ state }: { state: BackupState }) {
  const t = useWords()
  const work = useBackupJob()
  if (state.standing === 'demo')
    return (
      <Section title={t('safekeeping.backups.title')}>
        <p className={styles.quiet}>{t('safekeeping.backups.standing.demo')}</p>
      </Section>
    )
  return (
    <Section
      title={t('safekeeping.backups.title')}
      actions={
        <Button kind="primary" isBusy={work.isRunning} onPress={work.begin}>
          {t('safekeeping.backups.go')}
        </Button>
      }
    >
      <Standing state={state} />
      <JobProgress work={work} label={t('safekeeping.backups.title')} />
      <div aria-live="polite">{work.job?.state === 'done' && <Made job={work.job} />}</div>
      <BackupSettings state={state} />
    </Section>
  )
}

function Standing({ state }: { state: BackupState }) {
  const t = useWords()
  const times = useTimes()
  const { locale } = useSettings()
  const { standing, lastMade, lastFailure, unsaved } = state
  const words = t(`safekeeping.backups.standing.${standing}`)
  return (
    <div className={styles.state}>
      {standing === 'missed' && <Trouble>{words}</Trouble>}
      {standing === 'failed' && lastFailure ? (
        <Trouble>
          {words} {t(`safekeeping.backups.failure.${lastFailure.failure}`)}{' '}
          {t('safekeeping.backups.failedAt', { when: times.moment(lastFailure.at) })}
        </Trouble>
      ) : (
        standing !== 'missed' && <p className={styles.standing}>{words}</p>
      )}
      {lastMade && (
        <p>
          {t('safekeeping.backups.last', {
            when: times.moment(lastMade.madeAt),
            size: formatSize(lastMade.bytes, locale),
          })}
        </p>
      )}
      {unsaved.rows > 0 && (
        <p className={styles.quiet}>
          {t(lastMade ? 'safekeeping.backups.unsaved' : 'safekeeping.backups.unsavedAtAll', {
            count: unsaved.rows,
          })}
        </p>
      )}
    </div>
  )
}

function Made({ job: { backup } }: { job: SafekeepingJob }) {
  const t = useWords()
  const { locale } = useSettings()
  if (!backup?.manifest) return null
  return (
    <>
      <p className={styles.good}>
        {t('safekeeping.backups.made', {
          count: backup.manifest.counts.moves,
          size: formatSize(backup.bytes, locale),
        })}
      </p>
      <p className={styles.file}>{t('safekeeping.backups.madeIn', { file: backup.file })}</p>
    </>
  )
}
