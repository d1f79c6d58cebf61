/**
 * Which draft would have given a batch that really was?
 *
 * Reads a batch's own steps: what was charged, poured, drawn and added becomes the numbers of a
 * draft, so that a good year can be made again or scaled. Undefined where there is no fruit or no
 * spirit: such a batch is no recipe.
 * Leaves out: what was thrown away, corrected, or came from other batches; the vessels.
 */
import type { DraftSpec, DraftSpirit } from '../../../shared/schemas/drafts.ts'
import type { FilterMedium, Move } from '../../../shared/schemas/moves.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { CellarState } from '../ledger/cellar-state.ts'
import type { Step } from '../ledger/fold.ts'

interface Gathered {
  readonly fruits: Map<string, DraftSpec['fruits'][number]>
  readonly spirits: Map<number, DraftSpirit>
  readonly draws: { sugarG: number; fromMs: number; toMs: number }[]
  readonly filters: FilterMedium[]
  layeringSugarG: number
  steepWaterMl: number
  finishWaterMl: number
  finishSugarG: number
  finishSpiritMl: number
  chargedMs: number | undefined
  spiritMs: number | undefined
  drawnMs: number | undefined
  marriedMs: number | undefined
  filteredMs: number | undefined
  isPressed: boolean
  bottleSizeMl: number
}

export function draftOfBatch(
  steps: readonly Step[],
  cellar: CellarState,
  batchId: string,
): DraftSpec | undefined {
  const gathered: Gathered = {
    fruits: new Map(),
    spirits: new Map(),
    draws: [],
    filters: [],
    layeringSugarG: 0,
    steepWaterMl: 0,
    finishWaterMl: 0,
    finishSugarG: 0,
    finishSpiritMl: 0,
    chargedMs: undefined,
    spiritMs: undefined,
    drawnMs: undefined,
    marriedMs: undefined,
    filteredMs: undefined,
    isPressed: false,
    bottleSizeMl: 500,
  }
  for (const step of steps) {
    const { move } = step.recorded
    if ('batchId' in move && move.batchId === batchId) gather(gathered, step, move, cellar)
  }
  return specOf(gathered)
}

function gather(found: Gathered, { effect, atMs }: Step, move: Move, { lots }: CellarState) {
  switch (move.kind) {
    case 'charge': {
      const goods = lots.get(move.lotId)?.goods
      if (goods?.kind !== 'fruit') return
      const before = found.fruits.get(goods.fruitId)
      const massG = (before?.massG ?? 0) + move.massG
      const refuseG = (before?.refuseShare ?? 0) * (before?.massG ?? 0) + (move.refuseG ?? 0)
      const fruit = { fruitId: goods.fruitId, massG, refuseShare: refuseG / massG, cut: move.cut }
      found.fruits.set(goods.fruitId, fruit)
      found.chargedMs ??= atMs
      return
    }
    case 'sugar':
    case 'coverWithSugar': {
      const jar = effect.jars?.get(move.jarId)
      if (jar?.stage === 'sugarDraw') addDraw(found, move.massG, atMs)
      else if (jar?.fruit && found.drawnMs === undefined) found.layeringSugarG += move.massG
      else found.finishSugarG += move.massG
      return
    }
    case 'pourSpirit': {
      const goods = lots.get(move.lotId)?.goods
      if (goods?.kind !== 'spirit') return
      if (found.drawnMs !== undefined) {
        found.finishSpiritMl += move.volumeMl
        return
      }
      const { strengthPctVol } = goods
      const volumeMl = (found.spirits.get(strengthPctVol)?.volumeMl ?? 0) + move.volumeMl
      found.spirits.set(strengthPctVol, { strengthPctVol, volumeMl })
      found.spiritMs ??= atMs
      return
    }
    case 'pourWater':
      if (found.drawnMs === undefined) found.steepWaterMl += move.volumeMl
      else found.finishWaterMl += move.volumeMl
      return
    case 'drawOff': {
      const draw = found.draws.at(-1)
      if (draw) draw.toMs = atMs
      found.drawnMs ??= atMs
      return
    }
    case 'press':
      found.drawnMs ??= atMs
      found.isPressed = true
      return
    case 'marry':
      found.marriedMs ??= atMs
      return
    case 'filter':
      found.filteredMs ??= atMs
      if (!found.filters.includes(move.medium)) found.filters.push(move.medium)
      return
    case 'bottle':
      found.bottleSizeMl = move.bottleSizeMl
      return
    default:
      return
  }
}

/** Jars of one batch are covered on the same days: sugar before the next pouring off is one draw. */
function addDraw(found: Gathered, massG: number, atMs: number) {
  const last = found.draws.at(-1)
  if (last && last.toMs === last.fromMs) last.sugarG += massG
  else found.draws.push({ sugarG: massG, fromMs: atMs, toMs: atMs })
}

/** Times left out of a book, or too short to be meant, become the usual ones. */
const usualDrawDays = 10
const usualSettleDays = 14

function specOf(found: Gathered): DraftSpec | undefined {
  const { chargedMs, spiritMs, drawnMs, marriedMs, filteredMs } = found
  if (chargedMs === undefined || spiritMs === undefined) return undefined
  const steepDays = ((drawnMs ?? spiritMs) - spiritMs) / msPerDay
  const settleFromMs = marriedMs ?? drawnMs
  return {
    startAt: new Date(chargedMs).toISOString(),
    fruits: [...found.fruits.values()].slice(0, 6),
    sweetenerId: 'sugar',
    layeringSugarG: found.layeringSugarG,
    layeringDays: Math.min(60, Math.max(0, spiritMs - chargedMs) / msPerDay),
    spirits: [...found.spirits.values()].slice(0, 4),
    steepWaterMl: found.steepWaterMl,
    steepWeeks: Math.min(260, steepDays > 1 ? steepDays / 7 : 6),
    temperatureC: 20,
    turned: 'weekly',
    sugarDraws: found.draws.slice(0, 4).map(({ sugarG, fromMs, toMs }) => {
      const days = (toMs - fromMs) / msPerDay
      return { sugarG, days: Math.min(365, days > 0.1 ? days : usualDrawDays) }
    }),
    isPressed: found.isPressed,
    finishWaterMl: found.finishWaterMl,
    finishSugarG: found.finishSugarG,
    finishSpiritMl: found.finishSpiritMl,
    settleDays:
      filteredMs !== undefined && settleFromMs !== undefined && filteredMs > settleFromMs
        ? Math.min(365, (filteredMs - settleFromMs) / msPerDay)
        : usualSettleDays,
    filters: found.filters.slice(0, 4),
    bottleSizeMl: Math.max(10, Math.min(20_000, found.bottleSizeMl)),
    vessels: { steep: [], extracts: [] },
  }
}
