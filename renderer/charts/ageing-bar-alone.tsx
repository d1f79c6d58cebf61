/** One lot's life on an axis of its own, told in a sentence under it. */
import { useWords } from '../app/words/use-words.ts'
import type { ShelfLot } from '../../shared/schemas/shelf.ts'
import { useNow } from '../parts/time/use-now.ts'
import { ageingBar, ageingDomain } from './ageing-rows.ts'
import { AgeingTrack } from './ageing-track.tsx'
import { shareOfDomain } from './timeline-rows.ts'
import { useAgeingWords } from './use-ageing-words.ts'
import { useTimeTicks } from './use-time-ticks.ts'
import styles from './ageing-bar-alone.module.css'

export interface AgeingBarAloneProps {
  shelfLot: ShelfLot
  colour: string | undefined
}

/** A mark nearer to now than this share of the axis would stand under its word. */
const wordShare = 0.12

export function AgeingBarAlone({ shelfLot, colour }: AgeingBarAloneProps) {
  const t = useWords()
  const words = useAgeingWords()
  const nowMs = useNow().getTime()
  const bar = ageingBar(shelfLot)
  const domain = ageingDomain([bar], 'all', nowMs, 0)
  const ticks = useTimeTicks('dates', domain, 6)
  const share = (atMs: number) => shareOfDomain(domain, atMs)
  const place = (atMs: number) => ({ left: `${100 * share(atMs)}%` })
  return (
    <div>
      <div className={styles.frame} aria-hidden>
        <AgeingTrack bar={bar} domain={domain} colour={colour} />
        <span className={styles.now} style={place(nowMs)} />
        <div className={styles.axis}>
          {ticks
            .filter(({ atMs }) => Math.abs(share(atMs) - share(nowMs)) > wordShare)
            .map(({ atMs, label }) => (
              <span key={atMs} style={place(atMs)}>
                {label}
              </span>
            ))}
          <strong style={place(nowMs)}>{t('shelf.ageing.today')}</strong>
        </div>
      </div>
      <p>{words.bar(bar)}</p>
    </div>
  )
}
