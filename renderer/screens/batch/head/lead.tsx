/** Under the name: the batch's colour, its stage in words, its age. */
import { useWords } from '../../../app/words/use-words.ts'
import type { BatchSummary } from '../../../../shared/schemas/cellar.ts'
import { daysBetween } from '../../../parts/time/format-time.ts'
import { useTimes } from '../../../parts/time/use-times.ts'
import styles from './lead.module.css'

export function Lead({ summary: { batch, stage, startedAt } }: { summary: BatchSummary }) {
  const t = useWords()
  const times = useTimes()
  const isToday = startedAt !== undefined && daysBetween(new Date(startedAt), times.now) === 0
  return (
    <div className={styles.lead}>
      <p>
        <span className={styles.swatch} style={{ background: batch.colour }} aria-hidden />
        {t(`batch.standing.${stage}`)}
        {startedAt !== undefined && (
          <span className={styles.age}>
            {isToday
              ? t('batch.begunToday')
              : t('batch.begun', { day: times.day(startedAt), age: times.since(startedAt) })}
          </span>
        )}
      </p>
      {batch.note !== '' && <p className={styles.note}>{batch.note}</p>}
    </div>
  )
}
