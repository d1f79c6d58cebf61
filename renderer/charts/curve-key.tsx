/** What the dashes and marks of the curve mean; only those that are drawn. */
import { useWords } from '../app/words/use-words.ts'
import { changedDash, forecastDash } from './curve-quantities.ts'
import type { CurveView } from './curve-view.ts'
import { ReadingMark } from './reading-mark.tsx'
import styles from './batch-curve.module.css'

const standings = ['used', 'notUsed', 'outlier'] as const

export function CurveKey({ view }: { view: CurveView }) {
  const t = useWords()
  const hasBand = view.rows.some(({ low }) => low !== undefined)
  const drawn = standings.filter((standing) =>
    view.readings.some((reading) => reading.standing === standing),
  )
  return (
    <ul className={styles.key}>
      {hasBand && (
        <li>
          <svg width={28} height={12} aria-hidden>
            <rect width={28} height={12} fill="var(--ink)" opacity={0.17} />
          </svg>
          {t('batch.curve.key.band')}
        </li>
      )}
      {view.hasForecast && (
        <Dash dash={forecastDash} words={t('batch.curve.key.forecast')} isRound />
      )}
      {view.changed && <Dash dash={changedDash} words={t('batch.curve.key.changed')} />}
      {drawn.map((standing) => (
        <li key={standing}>
          <svg width={24} height={22} aria-hidden>
            <ReadingMark cx={12} cy={11} kind="strength" standing={standing} hasWords={false} />
          </svg>
          {t(`batch.curve.key.${standing}`)}
        </li>
      ))}
    </ul>
  )
}

function Dash({ dash, words, isRound }: { dash: string; words: string; isRound?: boolean }) {
  return (
    <li>
      <svg width={40} height={10} aria-hidden>
        <line
          x1={1}
          x2={40}
          y1={5}
          y2={5}
          stroke="var(--ink)"
          strokeWidth={2.75}
          strokeDasharray={dash}
          strokeLinecap={isRound ? 'round' : 'butt'}
        />
      </svg>
      {words}
    </li>
  )
}
