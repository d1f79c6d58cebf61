/**
 * Which moves does a draft come to, and when?
 *
 * The numbers a maker turns become the same moves that a real batch is logged with: buying, layering
 * with sugar, spirit, drawing off, sugar draws, pressing, marrying, finishing, filtering. Nothing is
 * reckoned here; the fold does that. How many bottles can be filled is known only once the rest was
 * folded, so `bottlingMove` is asked for it then.
 * In: the draft's numbers and the fruit library. Out: moves in order, and the jars they name.
 * Leaves out: anything a maker does without moving matter, such as tasting.
 */
import { massOf } from '../../../shared/matter.ts'
import type { DraftSpec } from '../../../shared/schemas/drafts.ts'
import type { Move } from '../../../shared/schemas/moves.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import { jarAt, type CellarState, type JarState } from '../ledger/cellar-state.ts'
import { freeVolumeMl } from '../ledger/jar-liquid.ts'
import { slackMl } from '../ledger/refusal.ts'
import {
  buying,
  buyingForFinish,
  finishSpiritLotId,
  finishSugarLotId,
  fruitLotId,
  instant,
  leastAmount,
  spiritLotId,
  sugarLotId,
  type DraftFacts,
} from './buying.ts'
import { jarsOf, type DraftJar, type DraftJars } from './draft-vessels.ts'

export const draftBatchId = 'draft'

export interface PlannedMoves {
  /** Up to the extracts; they depend on the fruit and what is drawn from it. */
  readonly toExtracts: readonly Move[]
  /** Marrying, finishing and filtering. */
  readonly toFinish: readonly Move[]
  readonly jars: DraftJars
  /** The jar that the liqueur is bottled from. */
  readonly lastJar: DraftJar
  readonly bottlingAtMs: number
}

/** From the last filter, or the settling, to the bottles. */
const bottlingAfterDays = 1

export function plannedMoves(spec: DraftSpec, facts: DraftFacts, steepCount = 1): PlannedMoves {
  const jars = jarsOf(spec, steepCount)
  const startMs = Date.parse(spec.startAt)
  const isLayered = spec.layeringDays > 0
  const spiritMs = startMs + (isLayered ? spec.layeringDays * msPerDay : 0)
  const drawMs = spiritMs + spec.steepWeeks * 7 * msPerDay

  const drawn = drawing(spec, jars, drawMs)
  const finishMs = drawn.endMs + (drawn.extractCount > 1 ? msPerDay : 0)
  const finished = finishing(spec, jars, drawn.extractCount, finishMs)
  return {
    toExtracts: [
      ...buying(spec, facts, startMs),
      ...charging(spec, jars, startMs),
      ...pouring(spec, jars, spiritMs),
      ...drawn.moves,
    ],
    toFinish: [...buyingForFinish(spec, startMs), ...finished.moves],
    jars,
    lastJar: finished.lastJar,
    bottlingAtMs: finished.endMs + bottlingAfterDays * msPerDay,
  }
}

function charging(spec: DraftSpec, jars: DraftJars, atMs: number): Move[] {
  const at = instant(atMs)
  return jars.steep.flatMap(({ jarId }, jarIndex) => {
    const share = jars.shares[jarIndex] as number
    const charges = spec.fruits.map(({ massG, refuseShare, cut }, index): Move => {
      const refuseG = share * massG * refuseShare
      return {
        kind: 'charge',
        at,
        batchId: draftBatchId,
        jarId,
        lotId: fruitLotId(index),
        massG: share * massG,
        ...(refuseG > leastAmount && { refuseG }),
        cut,
      }
    })
    const massG = share * spec.layeringSugarG
    if (massG < leastAmount) return charges
    return [
      ...charges,
      { kind: 'sugar', at, batchId: draftBatchId, jarId, lotId: sugarLotId, massG },
    ]
  })
}

function pouring(spec: DraftSpec, jars: DraftJars, atMs: number): Move[] {
  const inBatch = { at: instant(atMs), batchId: draftBatchId }
  return jars.steep.flatMap(({ jarId }, jarIndex) => {
    const share = jars.shares[jarIndex] as number
    const spirits = spec.spirits.map((spirit, index): Move => ({
      kind: 'pourSpirit',
      ...inBatch,
      jarId,
      lotId: spiritLotId(index),
      volumeMl: share * spirit.volumeMl,
    }))
    const volumeMl = share * spec.steepWaterMl
    const water: Move[] =
      volumeMl < leastAmount ? [] : [{ kind: 'pourWater', ...inBatch, jarId, volumeMl }]
    const { temperatureC, turned } = spec
    return [...spirits, ...water, { kind: 'keep', ...inBatch, jarId, temperatureC, turned }]
  })
}

function drawing(spec: DraftSpec, jars: DraftJars, drawMs: number) {
  const moves: Move[] = []
  let atMs = drawMs
  let extractCount = 0
  const pourOff = (kind: 'drawOff' | 'press') => {
    const toJarId = jars.extract(extractCount).jarId
    for (const { jarId: fromJarId } of jars.steep)
      moves.push({ kind, at: instant(atMs), batchId: draftBatchId, fromJarId, toJarId })
    extractCount += 1
  }
  pourOff('drawOff')
  for (const { sugarG, days } of spec.sugarDraws) {
    for (const [index, { jarId }] of jars.steep.entries())
      moves.push({
        kind: 'coverWithSugar',
        at: instant(atMs),
        batchId: draftBatchId,
        jarId,
        lotId: sugarLotId,
        massG: sugarG * (jars.shares[index] as number),
      })
    atMs += days * msPerDay
    pourOff('drawOff')
  }
  if (spec.isPressed) pourOff('press')
  for (const { jarId } of jars.steep)
    moves.push({ kind: 'discard', at: instant(atMs), from: { jarId, part: 'all' } })
  return { moves, extractCount, endMs: atMs }
}

function finishing(spec: DraftSpec, jars: DraftJars, extractCount: number, finishMs: number) {
  const inBatch = { at: instant(finishMs), batchId: draftBatchId }
  const extractIds = Array.from({ length: extractCount }, (_, index) => jars.extract(index).jarId)
  const sources = [...new Set(extractIds)]
  const isAlone = sources.length === 1 && !jars.married.chosen
  const lastJar = isAlone ? jars.extract(0) : jars.married
  const { jarId } = lastJar
  const moves: Move[] = []
  if (sources.some((source) => source !== jarId)) {
    const parts = sources.map((source) => ({ jarId: source }))
    moves.push({ kind: 'marry', ...inBatch, parts, toJarId: jarId })
  }
  const { finishSugarG: massG, finishWaterMl, finishSpiritMl } = spec
  if (finishSpiritMl > leastAmount) {
    const lotId = finishSpiritLotId
    moves.push({ kind: 'pourSpirit', ...inBatch, jarId, lotId, volumeMl: finishSpiritMl })
  }
  if (finishWaterMl > leastAmount)
    moves.push({ kind: 'pourWater', ...inBatch, jarId, volumeMl: finishWaterMl })
  if (massG > leastAmount) {
    moves.push({ kind: 'sugar', ...inBatch, jarId, lotId: finishSugarLotId, massG })
    // Sugar that nobody stirs in lies at the bottom for weeks.
    moves.push({ kind: 'keep', ...inBatch, jarId, turned: 'daily' })
  }
  const endMs = finishMs + spec.settleDays * msPerDay
  for (const medium of spec.filters)
    moves.push({
      kind: 'filter',
      at: instant(endMs),
      batchId: draftBatchId,
      fromJarId: jarId,
      toJarId: jarId,
      medium,
    })
  return { moves, lastJar, endMs }
}

/** No bottling move takes more. */
const mostBottles = 100_000

export const fullBottles = (jar: JarState, bottleSizeMl: number): number =>
  Math.min(mostBottles, Math.floor((freeVolumeMl(jar) + slackMl) / bottleSizeMl))

/** As many full bottles as there is liqueur for; undefined when there is not enough for one. */
export function bottlingMove(
  spec: DraftSpec,
  { lastJar, bottlingAtMs }: PlannedMoves,
  cellar: CellarState,
): Move | undefined {
  const jar = jarAt(cellar, lastJar.jarId, bottlingAtMs)
  if (!jar || massOf(jar.bodies.free) === 0) return undefined
  const { bottleSizeMl } = spec
  const count = fullBottles(jar, bottleSizeMl)
  if (count < 1) return undefined
  return {
    kind: 'bottle',
    at: instant(bottlingAtMs),
    batchId: draftBatchId,
    fromJarId: lastJar.jarId,
    bottleLotId: 'draft-bottles',
    bottleSizeMl,
    count,
  }
}
