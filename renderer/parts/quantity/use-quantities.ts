/** Quantities in this cellar's locale, units and currency. */
import { useMemo } from 'react'
import { useSettings } from '../../app/settings.tsx'
import { formatQuantity, type FormattedQuantity } from './format-quantity.ts'
import type { Dimension } from './units.ts'

export interface Quantities {
  /** Number and unit apart. */
  of: (value: number, dimension: Dimension, unit?: string) => FormattedQuantity
  /** Number and unit as one text, for labels and sentences. */
  text: (value: number, dimension: Dimension, unit?: string) => string
  /** A size as it is sold: 3 L, not 3.00 L. */
  size: (value: number, dimension: Dimension) => FormattedQuantity
}

export function useQuantities(): Quantities {
  const { locale, units, currency } = useSettings()
  return useMemo(() => {
    const of = (value: number, dimension: Dimension, unit?: string) =>
      formatQuantity(value, dimension, { locale, units, currency, unit })
    return {
      of,
      text: (...asked) => of(...asked).text,
      size: (value, dimension) =>
        formatQuantity(value, dimension, { locale, units, currency, isNominal: true }),
    }
  }, [locale, units, currency])
}
