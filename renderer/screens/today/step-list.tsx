/** Next steps, one a line: the vessels, the batch, what to do, and by when. */
import { useWords } from '../../app/words/use-words.ts'
import { Link } from 'wouter'
import { useSettings } from '../../app/settings.tsx'
import { classes } from '../../parts/classes.ts'
import { BatchName } from '../../parts/names/batch-name.tsx'
import { useJars } from '../../parts/names/use-names.ts'
import { useTimes } from '../../parts/time/use-times.ts'
import { BatchVessels } from '../../parts/vessel/batch-vessels.tsx'
import { reachableAt, type DueBatch } from './due.ts'
import styles from './step-list.module.css'
import { listFormat } from '../../parts/formatters/formatters.ts'

export const StepList = ({ steps }: { steps: readonly DueBatch[] }) => (
  <ol className={styles.list}>
    {steps.map((step) => (
      <Step key={step.summary.batch.id} step={step} />
    ))}
  </ol>
)

function Step({ step: { summary, state } }: { step: DueBatch }) {
  const t = useWords()
  const { locale } = useSettings()
  const jars = useJars()
  const { batch, next } = summary
  const jarNames = next.jarIds.flatMap((id) => jars.get(id)?.jar.name ?? [])
  return (
    <li className={styles.step}>
      <BatchVessels summary={summary} jarIds={next.jarIds} mmPerPixel={5} most={3} />
      <div className={styles.what}>
        <Link href={`/batches/${encodeURIComponent(batch.id)}`} className={styles.link}>
          <BatchName batch={batch} />
        </Link>
        <p>
          <strong className={styles.action}>{t(`codes.action.${next.action}`)}</strong>
          {jarNames.length > 0 && (
            <span className={styles.where}>
              {t('today.inJars', { jars: listFormat(locale).format(jarNames) })}
            </span>
          )}
        </p>
      </div>
      <When step={{ summary, state }} />
    </li>
  )
}

function When({ step: { summary, state } }: { step: DueBatch }) {
  const t = useWords()
  const times = useTimes()
  const { due, late } = summary.next
  if (due === undefined) return <p className={styles.when}>{t('today.anyTime')}</p>
  switch (state) {
    case 'late':
      return (
        <p className={classes(styles.when, styles.late)}>
          {t('today.lateFrom', { day: times.day(late ?? due) })}
          <span className={styles.aside}>{times.fromNow(due)}</span>
        </p>
      )
    case 'due':
      return (
        <p className={styles.when}>
          {t('today.dueOn', { day: times.day(due) })}
          {late !== undefined && (
            <span className={styles.aside}>{t('today.lateAt', { day: times.day(late) })}</span>
          )}
        </p>
      )
    case 'ready':
      return (
        <p className={styles.when}>
          {t('today.dueOn', { day: times.day(due) })}
          <span className={styles.aside}>{times.fromNow(due)}</span>
        </p>
      )
    case 'ripe':
      return (
        <p className={styles.when}>
          {t('today.readySince', { day: times.day(due) })}
          <span className={styles.aside}>{times.fromNow(due)}</span>
        </p>
      )
    case 'coming': {
      const from = reachableAt(summary.next) ?? due
      const words = summary.next.action === 'taste' ? 'today.readyOn' : 'today.dueFrom'
      return (
        <p className={styles.when}>
          {t(words, { day: times.day(from) })}
          <span className={styles.aside}>{times.fromNow(from)}</span>
        </p>
      )
    }
  }
}
