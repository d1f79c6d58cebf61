/** The engine's state as the contract's replies. */
import type {
  Batch,
  BatchSummary,
  BottleLot,
  Caution,
  Jar,
  JarContents,
  LedgerStep,
  PantryLot,
} from '../../shared/schemas/cellar.ts'
import { addMatter, massOf, noMatter } from '../../shared/matter.ts'
import type { Move } from '../../shared/schemas/moves.ts'
import type { Interpretation } from '../../shared/schemas/readings.ts'
import type { Task } from '../../shared/schemas/tasks.ts'
import {
  describeJar,
  describeLiquid,
  flammablePctVol,
  interpretReading,
  jarCautions,
  liquidVolumeMl,
  matterInBottles,
  settledJar,
  type BottleState,
  type CellarState,
  type Effect,
  type JarState,
  type LotState,
  type Step,
} from '../engine/index.ts'
import type { CellarFruits } from './cellar-fruits.ts'
import type { LedgerView } from './ledger-view.ts'
import { instant, placesOf } from './lot-rows.ts'

export function pantryLot(id: string, lot: LotState): PantryLot {
  const isSpirit = lot.goods.kind === 'spirit'
  return {
    id,
    goods: lot.goods,
    boughtAt: instant(lot.boughtAtMs),
    boughtMassG: massOf(lot.bought),
    massG: massOf(lot.matter),
    ...(isSpirit && {
      boughtVolumeMl: liquidVolumeMl(lot.bought),
      volumeMl: liquidVolumeMl(lot.matter),
    }),
    ...(lot.priceMinor !== undefined && { priceMinor: lot.priceMinor }),
  }
}

/** A lot is told the same until something happens to it: a book of decades tells thousands at once. */
const toldLots = new WeakMap<BottleState, BottleLot>()

export function bottleLot(id: string, lot: BottleState, batchName: string): BottleLot {
  const name = lot.name ?? batchName
  const known = toldLots.get(lot)
  if (known?.id === id && known.name === name) return known
  const told = tellLot(id, lot, name)
  toldLots.set(lot, told)
  return told
}

function tellLot(id: string, lot: BottleState, name: string): BottleLot {
  const liquid = describeLiquid(lot.perBottle)
  return {
    id,
    batchId: lot.batchId,
    name,
    bottledAt: instant(lot.bottledAtMs),
    bottleSizeMl: lot.bottleSizeMl,
    filledCount: lot.filledCount,
    count: lot.count,
    places: placesOf(lot),
    ...(liquid && { liquid }),
  }
}

const jarsOfCellar = new WeakMap<CellarState, ReadonlyMap<string, [string, JarState][]>>()

function jarsByBatch(cellar: CellarState): ReadonlyMap<string, [string, JarState][]> {
  const known = jarsOfCellar.get(cellar)
  if (known) return known
  const found = Map.groupBy(cellar.jars, ([, { batchId }]) => batchId)
  jarsOfCellar.set(cellar, found)
  return found
}

/** The batch's jars as they stand now. */
export function jarsOf(
  cellar: CellarState,
  batchId: string,
  nowMs: number,
): ReadonlyMap<string, JarState> {
  const own = jarsByBatch(cellar).get(batchId) ?? []
  return new Map(own.map(([id, jar]) => [id, settledJar(jar, Math.max(nowMs, jar.atMs))]))
}

export function batchSummary(
  { ledger }: { readonly ledger: Pick<LedgerView, 'folded'> },
  batch: Batch,
  { nowMs, next }: { readonly nowMs: number; readonly next: Task | undefined },
): BatchSummary {
  const { cellar } = ledger.folded
  const progress = cellar.batches.get(batch.id)
  const jars = jarsOf(cellar, batch.id, nowMs)
  const bottles = statesOf(cellar.bottles, progress?.bottleLotIds)
  let whole = noMatter
  for (const jar of jars.values()) whole = addMatter(whole, jar.bodies.free)
  for (const [, lot] of bottles) whole = addMatter(whole, matterInBottles(lot))
  for (const [, { matter }] of statesOf(cellar.opened, progress?.openedIds))
    whole = addMatter(whole, matter)
  const liquid = describeLiquid(whole)
  const stage = progress?.stage ?? 'empty'
  const fruitIds = progress?.fruitIds ?? []
  return {
    batch,
    stage,
    ...(progress && { startedAt: instant(progress.startedAtMs) }),
    jars: [...jars].map(([id, jar]) => describeJar(id, jar)),
    bottleLots: bottles.map(([id, lot]) => bottleLot(id, lot, batch.name)),
    ...(liquid && { liquid }),
    fruitIds: [...fruitIds],
    ...(next && { next }),
    moveCount: progress?.moveCount ?? 0,
  }
}

/** The entries of the given ids. */
const statesOf = <State>(all: ReadonlyMap<string, State>, ids: readonly string[] = []) =>
  ids.flatMap((id): [string, State][] => {
    const state = all.get(id)
    return state === undefined ? [] : [[id, state]]
  })

export function ledgerStep({ recorded, effect }: Step): LedgerStep {
  const after: JarContents[] = []
  const emptied: string[] = []
  for (const [id, jar] of effect.jars ?? []) {
    if (jar) after.push(describeJar(id, jar))
    else emptied.push(id)
  }
  const interpretation = interpretationOf({ recorded, effect })
  return {
    recorded,
    transfers: [...effect.transfers],
    after,
    emptied,
    ...(interpretation && { interpretation }),
  }
}

/** What a reading means, given what the ledger says stands in the jar. */
export function interpretationOf({
  recorded: { move },
  effect,
}: Pick<Step, 'recorded' | 'effect'>): Interpretation | undefined {
  if (move.kind !== 'read') return undefined
  const jar = effect.jars?.get(move.jarId)
  const liquid = jar && describeLiquid(jar.bodies.free)
  return interpretReading(move.reading, {
    ...(liquid && {
      expectedSugarGPerL: liquid.sugarGPerL,
      expectedStrengthPctVol: liquid.strengthPctVol,
      expectedOtherExtractGPerL:
        liquid.acidGPerL + (1000 * jar.bodies.free.solublesG) / liquid.volumeMl,
    }),
    ...(jar && { strongestPouredPctVol: jar.strongestPctVol }),
  })
}

/** What a caution is judged by, beside the jar itself. */
export interface Known {
  readonly jars: readonly Jar[]
  readonly fruits: CellarFruits
}

/** What should be seen about the jars of these steps, as they stand right after. */
export function cautionsAfter(steps: readonly Step[], known: Known): Caution[] {
  const cautions = new Map<string, Caution>()
  for (const { recorded, effect, atMs } of steps) {
    for (const [jarId, jar] of effect.jars ?? [])
      for (const caution of jar ? cautionsOf(jarId, jar, known, atMs) : [])
        cautions.set(`${caution.code} ${jarId}`, caution)
    const spirit = strongSpirit(recorded.move, effect)
    if (spirit) cautions.set('strongSpirit', spirit)
  }
  return [...cautions.values()]
}

function strongSpirit(move: Move, { transfers }: Effect): Caution | undefined {
  if (move.kind !== 'pourSpirit') return undefined
  const poured = transfers[0] && describeLiquid(transfers[0].matter)
  if (!poured || poured.strengthPctVol < flammablePctVol) return undefined
  return {
    code: 'strongSpirit',
    severity: 'warning',
    batchId: move.batchId,
    jarId: move.jarId,
    value: poured.strengthPctVol,
    limit: flammablePctVol,
  }
}

export function cautionsOf(
  jarId: string,
  jar: JarState,
  { jars, fruits }: Known,
  nowMs: number,
): Caution[] {
  const capacityMl = jars.find(({ id }) => id === jarId)?.capacityMl ?? Number.POSITIVE_INFINITY
  return jarCautions({ jarId, jar, capacityMl, nowMs, fruitOf: fruits.fruitOf })
}
