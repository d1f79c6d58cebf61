/** All quantities of the curve at one instant, beside the pointer or the keyboard's cursor. */
import { msPerDay } from '../../shared/spans-of-time.ts'
import { useWords } from '../app/words/use-words.ts'
import { Strength, Sugar } from '../parts/quantity/composition.tsx'
import { Quantity } from '../parts/quantity/quantity.tsx'
import { useTimes } from '../parts/time/use-times.ts'
import { rowAt } from './curve-rows.ts'
import { stageAt, type CurveView } from './curve-view.ts'
import styles from './batch-curve.module.css'

/** Readings as near as this share of the whole time belong to the instant pointed at. */
const nearShare = 0.012

export function CurveReadout({ view, atMs }: { view: CurveView; atMs: number }) {
  const t = useWords()
  const times = useTimes()
  const { domain, bands, rows, readings } = view
  const row = rowAt(rows, atMs)
  const stage = stageAt(bands, atMs)
  const nearMs = nearShare * (domain.toMs - domain.fromMs)
  const near = readings.filter((reading) => Math.abs(reading.atMs - atMs) <= nearMs)
  return (
    <div className={styles.readout}>
      <p className={styles.instant}>
        {times.moment(new Date(atMs).toISOString())}
        <span className={styles.quiet}>
          {t('batch.curve.day', { day: Math.floor((atMs - domain.fromMs) / msPerDay) })}
          {stage && `, ${t(`codes.stage.${stage}`)}`}
        </span>
      </p>
      {row?.strengthPctVol != null && <Strength pctVol={row.strengthPctVol} />}
      {row?.sugarGPerL != null && <Sugar gPerL={row.sugarGPerL} />}
      {row?.volumeMl != null && (
        <span>
          {t('batch.curve.volume')} <Quantity value={row.volumeMl} dimension="volume" />
        </span>
      )}
      {near.map((reading) => (
        <div key={reading.moveId} className={styles.reading}>
          <span>
            {t(reading.isUsed ? 'batch.curve.readingUsed' : 'batch.curve.readingDoubtful')}
          </span>
          {reading.strengthPctVol !== undefined && <Strength pctVol={reading.strengthPctVol} />}
          {reading.sugarGPerL !== undefined && <Sugar gPerL={reading.sugarGPerL} />}
        </div>
      ))}
    </div>
  )
}
