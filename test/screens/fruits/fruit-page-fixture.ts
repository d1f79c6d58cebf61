/** A fruit's page as the service would answer it. */
import { explainSource, fruitOf } from '../../../main/engine/index.ts'
import type { FruitPage } from '../../../shared/schemas/fruits.ts'

export function fruitPage(changed: Partial<FruitPage> = {}): FruitPage {
  const fruit = changed.fruit ?? fruitOf('sloe')
  const codes = [...Object.values(fruit.sources), ...Object.values(changed.library?.sources ?? {})]
  return {
    fruit,
    origin: 'library',
    isUsed: false,
    sourceMeanings: Object.fromEntries(codes.map((code) => [code, explainSource(code)])),
    ...changed,
  }
}
