/** What the shelf has to tell today: bottles that came ready lately, and kinds that run low. */
import { Link } from 'wouter'
import type { KindStock, ShelfLot } from '../../../shared/schemas/shelf.ts'
import { useWords } from '../../app/words/use-words.ts'
import { useFruitName, useFruits } from '../../parts/names/use-names.ts'
import { Section } from '../../parts/page/page.tsx'
import { useTimes } from '../../parts/time/use-times.ts'
import styles from './today-screen.module.css'

export function CameReady({ lots }: { lots: readonly ShelfLot[] }) {
  const t = useWords()
  const times = useTimes()
  if (lots.length === 0) return null
  return (
    <Section title={t('today.cameReady')} actions={<ToShelf />}>
      <ul className={styles.rows}>
        {lots.map(({ lot, window }) => (
          <li key={lot.id} className={styles.row}>
            <Link href={`/shelf/${encodeURIComponent(lot.id)}`}>{lot.name}</Link>
            <span className={styles.day}>
              {t('parts.bottles', { count: lot.count })},{' '}
              {t('today.readySince', { day: times.day(window.readyAt.likely) })}
            </span>
          </li>
        ))}
      </ul>
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

function ToShelf() {
  const t = useWords()
  return <Link href="/shelf">{t('today.toShelf')}</Link>
}
