/** One lot's life as a bar: young dotted, ready full, fading hatched; brackets for how sure. */
import type { Verdict } from '../../shared/schemas/moves.ts'
import { endOfBar, type AgeingBar, type EdgeMs } from './ageing-rows.ts'
import { classes } from '../parts/classes.ts'
import { shareOfDomain } from './timeline-rows.ts'
import type { TimeDomain } from './time-axis.ts'
import styles from './ageing-track.module.css'

export interface AgeingTrackProps {
  bar: AgeingBar
  domain: TimeDomain
  /** Of its batch. */
  colour: string | undefined
}

export function AgeingTrack({ bar, domain, colour }: AgeingTrackProps) {
  const parts: { phase: Verdict; fromMs: number; toMs: number }[] = [
    { phase: 'young', fromMs: bar.bottledMs, toMs: bar.ready.likelyMs },
    { phase: 'ready', fromMs: bar.ready.likelyMs, toMs: bar.fading.likelyMs },
    { phase: 'fading', fromMs: bar.fading.likelyMs, toMs: endOfBar(bar) },
  ]
  return (
    <span
      className={styles.track}
      style={{ '--liquid': colour ?? 'var(--rule-strong)' }}
      aria-hidden
    >
      {parts.map(({ phase, fromMs, toMs }) => (
        <Span
          key={phase}
          className={classes(styles.part, styles[phase])}
          domain={domain}
          fromMs={fromMs}
          toMs={toMs}
        />
      ))}
      <Bracket edge={bar.ready} domain={domain} />
      <Bracket edge={bar.fading} domain={domain} />
    </span>
  )
}

interface SpanProps {
  className: string
  domain: TimeDomain
  fromMs: number
  toMs: number
}

/** What lies outside the time that is shown is not drawn. */
function Span({ className, domain, fromMs, toMs }: SpanProps) {
  if (toMs <= domain.fromMs || fromMs >= domain.toMs || toMs <= fromMs) return null
  const from = shareOfDomain(domain, fromMs)
  const to = shareOfDomain(domain, toMs)
  return (
    <span
      className={className}
      style={{ left: `${100 * from}%`, width: `${100 * (to - from)}%` }}
      data-cut-left={fromMs < domain.fromMs || undefined}
      data-cut-right={toMs > domain.toMs || undefined}
    />
  )
}

function Bracket({ edge, domain }: { edge: EdgeMs; domain: TimeDomain }) {
  return (
    <Span
      className={classes(styles.bracket)}
      domain={domain}
      fromMs={edge.earlyMs}
      toMs={edge.lateMs}
    />
  )
}
