/** Measured numbers in this cellar's locale and units. */
import { useWords } from '../../app/words/use-words.ts'
import type { BenchDimension } from '../../../shared/schemas/bench.ts'
import { useSettings } from '../../app/settings.tsx'
import { formatMeasured, type MeasuredText } from './format-measured.ts'

export interface MeasuredTexts {
  /** Number, uncertainty and unit apart. */
  of: (value: number, uncertainty: number | undefined, dimension: BenchDimension) => MeasuredText
  /** All in one, for sentences. */
  text: (value: number, dimension: BenchDimension, uncertainty?: number) => string
}

export function useMeasuredText(): MeasuredTexts {
  const t = useWords()
  const settings = useSettings()
  const of: MeasuredTexts['of'] = (value, uncertainty, dimension) => {
    const shown = formatMeasured(value, uncertainty, dimension, settings)
    return dimension === 'massShare' ? { ...shown, unit: t('bench.ofMass') } : shown
  }
  return {
    of,
    text: (value, dimension, uncertainty) => {
      const { number, uncertainty: off, unit } = of(value, uncertainty, dimension)
      return [number, off && `±\u00a0${off}`, unit].filter(Boolean).join('\u00a0')
    },
  }
}
