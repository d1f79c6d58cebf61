/** A batch's next step and its date. */
import { useWords } from '../../app/words/use-words.ts'
import type { Task } from '../../../shared/schemas/tasks.ts'
import { classes } from '../../parts/classes.ts'
import { useTimes } from '../../parts/time/use-times.ts'
import styles from './next-cell.module.css'

export function NextCell({ next }: { next: Task | undefined }) {
  const t = useWords()
  const when = useWhen()
  if (!next) return null
  return (
    <>
      {t(`today.kind.${next.kind}`)}
      <span className={classes(styles.day, next.state === 'late' && styles.late)}>
        {when(next)}
      </span>
    </>
  )
}

function useWhen(): (next: Task) => string {
  const t = useWords()
  const times = useTimes()
  return ({ kind, from, state, early, due, late, putOff }) => {
    if (putOff && !putOff.isBack)
      return t('batch.next.putOff', { day: times.day(`${putOff.until}T12:00:00`) })
    if (kind === 'charge' && from === 'ledger') return t('today.anyTime')
    if (state === 'late') return t('today.lateFrom', { day: times.day(late ?? due) })
    // Bottles that rest longer than they must are ready, and never late.
    const isReady = state !== 'coming' && early === due && late === undefined
    return isReady ? t('today.readySince', { day: times.day(due) }) : times.day(due)
  }
}
