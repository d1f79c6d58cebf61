/** A window in words: what comes next, and when. */
import { useMemo } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { useSettings } from '../../app/settings.tsx'
import type { AgeingWindow } from '../../../shared/schemas/shelf.ts'
import { monthPhrase } from '../../parts/formatters/formatters.ts'

export interface WindowWords {
  /** "until about May 2028". */
  short: (window: AgeingWindow) => string
  /** "ready, until about May 2028". */
  long: (window: AgeingWindow) => string
  /** "May 2028", after a preposition: no one knows the day on which a liqueur is ready. */
  month: (instant: string) => string
}

export function useWindowWords(): WindowWords {
  const t = useWords()
  const { locale } = useSettings()
  return useMemo(() => {
    const format = monthPhrase(locale, { month: 'short', year: 'numeric' })
    const month = (instant: string) => format(new Date(instant))
    const nextEdge = ({ phase, readyAt, fadingAt }: AgeingWindow) =>
      month(phase === 'young' ? readyAt.likely : fadingAt.likely)
    return {
      month,
      short: (window) => t(`shelf.lots.${window.phase}`, { when: nextEdge(window) }),
      long: (window) => t(`shelf.lot.windowWords.${window.phase}`, { when: nextEdge(window) }),
    }
  }, [locale, t])
}
