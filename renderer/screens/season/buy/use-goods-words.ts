/** What a line of the list is called, and how much of it, as a shopper says it. */
import { useWords } from '../../../app/words/use-words.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import type { PurchaseLine } from '../../../../shared/schemas/season.ts'

export type Amount = Pick<PurchaseLine, 'massG' | 'volumeMl' | 'count'>

export function useGoodsWords() {
  const t = useWords()
  const { text, size } = useQuantities()
  const kindName = useKindName()
  const goods = (line: PurchaseLine) => {
    const { what, fruitId, sweetenerId, strengthPctVol, bottleSizeMl } = line
    const name =
      what === 'sweetener' ? t(`parts.goods.${sweetenerId ?? 'sugar'}`) : kindName(fruitId ?? '')
    return t(`season.goods.${what}`, {
      name,
      strength: strengthPctVol === undefined ? '' : text(strengthPctVol, 'strength'),
      size: bottleSizeMl === undefined ? '' : size(bottleSizeMl, 'volume').text,
    })
  }
  const amount = ({ massG, volumeMl, count }: Amount) => {
    if (count !== undefined) return text(count, 'count')
    if (massG !== undefined) return text(massG, 'mass')
    return volumeMl === undefined ? '' : text(volumeMl, 'volume')
  }
  const atHand = ({ atHandG = 0, atHandMl = 0 }: PurchaseLine) =>
    atHandG > 0
      ? t('season.buy.atHand', { amount: text(atHandG, 'mass') })
      : atHandMl > 0
        ? t('season.buy.atHand', { amount: text(atHandMl, 'volume') })
        : undefined
  return { goods, amount, atHand }
}
