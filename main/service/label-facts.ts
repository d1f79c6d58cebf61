/** What the book knows of a bottle lot that its label may say. */
import { batchById } from '../cellar/batch-store.ts'
import { massOf } from '../../shared/matter.ts'
import type { Goods } from '../../shared/schemas/goods.ts'
import { bottlesPlace, describeLiquid, lineageBack, type BottleState } from '../engine/index.ts'
import type { Ingredient, LotFacts } from '../papers/labels/usual-text.ts'
import { instant } from './lot-rows.ts'
import { notFound } from './service-error.ts'
import type { Session } from './session.ts'

export function bottleStateOf({ ledger }: Session, bottleLotId: string): BottleState {
  const lot = ledger.folded.cellar.bottles.get(bottleLotId)
  if (!lot) throw notFound('bottle lot', bottleLotId)
  return lot
}

export function labelFacts(session: Session, bottleLotId: string): LotFacts {
  const lot = bottleStateOf(session, bottleLotId)
  const batch = batchById(session.book, lot.batchId)
  return {
    name: lot.name ?? batch?.name ?? lot.batchId,
    batchId: lot.batchId,
    bottledAt: instant(lot.bottledAtMs),
    bottleSizeMl: lot.bottleSizeMl,
    vintage: vintageOf(session, lot),
    liquid: describeLiquid(lot.perBottle),
    ingredients: ingredientsOf(session, bottleLotId),
  }
}

/** The year its first fruit was charged; that of bottling where there was none. */
function vintageOf({ ledger }: Session, { batchId, bottledAtMs }: BottleState): number {
  const first = ledger.folded.steps.find(
    ({ recorded: { move } }) => move.kind === 'charge' && move.batchId === batchId,
  )
  return new Date(first?.atMs ?? bottledAtMs).getUTCFullYear()
}

/** By what each brought into the bottles, the most first. */
function ingredientsOf({ ledger, fruits }: Session, bottleLotId: string): Ingredient[] {
  const { origins } = lineageBack(ledger.folded, bottlesPlace(bottleLotId))
  const byName = new Map<string, { ingredient: Ingredient; massG: number }>()
  for (const { key, matter } of origins) {
    const goods = goodsOf(ledger.folded.cellar.lots, key)
    const ingredient = ingredientOf(goods, fruits.fruitOf)
    if (!ingredient) continue
    const name = ingredient.kind === 'fruit' ? ingredient.fruit.id : ingredient.kind
    const massG = (byName.get(name)?.massG ?? 0) + massOf(matter)
    byName.set(name, { ingredient, massG })
  }
  return [...byName.values()]
    .toSorted((a, b) => b.massG - a.massG)
    .map(({ ingredient }) => ingredient)
}

function goodsOf(
  lots: Session['ledger']['folded']['cellar']['lots'],
  key: string,
): Goods | 'water' | undefined {
  if (key === 'outside:tap') return 'water'
  return key.startsWith('lot:') ? lots.get(key.slice('lot:'.length))?.goods : undefined
}

function ingredientOf(
  goods: Goods | 'water' | undefined,
  fruitOf: Session['fruits']['fruitOf'],
): Ingredient | undefined {
  if (goods === undefined) return undefined
  if (goods === 'water') return { kind: 'water' }
  switch (goods.kind) {
    case 'fruit':
      return { kind: 'fruit', fruit: fruitOf(goods.fruitId) }
    case 'sweetener':
      return { kind: goods.sweetenerId }
    case 'spirit':
    case 'acid':
      return { kind: goods.kind }
  }
}
