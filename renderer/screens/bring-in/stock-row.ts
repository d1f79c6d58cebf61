/** A row of the pantry: what its goods are decides what it is measured by. */
import { plainName } from '../../../shared/plain.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { Goods } from '../../../shared/schemas/goods.ts'
import { StockRow } from '../../../shared/schemas/sheets.ts'
import type { FieldId } from './fields.ts'
import type { CellProblem } from './cell-problem.ts'

/** What the cells of a row were read as, where they could be. */
export type CellValues = Partial<Record<FieldId, unknown>>

export interface StockReading {
  readonly problems: readonly { readonly field: FieldId; readonly problem: CellProblem }[]
  readonly row: StockRow | undefined
}

const missing: CellProblem = { kind: 'text', code: 'missing' }

/** The strongest that can be distilled. */
const spiritRange = { min: 0.1, max: 97.2 }

const words: Readonly<Record<'sugar' | 'honey' | 'acid', readonly string[]>> = {
  sugar: ['sugar', 'cukier'],
  honey: ['honey', 'miod'],
  acid: ['acid', 'citric acid', 'kwas', 'kwas cytrynowy', 'kwasek cytrynowy'],
}

export function stockOf(values: CellValues, fruits: ReadonlyMap<string, Fruit>): StockReading {
  const { goods: name, strength, volume, mass, price, note, bought } = values
  const goods = goodsOf(String(name), strength as number | undefined, fruits)
  if (!goods) {
    const problem = { kind: 'name', code: 'noGoods', name: String(name).slice(0, 40) } as const
    return { problems: [{ field: 'goods', problem }], row: undefined }
  }
  const measure = goods.kind === 'spirit' ? volume : mass
  if (measure === undefined) {
    const field = goods.kind === 'spirit' ? 'volume' : 'mass'
    return { problems: [{ field, problem: missing }], row: undefined }
  }
  if (goods.kind === 'spirit' && outside(goods.strengthPctVol)) {
    const problem = {
      kind: 'amount',
      dimension: 'strength',
      problem: { code: 'outOfRange', value: goods.strengthPctVol, range: spiritRange },
    } as const
    return { problems: [{ field: 'strength', problem }], row: undefined }
  }
  const row = StockRow.parse({
    goods,
    boughtAt: bought,
    ...(goods.kind === 'spirit' ? { volumeMl: volume } : { massG: mass }),
    ...(price !== undefined && { priceMinor: price }),
    ...(note !== undefined && { note }),
  })
  return { problems: [], row }
}

const outside = (strengthPctVol: number) =>
  strengthPctVol < spiritRange.min || strengthPctVol > spiritRange.max

/** Sugar, honey, acid and fruit go by their names; whatever else has a strength is a spirit of that name. */
function goodsOf(
  name: string,
  strengthPctVol: number | undefined,
  fruits: ReadonlyMap<string, Fruit>,
): Goods | undefined {
  const plain = plainName(name)
  if (words.sugar.includes(plain)) return { kind: 'sweetener', sweetenerId: 'sugar' }
  if (words.honey.includes(plain)) return { kind: 'sweetener', sweetenerId: 'honey' }
  if (words.acid.includes(plain)) return { kind: 'acid' }
  if (strengthPctVol !== undefined) return { kind: 'spirit', name, strengthPctVol }
  const fruit = fruits.get(plain)
  return fruit && { kind: 'fruit', fruitId: fruit.id }
}
