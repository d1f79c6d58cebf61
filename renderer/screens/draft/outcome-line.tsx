/** The answer first: bottles, strength, sugar, when, and what it costs. */
import { memo } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { DraftOutcome } from '../../../shared/schemas/drafts.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../parts/time/use-times.ts'
import styles from './outcome-line.module.css'

export const OutcomeLine = memo(function OutcomeLine({
  outcome,
  startAt,
}: {
  outcome: DraftOutcome
  startAt: string
}) {
  const t = useWords()
  const q = useQuantities()
  const times = useTimes()
  const { finished, bottles, remainderMl, bottledAt, readyAt, drinkBy, costMinor } = outcome
  if (!finished) return <p className={styles.answer}>{t('draft.editor.nothing')}</p>
  const told = [
    remainderMl >= 20 && t('draft.editor.remainder', { volume: q.text(remainderMl, 'volume') }),
    t('draft.editor.starts', { day: times.day(startAt) }),
    bottledAt && t('draft.editor.bottled', { day: times.day(bottledAt) }),
    readyAt && t('draft.editor.ready', { day: times.day(readyAt) }),
    drinkBy && t('draft.editor.drinkBy', { day: times.day(drinkBy) }),
    costMinor !== undefined &&
      t(outcome.isWholeCost ? 'draft.editor.cost' : 'draft.editor.costPart', {
        money: q.text(costMinor, 'money'),
      }),
    costMinor !== undefined &&
      bottles > 0 &&
      t('draft.editor.perBottle', { money: q.text(costMinor / bottles, 'money') }),
  ].filter((words) => typeof words === 'string')
  return (
    <div className={styles.outcome} aria-live="polite">
      <p className={styles.answer}>
        {t('draft.editor.outcome', {
          bottles:
            bottles > 0
              ? t('parts.bottles', { count: bottles })
              : q.text(finished.volumeMl, 'volume'),
          strength: q.text(finished.strengthPctVol, 'strength'),
          sugar: q.text(finished.sugarGPerL, 'sugar'),
        })}
      </p>
      <p className={styles.rest}>{told.join(' · ')}</p>
    </div>
  )
})
