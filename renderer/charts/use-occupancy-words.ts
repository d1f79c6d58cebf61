/** A bar of the jars' year in a sentence, and what stands there by its name. */
import { useWords } from '../app/words/use-words.ts'
import { useQuantities } from '../parts/quantity/use-quantities.ts'
import { useTimes } from '../parts/time/use-times.ts'
import type { OccupancyBar } from './occupancy-rows.ts'

export interface BarNames {
  readonly kindName: (kindId: string) => string
  readonly batchName: (batchId: string) => string
}

export function useOccupancyWords({ kindName, batchName }: BarNames) {
  const t = useWords()
  const { text } = useQuantities()
  const times = useTimes()
  const what = ({ kindId, batchId }: OccupancyBar) =>
    kindId === undefined ? (batchId === undefined ? '' : batchName(batchId)) : kindName(kindId)
  const bar = (jarName: string, one: OccupancyBar) =>
    t(one.use === 'cleaning' ? 'season.jars.cleaningBar' : 'season.jars.bar', {
      jar: jarName,
      what: what(one),
      use: t(`season.use.${one.use}`),
      from: times.day(new Date(one.fromMs).toISOString()),
      to: times.day(new Date(one.toMs).toISOString()),
      weeks: t('season.weeks', { count: one.weeks }),
      fill: text(one.fillMl, 'volume'),
    })
  return { what, bar }
}
