/** All quantities of the curve at one instant, beside the pointer or the keyboard's cursor. */
import { msPerDay } from '../../shared/spans-of-time.ts'
import { useWords } from '../app/words/use-words.ts'
import { Strength, Sugar } from '../parts/quantity/composition.tsx'
import { useTimes } from '../parts/time/use-times.ts'
import type { CurveQuantity } from './curve-quantities.ts'
import { rowAt } from './curve-rows.ts'
import { stageAt, type CurveView } from './curve-view.ts'
import { CurveValue } from './curve-value.tsx'
import styles from './batch-curve.module.css'

/** Readings as near as this share of the whole time belong to the instant pointed at. */
const nearShare = 0.012

export interface CurveReadoutProps {
  view: CurveView
  shown: readonly CurveQuantity[]
  atMs: number
}

export function CurveReadout({ view, shown, atMs }: CurveReadoutProps) {
  const t = useWords()
  const times = useTimes()
  const { domain, bands, rows, readings, nowMs } = view
  const row = rowAt(rows, atMs)
  const changed = view.changed && rowAt(view.changed.rows, atMs)
  const stage = stageAt(bands, atMs)
  const nearMs = nearShare * (domain.toMs - domain.fromMs)
  const near = readings.filter((reading) => Math.abs(reading.atMs - atMs) <= nearMs)
  const standing = atMs > nowMs ? t('batch.curve.forecast') : stage && t(`codes.stage.${stage}`)
  return (
    <div className={styles.readout}>
      <p className={styles.instant}>
        {times.moment(new Date(atMs).toISOString())}
        <span className={styles.quiet}>
          {t('batch.curve.day', { day: Math.floor((atMs - domain.fromMs) / msPerDay) })}
          {standing && `, ${standing}`}
        </span>
      </p>
      {row &&
        shown.map((quantity) => (
          <CurveValue key={quantity} quantity={quantity} row={row} isNamed />
        ))}
      {changed && (
        <div className={styles.reading}>
          <span>{t('batch.curve.changed')}</span>
          {shown.map((quantity) => (
            <CurveValue key={quantity} quantity={quantity} row={changed} isNamed />
          ))}
        </div>
      )}
      {near.map((reading) => (
        <div key={reading.moveId} className={styles.reading}>
          <span>{t(`batch.curve.readingIs.${reading.standing}`)}</span>
          {reading.strengthPctVol !== undefined && (
            <Strength
              pctVol={reading.strengthPctVol}
              uncertaintyPctVol={reading.strengthUncertaintyPctVol}
            />
          )}
          {reading.sugarGPerL !== undefined && (
            <Sugar gPerL={reading.sugarGPerL} uncertaintyGPerL={reading.sugarUncertaintyGPerL} />
          )}
        </div>
      ))}
    </div>
  )
}
