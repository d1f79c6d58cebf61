/** The shelf: lots with their windows, one lot's page, stock by kind, and where matter went. */
import type { Lineage, ShelfLots, ShelfPage } from '../../../shared/schemas/shelf.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import {
  bottlesPlace,
  colourLeft,
  drinkFirst,
  isStanding,
  lineageBack,
  lineageForward,
  lotPlace,
  type BottleState,
  type CellarState,
  type LineageFound,
  type MsBand,
  type OpenedState,
} from '../../engine/index.ts'
import { glassMl } from '../cellar-costs.ts'
import { ledgerStep } from '../describe.ts'
import { instant } from '../lot-rows.ts'
import { notFound } from '../service-error.ts'
import type { Session } from '../session.ts'
import { historyOf, shelfFacts, type ShelfFacts } from '../shelf-facts.ts'
import { ageingOf, bestByOf, openedBottle, shelfLot } from '../shelf-lots.ts'
import { shelfStock } from '../shelf-stock.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

type ShelfChannels = ChannelsOf<'shelf'> | ChannelsOf<'lineage'>

export const shelfHandlers: Handlers<ShelfChannels> = {
  'shelf.lots': (session, { withGone }) => {
    const facts = shelfFacts(session)
    const { bottles, opened } = session.ledger.folded.cellar
    const standing = [...opened].filter(([, one]) => isStanding(one))
    return {
      lots: [...bottles]
        .filter(([, lot]) => withGone || lot.count > 0)
        .map(([id, lot]) => shelfLot(id, lot, facts)),
      opened: (withGone ? [...opened] : standing).flatMap(([id, one]) => {
        const lot = bottles.get(one.bottleLotId)
        return lot ? [openedBottle(id, one, lot, facts)] : []
      }),
      drinkFirst: firstToDrink(
        bottles,
        standing.map(([, one]) => one),
        facts,
      ),
    }
  },
  'shelf.page': (session, { bottleLotId }) => {
    const { bottles } = session.ledger.folded.cellar
    const lot = bottles.get(bottleLotId)
    if (!lot) throw notFound('bottle lot', bottleLotId)
    return pageOf(session, bottleLotId, lot)
  },
  'shelf.stock': (session, asked) =>
    shelfStock(session.ledger.folded.cellar, shelfFacts(session), asked),
  'lineage.of': ({ ledger: { folded } }, asked) => {
    const { bottles, lots } = folded.cellar
    if ('bottleLotId' in asked) {
      if (!bottles.has(asked.bottleLotId)) throw notFound('bottle lot', asked.bottleLotId)
      return lineage(lineageBack(folded, bottlesPlace(asked.bottleLotId)))
    }
    if (!lots.has(asked.lotId)) throw notFound('pantry lot', asked.lotId)
    return lineage(lineageForward(folded, lotPlace(asked.lotId)))
  },
}

function firstToDrink(
  bottles: CellarState['bottles'],
  opened: readonly OpenedState[],
  facts: ShelfFacts,
): ShelfLots['drinkFirst'] {
  const openedByLot = new Map<string, MsBand[]>()
  for (const one of opened) {
    const lot = bottles.get(one.bottleLotId)
    if (!lot) continue
    const bands = openedByLot.get(one.bottleLotId) ?? []
    openedByLot.set(one.bottleLotId, [...bands, bestByOf(one, lot)])
  }
  const waiting = [...bottles]
    .filter(([id, { count }]) => count > 0 || openedByLot.has(id))
    .map(([id, lot]) => {
      const { window, colour } = ageingOf(id, lot, facts)
      return {
        bottleLotId: id,
        window,
        openedBestByMs: openedByLot.get(id) ?? [],
        ...(colour && {
          colour: { now: colour.now.value, inAQuarter: colour.inAQuarter.value },
        }),
      }
    })
  return drinkFirst(waiting, facts.nowMs).map(({ bottleLotId, because, byMs }) => ({
    bottleLotId,
    because,
    ...(byMs !== undefined && { by: instant(byMs) }),
  }))
}

function pageOf(session: Session, id: string, lot: BottleState): ShelfPage {
  const facts = shelfFacts(session)
  const { cellar } = session.ledger.folded
  const { steps, tastings } = historyOf(facts, id)
  const progress = cellar.batches.get(lot.batchId)
  const cost = facts.costOf(id)
  return {
    shelfLot: shelfLot(id, lot, facts),
    opened: (progress?.openedIds ?? []).flatMap((openedId) => {
      const one = cellar.opened.get(openedId)
      return one?.bottleLotId === id ? [openedBottle(openedId, one, lot, facts)] : []
    }),
    steps: steps.map(ledgerStep),
    tastings,
    stays: staysTold(facts, id),
    colour: colourOverTime(id, lot, facts),
    siblingIds: (progress?.bottleLotIds ?? []).filter((other) => other !== id),
    ...(cost &&
      lot.count > 0 && {
        cost,
        costPerGlass: (glassMl * cost.minor) / (lot.count * lot.bottleSizeMl),
      }),
  }
}

/** How many bottles stood on a shelf from when on; told again whenever that changed. */
function staysTold(facts: ShelfFacts, id: string): ShelfPage['stays'] {
  const stays: ShelfPage['stays'] = []
  let before: BottleState['shelves'] = new Map()
  for (const { atMs, shelves } of historyOf(facts, id).stands) {
    for (const shelfId of new Set([...before.keys(), ...shelves.keys()])) {
      const count = shelves.get(shelfId) ?? 0
      if (count !== (before.get(shelfId) ?? 0)) stays.push({ shelfId, from: instant(atMs), count })
    }
    before = shelves
  }
  return stays
}

const colourPoints = 60

function colourOverTime(id: string, lot: BottleState, facts: ShelfFacts): ShelfPage['colour'] {
  const { lot: asked, window } = ageingOf(id, lot, facts)
  const endMs = Math.max(window.fadingAtMs.late, facts.nowMs) + 365 * msPerDay
  return Array.from({ length: colourPoints + 1 }, (_, index) => {
    const atMs = asked.bottledAtMs + ((endMs - asked.bottledAtMs) * index) / colourPoints
    const left = colourLeft({ ...asked, atMs })
    return left ? [{ at: instant(atMs), left }] : []
  }).flat()
}

const lineage = ({ nodes, ...found }: LineageFound): Lineage => ({
  nodes: nodes.map(({ atMs, ...node }) => ({
    ...node,
    ...(atMs !== undefined && { at: instant(atMs) }),
  })),
  links: [...found.links],
  origins: [...found.origins],
  destinations: [...found.destinations],
})
