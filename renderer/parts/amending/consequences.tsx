/** All that follows from a change of the past: what it breaks, what differs today, what is to be done. */
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../button/button.tsx'
import { Breaks } from '../moves/breaks.tsx'
import { useMoveWords } from '../moves/use-move-words.ts'
import { useTimes } from '../time/use-times.ts'
import { DifferencesTable } from './differences-table.tsx'
import { TaskChanges } from './task-changes.tsx'
import type { Amending } from './use-amending.ts'
import styles from './consequences.module.css'

export function Consequences({ amending }: { amending: Amending }) {
  const t = useWords()
  const { seen, tasks, struck, strikeToo, previewed } = amending
  // Why the move itself cannot be is told with the move.
  if (previewed.error || (seen && seen.refusals.length > 0)) return null
  return (
    <section className={styles.part} aria-label={t('amending.title')}>
      <Struck amending={amending} />
      {seen && seen.breaks.length > 0 && (
        <div className={styles.breaks}>
          <Breaks breaks={seen.breaks} />
          <Button onPress={strikeToo}>
            {t('amending.strikeToo', { count: seen.breaks.length })}
          </Button>
        </div>
      )}
      <h3>{t('amending.title')}</h3>
      <div aria-live="polite">
        {seen ? (
          <DifferencesTable differences={seen.differences} />
        ) : (
          <p className={styles.quiet}>{t('amending.waiting')}</p>
        )}
      </div>
      {tasks && tasks.length > 0 && <TaskChanges changes={tasks} />}
      {struck.length > 0 && seen && seen.breaks.length === 0 && (
        <p className={styles.quiet}>{t('batch.ledger.strikeFine')}</p>
      )}
    </section>
  )
}

function Struck({ amending: { struck, keepThem } }: { amending: Amending }) {
  const t = useWords()
  const times = useTimes()
  const moveWords = useMoveWords()
  if (struck.length === 0) return null
  return (
    <div className={styles.struck}>
      <p>{t('amending.struckToo', { count: struck.length })}</p>
      <ul className={styles.list}>
        {struck.map(({ id, move }) => (
          <li key={id}>
            <span className={styles.quiet}>{times.moment(move.at)}</span> <s>{moveWords(move)}</s>
          </li>
        ))}
      </ul>
      <Button kind="quiet" onPress={keepThem}>
        {t('amending.keepThem')}
      </Button>
    </div>
  )
}
