/** When the next step is due, in words told from today. */
import { useWords } from '../../../app/words/use-words.ts'
import type { NextStep } from '../../../../shared/schemas/cellar.ts'
import { useTimes } from '../../../parts/time/use-times.ts'

export function useNextWords(): (next: NextStep) => string | undefined {
  const t = useWords()
  const times = useTimes()
  return ({ action, early, due, late }) => {
    if (action === 'none' || due === undefined) return undefined
    const nowIso = times.now.toISOString()
    if (late !== undefined && late < nowIso)
      return t('batch.next.overdue', { fromNow: times.fromNow(due) })
    if (early !== undefined && early > nowIso)
      return t('batch.next.from', { day: times.day(early), due: times.day(due) })
    if (due < nowIso) return t('batch.next.due', { fromNow: times.fromNow(due) })
    return t('batch.next.now', { day: times.day(due) })
  }
}
