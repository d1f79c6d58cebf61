/** What each place of the cellar cost: read off the ledger once, and kept while it stays the same. */
import { massOf } from '../../shared/matter.ts'
import type { CellarCosts, Cost, PlaceCost } from '../../shared/schemas/marrying.ts'
import {
  alongLedger,
  bottlesPlace,
  costsIn,
  jarPlace,
  liquidVolumeMl,
  lotPlace,
  openPurses,
  openedPlace,
  payStep,
  wholeMatter,
  type CellarState,
  type Costs,
  type Step,
} from '../engine/index.ts'
import type { LedgerView } from './ledger-view.ts'

/** A liqueur glass, as it is usually poured. */
export const glassMl = 40

const known = new WeakMap<readonly Step[], Costs>()

const pursesAfter = alongLedger({ start: openPurses, take: payStep })

export function costsOfView({ folded: { steps } }: LedgerView): Costs {
  const kept = known.get(steps)
  if (kept) return kept
  const costs = costsIn(pursesAfter(steps))
  known.set(steps, costs)
  return costs
}

export const free: Cost = Object.freeze({ minor: 0, isComplete: true })

export function cellarCosts(view: LedgerView): CellarCosts {
  const { places, spent, drunk, given, wasted } = costsOfView(view)
  const told = placesOf(view.folded.cellar, (place) => places.get(place) ?? free)
  return { glassMl, places: told, spent, drunk, given, wasted }
}

/** Less than this is not there. */
const least = 0.5

function placesOf(cellar: CellarState, costOf: (place: string) => Cost): PlaceCost[] {
  const told: PlaceCost[] = []
  for (const [id, lot] of cellar.lots) {
    const unit = lot.goods.kind === 'spirit' ? 'ml' : 'g'
    const amount = unit === 'ml' ? liquidVolumeMl(lot.matter) : massOf(lot.matter)
    const cost = costOf(lotPlace(id))
    if (amount >= least)
      told.push({
        place: lotPlace(id),
        cost,
        unit,
        amount,
        ...(unit === 'ml' && perLitre(cost, amount)),
      })
  }
  for (const [id, jar] of cellar.jars) {
    const amount = liquidVolumeMl(wholeMatter(jar))
    const cost = costOf(jarPlace(id))
    if (amount >= least)
      told.push({ place: jarPlace(id), cost, unit: 'ml', amount, ...perLitre(cost, amount) })
  }
  for (const [id, { count, bottleSizeMl }] of cellar.bottles) {
    const cost = costOf(bottlesPlace(id))
    if (count > 0)
      told.push({
        place: bottlesPlace(id),
        cost,
        unit: 'bottles',
        amount: count,
        perBottle: cost.minor / count,
        ...perLitre(cost, count * bottleSizeMl),
      })
  }
  for (const [id, { matter }] of cellar.opened) {
    const amount = liquidVolumeMl(matter)
    const cost = costOf(openedPlace(id))
    if (amount >= least)
      told.push({ place: openedPlace(id), cost, unit: 'ml', amount, ...perLitre(cost, amount) })
  }
  return told
}

const perLitre = ({ minor }: Cost, volumeMl: number) => ({
  perLitre: (1000 * minor) / volumeMl,
  perGlass: (glassMl * minor) / volumeMl,
})
