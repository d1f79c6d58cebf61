/**
 * A year in twelve small fields: in season, at its best, or neither; told by height as by ink.
 * For the eye alone: whoever shows it also says the season in words.
 */
import { useSettings } from '../../app/settings.tsx'
import { classes } from '../../parts/classes.ts'
import { allMonths, isInSeason, monthName, type Season } from './season-months.ts'
import styles from './season-strip.module.css'

export interface SeasonStripProps {
  season: Season | undefined
  /** The present month, marked below. */
  month: number
  /** Writes each month's letter under it. */
  hasLetters?: boolean
}

export function SeasonStrip({ season, month, hasLetters = false }: SeasonStripProps) {
  const { locale } = useSettings()
  return (
    <span className={classes(styles.strip, hasLetters && styles.large)} aria-hidden>
      {allMonths.map((one) => (
        <span key={one} className={styles.month}>
          <span
            className={classes(
              styles.bar,
              isInSeason(season, one) && styles.open,
              season?.peakMonths.includes(one) && styles.peak,
            )}
          />
          <span className={classes(styles.letter, one === month && styles.now)}>
            {hasLetters && monthName(one, locale, 'narrow')}
          </span>
        </span>
      ))}
    </span>
  )
}
