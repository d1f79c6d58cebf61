/** The book's own account against the fitted one, where they differ by more than the band. */
import { useWords } from '../../../app/words/use-words.ts'
import type { JarContents } from '../../../../shared/schemas/cellar.ts'
import type { JarForecast } from '../../../../shared/schemas/steeping.ts'
import { Button } from '../../../parts/button/button.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import type { LoggedKind } from '../../../parts/moves/kinds.ts'
import type { Prefill } from '../log/log-panel.tsx'
import styles from './forecast.module.css'

interface BookDiffersProps {
  forecast: JarForecast
  contents: JarContents | undefined
  onOpen: (kind: LoggedKind, prefill?: Prefill) => void
}

export function BookDiffers({ forecast: { jarId, now }, contents, onOpen }: BookDiffersProps) {
  const t = useWords()
  const { text, of } = useQuantities()
  const book = contents?.liquid?.strengthPctVol
  const { value, low, high } = now.strengthPctVol
  if (book === undefined || (book >= low && book <= high)) return null
  const fitted = Math.round(value * 10) / 10
  const mend: Prefill = (draft) =>
    draft.kind === 'correct' ? { ...draft, subject: 'jar', jarId, strengthPctVol: fitted } : draft
  return (
    <div className={styles.differs}>
      <p>
        {t('batch.forecast.differs', {
          book: text(book, 'strength'),
          fitted: text(fitted, 'strength'),
          give: of((high - low) / 2, 'strength').number,
        })}
      </p>
      <Button onPress={() => onOpen('correct', mend)}>{t('batch.forecast.mend')}</Button>
    </div>
  )
}
