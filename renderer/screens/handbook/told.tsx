/** A chapter's entries: what it is called beside what there is to say. */
import { useWords } from '../../app/words/use-words.ts'
import styles from './handbook.module.css'

export interface Entry {
  id: string
  name: string
  text: string
  source?: string
}

export function Told({ entries }: { entries: readonly Entry[] }) {
  const t = useWords()
  return (
    <dl className={styles.told}>
      {entries.map(({ id, name, text, source }) => (
        <div key={id}>
          <dt>{name}</dt>
          <dd>
            <p>{text}</p>
            {source !== undefined && (
              <p className={styles.quiet}>
                {t('handbook.source')} {source}
              </p>
            )}
          </dd>
        </div>
      ))}
    </dl>
  )
}
