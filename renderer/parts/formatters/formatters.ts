/**
 * Formatters by locale and options, each made once: making one takes fifty times as long as using
 * it, and a screen that follows a slider formats a hundred numbers between two frames.
 */
type Maker<Options extends object, Formatter> = new (locale: string, options?: Options) => Formatter

function keptBy<Options extends object, Formatter>(make: Maker<Options, Formatter>) {
  const known = new Map<string, Formatter>()
  return (locale: string, options?: Options): Formatter => {
    const key = `${locale} ${options ? JSON.stringify(options) : ''}`
    const before = known.get(key)
    if (before) return before
    const formatter = new make(locale, options)
    known.set(key, formatter)
    return formatter
  }
}

export const numberFormat = keptBy<Intl.NumberFormatOptions, Intl.NumberFormat>(Intl.NumberFormat)
export const dateFormat = keptBy<Intl.DateTimeFormatOptions, Intl.DateTimeFormat>(
  Intl.DateTimeFormat,
)
export const listFormat = keptBy<Intl.ListFormatOptions, Intl.ListFormat>(Intl.ListFormat)
export const relativeTimeFormat = keptBy<Intl.RelativeTimeFormatOptions, Intl.RelativeTimeFormat>(
  Intl.RelativeTimeFormat,
)
