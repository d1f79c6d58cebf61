/** Spirit, sugar, honey and acid of Alder End: used up lot by lot, and bought again when one runs out. */
import { msPerHour } from '../../shared/spans-of-time.ts'
import type { Goods } from '../../shared/schemas/goods.ts'
import type { CellarHand } from './cellar-hand.ts'
import { instant, yearOf } from './days.ts'

export type Staple = 'spirit' | 'sugar' | 'honey' | 'acid'

export interface Portion {
  readonly lotId: string
  /** Millilitres of spirit, grams of the others. */
  readonly amount: number
}

export interface PantryKeeper {
  /** Takes an amount from the open lot and, where it does not reach, from a new one. */
  take: (staple: Staple, amount: number, atMs: number) => Promise<readonly Portion[]>
  /** Weighs the open sugar sack and books what it really holds. */
  weighSugar: (missingG: number, atMs: number) => Promise<void>
}

export const spiritPctVol = 96

const staples: Record<Staple, { goods: Goods; lotSize: number; priceMinor: number }> = {
  spirit: {
    goods: { kind: 'spirit', name: 'Rectified spirit', strengthPctVol: spiritPctVol },
    lotSize: 5000,
    priceMinor: 10_900,
  },
  sugar: {
    goods: { kind: 'sweetener', sweetenerId: 'sugar', name: 'White sugar' },
    lotSize: 10_000,
    priceMinor: 1150,
  },
  honey: {
    goods: { kind: 'sweetener', sweetenerId: 'honey', name: 'Lime honey' },
    lotSize: 1200,
    priceMinor: 1380,
  },
  acid: { goods: { kind: 'acid', name: 'Citric acid' }, lotSize: 100, priceMinor: 190 },
}

/** Everything became dearer. */
const risePerYear = 1.045

export function pantryKeeper(hand: CellarHand, firstYear: number): PantryKeeper {
  const open = new Map<Staple, { lotId: string; left: number }>()
  const bought = new Map<string, number>()

  async function buy(staple: Staple, atMs: number) {
    const { goods, lotSize, priceMinor } = staples[staple]
    const year = yearOf(atMs)
    const number = (bought.get(`${staple} ${year}`) ?? 0) + 1
    bought.set(`${staple} ${year}`, number)
    const lotId = `${staple}-${year}-${number}`
    await hand.record({
      kind: 'buy',
      at: instant(atMs - msPerHour),
      lotId,
      goods,
      ...(staple === 'spirit' ? { volumeMl: lotSize } : { massG: lotSize }),
      priceMinor: Math.round(priceMinor * risePerYear ** (year - firstYear)),
    })
    const lot = { lotId, left: lotSize }
    open.set(staple, lot)
    return lot
  }

  return {
    take: async (staple, amount, atMs) => {
      const portions: Portion[] = []
      let missing = amount
      while (missing > 0) {
        const there = open.get(staple)
        const lot = there && there.left > 0 ? there : await buy(staple, atMs)
        const taken = Math.min(missing, lot.left)
        lot.left -= taken
        missing -= taken
        portions.push({ lotId: lot.lotId, amount: taken })
      }
      return portions
    },
    weighSugar: async (missingG, atMs) => {
      const lot = open.get('sugar')
      if (!lot || lot.left <= missingG) return
      lot.left -= missingG
      await hand.record({
        kind: 'correct',
        at: instant(atMs),
        found: { lotId: lot.lotId, massG: lot.left },
        note: 'Weighed the sack. Somebody has been baking.',
      })
    },
  }
}
