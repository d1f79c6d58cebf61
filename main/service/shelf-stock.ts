/** Stock by kind, gone and to come: what the ledger says came and went, and what drinking leaves. */
import type { KindStock, ShelfStock } from '../../shared/schemas/shelf.ts'
import {
  forecastStock,
  isStanding,
  liquidVolumeMl,
  matterInBottles,
  type CellarState,
  type KindStockFound,
  type StockNow,
} from '../engine/index.ts'
import { instant } from './lot-rows.ts'
import type { ShelfFacts } from './shelf-facts.ts'

export interface StockAsked {
  readonly pastMonths: number
  readonly forecastMonths: number
}

export function shelfStock(
  { bottles, opened }: CellarState,
  facts: ShelfFacts,
  { pastMonths, forecastMonths }: StockAsked,
): ShelfStock {
  const kindOf = kindsOf(facts)
  const kinds = new Map<string, StockNow>()
  const add = (kindId: string, count: number, volumeMl: number) => {
    const there = kinds.get(kindId) ?? { kindId, bottleCount: 0, volumeMl: 0 }
    kinds.set(kindId, {
      kindId,
      bottleCount: there.bottleCount + count,
      volumeMl: there.volumeMl + volumeMl,
    })
  }
  for (const [id, lot] of bottles) add(kindOf(id), lot.count, liquidVolumeMl(matterInBottles(lot)))
  for (const one of opened.values())
    if (isStanding(one)) add(kindOf(one.bottleLotId), 0, liquidVolumeMl(one.matter))
  const found = forecastStock({
    kinds: [...kinds.values()],
    changes: facts.history.changes.map(({ bottleLotId, ...change }) => ({
      ...change,
      kindId: kindOf(bottleLotId),
    })),
    nowMs: facts.nowMs,
    months: forecastMonths,
  })
  const told = (kind: KindStockFound) => kindStock(kind, pastMonths)
  return { kinds: found.kinds.map(told), all: told(found.all) }
}

/** The fruit that brought most of a lot, `other` where there was none. */
function kindsOf({ broughtTo, fruits }: ShelfFacts): (bottleLotId: string) => string {
  const known = new Map<string, string>()
  return (id) => {
    const kept = known.get(id)
    if (kept !== undefined) return kept
    const kind = broughtTo(id).find(({ fruitId }) => fruits.find(fruitId))?.fruitId ?? 'other'
    known.set(id, kind)
    return kind
  }
}

const orNull = (ms: number | null) => (ms === null ? null : instant(ms))

function kindStock(
  { past, forecast, runsOutMs, ...kind }: KindStockFound,
  pastMonths: number,
): KindStock {
  return {
    ...kind,
    past: past
      .slice(Math.max(0, past.length - pastMonths))
      .map(({ atMs, volumeMl }) => ({ at: instant(atMs), volumeMl })),
    forecast: forecast.map(({ atMs, volumeMl }) => ({ at: instant(atMs), volumeMl })),
    ...(runsOutMs && {
      runsOut: {
        early: instant(runsOutMs.early),
        likely: orNull(runsOutMs.likely),
        late: orNull(runsOutMs.late),
      },
    }),
  }
}
