/** Later moves that an act would make impossible, each with the reason. */
import { useWords } from '../../app/words/use-words.ts'
import { useRefusalWords } from '../failure/refusal-words.ts'
import { useTimes } from '../time/use-times.ts'
import { useMoveWords } from './use-move-words.ts'
import type { Preview } from './use-preview.ts'
import styles from './breaks.module.css'

/** Nothing is written while there are any. */
export function Breaks({ breaks }: Pick<Preview, 'breaks'>) {
  const t = useWords()
  const moveWords = useMoveWords()
  const refusalWords = useRefusalWords()
  const times = useTimes()
  if (breaks.length === 0) return null
  return (
    <div className={styles.note}>
      <p className={styles.title}>{t('batch.ledger.breaks', { count: breaks.length })}</p>
      <ul className={styles.list}>
        {breaks.map(({ recorded, refusal }) => (
          <li key={recorded.id}>
            <span className={styles.quiet}>{times.moment(recorded.move.at)}</span>{' '}
            <strong>{moveWords(recorded.move)}</strong>
            <br />
            {refusalWords(refusal)}
          </li>
        ))}
      </ul>
    </div>
  )
}
