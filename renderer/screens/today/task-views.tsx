/** What can be done now, told one of three ways. */
import type { ReactNode } from 'react'
import { Link } from 'wouter'
import type { BatchSummary } from '../../../shared/schemas/cellar.ts'
import type { Task } from '../../../shared/schemas/tasks.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { Section } from '../../parts/page/page.tsx'
import { byBatch, byEffort, isPressing, placesOf, worthTogether, type View } from './task-groups.ts'
import { TaskList } from './task-list.tsx'
import type { TodayActs } from './use-today-acts.ts'
import styles from './today-screen.module.css'

interface TaskViewsProps {
  view: View
  onView: (view: View) => void
  tasks: readonly Task[]
  batches: readonly BatchSummary[]
  acts: TodayActs
}

export function TaskViews({ view, onView, tasks, ...rest }: TaskViewsProps) {
  const t = useWords()
  switch (view) {
    case 'need':
      return (
        <>
          <Titled title={t('today.pressing')} tasks={tasks.filter(isPressing)} {...rest} />
          <Together tasks={tasks} onView={onView} />
          <Titled
            title={t('today.open')}
            tasks={tasks.filter((task) => !isPressing(task))}
            {...rest}
          />
        </>
      )
    case 'batch':
      return byBatch(tasks).map(([batchId, own]) => {
        const batch = rest.batches.find((summary) => summary.batch.id === batchId)?.batch
        const link = batch && (
          <Link href={`/batches/${encodeURIComponent(batchId)}`}>{t('today.toBatch')}</Link>
        )
        return (
          <Titled key={batchId} title={batch?.name ?? ''} actions={link} tasks={own} {...rest} />
        )
      })
    case 'effort':
      return byEffort(tasks).map(([effort, own]) => (
        <Titled
          key={effort}
          title={t(`today.effort.${effort}`, { count: placesOf(own) })}
          tasks={own}
          {...rest}
        />
      ))
  }
}

interface TitledProps extends Omit<TaskViewsProps, 'view' | 'onView'> {
  title: string
  actions?: ReactNode
}

const Titled = ({ title, actions, tasks, ...rest }: TitledProps) =>
  tasks.length > 0 && (
    <Section title={title} actions={actions}>
      <TaskList tasks={tasks} {...rest} />
    </Section>
  )

/** With the filters out for one jar, the others that can be filtered cost little more. */
function Together({ tasks, onView }: Pick<TaskViewsProps, 'tasks' | 'onView'>) {
  const t = useWords()
  const efforts = worthTogether(tasks).filter(([effort]) => effort !== 'turning')
  if (efforts.length === 0) return null
  return (
    <Section
      title={t('today.together')}
      actions={
        <Button kind="quiet" onPress={() => onView('effort')}>
          {t('today.showTogether')}
        </Button>
      }
    >
      <ul className={styles.together}>
        {efforts.map(([effort, own]) => (
          <li key={effort}>{t(`today.effort.${effort}`, { count: placesOf(own) })}</li>
        ))}
      </ul>
    </Section>
  )
}
