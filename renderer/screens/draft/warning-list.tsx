/** What is worth a look in a draft: what cannot be met first, then what left its bounds. */
import { memo } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { DraftOutcome, UnmetWish } from '../../../shared/schemas/drafts.ts'
import { useDraftWords } from './use-draft-words.ts'
import styles from './warning-list.module.css'

export interface WarningListProps {
  outcome: DraftOutcome
  unmet: readonly UnmetWish[]
}

export const WarningList = memo(function WarningList({ outcome, unmet }: WarningListProps) {
  const t = useWords()
  const words = useDraftWords()
  // The others stand at their stage; what spills or cannot be done is said at once.
  const urgent = outcome.warnings.filter(
    ({ code, stage }) => code === 'overBrim' || stage === undefined,
  )
  const lines = [...new Set(urgent.map((warning) => words.warning(warning, outcome)))]
  return (
    <div className={styles.list} aria-live="polite">
      {unmet.length > 0 && (
        <ul className={styles.unmet} aria-label={t('draft.editor.unmet')}>
          {unmet.map((wish) => (
            <li key={wish.wish}>{words.unmet(wish)}</li>
          ))}
        </ul>
      )}
      {lines.length > 0 && (
        <ul className={styles.warnings} aria-label={t('draft.editor.warnings')}>
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
    </div>
  )
})
