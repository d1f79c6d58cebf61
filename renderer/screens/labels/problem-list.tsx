/** What should be seen before printing: what goes wrong first, then what is worth knowing. */
import type { LabelProblem } from '../../../shared/schemas/labels.ts'
import { useWords } from '../../app/words/use-words.ts'
import { useProblemWords } from './use-problem-words.ts'
import styles from './labels.module.css'

export interface ProblemListProps {
  problems: readonly LabelProblem[]
  /** By label. */
  names: readonly string[]
}

export function ProblemList({ problems, names }: ProblemListProps) {
  const t = useWords()
  const words = useProblemWords()
  const lines = (severity: LabelProblem['severity']) => [
    ...new Set(
      problems
        .filter((problem) => problem.severity === severity)
        .map((problem) =>
          names.length > 1
            ? t('labels.problems.of', {
                name: names[problem.labelIndex] ?? '',
                problem: words(problem),
              })
            : words(problem),
        ),
    ),
  ]
  const warnings = lines('warning')
  const notes = lines('note')
  return (
    <div className={styles.problems} aria-live="polite">
      {warnings.length > 0 && (
        <ul className={styles.warnings} aria-label={t('labels.problems.warnings')}>
          {warnings.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      {notes.length > 0 && (
        <details className={styles.notes}>
          <summary>{t('labels.problems.notes')}</summary>
          <ul>
            {notes.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
    </div>
  )
}
