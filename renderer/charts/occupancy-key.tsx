/** What the patterns of the jars' bars mean. */
import { useWords } from '../app/words/use-words.ts'
import type { SeasonSpan } from '../../shared/schemas/season.ts'
import { classes } from '../parts/classes.ts'
import chart from './occupancy-chart.module.css'
import styles from './pattern-key.module.css'

const uses = [
  'standing',
  'standingSettle',
  'steep',
  'settle',
  'cleaning',
] as const satisfies readonly SeasonSpan['use'][]

export function OccupancyKey({ used }: { used: ReadonlySet<SeasonSpan['use']> }) {
  const t = useWords()
  return (
    <ul className={styles.key} aria-label={t('season.jars.key')}>
      {uses
        .filter((use) => used.has(use))
        .map((use) => (
          <li key={use}>
            <span className={styles.sample} aria-hidden>
              <span className={classes(chart['bar'], chart[use])} />
            </span>
            {t(`season.useName.${use}`)}
          </li>
        ))}
    </ul>
  )
}
