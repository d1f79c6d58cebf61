/** What the patterns of the ageing bars mean. */
import { useWords } from '../app/words/use-words.ts'
import { Verdict } from '../../shared/schemas/moves.ts'
import { classes } from '../parts/classes.ts'
import track from './ageing-track.module.css'
import styles from './ageing-key.module.css'

export function AgeingKey() {
  const t = useWords()
  return (
    <ul className={styles.key}>
      {Verdict.options.map((phase) => (
        <li key={phase}>
          <span className={classes(track['track'], styles.sample)} aria-hidden>
            <span className={classes(track['part'], track[phase], styles.whole)} />
          </span>
          {t(`shelf.phase.${phase}`)}
        </li>
      ))}
      <li>
        <span className={classes(track['track'], styles.sample)} aria-hidden>
          <span className={classes(track['bracket'], styles.whole)} />
        </span>
        {t('shelf.ageing.band')}
      </li>
    </ul>
  )
}
