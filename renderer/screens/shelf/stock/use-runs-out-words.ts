/** When a kind runs out, in words. */
import { useWords } from '../../../app/words/use-words.ts'
import type { KindStock } from '../../../../shared/schemas/shelf.ts'
import { useWindowWords } from '../use-window-words.ts'

export function useRunsOutWords(): (stock: KindStock) => string {
  const t = useWords()
  const { month } = useWindowWords()
  return ({ runsOut, volumeMl }) => {
    if (volumeMl <= 0) return t('shelf.stock.nothing')
    if (!runsOut) return t('shelf.stock.lasts')
    const { early, likely, late } = runsOut
    if (likely === null) return t('shelf.stock.notBefore', { early: month(early) })
    const when = month(likely)
    return late === null
      ? t('shelf.stock.about', { when })
      : t('shelf.stock.aboutBand', { when, early: month(early), late: month(late) })
  }
}
