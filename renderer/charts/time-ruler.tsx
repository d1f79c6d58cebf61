/** The time over a chart's rows: an axis of words above them, and lines through them, with today. */
import { classes } from '../parts/classes.ts'
import type { TimeDomain } from './time-axis.ts'
import type { TimeTick } from './time-labels.ts'
import { placeInDomain, shareOfDomain } from './timeline-rows.ts'
import styles from './time-ruler.module.css'

export interface TimeRuler {
  domain: TimeDomain
  ticks: readonly TimeTick[]
  nowMs: number
}

export interface TimeAxisProps extends TimeRuler {
  /** The word at now, and where it stands: in the middle over its line, or after it. */
  today: string
  todayStands?: keyof typeof wordRoom
  /** Closed by a line of its own, where no head closes it. */
  isRuled?: boolean
  /** Of so many marks that their words are small in a narrow window. */
  isCrowded?: boolean
}

/** Shares of the axis before and after now in which a mark would stand under the word at now. */
const wordRoom = { over: { before: 0.06, after: 0.06 }, after: { before: 0.02, after: 0.1 } }

export function TimeAxis(props: TimeAxisProps) {
  const { domain, ticks, nowMs, today, todayStands = 'over', isRuled, isCrowded } = props
  const isNow = isInSight(domain, nowMs)
  const room = wordRoom[todayStands]
  const isUnderWord = ({ atMs }: TimeTick) => {
    const after = shareOfDomain(domain, atMs) - shareOfDomain(domain, nowMs)
    return isNow && after > -room.before && after < room.after
  }
  return (
    <div
      className={classes(styles.axis, isRuled && styles.ruled, isCrowded && styles.crowded)}
      aria-hidden
    >
      {ticks
        .filter((tick) => !isUnderWord(tick))
        .map(({ atMs, label }) => (
          <span key={atMs} className={styles.tick} style={{ left: placeInDomain(domain, atMs) }}>
            {label}
          </span>
        ))}
      {isNow && (
        <span
          className={classes(styles.today, todayStands === 'after' && styles.after)}
          style={{ left: placeInDomain(domain, nowMs) }}
        >
          {today}
        </span>
      )}
    </div>
  )
}

/** Stands in a frame that is positioned, behind the rows that come after it. */
export function TimeLines({ domain, ticks, nowMs }: TimeRuler) {
  return (
    <div className={styles.lines} aria-hidden>
      {ticks.map(({ atMs }) => (
        <span key={atMs} className={styles.line} style={{ left: placeInDomain(domain, atMs) }} />
      ))}
      {isInSight(domain, nowMs) && (
        <span className={styles.now} style={{ left: placeInDomain(domain, nowMs) }} />
      )}
    </div>
  )
}

const isInSight = ({ fromMs, toMs }: TimeDomain, nowMs: number) => nowMs >= fromMs && nowMs <= toMs
