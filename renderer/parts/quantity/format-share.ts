/** A share of a whole as people in a locale write it: 87 %. */
import { numberFormat } from '../formatters/formatters.ts'

export const formatShare = (fraction: number, locale: string): string =>
  numberFormat(locale, { style: 'percent', maximumFractionDigits: 0 }).format(fraction)
