/** Jars over the weeks: what stands in each is told apart by pattern and name, not by colour alone. */
import { useRef, useState, type KeyboardEvent, type ReactNode } from 'react'
import { useWords } from '../app/words/use-words.ts'
import { classes } from '../parts/classes.ts'
import { useQuantities } from '../parts/quantity/use-quantities.ts'
import { Vessel } from '../parts/vessel/vessel.tsx'
import {
  stepInOccupancy,
  type Occupancy,
  type OccupancyBar,
  type OccupancyRow,
} from './occupancy-rows.ts'
import { TimeAxis, TimeLines } from './time-ruler.tsx'
import { placeInDomain } from './timeline-rows.ts'
import { useOccupancyWords, type BarNames } from './use-occupancy-words.ts'
import { useMonthTicks } from './use-month-ticks.ts'
import styles from './occupancy-chart.module.css'

export interface OccupancyChartProps extends BarNames {
  occupancy: Occupancy
  nowMs: number
  colourOf: (bar: OccupancyBar) => string | undefined
  /** What can be done about the bar that is told, beside its words. */
  actOf: (bar: OccupancyBar) => ReactNode
}

export function OccupancyChart({
  occupancy: { domain, rows },
  nowMs,
  colourOf,
  actOf,
  ...names
}: OccupancyChartProps) {
  const t = useWords()
  const words = useOccupancyWords(names)
  const [told, setTold] = useState<OccupancyBar>()
  const frame = useRef<HTMLUListElement>(null)
  const ruler = { domain, ticks: useMonthTicks(domain), nowMs }
  const place = (atMs: number) => placeInDomain(domain, atMs)
  const jarName = (jarId: string) => rows.find(({ jar }) => jar.jarId === jarId)?.jar.name ?? ''
  const first = rows.find(({ bars }) => bars.length > 0)?.bars[0]
  const stop = told ?? first

  function step(event: KeyboardEvent, bar: OccupancyBar) {
    const next = stepInOccupancy(rows, bar, event.key)
    if (!next) return
    event.preventDefault()
    setTold(next)
    frame.current?.querySelector<HTMLElement>(`[data-bar="${CSS.escape(next.key)}"]`)?.focus()
  }

  return (
    <div className={styles.chart}>
      <div className={styles.told}>
        <p>{told ? words.bar(jarName(told.jarId), told) : t('season.jars.hint')}</p>
        {told && actOf(told)}
      </div>
      <TimeAxis {...ruler} today={t('season.today')} todayStands="after" isRuled isCrowded />
      <div className={styles.frame}>
        <TimeLines {...ruler} />
        <ul ref={frame} className={styles.rows} aria-label={t('season.jars.label')}>
          {rows.map((row) => (
            <JarRow key={row.jar.jarId} row={row}>
              {row.bars.map((bar) => (
                <li
                  key={bar.key}
                  className={styles.cell}
                  style={{
                    left: place(bar.fromMs),
                    width: `calc(${place(bar.toMs)} - ${place(bar.fromMs)})`,
                    '--liquid': colourOf(bar) ?? 'var(--rule-strong)',
                  }}
                >
                  <button
                    type="button"
                    data-bar={bar.key}
                    tabIndex={bar.key === stop?.key ? 0 : -1}
                    className={classes(
                      styles.bar,
                      styles[bar.use],
                      told?.batchKey !== undefined && told.batchKey === bar.batchKey && styles.same,
                    )}
                    aria-label={words.bar(row.jar.name, bar)}
                    onFocus={() => setTold(bar)}
                    onPointerEnter={() => setTold(bar)}
                    onKeyDown={(event) => step(event, bar)}
                  >
                    <span className={styles.name}>{words.what(bar)}</span>
                  </button>
                </li>
              ))}
            </JarRow>
          ))}
        </ul>
      </div>
    </div>
  )
}

function JarRow({ row: { jar }, children }: { row: OccupancyRow; children: ReactNode }) {
  const { size } = useQuantities()
  return (
    <li className={styles.row}>
      <span className={styles.jar}>
        <span className={styles.vessel}>
          <Vessel shape={jar.shape} capacityMl={jar.capacityMl} mmPerPixel={14} isDecorative />
        </span>
        <span className={styles.jarName}>
          {jar.name}
          <span className={styles.size}> {size(jar.capacityMl, 'volume').text}</span>
        </span>
      </span>
      <ul className={styles.track}>{children}</ul>
    </li>
  )
}
