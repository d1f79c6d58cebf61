/** What a draft warns of, cannot meet, and does next, in words. */
import { useWords } from '../../app/words/use-words.ts'
import type {
  DraftOutcome,
  DraftWarning,
  DraftWindow,
  Purchase,
  UnmetWish,
} from '../../../shared/schemas/drafts.ts'
import { useFruitName, useFruits, useJars } from '../../parts/names/use-names.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { useSettings } from '../../app/settings.tsx'
import { numberFormat } from '../../parts/formatters/formatters.ts'

export function useDraftWords() {
  const t = useWords()
  const q = useQuantities()
  const jars = useJars()
  const fruits = useFruits()
  const fruitName = useFruitName()
  const { locale } = useSettings()
  const number = (value: number, digits = 1) =>
    numberFormat(locale, { maximumFractionDigits: digits }).format(value)

  const inWindow = (window: DraftWindow, value: number): string => {
    switch (window) {
      case 'steepingStrengthPctVol':
      case 'finishedStrengthPctVol':
        return q.text(value, 'strength')
      case 'finishedSugarGPerL':
        return q.text(value, 'sugar')
      case 'fruitKgPerLSpirit':
        return q.text(value, 'packing')
      case 'steepingWeeks':
        return number(value)
    }
  }

  const jarName = ({ vessels }: DraftOutcome, jarId: string): string => {
    const own = jars.get(jarId)?.jar
    if (own) return t('parts.place.jar', { name: own.name })
    const vessel = vessels.find((one) => one.jarId === jarId)
    if (!vessel) return t('parts.place.theJar')
    return `${t(`codes.shape.${vessel.shape}`)} ${q.size(vessel.capacityMl, 'volume').text}`
  }

  const warning = (told: DraftWarning, outcome: DraftOutcome): string => {
    const deed = (index: number) => {
      const move = outcome.moves[index]
      return move ? t(`codes.move.${move.kind}`) : ''
    }
    switch (told.code) {
      case 'outsideWindow':
        return t('draft.warning.outsideWindow', {
          what: t(`draft.window.${told.window}`),
          value: inWindow(told.window, told.value),
          low: inWindow(told.window, told.low),
          high: inWindow(told.window, told.high),
        })
      case 'overBrim':
      case 'overSafeFill':
        return t(`draft.warning.${told.code}`, {
          deed: deed(told.moveIndex),
          jar: jarName(outcome, told.jarId),
          fill: q.text(told.fillMl, 'volume'),
          limit: q.text(told.limitMl, 'volume'),
        })
      case 'refused':
        return t('draft.warning.refused', { deed: deed(told.moveIndex) })
      default: {
        const told2 = (value: number) =>
          told.code === 'weakForFruit'
            ? q.text(value, 'strength')
            : told.code === 'uncovered'
              ? q.text(value, 'volume')
              : told.code === 'sugarUndissolved'
                ? q.text(value, 'mass')
                : number(value, 0)
        return t(`draft.warning.${told.code}`, {
          jar: jarName(outcome, told.jarId),
          value: told2(told.value),
          limit: told2(told.limit),
        })
      }
    }
  }

  const wished = (wish: UnmetWish['wish'], value: number): string => {
    switch (wish) {
      case 'volumeMl':
        return q.text(value, 'volume')
      case 'bottles':
        return number(value, 0)
      case 'strengthPctVol':
        return q.text(value, 'strength')
      case 'sugarGPerL':
        return q.text(value, 'sugar')
      case 'acidGPerL':
        return q.text(value, 'acid')
    }
  }
  const unmet = ({ wish, wanted, nearest, reason, limit }: UnmetWish): string =>
    t(`draft.unmet.${reason}`, {
      wish: t(`draft.wish.${wish}`),
      wanted: wished(wish, wanted),
      nearest: wished(wish, nearest),
      limit: wished(wish, limit),
    })

  const purchase = ({ what, fruitId, sweetenerId, strengthPctVol = 0, volumeMl = 0 }: Purchase) => {
    const fruit = fruitId === undefined ? undefined : fruits.get(fruitId)
    const name = fruit ? fruitName(fruit) : t(`parts.goods.${sweetenerId ?? 'sugar'}`)
    return t(`draft.purchase.${what}`, {
      name,
      strength: q.text(strengthPctVol, 'strength'),
      size: q.size(volumeMl, 'volume').text,
    })
  }

  return { warning, unmet, purchase, inWindow, jarName }
}
