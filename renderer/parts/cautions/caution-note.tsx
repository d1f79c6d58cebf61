/** One caution: how serious in a word, what it is, where, and what to do. */
import type { ReactNode } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { Caution } from '../../../shared/schemas/cellar.ts'
import { classes } from '../classes.ts'
import { Term } from '../term/term.tsx'
import { useCautionWords } from './use-caution-words.ts'
import styles from './caution-note.module.css'

export interface CautionNoteProps {
  caution: Caution
  /** Which batch and jar, where the place does not say it already. */
  place?: ReactNode
  /** What answers it, where pressing something does. */
  act?: ReactNode
}

export function CautionNote({ caution, place, act }: CautionNoteProps) {
  const t = useWords()
  const { title, text } = useCautionWords()(caution)
  return (
    <div className={classes(styles.note, caution.severity === 'warning' && styles.warning)}>
      <p className={styles.head}>
        <span className={styles.severity}>{t(`codes.severity.${caution.severity}`)}</span>
        <strong>{title}</strong>
        {caution.code === 'mayFerment' && <Term id="delle" />}
        {place !== undefined && <span className={styles.place}>{place}</span>}
      </p>
      <p>{text}</p>
      {act !== undefined && <div className={styles.act}>{act}</div>}
    </div>
  )
}
