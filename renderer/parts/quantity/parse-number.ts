/** Reads a number as people write it: "1,5", "1 500", "½", "1 1/2". Locale decides what is open. */
import { numberFormat } from '../formatters/formatters.ts'

/** Every number the text can mean in this locale: none, one, or two when it is ambiguous. */
export function numbersIn(text: string, locale: string): readonly number[] {
  const [, minus, digits] = /^([-−–]?)\s*(.*)$/.exec(text.trim()) ?? []
  const found = digits ? (fractionIn(digits) ?? decimalsIn(digits, locale)) : []
  return minus ? found.map((value) => -value) : found
}

const vulgar: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
}

/** "½", "1½", "1 1/2", "3/4"; undefined when the text is not written as a fraction. */
function fractionIn(text: string): readonly number[] | undefined {
  const [, whole = '', sign] = /^(\d*)\s*([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])$/.exec(text) ?? []
  if (sign) return [Number(whole) + (vulgar[sign] ?? 0)]
  const [, units = '0', top, bottom] = /^(?:(\d+)\s+)?(\d+)\s*[/⁄]\s*(\d+)$/.exec(text) ?? []
  if (!top || !bottom) return undefined
  return Number(bottom) === 0 ? [] : [Number(units) + Number(top) / Number(bottom)]
}

function decimalsIn(text: string, locale: string): readonly number[] {
  const plain = withoutSpacing(text)
  if (plain === undefined || !/^[\d.,]+$/.test(plain) || !/\d/.test(plain)) return []
  const marks = plain.replace(/\d/g, '')
  const lastMark = marks.at(-1)
  if (!lastMark) return [Number(plain)]
  const isMixed = marks.includes('.') && marks.includes(',')
  if (isMixed) return asDecimal(plain, lastMark)
  if (marks.length > 1) return asGroups(plain, lastMark)
  // One mark, which can part thousands only before exactly three digits.
  const grouped = /^[1-9]\d{0,2}[.,]\d{3}$/.test(plain) ? asGroups(plain, lastMark) : []
  if (grouped.length === 0) return asDecimal(plain, lastMark)
  const { decimal, group } = marksOf(locale)
  if (lastMark === decimal) return asDecimal(plain, lastMark)
  if (lastMark === group) return grouped
  return [...asDecimal(plain, lastMark), ...grouped]
}

/** Takes out spaces and apostrophes that part thousands; undefined when they part something else. */
function withoutSpacing(text: string): string | undefined {
  if (!/[\s'’]/.test(text)) return text
  const isGrouped = /^\d{1,3}([\s'’])\d{3}(?:\1\d{3})*(?:[.,]\d+)?$/.test(text)
  return isGrouped ? text.replace(/[\s'’]/g, '') : undefined
}

function asDecimal(text: string, mark: string): readonly number[] {
  const [whole = '', part, ...more] = text.split(mark)
  if (part === undefined || more.length > 0) return []
  const units = /[.,]/.test(whole) ? asGroups(whole, mark === '.' ? ',' : '.') : [Number(whole)]
  return units.length === 0 ? [] : [Number(`${units[0]}.${part === '' ? '0' : part}`)]
}

const asGroups = (text: string, mark: string): readonly number[] =>
  new RegExp(`^\\d{1,3}(?:\\${mark}\\d{3})+$`).test(text) ? [Number(text.replaceAll(mark, ''))] : []

function marksOf(locale: string) {
  const parts = numberFormat(locale).formatToParts(1_234_567.5)
  const mark = (type: 'decimal' | 'group') => parts.find((part) => part.type === type)?.value
  return { decimal: mark('decimal'), group: mark('group') }
}
