/** How much of the colour is left over the years, with its band, and now. */
import { useWords } from '../app/words/use-words.ts'
import { useSettings } from '../app/settings.tsx'
import type { ShelfPage } from '../../shared/schemas/shelf.ts'
import { formatShare } from '../parts/quantity/format-share.ts'
import { compareColour } from './compare-ink.ts'
import { colourRows } from './colour-rows.ts'
import { PastAndForecast } from './past-and-forecast.tsx'

export interface ColourLinesProps {
  points: ShelfPage['colour']
  nowMs: number
  /** Of the batch. */
  colour: string
  description: string
}

export function ColourLines({ points, nowMs, colour, description }: ColourLinesProps) {
  const t = useWords()
  const { locale } = useSettings()
  return (
    <PastAndForecast
      rows={colourRows(points, nowMs)}
      title={t('shelf.lot.colour')}
      description={description}
      firstSize={{ width: 560, height: 220 }}
      margin={{ top: 20, right: 16, bottom: 0, left: 0 }}
      ink={{ colour: compareColour(colour), bandOpacity: 0.2 }}
      now={{ atMs: nowMs, word: t('shelf.ageing.today'), lineWidth: 1 }}
      mostTicks={6}
      amounts={{
        ticks: [0, 0.5, 1],
        format: (value) => formatShare(value, locale),
        widthPx: 58,
      }}
    />
  )
}
