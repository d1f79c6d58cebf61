/** Prices are kept for a kilogram and a litre; people in pounds and quarts say them for those. */
import type { UnitSystem } from './units.ts'

export interface PriceUnit {
  readonly id: 'kg' | 'lb' | 'L' | 'quart'
  /** Of a kilogram or a litre. */
  readonly share: number
}

export const massPriceUnit = (units: UnitSystem): PriceUnit & { id: 'kg' | 'lb' } =>
  units === 'us' ? { id: 'lb', share: 0.45359237 } : { id: 'kg', share: 1 }

export const volumePriceUnit = (units: UnitSystem): PriceUnit & { id: 'L' | 'quart' } =>
  units === 'us' ? { id: 'quart', share: 0.946352946 } : { id: 'L', share: 1 }

/** What is shown is whole in the smallest coin, so that what was written reads back the same. */
export const shownPrice = (minorPerBase: number | undefined, { share }: PriceUnit) =>
  minorPerBase === undefined ? undefined : Math.round(minorPerBase * share)

export const keptPrice = (shownMinor: number, { share }: PriceUnit): number => shownMinor / share
