/** Which wishes cannot be had, why, and what could be. */
import { useWords } from '../../../app/words/use-words.ts'
import type { BrokenWish, WishName } from '../../../../shared/schemas/marrying.ts'
import { useSettings } from '../../../app/settings.tsx'
import type { Dimension } from '../../../parts/quantity/units.ts'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import type { Places } from '../use-places.ts'
import styles from './result.module.css'
import { listFormat } from '../../../parts/formatters/formatters.ts'

const dimensions = {
  strengthPctVol: 'strength',
  sugarGPerL: 'sugar',
  acidGPerL: 'acid',
  volumeMl: 'volume',
} as const satisfies Record<WishName, Dimension>

export function BrokenList({ broken, places }: { broken: readonly BrokenWish[]; places: Places }) {
  const t = useWords()
  const words = useBrokenWords(places)
  return (
    <div className={styles.broken} aria-live="polite">
      {broken.length > 0 && (
        <>
          <p className={styles.brokenTitle}>{t('marry.answer.broken')}</p>
          <ul>
            {broken.map((one) => (
              <li key={one.wish}>{words(one)}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  )
}

export function useBrokenWords({ byPlace }: Places): (broken: BrokenWish) => string {
  const t = useWords()
  const { locale } = useSettings()
  const { text } = useQuantities()
  const list = listFormat(locale, { type: 'conjunction' })
  return ({ wish, low, high, reached, reason, reachable, places }) => {
    const value = (of: number) => text(of, dimensions[wish])
    const asked = low ?? high ?? 0
    const sense = low === undefined ? 'atMost' : high === undefined ? 'atLeast' : 'exactly'
    return t(`marry.why.${withoutGaps(reason, reachable !== undefined, places.length > 0)}`, {
      wish: t(`marry.wish.${wish}`),
      asked: t(`marry.senseValue.${sense}`, { value: value(asked) }),
      reached: value(reached),
      low: value(reachable?.low ?? 0),
      high: value(reachable?.high ?? 0),
      places: list.format(places.map((place) => byPlace.get(place)?.name ?? place)),
    })
  }
}

function withoutGaps(reason: BrokenWish['reason'], hasRange: boolean, hasPlaces: boolean) {
  if (reason === 'conflict' && !hasRange) return 'conflictAlone'
  if (reason === 'stock' && !hasPlaces) return 'stockNone'
  return reason
}
