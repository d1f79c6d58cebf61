/** What to add, to a sample first; what the jar then holds and what it costs. */
import { useState } from 'react'
import type { Batch } from '../../../../shared/schemas/cellar.ts'
import type { MendReply } from '../../../../shared/schemas/marrying.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { Section } from '../../../parts/page/page.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import type { PlaceShown } from '../places.ts'
import { Recorded, RecordingRow } from '../record/recording-row.tsx'
import { AmountTable } from '../result/amount-table.tsx'
import { BrokenList } from '../result/broken-list.tsx'
import { Figures } from '../result/figures.tsx'
import styles from '../result/result.module.css'
import { FillNote, overflows } from '../result/target-choice.tsx'
import { useAmounts } from '../use-amounts.ts'
import type { Places } from '../use-places.ts'

export interface MendAnswerProps {
  reply: MendReply
  jar: PlaceShown
  places: Places
}

export function MendAnswer({ reply, jar, places }: MendAnswerProps) {
  const t = useWords()
  const words = useAmounts()
  const [into, setInto] = useState<Pick<Batch, 'id' | 'name'>>()
  const { amounts, liquid, cost, costBefore, fill, broken } = reply
  const added = {
    minor: Math.max(cost.minor - costBefore.minor, 0),
    isComplete: amounts.every((one) => one.cost.isComplete),
  }
  return (
    <div className={styles.answer}>
      <BrokenList broken={broken} places={places} />
      {amounts.length === 0 && broken.length === 0 && <p>{t('marry.mend.noneNeeded')}</p>}
      {amounts.length > 0 && (
        <>
          <Trial reply={reply} places={places} />
          <Section title={t('marry.mend.add')}>
            <AmountTable amounts={amounts} cost={added} places={places} />
          </Section>
        </>
      )}
      {liquid && (
        <Section title={t('marry.mend.after')}>
          <Figures liquid={liquid} label={t('marry.mend.after')} />
          <Ratio reply={reply} />
          {Math.round(added.minor) > 0 && (
            <p>
              {t(added.isComplete ? 'marry.mend.costs' : 'marry.mend.costsAtLeast', {
                cost: words.cost({ ...added, isComplete: true }),
              })}
            </p>
          )}
          <FillNote fill={fill} />
        </Section>
      )}
      {amounts.length > 0 && (
        <RecordingRow
          amounts={amounts}
          toJarId={jar.place.slice('jar:'.length)}
          batchIds={jar.batchId === undefined ? [] : [jar.batchId]}
          mayOpenBatch={false}
          heldBack={overflows(fill) ? t('marry.record.overflows') : undefined}
          onRecorded={setInto}
        />
      )}
      <Recorded into={into} />
    </div>
  )
}

function Trial({ reply: { trial }, places }: Pick<MendAnswerProps, 'reply' | 'places'>) {
  const t = useWords()
  const { text, size } = useQuantities()
  const sample = size(trial.sampleMl, 'volume').text
  return (
    <Section title={t('marry.mend.trialAdd', { sample })}>
      <ul>
        {trial.amounts.map(({ place, unit, amount }) => (
          <li key={place} className={styles.trial}>
            <strong>{text(amount, unit === 'g' ? 'mass' : 'volume')}</strong>{' '}
            {places.byPlace.get(place)?.name ?? place}
          </li>
        ))}
      </ul>
      <p className={styles.small}>{t('marry.mend.trialHint')}</p>
    </Section>
  )
}

function Ratio({ reply: { liquid } }: Pick<MendAnswerProps, 'reply'>) {
  const t = useWords()
  if (!liquid || liquid.acidGPerL < 0.5) return null
  const ratio = Math.round(liquid.sugarGPerL / liquid.acidGPerL)
  return (
    <p>
      {t('marry.mend.ratio', { ratio })}{' '}
      <span className={styles.small}>{t('marry.mend.ratioHint')}</span>
    </p>
  )
}
