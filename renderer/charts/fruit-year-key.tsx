/** What the heights and marks of the fruit year mean. */
import { useWords } from '../app/words/use-words.ts'
import { classes } from '../parts/classes.ts'
import chart from './fruit-year.module.css'
import styles from './pattern-key.module.css'

export function FruitYearKey() {
  const t = useWords()
  return (
    <ul className={styles.key} aria-label={t('season.fruit.key')}>
      {(['maybe', 'likely', 'plenty'] as const).map((supply) => (
        <li key={supply}>
          <span className={classes(styles.sample, chart['track'])} aria-hidden>
            <span
              className={classes(chart['stretch'], chart[supply])}
              style={{ inset: 'auto 0 0' }}
            />
          </span>
          {t(`season.supply.${supply}`)}
        </li>
      ))}
      <li>
        <span className={classes(styles.sample, chart['track'])} aria-hidden>
          <span
            className={classes(chart['stretch'], chart['allYear'])}
            style={{ inset: 'auto 0 0' }}
          />
        </span>
        {t('season.fruit.allYear')}
      </li>
      <li>
        <span className={classes(styles.sample, chart['track'])} aria-hidden>
          <span className={chart['ownDate']} style={{ left: '50%' }} />
        </span>
        {t('season.fruit.ownDate')}
      </li>
    </ul>
  )
}
