/** A task in words: the deed with its batch, its day, and what waiting costs. */
import type { BatchSummary } from '../../../shared/schemas/cellar.ts'
import type { Task } from '../../../shared/schemas/tasks.ts'
import { daysBetween } from '../../parts/time/format-time.ts'
import { useTimes } from '../../parts/time/use-times.ts'
import { useWords } from '../../app/words/use-words.ts'

export interface TaskWords {
  /** "Filter, Blackberry 2026". */
  what: (task: Task) => string
  when: (task: Task) => string
  /** Undefined where nothing is lost, or not for long. */
  loss: (task: Task) => string | undefined
}

/** Losses further off than this would only make noise. */
const nearDays = 120

export function useTaskWords(batches: readonly BatchSummary[]): TaskWords {
  const t = useWords()
  const times = useTimes()
  const nameOf = (batchId: string) => batches.find(({ batch }) => batch.id === batchId)?.batch.name
  return {
    what: ({ kind, batchId }) =>
      [t(`today.kind.${kind}`), nameOf(batchId)].filter((part) => part !== undefined).join(', '),
    when: ({ kind, from, state, early, due, late }) => {
      if (kind === 'charge' && from === 'ledger') return t('today.anyTime')
      switch (state) {
        case 'late':
          return t('today.lateFrom', { day: times.day(late ?? due) })
        case 'due':
          return daysBetween(times.now, new Date(due)) === 0
            ? t('today.dueToday')
            : t('today.dueOn', { day: times.day(due) })
        case 'open':
          return early === due
            ? t('today.openSince', { day: times.day(due) })
            : t('today.dueOn', { day: times.day(due) })
        case 'coming':
          return t('today.comingFrom', { day: times.day(early) })
      }
    },
    loss: ({ state, late, loss }) => {
      if (late === undefined || loss === 'nothing') return undefined
      if (daysBetween(times.now, new Date(late)) > nearDays) return undefined
      const words = { day: times.day(late), loss: t(`today.loss.${loss}`) }
      return state === 'late' ? t('today.lossSince', words) : t('today.lossFrom', words)
    },
  }
}
