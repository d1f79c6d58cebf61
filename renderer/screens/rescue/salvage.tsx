/** Reads what is left of a damaged book, tells what that is, and goes on with it when asked. */
import { useWrite } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { JobProgress } from '../../parts/backups/job-progress.tsx'
import { useSalvageJob } from '../../parts/backups/use-job.ts'
import { Button } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { ReportOfSalvage } from './salvage-report.tsx'
import styles from './rescue.module.css'

export function Salvage() {
  const t = useWords()
  const work = useSalvageJob()
  const accept = useWrite('rescue.accept')
  const { job, isRunning, begin } = work
  const report = job?.salvage
  return (
    <>
      <div>
        <Button isBusy={isRunning} onPress={begin}>
          {t('safekeeping.rescue.salvage.go')}
        </Button>
      </div>
      <JobProgress work={work} label={t('safekeeping.rescue.salvage.label')} />
      {job && report && (
        <section className={styles.report} aria-label={t('safekeeping.rescue.salvage.report')}>
          <h3>{t('safekeeping.rescue.salvage.report')}</h3>
          <ReportOfSalvage report={report} />
          {report.movesRead > 0 && (
            <>
              <p className={styles.quiet}>{t('safekeeping.rescue.salvage.acceptText')}</p>
              <div>
                <Button
                  kind="primary"
                  isBusy={accept.isPending}
                  onPress={() => accept.mutate({ jobId: job.jobId })}
                >
                  {t('safekeeping.rescue.salvage.accept')}
                </Button>
              </div>
            </>
          )}
        </section>
      )}
      <FailureNote error={accept.error} />
    </>
  )
}
