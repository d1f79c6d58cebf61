/** The newest of some moves, and how many more there are. */
import type { MoveInBook } from '../../../shared/schemas/books-compared.ts'
import { useWords } from '../../app/words/use-words.ts'
import { useMoveWords } from '../moves/use-move-words.ts'
import { useTimes } from '../time/use-times.ts'
import styles from './some-moves.module.css'

const shownAtOnce = 6

export interface SomeMovesProps {
  /** What they have in common, with their number. */
  title: string
  count: number
  moves: readonly MoveInBook[]
}

export function SomeMoves({ title, count, moves }: SomeMovesProps) {
  const t = useWords()
  const times = useTimes()
  const moveWords = useMoveWords()
  if (count === 0) return null
  const shown = moves.slice(0, shownAtOnce)
  return (
    <div className={styles.group}>
      <p>{title}</p>
      <ul className={styles.list}>
        {shown.map(({ moveId, move, batchName }) => (
          <li key={moveId}>
            <span className={styles.quiet}>
              {[times.moment(move.at), batchName].filter(Boolean).join(' · ')}
            </span>{' '}
            {moveWords(move)}
          </li>
        ))}
        {count > shown.length && (
          <li className={styles.quiet}>
            {t('safekeeping.restore.more', { count: count - shown.length })}
          </li>
        )}
      </ul>
    </div>
  )
}
