/** Tasks that would come up, fall away, or go to another day. */
import { useWords } from '../../app/words/use-words.ts'
import type { TaskDifference } from '../../../shared/schemas/amending.ts'
import type { Task } from '../../../shared/schemas/tasks.ts'
import { useSettings } from '../../app/settings.tsx'
import { listFormat } from '../formatters/formatters.ts'
import { useBatches, useJars } from '../names/use-names.ts'
import { useTimes } from '../time/use-times.ts'
import styles from './consequences.module.css'

export function TaskChanges({ changes }: { changes: readonly TaskDifference[] }) {
  const t = useWords()
  const times = useTimes()
  const deed = useDeedWords()
  const words = ({ before, after }: TaskDifference) => {
    if (before && after)
      return t('amending.tasks.moves', {
        what: deed(after),
        before: times.day(before.due),
        after: times.day(after.due),
      })
    if (after) return t('amending.tasks.comes', { what: deed(after), day: times.day(after.due) })
    return before && t('amending.tasks.goes', { what: deed(before) })
  }
  return (
    <>
      <h3>{t('amending.tasks.title')}</h3>
      <ul className={styles.list}>
        {changes.map((change) => (
          <li key={change.taskId}>{words(change)}</li>
        ))}
      </ul>
    </>
  )
}

function useDeedWords(): (task: Task) => string {
  const t = useWords()
  const { locale } = useSettings()
  const batches = useBatches()
  const vessels = useJars()
  return ({ kind, batchId, jarIds }) => {
    const what = {
      deed: t(`today.kind.${kind}`),
      batch: batches.get(batchId)?.batch.name ?? batchId,
    }
    if (jarIds.length === 0) return t('amending.tasks.deed', what)
    const names = jarIds.map((id) => vessels.get(id)?.jar.name ?? t('parts.place.theJar'))
    const jars = listFormat(locale, { type: 'conjunction' }).format(names)
    return t('amending.tasks.deedIn', { ...what, jars })
  }
}
