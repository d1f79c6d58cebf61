/** When the next step is due, in words told from today. */
import { useWords } from '../../../app/words/use-words.ts'
import type { Task } from '../../../../shared/schemas/tasks.ts'
import { useTimes } from '../../../parts/time/use-times.ts'

export function useNextWords(): (next: Task) => string {
  const t = useWords()
  const times = useTimes()
  return ({ kind, from, early, due, late, putOff }) => {
    if (putOff && !putOff.isBack)
      return t('batch.next.putOff', { day: times.day(`${putOff.until}T12:00:00`) })
    if (kind === 'charge' && from === 'ledger') return t('today.anyTime')
    const nowIso = times.now.toISOString()
    if (late !== undefined && late < nowIso)
      return t('batch.next.overdue', { fromNow: times.fromNow(due) })
    if (early > nowIso) return t('batch.next.from', { day: times.day(early), due: times.day(due) })
    if (due < nowIso) return t('batch.next.due', { fromNow: times.fromNow(due) })
    return t('batch.next.now', { day: times.day(due) })
  }
}
