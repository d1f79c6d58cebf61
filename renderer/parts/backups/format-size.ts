/** The size of a file as people say it. */
import { numberFormat } from '../formatters/formatters.ts'

const units = ['byte', 'kilobyte', 'megabyte', 'gigabyte'] as const

export function formatSize(bytes: number, locale: string): string {
  const power = bytes < 1 ? 0 : Math.min(units.length - 1, Math.floor(Math.log10(bytes) / 3))
  return numberFormat(locale, {
    style: 'unit',
    unit: units[power] ?? 'byte',
    unitDisplay: 'short',
    maximumSignificantDigits: 3,
  }).format(bytes / 1000 ** power)
}
