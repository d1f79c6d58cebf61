/** Days as people and spreadsheets write them; what can be read two ways is asked, not guessed. */

export type DateOrder = 'dmy' | 'mdy'

export type DateProblemCode = 'notADate' | 'noSuchDay' | 'future' | 'ambiguousDate'

export type DateReading =
  | { readonly ok: true; readonly at: string }
  | { readonly ok: false; readonly code: DateProblemCode }

export function readDate(text: string, order: DateOrder | undefined, now: Date): DateReading {
  const parts = partsOf(text.slice(0, 40), order)
  if (typeof parts === 'string') return { ok: false, code: parts }
  const [year, month, day] = parts
  const date = new Date(year, (month ?? 1) - 1, day ?? 1, 12)
  const isReal =
    month === undefined || (date.getMonth() === month - 1 && date.getDate() === (day ?? 1))
  if (!isReal || year < firstYear) return { ok: false, code: 'noSuchDay' }
  if (month === undefined) return ofYear(year, now)
  const start = new Date(year, month - 1, day)
  if (start > now) return { ok: false, code: 'future' }
  // Today's noon may lie ahead.
  return { ok: true, at: new Date(Math.min(date.getTime(), now.getTime())).toISOString() }
}

/** True where the same cell is another day in another order. */
export const isTwoDays = (text: string): boolean => partsOf(text, undefined) === 'ambiguousDate'

/** What the cells that can be read in one way only say about the others; undefined to ask. */
export function guessedOrder(cells: readonly string[]): DateOrder | undefined {
  const found = new Set(
    cells.flatMap((cell) => {
      const [, first, mark, second] = numeric.exec(cell) ?? []
      if (first === undefined || second === undefined) return []
      if (mark === '.' || Number(first) > 12) return ['dmy' as const]
      return Number(second) > 12 ? ['mdy' as const] : []
    }),
  )
  return found.size === 1 ? [...found][0] : undefined
}

const firstYear = 1900
const iso = /^(\d{4})([-./])(\d{1,2})\2(\d{1,2})(?:[T ].*)?$/
const numeric = /^(\d{1,2})([-./])(\d{1,2})\2(\d{4}|\d{2})(?:\s.*)?$/
const yearOnly = /^(?:19|20|21)\d\d$/
/** Days since the end of 1899, as spreadsheets count them; from 1927 to 2118. */
const serial = /^([1-7]\d{4})(?:[.,]\d+)?$/

type Parts = readonly [year: number, month?: number, day?: number]

function partsOf(text: string, order: DateOrder | undefined): Parts | DateProblemCode {
  const [, year, , month, day] = iso.exec(text) ?? []
  if (year !== undefined) return [Number(year), Number(month), Number(day)]
  const [, first, mark, second, written] = numeric.exec(text) ?? []
  if (written !== undefined) {
    const [one, two] = [Number(first), Number(second)]
    const read = mark === '.' ? 'dmy' : (order ?? onlyOrder(one, two))
    if (read === undefined) return 'ambiguousDate'
    return read === 'dmy' ? [fullYear(written), two, one] : [fullYear(written), one, two]
  }
  if (yearOnly.test(text)) return [Number(text)]
  const days = serial.exec(text)?.[1]
  if (days === undefined) return 'notADate'
  const date = new Date(Date.UTC(1899, 11, 30) + Number(days) * 86_400_000)
  return [date.getUTCFullYear(), date.getUTCMonth() + 1, date.getUTCDate()]
}

function onlyOrder(first: number, second: number): DateOrder | undefined {
  if (first === second || first > 12) return 'dmy'
  return second > 12 ? 'mdy' : undefined
}

/** Two digits mean this century up to the year that spreadsheets turn at. */
const fullYear = (written: string) => {
  const year = Number(written)
  if (written.length === 4) return year
  return year < 50 ? 2000 + year : 1900 + year
}

/** Its middle, which is never more than half a year wrong; its beginning while the middle lies ahead. */
function ofYear(year: number, now: Date): DateReading {
  const middle = new Date(year, 6, 1, 12)
  const at = middle > now ? new Date(year, 0, 1) : middle
  return at > now ? { ok: false, code: 'future' } : { ok: true, at: at.toISOString() }
}
