/** What each jar would give at that date, and what it gives as it is. */
import type { ReactNode } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import type { BatchCurve } from '../../../../shared/schemas/steeping.ts'
import { Strength, Sugar } from '../../../parts/quantity/composition.tsx'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { Table } from '../../../parts/table/table.tsx'
import { useTimes } from '../../../parts/time/use-times.ts'
import { useShares } from '../use-shares.ts'
import styles from './what-if-strip.module.css'

type Outcome = NonNullable<BatchCurve['whatIf']>['outcomes'][number]

interface OutcomesProps {
  outcomes: readonly Outcome[]
  jarName: (jarId: string) => string
}

export function Outcomes({ outcomes, jarName }: OutcomesProps) {
  const t = useWords()
  const { text } = useQuantities()
  const times = useTimes()
  const share = useShares()
  if (outcomes.length === 0) return <p>{t('batch.whatIf.none')}</p>
  return (
    <div className={styles.outcomes}>
      {outcomes.map(({ changed }) => (
        <p key={changed.jarId}>
          {t('batch.whatIf.told', {
            jar: jarName(changed.jarId),
            day: times.day(changed.at),
            strength: text(changed.values.strengthPctVol, 'strength'),
            sugar: text(changed.values.sugarGPerL, 'sugar'),
            volume: text(changed.values.volumeMl, 'volume'),
          })}
        </p>
      ))}
      <Table<Outcome>
        caption={t('batch.whatIf.caption')}
        rows={outcomes}
        rowKey={({ changed }) => changed.jarId}
        columns={[
          {
            key: 'jar',
            header: t('batch.whatIf.jar'),
            isRowHeader: true,
            cell: ({ changed }) => (
              <>
                {jarName(changed.jarId)}
                <span className={styles.against}>{times.day(changed.at)}</span>
              </>
            ),
          },
          {
            key: 'strength',
            header: t('batch.curve.quantity.strengthPctVol'),
            align: 'end',
            cell: ({ changed, asIs }) => (
              <Pair asIs={text(asIs.values.strengthPctVol, 'strength')}>
                <Strength pctVol={changed.values.strengthPctVol} />
              </Pair>
            ),
          },
          {
            key: 'sugar',
            header: t('batch.curve.quantity.sugarGPerL'),
            align: 'end',
            cell: ({ changed, asIs }) => (
              <Pair asIs={text(asIs.values.sugarGPerL, 'sugar')}>
                <Sugar gPerL={changed.values.sugarGPerL} />
              </Pair>
            ),
          },
          {
            key: 'volume',
            header: t('batch.curve.quantity.volumeMl'),
            align: 'end',
            cell: ({ changed, asIs }) => (
              <Pair asIs={text(asIs.values.volumeMl, 'volume')}>
                <Quantity value={changed.values.volumeMl} dimension="volume" />
              </Pair>
            ),
          },
          {
            key: 'extract',
            header: t('batch.whatIf.extract'),
            align: 'end',
            cell: ({ changed, asIs }) => (
              <Pair asIs={share(asIs.extractFraction)}>{share(changed.extractFraction)}</Pair>
            ),
          },
          {
            key: 'colour',
            header: t('batch.whatIf.colour'),
            align: 'end',
            cell: ({ changed, asIs }) => (
              <Pair asIs={share(asIs.colourFraction)}>{share(changed.colourFraction)}</Pair>
            ),
          },
        ]}
      />
    </div>
  )
}

/** A number as it would be, and under it as it is. */
function Pair({ children, asIs }: { children: ReactNode; asIs: string }) {
  const t = useWords()
  return (
    <>
      {children}
      <span className={styles.against}>{t('batch.whatIf.against', { value: asIs })}</span>
    </>
  )
}
