/** All lots as bars through young, ready and fading, kind by kind, with today across them. */
import { useMemo, useState } from 'react'
import { useWords } from '../app/words/use-words.ts'
import { useWindowRows } from '../parts/table/use-window-rows.ts'
import { ageingRows, type AgeingBar, type AgeingGroup } from './ageing-rows.ts'
import { AgeingTrack } from './ageing-track.tsx'
import type { TimeDomain } from './time-axis.ts'
import { TimeAxis, TimeLines } from './time-ruler.tsx'
import { useAgeingWords } from './use-ageing-words.ts'
import { useTimeTicks } from './use-time-ticks.ts'
import styles from './ageing-chart.module.css'

export interface AgeingChartProps {
  groups: readonly AgeingGroup[]
  domain: TimeDomain
  nowMs: number
  kindName: (kindId: string) => string
  colourOf: (batchId: string) => string | undefined
  /** Where a lot's name leads. */
  hrefOf: (lotId: string) => string
}

const rowRem = 2.1

export function AgeingChart(props: AgeingChartProps) {
  const { groups, domain, nowMs, kindName, colourOf, hrefOf } = props
  const t = useWords()
  const words = useAgeingWords()
  const [told, setTold] = useState<AgeingBar>()
  const all = useMemo(() => ageingRows(groups), [groups])
  const { ref, rows, rowPx, belowPx } = useWindowRows<HTMLUListElement>(all.length, rowRem)
  const ruler = { domain, ticks: useTimeTicks('dates', domain, 9), nowMs }
  return (
    <div className={styles.chart}>
      <div className={styles.head}>
        <p className={styles.told}>{told ? words.bar(told) : t('shelf.ageing.hint')}</p>
        <TimeAxis {...ruler} today={t('shelf.ageing.today')} />
      </div>
      <div className={styles.frame}>
        <TimeLines {...ruler} />
        <ul ref={ref} className={styles.rows} aria-label={t('shelf.ageing.caption')}>
          {rows.map(({ index, roomPx }) => {
            const row = all[index]
            if (!row) return null
            const style = { height: rowPx, marginTop: roomPx }
            if (!('bar' in row))
              return (
                <li key={row.kindId} className={styles.kind} style={style}>
                  <h3>{kindName(row.kindId)}</h3>
                </li>
              )
            const { bar } = row
            return (
              <li key={bar.lotId} className={styles.row} style={style}>
                <a
                  className={styles.bar}
                  href={hrefOf(bar.lotId)}
                  aria-label={words.bar(bar)}
                  onFocus={() => setTold(bar)}
                  onPointerEnter={() => setTold(bar)}
                >
                  <span className={styles.name}>{bar.name}</span>
                  <span className={styles.count}>{`×\u00a0${bar.count}`}</span>
                  <AgeingTrack bar={bar} domain={domain} colour={colourOf(bar.batchId)} />
                </a>
              </li>
            )
          })}
          {belowPx > 0 && <li aria-hidden style={{ height: belowPx }} />}
        </ul>
      </div>
    </div>
  )
}
