/** When something arrives, with the days that hold it nine times in ten. */
import { useWords } from '../../../app/words/use-words.ts'
import type { ArrivalAt } from '../../../../shared/schemas/steeping.ts'
import { useTimes } from '../../../parts/time/use-times.ts'

/** The screen’s clock may be this much behind the book’s. */
const clockMs = 120_000

export function useArrivalWords(): (arrival: ArrivalAt) => string {
  const t = useWords()
  const { day, now } = useTimes()
  const isThere = (instant: string) => Date.parse(instant) <= now.getTime() + clockMs
  return ({ early, typical, late }) => {
    const on = (instant: string) => (isThere(instant) ? t('batch.forecast.arrived') : day(instant))
    if (typical === undefined)
      return early === undefined
        ? t('batch.forecast.beyond')
        : t('batch.forecast.arrivalFromOnly', { early: on(early) })
    if (early === undefined) return on(typical)
    if (isThere(typical))
      return late === undefined || isThere(late)
        ? on(typical)
        : t('batch.forecast.arrivedOr', { late: on(late) })
    if (late === undefined)
      return t('batch.forecast.arrivalFrom', { typical: on(typical), early: on(early) })
    return on(early) === on(late)
      ? on(typical)
      : t('batch.forecast.arrivalRange', {
          typical: on(typical),
          early: on(early),
          late: on(late),
        })
  }
}
