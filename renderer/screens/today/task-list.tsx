/** Tasks, one a line: the vessels, what to do, by when, and putting it off. Arrows go from line to line. */
import { useRef, useState, type KeyboardEvent } from 'react'
import { Link } from 'wouter'
import type { BatchSummary } from '../../../shared/schemas/cellar.ts'
import type { Task } from '../../../shared/schemas/tasks.ts'
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { listFormat } from '../../parts/formatters/formatters.ts'
import { classes } from '../../parts/classes.ts'
import { BatchName } from '../../parts/names/batch-name.tsx'
import { useJars } from '../../parts/names/use-names.ts'
import { useTimes } from '../../parts/time/use-times.ts'
import { BatchVessels } from '../../parts/vessel/batch-vessels.tsx'
import { keyInList } from './list-keys.ts'
import { PutOffMenu } from './put-off-menu.tsx'
import { linesOf } from './task-groups.ts'
import { taskPath } from './task-path.ts'
import type { TodayActs } from './use-today-acts.ts'
import { useTaskWords } from './use-task-words.ts'
import styles from './task-list.module.css'

interface TaskListProps {
  tasks: readonly Task[]
  batches: readonly BatchSummary[]
  acts: TodayActs
}

export function TaskList({ tasks, batches, acts }: TaskListProps) {
  const list = useRef<HTMLOListElement>(null)
  /** The task whose menu of putting off is open. */
  const [openId, setOpenId] = useState<string>()
  const onKeyDown = (event: KeyboardEvent) =>
    keyInList(event, { list: list.current, onPutOff: setOpenId })
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions -- its links take the focus
    <ol className={styles.list} ref={list} onKeyDown={onKeyDown}>
      {linesOf(tasks).map((line) => {
        const [task] = line
        if (!task) return null
        return line.length === 1 ? (
          <TaskLine
            key={task.id}
            task={task}
            batches={batches}
            acts={acts}
            isOpen={openId === task.id}
            onOpen={(isOpen) => setOpenId(isOpen ? task.id : undefined)}
          />
        ) : (
          <TurningLine key="turning" first={task} tasks={line} batches={batches} acts={acts} />
        )
      })}
    </ol>
  )
}

interface TaskLineProps {
  task: Task
  batches: readonly BatchSummary[]
  acts: TodayActs
  isOpen: boolean
  onOpen: (isOpen: boolean) => void
}

function TaskLine({ task, batches, acts, isOpen, onOpen }: TaskLineProps) {
  const t = useWords()
  const times = useTimes()
  const words = useTaskWords(batches)
  const where = useWhere()([task])
  const summary = batches.find(({ batch }) => batch.id === task.batchId)
  const loss = words.loss(task)
  return (
    <li className={styles.line}>
      {summary ? (
        <BatchVessels summary={summary} jarIds={task.jarIds} mmPerPixel={5} most={3} />
      ) : (
        <span />
      )}
      <div className={styles.what}>
        <p>
          <Link href={taskPath(task)} className={styles.link} data-task={task.id}>
            {t(`today.kind.${task.kind}`)}
          </Link>
          {where && <span className={styles.where}>{where}</span>}
        </p>
        {summary && <BatchName batch={summary.batch} />}
        {loss && <p className={styles.loss}>{loss}</p>}
        {task.putOff?.isBack && (
          <p className={styles.back}>
            {t('today.backAgain', { day: times.day(task.putOff.until) })}
          </p>
        )}
      </div>
      <p className={classes(styles.when, task.state === 'late' && styles.late)}>
        {words.when(task)}
        {task.state !== 'coming' && task.early !== task.due && (
          <span className={styles.aside}>{t(`today.from.${task.from}`)}</span>
        )}
      </p>
      <div className={styles.acts}>
        {task.kind === 'turn' && task.state !== 'coming' && (
          <Button onPress={() => acts.logTurned([task])}>{t('today.logTurned')}</Button>
        )}
        <PutOffMenu
          what={words.what(task)}
          isOpen={isOpen}
          onOpen={onOpen}
          onPutOff={(until) => acts.putOff(task, until)}
        />
      </div>
    </li>
  )
}

interface TurningLineProps extends TaskListProps {
  first: Task
}

/** Nobody logs the turning of jars one by one. */
function TurningLine({ first, tasks, batches, acts }: TurningLineProps) {
  const t = useWords()
  const words = useTaskWords(batches)
  const isNow = first.state !== 'coming'
  const where = useWhere()(tasks)
  const count = tasks.length
  return (
    <li className={styles.line}>
      <span className={styles.vessels}>
        {tasks.slice(0, 3).map((task) => {
          const summary = batches.find(({ batch }) => batch.id === task.batchId)
          return (
            summary && (
              <BatchVessels
                key={task.id}
                summary={summary}
                jarIds={task.jarIds}
                mmPerPixel={5}
                most={1}
              />
            )
          )
        })}
      </span>
      <div className={styles.what}>
        <p className={styles.deed}>{t('today.turnMany', { count })}</p>
        {where && <p className={styles.loss}>{where}</p>}
      </div>
      <p className={styles.when}>{isNow ? undefined : words.when(first)}</p>
      <div className={styles.acts}>
        {isNow && <Button onPress={() => acts.logTurned(tasks)}>{t('today.logTurned')}</Button>}
      </div>
    </li>
  )
}

/** "in North jar and Crock". */
function useWhere(): (tasks: readonly Task[]) => string | undefined {
  const t = useWords()
  const { locale } = useSettings()
  const jars = useJars()
  return (tasks) => {
    const names = tasks.flatMap(({ jarIds }) =>
      jarIds.flatMap((id) => jars.get(id)?.jar.name ?? []),
    )
    if (names.length === 0) return undefined
    return t('today.inJars', { jars: listFormat(locale).format(names) })
  }
}
