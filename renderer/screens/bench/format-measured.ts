/** A number with its uncertainty: as many decimals as the uncertainty leaves worth reading. */
import type { BenchDimension } from '../../../shared/schemas/bench.ts'
import { formatQuantity, type FormatContext } from '../../parts/quantity/format-quantity.ts'
import { symbolOf, unitsOf, type Dimension } from '../../parts/quantity/units.ts'
import { numberFormat } from '../../parts/formatters/formatters.ts'

export interface MeasuredText {
  readonly number: string
  /** Left out where none is known, or it is nothing. */
  readonly uncertainty?: string
  /** Empty for a count. */
  readonly unit: string
}

export const isPartDimension = (
  dimension: BenchDimension,
): dimension is BenchDimension & Dimension => dimension in unitsOf

/** Units that only the Bench shows. `massShare` has a word in it, which the screen knows. */
const ownUnit: Readonly<Record<Exclude<BenchDimension, Dimension>, string>> = {
  proof: 'proof',
  massShare: '%',
  energyKj: 'kJ',
  energyKcal: 'kcal',
  drinks: '',
}

export function formatMeasured(
  value: number,
  uncertainty: number | undefined,
  dimension: BenchDimension,
  context: FormatContext,
): MeasuredText {
  const { unit, factor, offset, plain } = scaleOf(value, dimension, context)
  if (uncertainty === undefined || uncertainty / factor < 1e-9)
    return { number: plain ?? decimal((value - offset) / factor, 1, context.locale), unit }
  const digits = digitsFor(uncertainty / factor)
  return {
    number: decimal((value - offset) / factor, digits, context.locale),
    uncertainty: decimal(uncertainty / factor, digits, context.locale),
    unit,
  }
}

/** The unit that the value reads best in. */
function scaleOf(value: number, dimension: BenchDimension, context: FormatContext) {
  if (!isPartDimension(dimension)) return { unit: ownUnit[dimension], factor: 1, offset: 0 }
  const shown = formatQuantity(value, dimension, context)
  const unit = unitsOf[dimension].find((one) => symbolOf(one, context.language) === shown.unit)
  return {
    unit: shown.unit,
    factor: unit?.factor ?? 1,
    offset: unit?.offset ?? 0,
    plain: shown.number,
  }
}

/** One figure of the uncertainty, two where the first is a 1. */
function digitsFor(uncertainty: number): number {
  const power = Math.floor(Math.log10(uncertainty))
  const lead = uncertainty / 10 ** power
  return Math.min(Math.max((lead < 1.95 ? 1 : 0) - power, 0), 5)
}

const decimal = (value: number, digits: number, locale: string): string =>
  numberFormat(locale, {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  }).format(value + 0)
