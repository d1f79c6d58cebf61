/** What goods cost next season: as the maker expects, or else as was paid last; undefined if neither. */
import type { SeasonPrices } from '../../../shared/schemas/season.ts'

export interface Prices {
  readonly fruitMinorPerKg: (fruitId: string) => number | undefined
  readonly spiritMinorPerMl: (strengthPctVol: number) => number | undefined
  readonly sweetenerMinorPerG: (id: 'sugar' | 'honey') => number | undefined
  readonly bottleMinor: number | undefined
  readonly corkMinor: number | undefined
  readonly labelMinor: number | undefined
}

/** Strengths that a shop sells as the same spirit. */
const sameSpiritPct = 1

export function pricesOf(asked: SeasonPrices, lastPaid: SeasonPrices, fruitFactor = 1): Prices {
  const both = [asked, lastPaid]
  const spirits = both.flatMap(({ spirits: own }) => own)
  return {
    fruitMinorPerKg: (fruitId) => {
      const found = both.flatMap(({ fruits }) => fruits).find((fruit) => fruit.fruitId === fruitId)
      return found && found.minorPerKg * fruitFactor
    },
    spiritMinorPerMl: (strengthPctVol) => {
      const same = spirits.find(
        (spirit) => Math.abs(spirit.strengthPctVol - strengthPctVol) <= sameSpiritPct,
      )
      // Another strength is paid for by its ethanol.
      const near = same ?? spirits[0]
      return near && (near.minorPerL / 1000) * (strengthPctVol / near.strengthPctVol)
    },
    sweetenerMinorPerG: (id) => {
      const perKg =
        id === 'sugar'
          ? (asked.sugarMinorPerKg ?? lastPaid.sugarMinorPerKg)
          : (asked.honeyMinorPerKg ?? lastPaid.honeyMinorPerKg)
      return perKg === undefined ? undefined : perKg / 1000
    },
    bottleMinor: asked.bottleMinor ?? lastPaid.bottleMinor,
    corkMinor: asked.corkMinor ?? lastPaid.corkMinor,
    labelMinor: asked.labelMinor ?? lastPaid.labelMinor,
  }
}
