/** Which liquid stood in which vessel, and for how long: a row a vessel, a bar a stage. */
import { useState, type CSSProperties } from 'react'
import { useWords } from '../app/words/use-words.ts'
import type { Jar } from '../../shared/schemas/cellar.ts'
import { useSettings } from '../app/settings.tsx'
import { classes } from '../parts/classes.ts'
import { formatShare } from '../parts/quantity/format-share.ts'
import { JarVessel } from '../parts/vessel/jar-vessel.tsx'
import type { TimeAxisKind } from './time-labels.ts'
import {
  placeInDomain,
  shareOfDomain,
  steepsStill,
  type Timeline,
  type TimelineBar,
  type TimelineRow,
} from './timeline-rows.ts'
import { useTimeTicks } from './use-time-ticks.ts'
import { useBarWords } from './use-bar-words.ts'
import styles from './jar-timeline.module.css'

/** A mark nearer to now than this share of the axis would stand under its word. */
const wordShare = 0.07

export interface JarTimelineProps {
  timeline: Timeline
  jars: ReadonlyMap<string, { jar: Jar }>
  axis: TimeAxisKind
  colour: string
  nowMs: number
  /** Share of the extract that is out of the fruit, of jars that steep now. */
  extracted: ReadonlyMap<string, number>
}

export function JarTimeline(props: JarTimelineProps) {
  const { timeline, jars, axis, colour, nowMs, extracted } = props
  const t = useWords()
  const [told, setTold] = useState<string>()
  const { domain, rows } = timeline
  const ticks = useTimeTicks(axis, domain, 8)
  const place = (atMs: number) => placeInDomain(domain, atMs)
  const isBesideNow = (atMs: number) =>
    Math.abs(shareOfDomain(domain, atMs) - shareOfDomain(domain, nowMs)) < wordShare
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
              extracted={extracted.get(row.jarId)}
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
        {ticks
          .filter(({ atMs }) => !isNowInSight || !isBesideNow(atMs))
          .map(({ atMs, label }) => (
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
  extracted: number | undefined
  place: (atMs: number) => string
  onTell: (words: string) => void
}

function Row({ row, jar, colour, extracted, place, onTell }: RowProps) {
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
            extracted={steepsStill(bar) ? extracted : undefined}
            words={barWords(name, bar, steepsStill(bar) ? extracted : undefined)}
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
  extracted: number | undefined
  words: string
  place: (atMs: number) => string
  onTell: (words: string) => void
}

function Bar({ bar, extracted, words, place, onTell }: BarProps) {
  const t = useWords()
  const { locale } = useSettings()
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
        <span className={styles.stage}>
          {t(`codes.stage.${stage}`)}
          {extracted !== undefined &&
            `, ${t('batch.timeline.out', { share: formatShare(extracted, locale) })}`}
        </span>
        {extracted !== undefined && (
          <span className={styles.progress} style={{ width: `${100 * extracted}%` }} aria-hidden />
        )}
      </button>
    </li>
  )
}
