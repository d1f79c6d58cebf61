/** "4 seconds" and "2.5 seconds": how long a search took; fine only where it is short. */
import { numberFormat } from '../../parts/formatters/formatters.ts'
export const formatSeconds = (seconds: number, locale: string): string =>
  numberFormat(locale, {
    style: 'unit',
    unit: 'second',
    unitDisplay: 'long',
    maximumFractionDigits: seconds < 10 ? 1 : 0,
  }).format(seconds)
