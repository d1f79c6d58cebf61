/** Under which name the book of before is kept. */
import { useWords } from '../../app/words/use-words.ts'
import styles from './restore.module.css'

export function KeptAside({ file }: { file: string | null }) {
  const t = useWords()
  return (
    <p className={styles.file}>
      {file === null
        ? t('safekeeping.restore.asideNone')
        : t('safekeeping.restore.aside', { file })}
    </p>
  )
}
