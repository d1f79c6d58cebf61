/** A lot's window in a sentence, and its edges as a span. */
import { useWords } from '../app/words/use-words.ts'
import { useSettings } from '../app/settings.tsx'
import type { AgeingBar, EdgeMs } from './ageing-rows.ts'
import { dateFormat } from '../parts/formatters/formatters.ts'

export function useAgeingWords() {
  const t = useWords()
  const { locale } = useSettings()
  const format = dateFormat(locale, { month: 'short', year: 'numeric' })
  const edge = ({ earlyMs, likelyMs, lateMs }: EdgeMs) =>
    t('shelf.ageing.about', {
      early: format.format(earlyMs),
      likely: format.format(likelyMs),
      late: format.format(lateMs),
    })
  const bar = ({ name, count, phase, ready, fading }: AgeingBar) =>
    t('shelf.ageing.bar', {
      name,
      bottles: t('parts.bottles', { count }),
      phase: t(`shelf.phase.${phase}`),
      ready: format.format(ready.likelyMs),
      readyEarly: format.format(ready.earlyMs),
      readyLate: format.format(ready.lateMs),
      fading: format.format(fading.likelyMs),
      fadingEarly: format.format(fading.earlyMs),
      fadingLate: format.format(fading.lateMs),
    })
  return { edge, bar }
}
