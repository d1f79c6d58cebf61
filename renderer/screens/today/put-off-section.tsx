/** What the maker put off and is not back yet, with the way to bring it back. */
import type { BatchSummary } from '../../../shared/schemas/cellar.ts'
import type { Task } from '../../../shared/schemas/tasks.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { Section } from '../../parts/page/page.tsx'
import { useTimes } from '../../parts/time/use-times.ts'
import type { TodayActs } from './use-today-acts.ts'
import { useTaskWords } from './use-task-words.ts'
import styles from './today-screen.module.css'

interface PutOffSectionProps {
  tasks: readonly Task[]
  batches: readonly BatchSummary[]
  acts: TodayActs
}

export function PutOffSection({ tasks, batches, acts }: PutOffSectionProps) {
  const t = useWords()
  const times = useTimes()
  const words = useTaskWords(batches)
  if (tasks.length === 0) return null
  return (
    <Section title={t('today.putOff.section')}>
      <ul className={styles.rows}>
        {tasks.map((task) => {
          const what = words.what(task)
          const until = times.day(`${task.putOff?.until}T12:00:00`)
          return (
            <li key={task.id} className={styles.row}>
              <span>
                {what} <span className={styles.day}>{t('today.putOff.until', { day: until })}</span>
              </span>
              <Button
                kind="quiet"
                aria-label={t('today.putOff.bringBackOf', { what })}
                onPress={() => acts.bringBack(task)}
              >
                {t('today.putOff.bringBack')}
              </Button>
            </li>
          )
        })}
      </ul>
    </Section>
  )
}
