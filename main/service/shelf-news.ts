/** What the shelf has to tell to Today: when lots are ready and fade, and which kinds run low. */
import { allShelves } from '../cellar/shelf-store.ts'
import {
  isStanding,
  type BottleState,
  type CellarState,
  type FadingBottles,
  type OpenedState,
} from '../engine/index.ts'
import type { KindStock } from '../../shared/schemas/shelf.ts'
import { msPerDay } from '../../shared/spans-of-time.ts'
import type { CellarFruits } from './cellar-fruits.ts'
import { nowMs } from './handlers/handler.ts'
import { instant } from './lot-rows.ts'
import type { Session } from './session.ts'
import { shelfFacts, type ShelfFacts } from './shelf-facts.ts'
import { ageingOf, bestByOf } from './shelf-lots.ts'
import { shelfStock } from './shelf-stock.ts'

export interface BottleNews {
  /** Of lots that still have full bottles. */
  readonly readyAtMs: ReadonlyMap<string, number>
  readonly fading: readonly FadingBottles[]
}

export interface ShelfNews extends BottleNews {
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
  const news = wholeNews(cellar, shelfFacts(session))
  known.set(cellar, { key, fruits, news })
  return news
}

/** Of the bottles of one batch: how each lot ages is kept with the lot. */
export function shelfNewsOf(session: Session, batchId: string): BottleNews {
  const { cellar } = session.ledger.folded
  const { bottleLotIds = [], openedIds = [] } = cellar.batches.get(batchId) ?? {}
  if (bottleLotIds.length === 0) return { readyAtMs: new Map(), fading: [] }
  return bottleNews(cellar, shelfFacts(session), {
    lots: entriesOf(cellar.bottles, bottleLotIds),
    opened: entriesOf(cellar.opened, openedIds),
  })
}

const entriesOf = <State>(all: ReadonlyMap<string, State>, ids: readonly string[]) =>
  ids.flatMap((id): [string, State][] => {
    const state = all.get(id)
    return state === undefined ? [] : [[id, state]]
  })

interface Bottles {
  readonly lots: Iterable<readonly [string, BottleState]>
  readonly opened: Iterable<readonly [string, OpenedState]>
}

function bottleNews(cellar: CellarState, facts: ShelfFacts, { lots, opened }: Bottles): BottleNews {
  const fading: FadingBottles[] = []
  const readyAtMs = new Map<string, number>()
  for (const [bottleLotId, lot] of lots) {
    if (lot.count === 0) continue
    const { window } = ageingOf(bottleLotId, lot, facts)
    readyAtMs.set(bottleLotId, window.readyAtMs.likely)
    const { early, likely } = window.fadingAtMs
    fading.push({ batchId: lot.batchId, bottleLotId, earlyMs: early, likelyMs: likely })
  }
  for (const [openedId, one] of opened) {
    const lot = cellar.bottles.get(one.bottleLotId)
    if (!lot || !isStanding(one)) continue
    const { bottleLotId, batchId } = one
    const { early, likely } = bestByOf(one, lot)
    fading.push({ batchId, bottleLotId, openedId, earlyMs: early, likelyMs: likely })
  }
  return { readyAtMs, fading }
}

function wholeNews(cellar: CellarState, facts: ShelfFacts): ShelfNews {
  let low: readonly KindStock[] | undefined
  return {
    ...bottleNews(cellar, facts, { lots: cellar.bottles, opened: cellar.opened }),
    // Carrying the drinking on is most of the work, and only Today asks for it.
    get runningLow() {
      low ??= runningLow(cellar, facts)
      return low
    },
  }
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
