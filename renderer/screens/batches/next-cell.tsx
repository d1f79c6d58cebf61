/** A batch's next step and its date. */
import { useTranslation } from 'react-i18next'
import type { NextStep } from '../../../shared/schemas/cellar.ts'
import { classes } from '../../parts/classes.ts'
import { useTimes } from '../../parts/time/use-times.ts'
import styles from './next-cell.module.css'

export function NextCell({ next }: { next: NextStep }) {
  const { t } = useTranslation()
  const times = useTimes()
  if (next.action === 'none') return null
  // Bottles that rest longer than they must are not late.
  const isLate =
    next.action !== 'taste' && next.late !== undefined && new Date(next.late) < times.now
  return (
    <>
      {t(`codes.action.${next.action}`)}
      {next.due !== undefined && (
        <span className={classes(styles.day, isLate && styles.late)}>{times.day(next.due)}</span>
      )}
    </>
  )
}
