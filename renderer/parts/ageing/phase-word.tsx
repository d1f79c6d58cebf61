/** A window's phase: its sign and its name. */
import { useWords } from '../../app/words/use-words.ts'
import type { Verdict } from '../../../shared/schemas/moves.ts'
import { PhaseMark } from './phase-mark.tsx'
import styles from './phase-word.module.css'

export function PhaseWord({ phase }: { phase: Verdict }) {
  const t = useWords()
  return (
    <span className={styles.phase}>
      <PhaseMark phase={phase} />
      {t(`shelf.phase.${phase}`)}
    </span>
  )
}
