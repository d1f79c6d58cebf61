/** A lot's window in a sentence, and its edges as a span. */
import { useWords } from '../app/words/use-words.ts'
import { useSettings } from '../app/settings.tsx'
import type { AgeingBar, EdgeMs } from './ageing-rows.ts'
import { dateFormat, monthPhrase } from '../parts/formatters/formatters.ts'

export function useAgeingWords() {
  const t = useWords()
  const { locale } = useSettings()
  const format = dateFormat(locale, { month: 'short', year: 'numeric' })
  const phrase = monthPhrase(locale, { month: 'short', year: 'numeric' })
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
      ready: phrase(ready.likelyMs),
      readyEarly: phrase(ready.earlyMs),
      readyLate: phrase(ready.lateMs),
      fading: phrase(fading.likelyMs),
      fadingEarly: phrase(fading.earlyMs),
      fadingLate: phrase(fading.lateMs),
    })
  return { edge, bar }
}
