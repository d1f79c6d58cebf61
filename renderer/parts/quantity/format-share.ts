/** A share of a whole as people in a locale write it: 87 %. */
export const formatShare = (fraction: number, locale: string): string =>
  new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 0 }).format(fraction)
