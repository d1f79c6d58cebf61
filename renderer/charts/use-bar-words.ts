/** A bar of the jar timeline in a sentence: which vessel, what stage, how long, what stood in it. */
import { useWords } from '../app/words/use-words.ts'
import { useSettings } from '../app/settings.tsx'
import { formatShare } from '../parts/quantity/format-share.ts'
import { useQuantities } from '../parts/quantity/use-quantities.ts'
import { formatSpan } from '../parts/time/format-time.ts'
import { useTimes } from '../parts/time/use-times.ts'
import type { TimelineBar } from './timeline-rows.ts'

type BarWords = (jarName: string, bar: TimelineBar, extracted?: number) => string

export function useBarWords(): BarWords {
  const t = useWords()
  const { locale } = useSettings()
  const { text } = useQuantities()
  const times = useTimes()
  return (jarName, { stage, fromMs, toMs, isOpen, contents: { liquid } }, extracted) => {
    const from = new Date(fromMs).toISOString()
    const contents = liquid
      ? t('batch.timeline.contents', {
          volume: text(liquid.volumeMl, 'volume'),
          strength: text(liquid.strengthPctVol, 'strength'),
          sugar: text(liquid.sugarGPerL, 'sugar'),
        })
      : t('batch.timeline.noLiquid')
    const out =
      extracted === undefined
        ? []
        : [t('batch.timeline.out', { share: formatShare(extracted, locale) })]
    return t(isOpen ? 'batch.timeline.barOpen' : 'batch.timeline.bar', {
      jar: jarName,
      stage: [t(`codes.stage.${stage}`), ...out].join(', '),
      from: times.day(from),
      to: times.day(new Date(toMs).toISOString()),
      span: formatSpan(from, new Date(toMs), locale),
      contents,
    })
  }
}
