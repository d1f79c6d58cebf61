/** What the shelf has to tell today: bottles that came ready lately, and kinds that run low. */
import { Link } from 'wouter'
import type { Today } from '../../../shared/schemas/schedule.ts'
import type { KindStock } from '../../../shared/schemas/shelf.ts'
import { useWords } from '../../app/words/use-words.ts'
import { useFruitName, useFruits } from '../../parts/names/use-names.ts'
import { Section } from '../../parts/page/page.tsx'
import { useTimes } from '../../parts/time/use-times.ts'
import { taskPath } from './task-path.ts'
import styles from './today-screen.module.css'

/** The rest is the shelf's to tell. */
const mostRows = 5

export function CameReady({ ready }: { ready: Today['cameReady'] }) {
  const t = useWords()
  const times = useTimes()
  if (ready.length === 0) return null
  return (
    <Section title={t('today.cameReady')} actions={<ToShelf />}>
      <ul className={styles.rows}>
        {ready.slice(0, mostRows).map(({ task, lot }) => (
          <li key={lot.id} className={styles.row}>
            <span>
              <Link href={`/shelf/${encodeURIComponent(lot.id)}`}>{lot.name}</Link>{' '}
              <span className={styles.day}>
                {t('parts.bottles', { count: lot.count })},{' '}
                {t('today.readySince', { day: times.day(task.due) })}
              </span>
            </span>
            <Link href={taskPath(task)} aria-label={t('today.tasteOf', { name: lot.name })}>
              {t('today.taste')}
            </Link>
          </li>
        ))}
      </ul>
      <More count={ready.length - mostRows} />
    </Section>
  )
}

export function Fading({ fading }: { fading: Today['fading'] }) {
  const t = useWords()
  const times = useTimes()
  if (fading.length === 0) return null
  return (
    <Section title={t('today.fading')} actions={<ToShelf />}>
      <ul className={styles.rows}>
        {fading.slice(0, mostRows).map(({ task, lot }) => (
          <li key={task.id} className={styles.row}>
            <Link href={`/shelf/${encodeURIComponent(lot.id)}`}>{lot.name}</Link>
            <span className={styles.day}>
              {task.kind === 'finishOpened'
                ? t('today.openedBest', { day: times.day(task.due) })
                : t('today.fadesFrom', {
                    bottles: t('parts.bottles', { count: lot.count }),
                    day: times.day(task.due),
                  })}
            </span>
          </li>
        ))}
      </ul>
      <More count={fading.length - mostRows} />
    </Section>
  )
}

export function RunningLow({ kinds }: { kinds: readonly KindStock[] }) {
  const t = useWords()
  const times = useTimes()
  const fruits = useFruits()
  const fruitName = useFruitName()
  if (kinds.length === 0) return null
  return (
    <Section title={t('today.runningLow')} actions={<ToShelf />}>
      <ul className={styles.rows}>
        {kinds.map(({ kindId, bottleCount, runsOut }) => {
          const fruit = fruits.get(kindId)
          const until = runsOut?.likely ?? runsOut?.early
          return (
            <li key={kindId} className={styles.row}>
              <span>{fruit ? fruitName(fruit) : kindId}</span>
              <span className={styles.day}>
                {bottleCount === 0 || until === undefined
                  ? t('today.gone')
                  : t('today.lasts', {
                      bottles: t('parts.bottles', { count: bottleCount }),
                      day: times.day(until),
                    })}
              </span>
            </li>
          )
        })}
      </ul>
    </Section>
  )
}

function More({ count }: { count: number }) {
  const t = useWords()
  return count > 0 && <p className={styles.day}>{t('today.moreOnShelf', { count })}</p>
}

function ToShelf() {
  const t = useWords()
  return <Link href="/shelf">{t('today.toShelf')}</Link>
}
