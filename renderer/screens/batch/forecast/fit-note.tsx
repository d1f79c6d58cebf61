/** What readings and measured volumes taught about this batch's fruit, against what was believed. */
import { useWords } from '../../../app/words/use-words.ts'
import type { Banded, BatchFit, CurveReading } from '../../../../shared/schemas/steeping.ts'
import { useSettings } from '../../../app/settings.tsx'
import { useJars } from '../../../parts/names/use-names.ts'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../../parts/time/use-times.ts'
import { useShares } from '../use-shares.ts'
import { useCurve } from '../use-steeping.ts'
import styles from './forecast.module.css'
import { numberFormat } from '../../../parts/formatters/formatters.ts'

export function FitNote({ batchId, fit }: { batchId: string; fit: BatchFit | undefined }) {
  const t = useWords()
  const readings = useCurve(batchId).data?.readings ?? []
  const isLearned = fit && fit.readingsUsed + fit.volumesUsed > 0
  return (
    <section className={styles.fit} aria-label={t('batch.forecast.fit.title')}>
      <h3>{t('batch.forecast.fit.title')}</h3>
      {isLearned ? <Learned fit={fit} /> : <p>{t('batch.forecast.fit.noReadings')}</p>}
      {readings
        .filter(({ isOutlier }) => isOutlier)
        .map((reading) => (
          <Outlier key={reading.moveId} reading={reading} />
        ))}
    </section>
  )
}

function Learned({ fit }: { fit: BatchFit }) {
  const t = useWords()
  const { locale } = useSettings()
  const share = useShares()
  const times = numberFormat(locale, {
    minimumSignificantDigits: 2,
    maximumSignificantDigits: 2,
  })
  const readings = t('batch.forecast.fit.readings', { count: fit.readingsUsed })
  const volumes = t('batch.forecast.fit.volumes', { count: fit.volumesUsed })
  const plain = (value: number) => times.format(value)
  const asShare = (value: number) => share(1 + value)
  return (
    <>
      <p>
        {t('batch.forecast.fit.pace', {
          ...both(fit.pace, fit.priorPace, plain),
          pace: plain(fit.pace.value),
          readings:
            fit.volumesUsed === 0
              ? readings
              : fit.readingsUsed === 0
                ? volumes
                : t('batch.forecast.fit.and', { readings, volumes }),
        })}
      </p>
      <p>
        {t('batch.forecast.fit.hold', {
          ...both(fit.hold, fit.priorHold, plain),
          hold: plain(fit.hold.value),
        })}
      </p>
      <p>
        {t('batch.forecast.fit.juice', {
          ...both(fit.juice, fit.priorJuice, asShare),
          juice: asShare(fit.juice.value),
        })}
      </p>
    </>
  )
}

/** A band and what was believed before, each as its two ends. */
const both = (band: Banded, prior: Banded, format: (value: number) => string) => ({
  low: format(band.low),
  high: format(band.high),
  before: format(prior.low),
  after: format(prior.high),
})

function Outlier({ reading: { at, jarId, interpretation } }: { reading: CurveReading }) {
  const t = useWords()
  const { day } = useTimes()
  const { text } = useQuantities()
  const jars = useJars()
  const { strengthPctVol, sugarGPerL } = interpretation
  const value = [
    ...(strengthPctVol === undefined ? [] : [text(strengthPctVol, 'strength')]),
    ...(sugarGPerL === undefined ? [] : [text(sugarGPerL, 'sugar')]),
  ].join(', ')
  return (
    <p>
      {t('batch.forecast.fit.outlier', {
        day: day(at),
        jar: jars.get(jarId)?.jar.name ?? t('parts.place.theJar'),
        value,
      })}
    </p>
  )
}
