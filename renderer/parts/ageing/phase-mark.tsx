/** The sign of a window's phase, told by its shape: a ring, a full round, a round that wanes. */
import type { Verdict } from '../../../shared/schemas/moves.ts'
import styles from './phase-mark.module.css'

export function PhaseMark({ phase }: { phase: Verdict }) {
  return (
    <svg className={styles[phase]} width={12} height={12} viewBox="0 0 12 12" aria-hidden>
      <circle
        cx={6}
        cy={6}
        r={4.75}
        strokeWidth={1.5}
        fill={phase === 'ready' ? 'currentColor' : 'none'}
      />
      {phase === 'fading' && <path d="M6 1.25a4.75 4.75 0 0 1 0 9.5z" fill="currentColor" />}
    </svg>
  )
}
