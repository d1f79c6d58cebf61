/** What the shelf has to tell to Today: when lots are ready and fade, and which kinds run low. */
import { allShelves } from '../cellar/shelf-store.ts'
import { isStanding, type CellarState, type FadingBottles } from '../engine/index.ts'
import type { KindStock } from '../../shared/schemas/shelf.ts'
import { msPerDay } from '../../shared/spans-of-time.ts'
import type { CellarFruits } from './cellar-fruits.ts'
import { nowMs } from './handlers/handler.ts'
import { instant } from './lot-rows.ts'
import type { Session } from './session.ts'
import { shelfFacts, type ShelfFacts } from './shelf-facts.ts'
import { ageingOf, bestByOf } from './shelf-lots.ts'
import { shelfStock } from './shelf-stock.ts'

export interface ShelfNews {
  /** Of lots that still have full bottles. */
  readonly readyAtMs: ReadonlyMap<string, number>
  readonly fading: readonly FadingBottles[]
  /** Kinds that the maker's own drinking empties soon, the first to run out first. */
  readonly runningLow: readonly KindStock[]
}

interface KeptNews {
  readonly key: string
  readonly fruits: CellarFruits
  readonly news: ShelfNews
}

const known = new WeakMap<CellarState, KeptNews>()

/** Worked out once a day, and again when the ledger, a shelf or a fruit changes. */
export function shelfNews(session: Session): ShelfNews {
  const { fruits, ledger, book } = session
  const { cellar } = ledger.folded
  const key = `${Math.floor(nowMs(session) / msPerDay)} ${JSON.stringify(allShelves(book))}`
  const kept = known.get(cellar)
  if (kept?.key === key && kept.fruits === fruits) return kept.news
  const news = newsNow(cellar, shelfFacts(session))
  known.set(cellar, { key, fruits, news })
  return news
}

function newsNow(cellar: CellarState, facts: ShelfFacts): ShelfNews {
  const fading: FadingBottles[] = []
  const readyAtMs = new Map<string, number>()
  for (const [bottleLotId, lot] of cellar.bottles) {
    if (lot.count === 0) continue
    const { window } = ageingOf(bottleLotId, lot, facts)
    readyAtMs.set(bottleLotId, window.readyAtMs.likely)
    const { early, likely } = window.fadingAtMs
    fading.push({ batchId: lot.batchId, bottleLotId, earlyMs: early, likelyMs: likely })
  }
  for (const [openedId, one] of cellar.opened) {
    const lot = cellar.bottles.get(one.bottleLotId)
    if (!lot || !isStanding(one)) continue
    const { bottleLotId, batchId } = one
    const { early, likely } = bestByOf(one, lot)
    fading.push({ batchId, bottleLotId, openedId, earlyMs: early, likelyMs: likely })
  }
  return { readyAtMs, fading, runningLow: runningLow(cellar, facts) }
}

/** By then next season's bottles are not ready yet. */
const lowMonths = 6
/** More would be a list of its own, and that is the shelf's. */
const mostKinds = 5

const emptyAt = ({ runsOut }: KindStock): string => runsOut?.likely ?? ''

function runningLow(cellar: CellarState, facts: ShelfFacts): KindStock[] {
  const horizon = instant(facts.nowMs + lowMonths * 30.44 * msPerDay)
  return shelfStock(cellar, facts, { pastMonths: 0, forecastMonths: lowMonths })
    .kinds.filter((kind) => {
      const at = emptyAt(kind)
      return kind.bottleCount > 0 && kind.isOwnHistory && at !== '' && at <= horizon
    })
    .toSorted((a, b) => emptyAt(a).localeCompare(emptyAt(b)))
    .slice(0, mostKinds)
}
