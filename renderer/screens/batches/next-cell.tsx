/** A batch's next step and its date. */
import { useWords } from '../../app/words/use-words.ts'
import type { NextStep } from '../../../shared/schemas/cellar.ts'
import { classes } from '../../parts/classes.ts'
import { useTimes } from '../../parts/time/use-times.ts'
import styles from './next-cell.module.css'

export function NextCell({ next }: { next: NextStep }) {
  const t = useWords()
  const times = useTimes()
  if (next.action === 'none') return null
  const isPast = (instant: string | undefined) =>
    instant !== undefined && new Date(instant) <= times.now
  // Bottles that rest longer than they must are ready, and never late.
  const isReady = next.action === 'taste' && isPast(next.due)
  const isLate = next.action !== 'taste' && isPast(next.late)
  return (
    <>
      {t(`codes.action.${next.action}`)}
      {next.due !== undefined && (
        <span className={classes(styles.day, isLate && styles.late)}>
          {isReady
            ? t('today.readySince', { day: times.day(next.due) })
            : isLate
              ? t('today.lateFrom', { day: times.day(next.late ?? next.due) })
              : times.day(next.due)}
        </span>
      )}
    </>
  )
}
