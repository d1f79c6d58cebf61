/** What a season plan is made from, gathered from the book: plain data for another thread. */
import { setImmediate } from 'node:timers/promises'
import { allJars } from '../cellar/jar-store.ts'
import { allRecipes } from '../cellar/recipe-store.ts'
import { seasonRegion, seasonWishes } from '../cellar/season-store.ts'
import {
  draftOfBatch,
  freshPurchases,
  settledJar,
  standingOf,
  stepsOf,
  type CellarState,
  type KnownRecipe,
  type SeasonFacts,
} from '../engine/index.ts'
import type { DraftSpec } from '../../shared/schemas/drafts.ts'
import type { SeasonPrices, SeasonWishes } from '../../shared/schemas/season.ts'
import { pantryLot } from './describe.ts'
import { draftFacts } from './draft-facts.ts'
import { nowMs } from './handlers/handler.ts'
import { learnedOf } from './learned-fruit.ts'
import type { Session } from './session.ts'
import { shelfFacts } from './shelf-facts.ts'
import { shelfStock } from './shelf-stock.ts'

/** What the maker kept; before that, the cellar's own habits. */
export function wishesOf({ book, ledger }: Session): SeasonWishes {
  const kept = seasonWishes(book)
  if (kept) return kept
  const { cellar } = ledger.folded
  const spirits = [...cellar.lots.values()].flatMap(({ goods, boughtAtMs }) =>
    goods.kind === 'spirit' ? [{ strengthPctVol: goods.strengthPctVol, atMs: boughtAtMs }] : [],
  )
  return {
    wishes: [],
    limits: { isSpiritAtHandOnly: false },
    prices: { fruits: [], spirits: [] },
    reserveMonths: 0,
    spiritPctVol: Math.max(20, latest(spirits)?.strengthPctVol ?? 96),
    bottleSizeMl: Math.max(10, usualSizeMl(cellar) ?? 500),
    cleaningWeeks: 1,
  }
}

/** The size that most of the cellar's bottles were filled in, the larger one of two alike. */
function usualSizeMl({ bottles }: CellarState): number | undefined {
  const filled = new Map<number, number>()
  for (const { bottleSizeMl, filledCount } of bottles.values())
    filled.set(bottleSizeMl, (filled.get(bottleSizeMl) ?? 0) + filledCount)
  return [...filled].toSorted(([a, many], [b, more]) => more - many || b - a)[0]?.[0]
}

const latest = <T extends { atMs: number }>(found: readonly T[]): T | undefined =>
  found.reduce<T | undefined>(
    (last, next) => (!last || next.atMs >= last.atMs ? next : last),
    undefined,
  )

export interface SeasonAsked {
  readonly wishes?: SeasonWishes | undefined
  readonly startAt?: string | undefined
}

export function seasonFacts(session: Session, asked: SeasonAsked): SeasonFacts {
  const { book, ledger, fruits } = session
  const { cellar, steps } = ledger.folded
  const now = nowMs(session)
  const wishes = asked.wishes ?? wishesOf(session)
  const stocks = shelfStock(cellar, shelfFacts(session), { pastMonths: 0, forecastMonths: 1 }).kinds
  const kindIds = new Set([
    ...stocks.map(({ kindId }) => kindId),
    ...wishes.wishes.map(({ kindId }) => kindId),
  ])
  const recipes = recipesOf(session, kindIds)
  const { fruitOf } = draftFacts(session)
  const named = new Set([
    ...kindIds,
    ...recipes.flatMap(({ spec }) => spec.fruits.map(({ fruitId }) => fruitId)),
  ])
  const jarsNow = new Map(
    [...cellar.jars].map(([id, jar]) => [id, settledJar(jar, Math.max(now, jar.atMs))]),
  )
  return {
    nowMs: now,
    startMs: asked.startAt === undefined ? now : Date.parse(asked.startAt),
    wishes,
    region: seasonRegion(book),
    fruits: [...named].flatMap((id) => (fruits.find(id) ? fruitOf(id) : [])),
    fresh: freshPurchases(steps),
    stocks: stocks.map(({ kindId, volumeMl, perYearMl, givenShare, isOwnHistory }) => ({
      kindId,
      volumeMl,
      perYearMl,
      givenShare,
      isOwnHistory,
    })),
    ownYields: [...kindIds].flatMap((fruitId) => {
      const learned = fruits.find(fruitId) && learnedOf(session, fruitId)?.yieldLPerKg
      return learned ? [{ fruitId, own: learned.own, batchIds: [...learned.batchIds] }] : []
    }),
    recipes,
    jars: allJars(book).filter(({ isRetired }) => !isRetired),
    standing: standingOf({ jars: jarsNow, batches: cellar.batches }, fruits.fruitOf, now),
    pantry: pantryOf(session),
    lastPaid: lastPaid(session),
  }
}

/**
 * What the cellar's batches taught is worked out kind by kind, and others are answered in between:
 * gathered at one stretch it would hold up every screen for a second.
 */
export async function learnBefore(session: Session, asked: SeasonAsked): Promise<void> {
  const { batches } = session.ledger.folded.cellar
  const wished = (asked.wishes ?? wishesOf(session)).wishes.map(({ kindId }) => kindId)
  const kindIds = new Set([...[...batches.values()].flatMap(({ fruitIds }) => fruitIds), ...wished])
  for (const kindId of kindIds) {
    if (session.fruits.find(kindId)) learnedOf(session, kindId)
    await setImmediate()
  }
}

/** Of each kind the newest house recipe, or else as its last finished batch was made. */
function recipesOf({ book, ledger }: Session, kindIds: ReadonlySet<string>): KnownRecipe[] {
  const { cellar, steps } = ledger.folded
  const house = allRecipes(book)
    .map(({ id, spec, keptAt }) => ({ id, spec, keptAt, kindId: leading(spec) }))
    .sort((a, b) => (a.keptAt < b.keptAt ? 1 : -1))
  return [...kindIds].flatMap((kindId): KnownRecipe[] => {
    const kept = house.find((recipe) => recipe.kindId === kindId)
    if (kept) return [{ kindId, spec: kept.spec, recipeId: kept.id }]
    const made = [...cellar.batches]
      .filter(([, { stage, fruitIds }]) => {
        const isDone = stage === 'resting' || stage === 'finished'
        return isDone && fruitIds.length === 1 && fruitIds[0] === kindId
      })
      .map(([batchId, { startedAtMs }]) => ({ batchId, atMs: startedAtMs }))
    const last = latest(made)
    if (!last) return []
    const { batchId } = last
    const spec = draftOfBatch(stepsOf(steps, batchId), cellar, batchId, () => undefined)
    return spec ? [{ kindId, spec, batchId }] : []
  })
}

const leading = ({ fruits }: DraftSpec): string | undefined =>
  [...fruits].sort((a, b) => b.massG - a.massG)[0]?.fruitId

function pantryOf({ ledger }: Session): SeasonFacts['pantry'] {
  const lots = [...ledger.folded.cellar.lots].map(([id, lot]) => pantryLot(id, lot))
  return {
    fruits: lots.flatMap(({ goods, massG }) =>
      goods.kind === 'fruit' && massG > 1 ? [{ fruitId: goods.fruitId, massG }] : [],
    ),
    spirits: lots.flatMap(({ goods, volumeMl = 0 }) =>
      goods.kind === 'spirit' && volumeMl > 1
        ? [{ strengthPctVol: goods.strengthPctVol, volumeMl }]
        : [],
    ),
    sweeteners: lots.flatMap(({ goods, massG }) =>
      goods.kind === 'sweetener' && massG > 1 ? [{ id: goods.sweetenerId, massG }] : [],
    ),
  }
}

/** Prices as last paid, by what was bought; bottles, corks and labels are in no ledger. */
function lastPaid({ ledger }: Session): SeasonPrices {
  const fruits = new Map<string, number>()
  const spirits = new Map<number, number>()
  const sweeteners = new Map<'sugar' | 'honey', number>()
  for (const { recorded } of ledger.folded.steps) {
    const { move } = recorded
    if (move.kind !== 'buy' || !move.priceMinor) continue
    const { goods, massG, volumeMl, priceMinor } = move
    if (goods.kind === 'fruit' && massG) fruits.set(goods.fruitId, (1000 * priceMinor) / massG)
    if (goods.kind === 'spirit' && volumeMl)
      spirits.set(goods.strengthPctVol, (1000 * priceMinor) / volumeMl)
    if (goods.kind === 'sweetener' && massG)
      sweeteners.set(goods.sweetenerId, (1000 * priceMinor) / massG)
  }
  const sugarMinorPerKg = sweeteners.get('sugar')
  const honeyMinorPerKg = sweeteners.get('honey')
  return {
    fruits: [...fruits].map(([fruitId, minorPerKg]) => ({ fruitId, minorPerKg })),
    spirits: [...spirits].map(([strengthPctVol, minorPerL]) => ({ strengthPctVol, minorPerL })),
    ...(sugarMinorPerKg !== undefined && { sugarMinorPerKg }),
    ...(honeyMinorPerKg !== undefined && { honeyMinorPerKg }),
  }
}
