/**
 * Which draft would have given a batch that really was?
 *
 * Reads a batch's own steps: what was charged, poured, drawn and added becomes the numbers of a
 * draft, in the vessels it stood in, so that a good year can be made again or scaled. Undefined
 * where there is no fruit or no spirit: such a batch is no recipe.
 * Leaves out: what was thrown away, corrected, sharpened, or came from other batches. A batch with
 * sugar and honey is told as if all of it were what there was more of.
 */
import type { DraftSpec, DraftSpirit, DraftVessel } from '../../../shared/schemas/drafts.ts'
import type { FilterMedium, Move } from '../../../shared/schemas/moves.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { CellarState } from '../ledger/cellar-state.ts'
import type { Step } from '../ledger/fold.ts'

interface Gathered {
  readonly fruits: Map<string, DraftSpec['fruits'][number]>
  readonly spirits: Map<number, DraftSpirit>
  readonly draws: { sugarG: number; fromMs: number; toMs: number }[]
  readonly filters: FilterMedium[]
  readonly sweetenerG: Record<DraftSpec['sweetenerId'], number>
  /** Jars that were charged, in that order, and for each extract the one that it was drawn into. */
  readonly steepIds: Set<string>
  readonly extractIds: string[]
  marriedId: string | undefined
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

/** The maker's own vessel; undefined where the book knows it no more. */
export type VesselOf = (jarId: string) => DraftVessel | undefined

export function draftOfBatch(
  steps: readonly Step[],
  cellar: CellarState,
  batchId: string,
  vesselOf: VesselOf,
): DraftSpec | undefined {
  const gathered: Gathered = {
    fruits: new Map(),
    spirits: new Map(),
    draws: [],
    filters: [],
    sweetenerG: { sugar: 0, honey: 0 },
    steepIds: new Set(),
    extractIds: [],
    marriedId: undefined,
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
  return specOf(gathered, vesselOf)
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
      found.steepIds.add(move.jarId)
      found.chargedMs ??= atMs
      return
    }
    case 'sugar':
    case 'coverWithSugar': {
      const goods = lots.get(move.lotId)?.goods
      if (goods?.kind === 'sweetener') found.sweetenerG[goods.sweetenerId] += move.massG
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
      if (found.steepIds.has(move.fromJarId)) found.extractIds[found.draws.length] ??= move.toJarId
      found.drawnMs ??= atMs
      return
    }
    case 'press':
      if (!found.isPressed) found.extractIds.push(move.toJarId)
      found.drawnMs ??= atMs
      found.isPressed = true
      return
    case 'marry':
      found.marriedMs ??= atMs
      found.marriedId = move.toJarId
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

function vesselsOf({ steepIds, extractIds, marriedId }: Gathered, vesselOf: VesselOf) {
  const all = (jarIds: Iterable<string>): DraftVessel[] => {
    const known = [...jarIds].map(vesselOf)
    // One that is missing would put the others in its place.
    return known.every((vessel) => vessel !== undefined) ? known.slice(0, 6) : []
  }
  const married = marriedId === undefined ? undefined : vesselOf(marriedId)
  return {
    steep: all(steepIds),
    extracts: all(Object.values(extractIds)),
    ...(married && { married }),
  }
}

function specOf(found: Gathered, vesselOf: VesselOf): DraftSpec | undefined {
  const { chargedMs, spiritMs, drawnMs, marriedMs, filteredMs, sweetenerG } = found
  if (chargedMs === undefined || spiritMs === undefined) return undefined
  const steepDays = ((drawnMs ?? spiritMs) - spiritMs) / msPerDay
  const settleFromMs = marriedMs ?? drawnMs
  return {
    startAt: new Date(chargedMs).toISOString(),
    fruits: [...found.fruits.values()].slice(0, 6),
    sweetenerId: sweetenerG.honey > sweetenerG.sugar ? 'honey' : 'sugar',
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
    vessels: vesselsOf(found, vesselOf),
  }
}
