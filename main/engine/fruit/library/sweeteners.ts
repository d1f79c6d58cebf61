/**
 * White sugar and honey. Sugar counts as pure sucrose (the table has 99.8 %). Honey's sugars are
 * fructose and glucose that count as sugar gram for gram; its traces beyond water, sugar and acid
 * are other solubles.
 */
import type { Composition } from '../../../../shared/schemas/goods.ts'

export type SweetenerId = 'sugar' | 'honey'

/** Water and sugars: USDA Standard Reference, records 19335 and 19296; honey's acid from memory. */
export const sweeteners: Readonly<Record<SweetenerId, Composition>> = {
  sugar: {
    edibleFraction: 1,
    waterPct: 0,
    sugarPct: 100,
    acidPct: 0,
    solublesPct: 0,
    pulpPct: 0,
  },
  honey: {
    edibleFraction: 1,
    waterPct: 17.1,
    sugarPct: 82.12,
    acidPct: 0.5,
    solublesPct: 0.28,
    pulpPct: 0,
  },
}
