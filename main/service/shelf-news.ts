/** What the shelf has to tell to Today: when lots are ready and fade, and which kinds run low. */
import { isStanding, type FadingBottles } from '../engine/index.ts'
import type { KindStock, ShelfLot } from '../../shared/schemas/shelf.ts'
import { instant } from './lot-rows.ts'
import type { Session } from './session.ts'
import { shelfFacts, type ShelfFacts } from './shelf-facts.ts'
import { ageingOf, bestByOf, shelfLot } from './shelf-lots.ts'
import { shelfStock } from './shelf-stock.ts'

export interface ShelfNews {
  readonly facts: ShelfFacts
  /** Of a lot that still has full bottles. */
  readyAtMs: (bottleLotId: string) => number | undefined
  readonly fading: readonly FadingBottles[]
}

export function shelfNews(session: Session): ShelfNews {
  const facts = shelfFacts(session)
  const { bottles, opened } = session.ledger.folded.cellar
  const fading: FadingBottles[] = []
  const readyAtMs = new Map<string, number>()
  for (const [bottleLotId, lot] of bottles) {
    if (lot.count === 0) continue
    const { window } = ageingOf(bottleLotId, lot, facts)
    readyAtMs.set(bottleLotId, window.readyAtMs.likely)
    const { early, likely } = window.fadingAtMs
    fading.push({ batchId: lot.batchId, bottleLotId, earlyMs: early, likelyMs: likely })
  }
  for (const [openedId, one] of opened) {
    const lot = bottles.get(one.bottleLotId)
    if (!lot || !isStanding(one)) continue
    const { bottleLotId, batchId } = one
    const { early, likely } = bestByOf(one, lot)
    fading.push({ batchId, bottleLotId, openedId, earlyMs: early, likelyMs: likely })
  }
  return { facts, readyAtMs: (id) => readyAtMs.get(id), fading }
}

export function lotOnShelf(
  { ledger }: Session,
  facts: ShelfFacts,
  bottleLotId: string,
): ShelfLot | undefined {
  const lot = ledger.folded.cellar.bottles.get(bottleLotId)
  return lot && shelfLot(bottleLotId, lot, facts)
}

/** By then next season's bottles are not ready yet. */
const lowMonths = 6
/** More would be a list of its own, and that is the shelf's. */
const mostKinds = 5

/** Kinds that the maker's own drinking empties soon, the first to run out first. */
export function runningLow({ ledger }: Session, facts: ShelfFacts): KindStock[] {
  const asked = { pastMonths: 0, forecastMonths: lowMonths }
  const horizon = instant(facts.nowMs + lowMonths * 30.44 * 86_400_000)
  const emptyAt = ({ runsOut }: KindStock) => runsOut?.likely ?? ''
  return shelfStock(ledger.folded.cellar, facts, asked)
    .kinds.filter((kind) => {
      const at = emptyAt(kind)
      return kind.bottleCount > 0 && kind.isOwnHistory && at !== '' && at <= horizon
    })
    .toSorted((a, b) => emptyAt(a).localeCompare(emptyAt(b)))
    .slice(0, mostKinds)
}
