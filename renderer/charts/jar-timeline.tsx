/** Which liquid stood in which vessel, and for how long: a row a vessel, a bar a stage. */
import { useState, type CSSProperties } from 'react'
import { useWords } from '../app/words/use-words.ts'
import type { Jar } from '../../shared/schemas/cellar.ts'
import { classes } from '../parts/classes.ts'
import { JarVessel } from '../parts/vessel/jar-vessel.tsx'
import type { TimeAxisKind } from './time-labels.ts'
import {
  shareOfDomain,
  type Timeline,
  type TimelineBar,
  type TimelineRow,
} from './timeline-rows.ts'
import { useTimeTicks } from './use-time-ticks.ts'
import { useBarWords } from './use-bar-words.ts'
import styles from './jar-timeline.module.css'

export interface JarTimelineProps {
  timeline: Timeline
  jars: ReadonlyMap<string, { jar: Jar }>
  axis: TimeAxisKind
  colour: string
  nowMs: number
}

export function JarTimeline({ timeline, jars, axis, colour, nowMs }: JarTimelineProps) {
  const t = useWords()
  const [told, setTold] = useState<string>()
  const { domain, rows } = timeline
  const ticks = useTimeTicks(axis, domain, 8)
  const place = (atMs: number) => `${100 * shareOfDomain(domain, atMs)}%`
  // The page may be a minute older than the clock.
  const isNowInSight = nowMs <= domain.toMs + 120_000
  return (
    <div className={styles.timeline} style={{ '--liquid': colour }}>
      <div className={styles.rowsFrame}>
        <ul className={styles.rows}>
          {rows.map((row) => (
            <Row
              key={row.jarId}
              row={row}
              jar={jars.get(row.jarId)?.jar}
              colour={colour}
              place={place}
              onTell={setTold}
            />
          ))}
        </ul>
        {isNowInSight && (
          <div className={styles.line} aria-hidden>
            <span style={{ left: place(nowMs) }} />
          </div>
        )}
      </div>
      <div className={styles.axis} aria-hidden>
        {ticks.map(({ atMs, label }) => (
          <span key={atMs} className={styles.tick} style={{ left: place(atMs) }}>
            {label}
          </span>
        ))}
        {isNowInSight && (
          <span className={styles.today} style={{ left: place(nowMs) }}>
            {t('batch.timeline.today')}
          </span>
        )}
      </div>
      <p className={styles.told}>{told ?? t('batch.timeline.hint')}</p>
    </div>
  )
}

interface RowProps {
  row: TimelineRow
  jar: Jar | undefined
  colour: string
  place: (atMs: number) => string
  onTell: (words: string) => void
}

function Row({ row, jar, colour, place, onTell }: RowProps) {
  const t = useWords()
  const barWords = useBarWords()
  const name = jar?.name ?? t('parts.place.theJar')
  const last = row.bars.at(-1)
  return (
    <li className={styles.row}>
      <span className={styles.name}>{name}</span>
      <ul className={styles.track}>
        {row.bars.map((bar) => (
          <Bar
            key={bar.fromMs}
            bar={bar}
            words={barWords(name, bar)}
            place={place}
            onTell={onTell}
          />
        ))}
        {jar && last && (
          <li className={styles.vessel} style={{ left: place(last.toMs) }}>
            <JarVessel
              jar={jar}
              contents={last.contents}
              colour={colour}
              mmPerPixel={6}
              isDecorative
            />
          </li>
        )}
      </ul>
    </li>
  )
}

interface BarProps {
  bar: TimelineBar
  words: string
  place: (atMs: number) => string
  onTell: (words: string) => void
}

function Bar({ bar, words, place, onTell }: BarProps) {
  const t = useWords()
  const { stage, fromMs, toMs, isOpen } = bar
  const position: CSSProperties = {
    left: place(fromMs),
    width: `calc(${place(toMs)} - ${place(fromMs)})`,
  }
  return (
    <li className={styles.cell} style={position}>
      <button
        type="button"
        className={classes(styles.bar, styles[stage], isOpen && styles.open)}
        aria-label={words}
        onFocus={() => onTell(words)}
        onPointerEnter={() => onTell(words)}
        onClick={() => onTell(words)}
      >
        <span className={styles.stage}>{t(`codes.stage.${stage}`)}</span>
      </button>
    </li>
  )
}
