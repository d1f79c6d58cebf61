/** What can be wrong with a cell. */
import type { QuantityProblem } from '../../parts/quantity/parse-quantity.ts'
import type { Dimension } from '../../parts/quantity/units.ts'
import type { DateProblemCode } from './read-date.ts'

export type CellProblem =
  | { readonly kind: 'amount'; readonly dimension: Dimension; readonly problem: QuantityProblem }
  | { readonly kind: 'date'; readonly code: DateProblemCode }
  | { readonly kind: 'text'; readonly code: 'missing' | 'tooLong' }
  | {
      readonly kind: 'name'
      readonly code: 'noFruit' | 'noShelf' | 'noGoods'
      readonly name: string
    }
