/** What a curve can show, in the order of its panels, each with its ink and its measure. */
import type { CurveValues } from '../../shared/schemas/steeping.ts'
import { quantityInk, type MarkedQuantity } from '../parts/quantity/quantity-mark.tsx'
import type { Dimension } from '../parts/quantity/units.ts'

export type CurveQuantity = keyof CurveValues

export const curveQuantities = [
  'strengthPctVol',
  'sugarGPerL',
  'acidGPerL',
  'volumeMl',
  'ethanolInFruitMl',
] as const satisfies readonly CurveQuantity[]

export interface CurveInk {
  readonly color: string
  readonly dash: string
  readonly dimension: Dimension
  /** Strength and sugar have a mark of their own everywhere. */
  readonly mark?: MarkedQuantity
  /** Amounts are read against zero; for the others the scale may begin higher. */
  readonly isFromZero: boolean
}

export const curveInk: Readonly<Record<CurveQuantity, CurveInk>> = {
  strengthPctVol: {
    ...quantityInk.strength,
    dimension: 'strength',
    mark: 'strength',
    isFromZero: false,
  },
  sugarGPerL: { ...quantityInk.sugar, dimension: 'sugar', mark: 'sugar', isFromZero: false },
  acidGPerL: { color: 'var(--action)', dash: '10 3', dimension: 'acid', isFromZero: false },
  volumeMl: { color: 'var(--ink)', dash: 'none', dimension: 'volume', isFromZero: true },
  ethanolInFruitMl: {
    color: 'var(--ink-quiet)',
    dash: '8 3 2 3',
    dimension: 'volume',
    isFromZero: true,
  },
}

/** After now every line is a forecast and is dotted alike. */
export const forecastDash = '1.5 4.5'
/** The curve of the same batch handled otherwise. */
export const changedDash = '14 4 3 4'

/** What instruments read, where a reading keeps how sure it is, and its mark. */
export const quantitiesRead = [
  { quantity: 'strengthPctVol', uncertainty: 'strengthUncertaintyPctVol', kind: 'strength' },
  { quantity: 'sugarGPerL', uncertainty: 'sugarUncertaintyGPerL', kind: 'sugar' },
] as const
