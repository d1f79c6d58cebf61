/** A small panel for each axis, all on the same time and the same 0 to 10; one lot, or two. */
import { useWords } from '../app/words/use-words.ts'
import { useSettings } from '../app/settings.tsx'
import { useTimes } from '../parts/time/use-times.ts'
import { compareColour, compareDashes, compareMarkers } from './compare-ink.ts'
import { CompareSign } from './compare-sign.tsx'
import {
  tasteDomain,
  tastePanels,
  type TastePanel,
  type TastePoint,
  type TasteTime,
  type TastedLot,
} from './taste-rows.ts'
import { placeInDomain, shareOfDomain } from './timeline-rows.ts'
import type { TimeDomain } from './time-axis.ts'
import { useAgeTicks } from './use-age-ticks.ts'
import { useTimeTicks } from './use-time-ticks.ts'
import styles from './taste-panels.module.css'
import { numberFormat } from '../parts/formatters/formatters.ts'

export interface TastePanelsProps {
  lots: readonly TastedLot[]
  by: TasteTime
}

const most = 10
/** The drawing's own units; it is stretched to the panel, the lines are not. */
const wide = 100

export function TastePanels({ lots, by }: TastePanelsProps) {
  const panels = tastePanels(lots, by)
  const domain = tasteDomain(panels)
  return (
    <div className={styles.whole}>
      {lots.length > 1 && (
        <ul className={styles.key}>
          {lots.map(({ lotId, name, colour }, index) => (
            <li key={lotId}>
              <CompareSign index={index} colour={colour} />
              {name}
            </li>
          ))}
        </ul>
      )}
      <ul className={styles.panels}>
        {panels.map((panel) => (
          <Panel key={panel.axis} panel={panel} lots={lots} domain={domain} by={by} />
        ))}
      </ul>
    </div>
  )
}

interface PanelProps {
  panel: TastePanel
  lots: readonly TastedLot[]
  domain: TimeDomain
  by: TasteTime
}

function Panel({ panel, lots, domain, by }: PanelProps) {
  const t = useWords()
  const words = usePanelWords(panel, lots)
  const dates = useTimeTicks('dates', domain, 3)
  const ages = useAgeTicks(domain, 3)
  const ticks = by === 'date' ? dates : ages
  const left = (xMs: number) => placeInDomain(domain, xMs)
  return (
    <li className={styles.panel}>
      <h4 className={styles.title} aria-hidden>
        {t(`shelf.axis.${panel.axis}`)}
      </h4>
      <figure className={styles.plot} aria-label={words}>
        <span className={styles.top} aria-hidden>
          {most}
        </span>
        <span className={styles.bottom} aria-hidden>
          0
        </span>
        <div className={styles.area} aria-hidden>
          <svg viewBox={`0 0 ${wide} ${most}`} preserveAspectRatio="none" className={styles.lines}>
            {[0, 5, 10].map((score) => (
              <line
                key={score}
                x1={0}
                x2={wide}
                y1={score}
                y2={score}
                className={styles.rule}
                vectorEffect="non-scaling-stroke"
              />
            ))}
            {panel.series.map((points, index) => (
              <polyline
                key={lots[index]?.lotId}
                points={points
                  .map(({ xMs, score }) => `${wide * shareOfDomain(domain, xMs)},${most - score}`)
                  .join(' ')}
                fill="none"
                stroke={compareColour(lots[index]?.colour ?? '#888888')}
                strokeWidth={2}
                strokeDasharray={compareDashes[index]}
                vectorEffect="non-scaling-stroke"
              />
            ))}
          </svg>
          {panel.series.flatMap((points, index) =>
            points.map(({ xMs, score, at }) => (
              <svg
                key={`${lots[index]?.lotId} ${at}`}
                className={styles.mark}
                width={14}
                height={14}
                viewBox="-7 -7 14 14"
                style={{ left: left(xMs), top: `${100 - (100 * score) / most}%` }}
              >
                <path
                  d={compareMarkers[index]}
                  fill={compareColour(lots[index]?.colour ?? '#888888')}
                  stroke="var(--paper)"
                />
              </svg>
            )),
          )}
        </div>
        <div className={styles.ticks} aria-hidden>
          {ticks.map(({ atMs, label }) => (
            <span key={atMs} style={{ left: left(atMs) }}>
              {label}
            </span>
          ))}
        </div>
      </figure>
    </li>
  )
}

/** A panel in a sentence: every lot's scores with their days. */
function usePanelWords({ axis, series }: TastePanel, lots: readonly TastedLot[]): string {
  const t = useWords()
  const times = useTimes()
  const { locale } = useSettings()
  const plain = numberFormat(locale, { maximumFractionDigits: 1 })
  const scores = (points: readonly TastePoint[]) =>
    points
      .map(({ score, at }) =>
        t('shelf.lot.panelScore', { score: plain.format(score), day: times.day(at) }),
      )
      .join(', ')
  const told = lots.flatMap(({ name }, index) => {
    const points = series[index] ?? []
    return points.length === 0 ? [] : [t('shelf.lot.panelLot', { name, scores: scores(points) })]
  })
  return t('shelf.lot.panel', { axis: t(`shelf.axis.${axis}`), words: told.join('; ') })
}
