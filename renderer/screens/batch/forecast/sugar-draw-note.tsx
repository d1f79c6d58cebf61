/** What covering the spent fruit with sugar would bring, and the form that does it. */
import { useWords } from '../../../app/words/use-words.ts'
import type { JarForecast } from '../../../../shared/schemas/steeping.ts'
import { Button } from '../../../parts/button/button.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import type { LoggedKind } from '../../../parts/moves/kinds.ts'
import type { Prefill } from '../log/log-panel.tsx'
import styles from './forecast.module.css'

interface SugarDrawNoteProps {
  forecast: JarForecast
  onOpen: (kind: LoggedKind, prefill?: Prefill) => void
}

/** Sugar is weighed on a kitchen scale. */
const stepG = 10

/** A draw is for spent fruit: before half of its extract is out there is nothing to gain by it. */
const leastExtract = 0.5

export function SugarDrawNote({ forecast, onOpen }: SugarDrawNoteProps) {
  const t = useWords()
  const { text } = useQuantities()
  const { jarId, sugarDraw, extractFraction } = forecast
  if (!sugarDraw || extractFraction.value < leastExtract) return null
  const amount = Math.round(sugarDraw.sugarG / stepG) * stepG
  const cover: Prefill = (draft) =>
    draft.kind === 'coverWithSugar' ? { ...draft, jarIds: [jarId], amount } : draft
  return (
    <div className={styles.note}>
      <p>
        {t('batch.forecast.sugarDrawBrings', {
          sugar: text(amount, 'mass'),
          volume: text(sugarDraw.outMl, 'volume'),
          strength: text(sugarDraw.outStrengthPctVol, 'strength'),
          ethanol: text(sugarDraw.recoveredEthanolMl, 'volume'),
          held: text(sugarDraw.heldEthanolMl, 'volume'),
        })}
        {sugarDraw.valueMinor !== undefined &&
          ` ${t('batch.forecast.sugarDrawWorth', { value: text(sugarDraw.valueMinor, 'money') })}`}
      </p>
      <Button onPress={() => onOpen('coverWithSugar', cover)}>{t('batch.forecast.cover')}</Button>
    </div>
  )
}
