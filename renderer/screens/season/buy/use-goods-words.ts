/** What a line of the list is called, and how much of it, as a shopper says it. */
import { useSettings } from '../../../app/settings.tsx'
import { useWords } from '../../../app/words/use-words.ts'
import { listFormat } from '../../../parts/formatters/formatters.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../../parts/time/use-times.ts'
import type { PurchaseLine } from '../../../../shared/schemas/season.ts'

export type Amount = Pick<PurchaseLine, 'massG' | 'volumeMl' | 'count'>

export function useGoodsWords() {
  const t = useWords()
  const { text, size } = useQuantities()
  const kindName = useKindName()
  const times = useTimes()
  const { locale } = useSettings()
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
  /** The batches by kind, each with its first day where one kind has several. */
  const purpose = ({ batches, fruitId }: PurchaseLine) => {
    const [first, ...others] = batches
    // Plums are bought for plums: that needs no saying.
    if (!first || (first.kindId === fruitId && others.length === 0)) return undefined
    const isAlone = (kindId: string) =>
      batches.filter((batch) => batch.kindId === kindId).length === 1
    const names = batches.map(({ kindId, startAt }) =>
      isAlone(kindId)
        ? kindName(kindId)
        : t('season.buy.batch', { kind: kindName(kindId), day: times.day(startAt) }),
    )
    return t('season.buy.for', { batches: listFormat(locale).format(names) })
  }
  return { goods, amount, atHand, purpose }
}
