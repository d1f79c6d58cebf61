/** A move in the past tense, as its maker would tell it. */
import { useWords } from '../../app/words/use-words.ts'
import type { Move, MoveOf } from '../../../shared/schemas/moves.ts'
import type { Reading } from '../../../shared/schemas/readings.ts'
import { useRead } from '../../app/queries.ts'
import { useSettings } from '../../app/settings.tsx'
import { useGoodsName, useJars, useShelfName } from '../names/use-names.ts'
import type { Dimension } from '../quantity/units.ts'
import { useQuantities } from '../quantity/use-quantities.ts'
import { listFormat } from '../formatters/formatters.ts'

/** `alongside` are moves recorded together with it: what was bought there is known by them. */
export type MoveWords = (move: Move, alongside?: readonly Move[]) => string

export function useMoveWords(): MoveWords {
  const t = useWords()
  const { locale } = useSettings()
  const { text, size } = useQuantities()
  const jars = useJars()
  const goodsName = useGoodsName()
  const pantry = useRead('pantry.list', {}).data
  const bottleLots = useRead('bottles.list', {}).data

  const shelfName = useShelfName()

  const jar = (id: string) => jars.get(id)?.jar.name ?? t('parts.place.theJar')
  const goods = (lotId: string, alongside: readonly Move[]) => {
    const bought = alongside.find((move) => move.kind === 'buy' && move.lotId === lotId)
    const lot = bought?.kind === 'buy' ? bought : pantry?.find(({ id }) => id === lotId)
    return lot ? goodsName(lot.goods) : t('parts.place.thePantryLot')
  }
  const bottles = (id: string) =>
    bottleLots?.find((lot) => lot.id === id)?.name ?? t('parts.place.theBottles')
  const list = (parts: readonly string[]) =>
    listFormat(locale, { type: 'conjunction' }).format(parts)
  const optional = (value: number | undefined, dimension: Dimension) =>
    value === undefined ? [] : [text(value, dimension)]

  function buy({ goods: bought, massG, volumeMl, priceMinor }: MoveOf<'buy'>): string {
    const amount = volumeMl === undefined ? text(massG ?? 0, 'mass') : text(volumeMl, 'volume')
    const what = { amount, goods: goodsName(bought) }
    return priceMinor === undefined
      ? t('batch.done.buy', what)
      : t('batch.done.buyFor', { ...what, price: text(priceMinor, 'money') })
  }

  function charge(
    { jarId, lotId, massG, refuseG, cut }: MoveOf<'charge'>,
    alongside: readonly Move[],
  ): string {
    const what = {
      jar: jar(jarId),
      amount: text(massG, 'mass'),
      goods: goods(lotId, alongside),
      cut: t(`codes.cut.${cut}`),
    }
    return refuseG
      ? t('batch.done.chargeLessRefuse', { ...what, refuse: text(refuseG, 'mass') })
      : t('batch.done.charge', what)
  }

  function keep({ jarId, temperatureC, turned }: MoveOf<'keep'>): string {
    const what = {
      jar: jar(jarId),
      ...(temperatureC !== undefined && { temperature: text(temperatureC, 'temperature') }),
      ...(turned && { turned: t(`codes.turned.${turned}`) }),
    }
    if (temperatureC === undefined) return t('batch.done.keepTurned', what)
    return t(turned ? 'batch.done.keep' : 'batch.done.keepWarm', what)
  }

  function pouringOff({ kind, fromJarId, toJarId, volumeMl }: MoveOf<'drawOff' | 'press'>): string {
    const what = { from: jar(fromJarId), to: jar(toJarId) }
    return volumeMl === undefined
      ? t(`batch.done.${kind}All`, what)
      : t(`batch.done.${kind}`, { ...what, amount: text(volumeMl, 'volume') })
  }

  function filter({ fromJarId, toJarId, medium, lossMl }: MoveOf<'filter'>): string {
    const what = {
      from: jar(fromJarId),
      to: jar(toJarId),
      medium: t(`codes.medium.${medium}`),
    }
    const said = t(fromJarId === toJarId ? 'batch.done.filterInPlace' : 'batch.done.filter', what)
    return lossMl === undefined
      ? said
      : said + t('batch.done.filterLoss', { loss: text(lossMl, 'volume') })
  }

  function discard({ from }: MoveOf<'discard'>): string {
    if ('openedId' in from) return t('shelf.done.discardOpened')
    if ('jarId' in from) return t(`batch.done.discardJar.${from.part}`, { jar: jar(from.jarId) })
    if ('bottleLotId' in from)
      return t('batch.done.discardBottles', { count: from.count, name: bottles(from.bottleLotId) })
    const amount = [...optional(from.massG, 'mass'), ...optional(from.volumeMl, 'volume')]
    return amount.length === 0
      ? t('batch.done.discardLotAll', { goods: goods(from.lotId, []) })
      : t('batch.done.discardLot', { goods: goods(from.lotId, []), amount: amount.join(' ') })
  }

  function correct({ found }: MoveOf<'correct'>): string {
    if ('openedId' in found)
      return t('shelf.done.correctOpened', { amount: text(found.volumeMl, 'volume') })
    if ('bottleLotId' in found) return correctBottles(found)
    if ('lotId' in found) {
      const amount = [...optional(found.massG, 'mass'), ...optional(found.volumeMl, 'volume')]
      return t('batch.done.correctLot', { goods: goods(found.lotId, []), amount: amount.join(' ') })
    }
    const parts = [
      ...optional(found.volumeMl, 'volume'),
      ...optional(found.strengthPctVol, 'strength'),
      ...optional(found.sugarGPerL, 'sugar'),
    ]
    return t('batch.done.correctJar', { jar: jar(found.jarId), found: list(parts) })
  }

  function correctBottles(found: {
    bottleLotId: string
    count: number
    shelfId?: string | null | undefined
  }): string {
    const what = { count: found.count, name: bottles(found.bottleLotId) }
    return found.shelfId === undefined
      ? t('batch.done.correctBottles', what)
      : t('shelf.done.correctOn', { ...what, place: shelfName(found.shelfId) })
  }

  function read({ jarId, reading }: MoveOf<'read'>): string {
    const instrument = t(`codes.instrument.${reading.instrument}`).toLocaleLowerCase(locale)
    const shown = list(shownBy(reading).map(([value, dimension]) => text(value, dimension)))
    return t('batch.done.read', { jar: jar(jarId), instrument, shown })
  }

  function taste({ jarId, bottleLotId, verdict }: MoveOf<'taste'>): string {
    const name = jarId === undefined ? bottles(bottleLotId ?? '') : jar(jarId)
    return verdict
      ? t('shelf.done.tasteJudged', { name, verdict: t(`shelf.phase.${verdict}`) })
      : t('shelf.done.taste', { name })
  }

  return (move, alongside = []) => {
    switch (move.kind) {
      case 'buy':
        return buy(move)
      case 'charge':
        return charge(move, alongside)
      case 'sugar':
      case 'addAcid':
      case 'coverWithSugar':
        return t(`batch.done.${move.kind}`, {
          jar: jar(move.jarId),
          amount: text(move.massG, 'mass'),
          goods: goods(move.lotId, alongside),
        })
      case 'pourSpirit':
        return t('batch.done.pourSpirit', {
          jar: jar(move.jarId),
          amount: text(move.volumeMl, 'volume'),
          goods: goods(move.lotId, alongside),
        })
      case 'pourWater':
        return t('batch.done.pourWater', {
          jar: jar(move.jarId),
          amount: text(move.volumeMl, 'volume'),
        })
      case 'stir':
      case 'crush':
        return t(`batch.done.${move.kind}`, { jar: jar(move.jarId) })
      case 'keep':
        return keep(move)
      case 'read':
        return read(move)
      case 'drawOff':
      case 'press':
        return pouringOff(move)
      case 'marry':
        return t('batch.done.marry', {
          to: jar(move.toJarId),
          parts: list(
            move.parts.map(({ jarId, volumeMl }) =>
              [...optional(volumeMl, 'volume'), jar(jarId)].join(' '),
            ),
          ),
        })
      case 'filter':
        return filter(move)
      case 'bottle':
        return t('batch.done.bottle', {
          count: move.count,
          size: size(move.bottleSizeMl, 'volume').text,
          jar: jar(move.fromJarId),
        })
      case 'bringIn':
        return t('batch.done.bringIn', {
          count: move.count,
          size: size(move.bottleSizeMl, 'volume').text,
          strength: text(move.strengthPctVol, 'strength'),
          sugar: text(move.sugarGPerL, 'sugar'),
        })
      case 'unbottle':
        return t('batch.done.unbottle', {
          count: move.count,
          name: bottles(move.bottleLotId),
          jar: jar(move.toJarId),
        })
      case 'drawBottle':
      case 'give':
        return t(`batch.done.${move.kind}`, { count: move.count, name: bottles(move.bottleLotId) })
      case 'breakBottle':
        return t('shelf.done.breakBottle', { count: move.count, name: bottles(move.bottleLotId) })
      case 'openBottle':
        return t('shelf.done.openBottle', { name: bottles(move.bottleLotId) })
      case 'shelve':
        return t('shelf.done.shelve', {
          count: move.count,
          name: bottles(move.bottleLotId),
          from: shelfName(move.fromShelfId),
          to: shelfName(move.toShelfId),
        })
      case 'pourGlass':
      case 'topUp':
        return move.volumeMl === undefined
          ? t(`shelf.done.${move.kind}All`)
          : t(`shelf.done.${move.kind}`, { amount: text(move.volumeMl, 'volume') })
      case 'taste':
        return taste(move)
      case 'discard':
        return discard(move)
      case 'correct':
        return correct(move)
      case 'remark':
        return t('batch.done.remark')
    }
  }
}

function shownBy(reading: Reading): [number, Dimension][] {
  switch (reading.instrument) {
    case 'alcoholometer':
      return [[reading.readingPctVol, 'strength']]
    case 'hydrometer':
      return [[reading.densityKgPerM3, 'density']]
    case 'refractometer':
      return [[reading.brix, 'brix']]
    case 'hydrometerAndRefractometer':
      return [
        [reading.densityKgPerM3, 'density'],
        [reading.brix, 'brix'],
      ]
    case 'boilOff':
      return [
        [reading.densityBeforeKgPerM3, 'density'],
        [reading.densityAfterKgPerM3, 'density'],
      ]
    case 'measuringJug':
      return [[reading.volumeMl, 'volume']]
  }
}
