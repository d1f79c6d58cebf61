/** Reads what someone wrote in a field with a unit, or says why it can't be read. */
import { numbersIn } from './parse-number.ts'
import {
  currencyUnit,
  symbolOf,
  toBase,
  unitsOf,
  usualRange,
  usualUnitId,
  type Dimension,
  type Range,
  type Unit,
  type UnitChoice,
} from './units.ts'

export interface QuantityContext extends UnitChoice {
  readonly dimension: Dimension
  readonly locale: string
  /** What a bare number is in; left out, the usual unit of the system. */
  readonly unit?: string | undefined
  /** What is taken, in base units; left out, what the contract takes. */
  readonly range?: Range | undefined
  /** For money; a code such as `EUR`. */
  readonly currency?: string | undefined
}

export type QuantityProblem =
  | { readonly code: 'empty' | 'notANumber' | 'notWhole' }
  /** Both readings, in base units. */
  | { readonly code: 'ambiguous'; readonly readings: readonly [number, number] }
  | { readonly code: 'unknownUnit'; readonly unit: string; readonly known: readonly string[] }
  | { readonly code: 'outOfRange'; readonly value: number; readonly range: Range }
  /** The bare number, which makes sense only in the other scale. */
  | { readonly code: 'askTemperatureUnit'; readonly number: number }
export type QuantityProblemCode = QuantityProblem['code']

export type QuantityReading =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly problem: QuantityProblem }

export function parseQuantity(text: string, context: QuantityContext): QuantityReading {
  const written = text.trim().replace(/\s+/g, ' ')
  if (written === '') return failed({ code: 'empty' })
  const range = context.range ?? usualRange[context.dimension]
  const pieces = piecesOf(written, context)
  if (!Array.isArray(pieces)) return failed(pieces)
  const bare = pieces.length === 1 && !pieces[0]?.isUnitWritten ? pieces[0] : undefined
  if (bare && context.dimension === 'temperature' && isOtherScale(bare)) {
    return failed({ code: 'askTemperatureUnit', number: bare.numbers[0] ?? Number.NaN })
  }
  return chosen(valuesOf(pieces, context.dimension), range, context.dimension)
}

interface Piece {
  readonly numbers: readonly number[]
  readonly unit: Unit
  readonly isUnitWritten: boolean
}

/** "2 lb 3 oz" is two pieces; nearly everything else is one. */
function piecesOf(text: string, context: QuantityContext): Piece[] | QuantityProblem {
  const known = knownUnits(context)
  const usual = known.find(({ id }) => id === (context.unit ?? usualId(context))) ?? known[0]
  if (!usual) return { code: 'unknownUnit', unit: '', known: [] }
  const pieces: Piece[] = []
  for (const { number, word } of splitWords(text)) {
    const numbers = numbersIn(number, context.locale)
    const spelling = word.toLowerCase().replace(/[\s.]/g, '')
    const unit = spelling === '' ? usual : known.find((one) => one.spellings.includes(spelling))
    if (numbers.length === 0) return { code: 'notANumber' }
    if (!unit)
      return {
        code: 'unknownUnit',
        unit: word,
        known: known.map((one) => symbolOf(one, context.language)),
      }
    pieces.push({ numbers, unit, isUnitWritten: spelling !== '' })
  }
  const canBeSplit = context.dimension === 'volume' || context.dimension === 'mass'
  const isOrdered = pieces.every(
    ({ unit, isUnitWritten }, i) =>
      pieces.length === 1 ||
      (isUnitWritten && (i === 0 || unit.factor < (pieces[i - 1]?.unit.factor ?? 0))),
  )
  if (pieces.length === 0 || !isOrdered || (pieces.length > 1 && !canBeSplit))
    return { code: 'notANumber' }
  return pieces
}

const knownUnits = ({ dimension, currency = 'EUR', locale }: QuantityContext): readonly Unit[] =>
  dimension === 'money' ? [currencyUnit(currency, locale)] : unitsOf[dimension]

const usualId = (context: QuantityContext) => usualUnitId(context.dimension, context)

const numberPattern = String.raw`[-−–]?[\d.,½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞][\d.,½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞\s'’/⁄]*`
/** A digit may end a unit ("cm3", "kg/m³"), never begin one. */
const wordPattern = String.raw`(?:[^\d\s.,½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞-][^\d½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]*(?:(?<=m)3)?)?`

/** Numbers each with the word after it; a currency may also stand before its number. */
function splitWords(text: string): { number: string; word: string }[] {
  const before = /^([^\d\s.,½⅓⅔¼¾⅛⅜⅝⅞−–-]+)\s*([-−–]?[\d.,].*)$/u.exec(text)
  if (before?.[1] && before[2]) return [{ number: before[2], word: before[1] }]
  const pattern = new RegExp(`(${numberPattern})\\s*(${wordPattern})\\s*`, 'uy')
  const found: { number: string; word: string }[] = []
  while (pattern.lastIndex < text.length) {
    const match = pattern.exec(text)
    if (!match) return [{ number: text, word: '' }]
    found.push({ number: (match[1] ?? '').trim(), word: (match[2] ?? '').trim() })
  }
  return found
}

/** All that the pieces together can mean, in base units. */
function valuesOf(pieces: readonly Piece[], dimension: Dimension): readonly number[] {
  const perPiece = pieces.map(({ numbers, unit, isUnitWritten }) =>
    numbers.map((number) => {
      // A hydrometer's 1.045 can only be kilograms a litre.
      if (dimension === 'density' && !isUnitWritten && number < 3) return number * 1000
      return toBase(unit, number)
    }),
  )
  return perPiece.reduce((sums, values) => sums.flatMap((sum) => values.map((v) => sum + v)), [0])
}

function chosen(values: readonly number[], range: Range, dimension: Dimension): QuantityReading {
  const whole = dimension === 'money' ? values.map((value) => Math.round(value)) : values
  const possible = [...new Set(whole)].filter((v) => v >= range.min && v <= range.max)
  const [value, other] = possible
  if (value === undefined)
    return failed({ code: 'outOfRange', value: whole[0] ?? Number.NaN, range })
  if (other !== undefined) return failed({ code: 'ambiguous', readings: [value, other] })
  if (dimension === 'count' && !Number.isInteger(value)) return failed({ code: 'notWhole' })
  return { ok: true, value }
}

const isPlausible = (celsius: number) => celsius >= 0 && celsius <= 40

/** True when the number is no temperature of a cellar or kitchen in its scale, but is in the other. */
function isOtherScale({ numbers, unit }: Piece): boolean {
  const number = numbers[0] ?? Number.NaN
  const inFahrenheit = ((number - 32) * 5) / 9
  return unit.id === 'fahrenheit'
    ? !isPlausible(inFahrenheit) && isPlausible(number)
    : !isPlausible(number) && isPlausible(inFahrenheit)
}

const failed = (problem: QuantityProblem): QuantityReading => ({ ok: false, problem })
