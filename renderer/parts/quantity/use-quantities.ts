/** Quantities in this cellar's locale, units and currency. */
import { useMemo } from 'react'
import { useSettings } from '../../app/settings.tsx'
import { formatDifference, formatQuantity, type FormattedQuantity } from './format-quantity.ts'
import type { Dimension } from './units.ts'

export interface Quantities {
  /** Number and unit apart. */
  of: (value: number, dimension: Dimension, unit?: string) => FormattedQuantity
  /** Number and unit as one text, for labels and sentences. */
  text: (value: number, dimension: Dimension, unit?: string) => string
  /** A size as it is sold: 3 L, not 3.00 L. */
  size: (value: number, dimension: Dimension) => FormattedQuantity
  /** What lies between two values, or an uncertainty: no zero of a scale counts in it. */
  difference: (value: number, dimension: Dimension, unit?: string) => FormattedQuantity
}

export function useQuantities(): Quantities {
  const settings = useSettings()
  return useMemo(() => {
    const of = (value: number, dimension: Dimension, unit?: string) =>
      formatQuantity(value, dimension, { ...settings, unit })
    return {
      of,
      text: (...asked) => of(...asked).text,
      size: (value, dimension) =>
        formatQuantity(value, dimension, { ...settings, isNominal: true }),
      difference: (value, dimension, unit) =>
        formatDifference(value, dimension, { ...settings, unit }),
    }
  }, [settings])
}
