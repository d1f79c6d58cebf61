/** Where a fact comes from: the code as the library has it, and what it stands for. */
import { useLibraryWords } from '../../app/words/use-words.ts'
import styles from './source-note.module.css'

export interface SourceNoteProps {
  /** Undefined where nobody said. */
  code: string | undefined
  meanings: Readonly<Record<string, string>>
}

export function SourceNote({ code, meanings }: SourceNoteProps) {
  const say = useLibraryWords()
  if (code === undefined) return null
  // The record and the fruit are told in the meaning; the family is enough to recognise it by.
  const [family] = code.split(':')
  return (
    <span className={styles.source}>
      <span className={styles.code}>{family}</span> {say(meanings[code] ?? '')}
    </span>
  )
}
