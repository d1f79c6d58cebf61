/** A season's plan beside that of the season before, and what was really done then. */
import type { Cost } from '../../../shared/schemas/marrying.ts'
import type {
  KeptSeasonPlan,
  SeasonComparison,
  SeasonPlan,
} from '../../../shared/schemas/season.ts'
import { massOf } from '../../../shared/matter.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import { stepsOf } from '../ledger/batch-story.ts'
import type { CellarState } from '../ledger/cellar-state.ts'
import type { Step } from '../ledger/fold.ts'
import { liquidVolumeMl } from '../solution/liquid-volume.ts'
import { instant, msPerWeek, weeksShown } from './weeks.ts'

export interface Comparing {
  readonly now: SeasonPlan | undefined
  readonly earlier: KeptSeasonPlan | undefined
  readonly steps: readonly Step[]
  readonly cellar: CellarState
  readonly nowMs: number
}

export function compareSeasons(comparing: Comparing): SeasonComparison {
  const { now, earlier, steps, nowMs } = comparing
  const fromMs = earlier ? Date.parse(earlier.plan.startAt) : nowMs - weeksShown * msPerWeek
  const toMs = fromMs + weeksShown * msPerWeek
  const happened = batchesBegun(comparing, fromMs, toMs)
  const ids = new Set([
    ...(now?.kinds ?? []).map(({ kindId }) => kindId),
    ...(earlier?.plan.kinds ?? []).map(({ kindId }) => kindId),
    ...happened.map(({ kindId }) => kindId),
  ])
  const purchases = steps
    .filter(({ atMs }) => atMs >= fromMs && atMs < toMs)
    .flatMap(({ recorded: { move } }) =>
      move.kind === 'buy' ? { priceMinor: move.priceMinor, share: 1 } : [],
    )
  const happenedCost = costOf(purchases)
  return {
    from: instant(fromMs),
    to: instant(toMs),
    ...(earlier && { earlier: { id: earlier.id, keptAt: earlier.keptAt } }),
    kinds: [...ids].map((kindId) => ({
      kindId,
      ...(now && { now: planned(now, kindId) }),
      ...(earlier && {
        earlier: { ...planned(earlier.plan, kindId), ...firstStart(earlier.plan, kindId) },
      }),
      ...happenedOf(happened, kindId),
    })),
    money: {
      ...(now && { now: plannedCost(now) }),
      ...(earlier && { earlier: plannedCost(earlier.plan) }),
      ...(happenedCost && { happened: happenedCost }),
    },
  }
}

const planned = ({ batches }: SeasonPlan, kindId: string) => {
  const own = batches.filter((batch) => batch.kindId === kindId)
  return {
    fruitG: sum(own.map(({ fruitG }) => fruitG)),
    volumeMl: sum(own.map(({ volumeMl }) => volumeMl.value)),
    bottles: sum(own.map(({ bottles }) => bottles)),
  }
}

function firstStart({ batches }: SeasonPlan, kindId: string) {
  const starts = batches.filter((batch) => batch.kindId === kindId).map(({ startAt }) => startAt)
  return starts.length > 0 ? { startAt: starts.sort()[0] as string } : {}
}

interface BatchBegun {
  readonly batchId: string
  readonly kindId: string
  readonly firstMs: number
  readonly fruitG: number
  readonly bottledMl: number
  readonly bottles: number
  readonly inJarsMl: number
  readonly used: readonly PaidGoods[]
}

/** Batches whose first fruit went into a jar in that time. */
function batchesBegun({ steps, cellar }: Comparing, fromMs: number, toMs: number): BatchBegun[] {
  const charges = steps.flatMap(({ recorded: { move }, atMs }) =>
    move.kind === 'charge' ? [{ ...move, atMs }] : [],
  )
  return [...Map.groupBy(charges, ({ batchId }) => batchId)].flatMap(([batchId, own]) => {
    const firstMs = Math.min(...own.map(({ atMs }) => atMs))
    if (firstMs < fromMs || firstMs >= toMs) return []
    const lots = [...cellar.bottles.values()].filter((lot) => lot.batchId === batchId)
    const jars = [...cellar.jars.values()].filter((jar) => jar.batchId === batchId)
    return [
      {
        batchId,
        kindId: cellar.batches.get(batchId)?.fruitIds[0] ?? 'other',
        firstMs,
        fruitG: sum(own.map(({ massG }) => massG)),
        bottledMl: sum(lots.map(({ filledCount, bottleSizeMl }) => filledCount * bottleSizeMl)),
        bottles: sum(lots.map(({ filledCount }) => filledCount)),
        inJarsMl: sum(jars.map(({ bodies }) => liquidVolumeMl(bodies.free))),
        used: goodsUsed(batchId, steps, cellar),
      },
    ]
  })
}

function happenedOf(begun: readonly BatchBegun[], kindId: string) {
  const own = begun.filter((batch) => batch.kindId === kindId)
  if (own.length === 0) return {}
  const spent = costOf(own.flatMap(({ used }) => used))
  return {
    happened: {
      fruitG: sum(own.map(({ fruitG }) => fruitG)),
      volumeMl: sum(own.map(({ bottledMl }) => bottledMl)),
      bottles: sum(own.map(({ bottles }) => bottles)),
      inJarsMl: sum(own.map(({ inJarsMl }) => inJarsMl)),
      ...(spent && { spent }),
      firstAt: instant(Math.min(...own.map(({ firstMs }) => firstMs))),
      batchIds: own.map(({ batchId }) => batchId),
    },
  }
}

/** Goods, or the share of a lot that was used. */
interface PaidGoods {
  readonly priceMinor: number | undefined
  readonly share: number
}

/** Undefined where nothing has a price. */
function costOf(goods: readonly PaidGoods[]): Cost | undefined {
  const priced = goods.filter(({ priceMinor }) => priceMinor !== undefined)
  if (priced.length === 0) return undefined
  return {
    minor: sum(priced.map(({ priceMinor = 0, share }) => priceMinor * share)),
    isComplete: priced.length === goods.length,
  }
}

const plannedCost = ({ totals: { moneyMinor, isWholeMoney } }: SeasonPlan): Cost => ({
  minor: moneyMinor,
  isComplete: isWholeMoney,
})

/** Of each lot, what went into the batch's jars. */
const goodsUsed = (batchId: string, steps: readonly Step[], cellar: CellarState): PaidGoods[] =>
  stepsOf(steps, batchId)
    .filter(({ recorded: { move } }) => 'batchId' in move && move.batchId === batchId)
    .flatMap(({ effect }) => effect.transfers)
    .flatMap(({ from, matter }) => {
      const lot = from.startsWith('lot:') ? cellar.lots.get(from.slice('lot:'.length)) : undefined
      return lot ? { priceMinor: lot.priceMinor, share: massOf(matter) / massOf(lot.bought) } : []
    })

/** The plan of the season before: the newest kept at least half a year before this one's start. */
export function seasonBefore(
  plans: readonly KeptSeasonPlan[],
  startAt: string,
): KeptSeasonPlan | undefined {
  const latestMs = Date.parse(startAt) - 182 * msPerDay
  return plans.find(({ plan }) => Date.parse(plan.startAt) <= latestMs)
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)
