/** Bottle lots and opened bottles as the shelf shows them: kind, vintage, window, cost, last tasting. */
import type { InstantBand, OpenedBottle, ShelfLot } from '../../shared/schemas/shelf.ts'
import { msPerDay } from '../../shared/spans-of-time.ts'
import {
  ageingWindow,
  bestByOnceOpened,
  colourLeft,
  describeLiquid,
  type AgeingLot,
  type AgeingWindowFound,
  type BottleState,
  type MsBand,
  type OpenedState,
} from '../engine/index.ts'
import { bottleLot } from './describe.ts'
import { instant } from './lot-rows.ts'
import { ageingFruits, historyOf, staysOf, type ShelfFacts } from './shelf-facts.ts'

type ColourLeft = NonNullable<ShelfLot['window']['colourLeft']>

/** How a lot ages, as far as it is known today. */
export interface Ageing {
  readonly lot: AgeingLot
  readonly window: AgeingWindowFound
  /** Now, and a quarter of a year on; absent where it fades little. */
  readonly colour: { readonly now: ColourLeft; readonly inAQuarter: ColourLeft } | undefined
}

interface Kept<T> {
  readonly key: string
  readonly fruits: ShelfFacts['fruits']
  readonly value: T
}

/** What is told of a lot is the same all day, until the lot, its tastings or a shelf change. */
function onceADay<T>(
  reckon: (id: string, lot: BottleState, facts: ShelfFacts) => T,
  also: (id: string, lot: BottleState, facts: ShelfFacts) => string,
) {
  const known = new WeakMap<BottleState, Kept<T>>()
  return (id: string, lot: BottleState, facts: ShelfFacts): T => {
    const { fruits, shelves, nowMs } = facts
    const { tastings } = historyOf(facts, id)
    const day = Math.floor(nowMs / msPerDay)
    const key = `${day} ${tastings.length} ${shelves} ${also(id, lot, facts)}`
    const kept = known.get(lot)
    if (kept?.key === key && kept.fruits === fruits) return kept.value
    const value = reckon(id, lot, facts)
    known.set(lot, { key, fruits, value })
    return value
  }
}

const msPerQuarter = 91.3 * msPerDay

export const ageingOf = onceADay(ageingNow, () => '')

function ageingNow(id: string, lot: BottleState, facts: ShelfFacts): Ageing {
  const history = historyOf(facts, id)
  const liquid = describeLiquid(lot.perBottle)
  const asked: AgeingLot = {
    ...ageingFruits(facts, id),
    strengthPctVol: liquid?.strengthPctVol ?? 0,
    sugarGPerL: liquid?.sugarGPerL ?? 0,
    acidGPerL: liquid?.acidGPerL ?? 0,
    bottledAtMs: lot.bottledAtMs,
    stays: staysOf(facts, history),
    verdicts: history.tastings.flatMap(({ move }) =>
      move.verdict ? [{ atMs: Date.parse(move.at), verdict: move.verdict }] : [],
    ),
    nowMs: Math.max(facts.nowMs, lot.bottledAtMs),
  }
  const now = colourLeft({ ...asked, atMs: asked.nowMs })
  const inAQuarter = colourLeft({ ...asked, atMs: asked.nowMs + msPerQuarter })
  return {
    lot: asked,
    window: ageingWindow(asked),
    colour: now && inAQuarter ? { now, inAQuarter } : undefined,
  }
}

export const instantBand = ({ early, likely, late }: MsBand): InstantBand => ({
  early: instant(early),
  likely: instant(likely),
  late: instant(late),
})

/** Money and the batch's name change without the lot. */
export const shelfLot = onceADay(
  shelfLotNow,
  (id, { batchId }, facts) => `${facts.costOf(id)?.minor} ${facts.nameOfBatch(batchId)}`,
)

function shelfLotNow(id: string, lot: BottleState, facts: ShelfFacts): ShelfLot {
  const { window, colour } = ageingOf(id, lot, facts)
  const fruitIds = facts
    .broughtTo(id)
    .flatMap(({ fruitId }) => (facts.fruits.find(fruitId) ? [fruitId] : []))
  const startedMs = facts.history.firstChargeMs.get(lot.batchId) ?? lot.bottledAtMs
  const cost = facts.costOf(id)
  const last = historyOf(facts, id).tastings.at(-1)?.move
  return {
    lot: bottleLot(id, lot, facts.nameOfBatch(lot.batchId)),
    kindId: fruitIds[0] ?? 'other',
    fruitIds,
    vintage: new Date(startedMs).getUTCFullYear(),
    window: {
      phase: window.phase,
      readyAt: instantBand(window.readyAtMs),
      fadingAt: instantBand(window.fadingAtMs),
      because: window.because,
      ...(colour && { colourLeft: colour.now }),
    },
    ...(cost &&
      lot.count > 0 &&
      (cost.isComplete || cost.minor > 0) && { costPerBottle: cost.minor / lot.count }),
    ...(last && { lastTasted: { at: last.at, ...(last.verdict && { verdict: last.verdict }) } }),
  }
}

/** Strength and level decide how long an opened bottle keeps; an empty one is of its lot. */
export function bestByOf(opened: OpenedState, lot: BottleState): MsBand {
  const liquid = describeLiquid(opened.matter)
  return bestByOnceOpened({
    openedAtMs: opened.openedAtMs,
    strengthPctVol: (liquid ?? describeLiquid(lot.perBottle))?.strengthPctVol ?? 0,
    fillFraction: Math.min(1, (liquid?.volumeMl ?? 0) / opened.bottleSizeMl),
  })
}

export function openedBottle(
  id: string,
  opened: OpenedState,
  lot: BottleState,
  facts: ShelfFacts,
): OpenedBottle {
  const liquid = describeLiquid(opened.matter)
  return {
    id,
    bottleLotId: opened.bottleLotId,
    batchId: opened.batchId,
    name: lot.name ?? facts.nameOfBatch(opened.batchId),
    openedAt: instant(opened.openedAtMs),
    bottleSizeMl: opened.bottleSizeMl,
    ...(liquid && { liquid }),
    bestBy: instantBand(bestByOf(opened, lot)),
  }
}
