/** The curve in a sentence: where the lines begin, where they stand now, where they end. */
import { useWords } from '../../../app/words/use-words.ts'
import type { CurveView } from '../../../charts/curve-view.ts'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../../parts/time/use-times.ts'

export function useCurveWords({ rows, nowMs }: CurveView): string {
  const t = useWords()
  const { text } = useQuantities()
  const times = useTimes()
  const drawn = rows.filter((row) => row.values !== null)
  const first = drawn[0]
  const now = drawn.findLast(({ atMs }) => atMs <= nowMs)
  const last = drawn.at(-1)
  if (!first?.values || !now?.values || !last?.values) return t('batch.curve.emptyJar')
  const day = (atMs: number) => times.day(new Date(atMs).toISOString())
  const words = {
    from: day(first.atMs),
    strengthFrom: text(first.values.strengthPctVol, 'strength'),
    strengthTo: text(now.values.strengthPctVol, 'strength'),
    sugarFrom: text(first.values.sugarGPerL, 'sugar'),
    sugarTo: text(now.values.sugarGPerL, 'sugar'),
  }
  if (last.atMs <= nowMs) return t('batch.curve.description', words)
  return t('batch.curve.descriptionForecast', {
    ...words,
    end: day(last.atMs),
    strengthEnd: text(last.values.strengthPctVol, 'strength'),
    sugarEnd: text(last.values.sugarGPerL, 'sugar'),
  })
}
