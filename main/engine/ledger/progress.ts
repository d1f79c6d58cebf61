/** How far each batch has come: its stage after a move, and the bands of stages it went through. */
import type { Stage } from '../../../shared/schemas/cellar.ts'
import {
  isStanding,
  type BatchProgress,
  type CellarState,
  type Effect,
  type OpenedState,
  type WorkingCellar,
} from './cellar-state.ts'

/** The batches that a move concerns: its own, and those whose jars or bottles it touched. */
export function batchesTouched(
  before: CellarState,
  ownBatchId: string | undefined,
  effect: Effect,
): Set<string> {
  const touched = new Set<string>()
  if (ownBatchId !== undefined) touched.add(ownBatchId)
  for (const [id, jar] of effect.jars ?? []) {
    const was = before.jars.get(id)
    if (was) touched.add(was.batchId)
    if (jar) touched.add(jar.batchId)
  }
  for (const [, bottles] of effect.bottles ?? []) touched.add(bottles.batchId)
  for (const [, opened] of effect.opened ?? []) touched.add(opened.batchId)
  return touched
}

/** Brings the batches' progress up to date after the effect has been put in. */
export function advance(
  cellar: WorkingCellar,
  touched: ReadonlySet<string>,
  ownBatchId: string | undefined,
  effect: Effect,
  atMs: number,
): void {
  for (const batchId of touched) {
    const was = cellar.batches.get(batchId)
    const told = batchId === ownBatchId ? effect.stage : undefined
    const own = {
      fruitIds: fruitIdsIn(effect, batchId, was?.fruitIds ?? []),
      bottleLotIds: idsWith(effect.bottles, batchId, was?.bottleLotIds ?? []),
      openedIds: idsWith(effect.opened, batchId, was?.openedIds ?? []),
    }
    const stage = stageNow(cellar, batchId, own, told ?? was?.stage ?? 'empty')
    cellar.batches.set(batchId, { ...progressed(was, stage, atMs), ...own })
  }
}

type OwnIds = Pick<BatchProgress, 'fruitIds' | 'bottleLotIds' | 'openedIds'>

/** What stands in the cellar overrules what the last move said. */
function stageNow(
  { jars, bottles, opened }: CellarState,
  batchId: string,
  { bottleLotIds, openedIds }: OwnIds,
  told: Stage,
): Stage {
  for (const jar of jars.values()) if (jar.batchId === batchId) return told
  const hasFull = bottleLotIds.some((id) => (bottles.get(id)?.count ?? 0) > 0)
  if (hasFull || openedIds.some((id) => stands(opened.get(id)))) return 'resting'
  return bottleLotIds.length > 0 || told !== 'empty' ? 'finished' : 'empty'
}

const stands = (opened: OpenedState | undefined) => opened !== undefined && isStanding(opened)

/** The ids known, and those of the batch that the effect has entries for. */
function idsWith(
  entries: ReadonlyMap<string, { readonly batchId: string }> | undefined,
  batchId: string,
  known: readonly string[],
): readonly string[] {
  let ids = known
  for (const [id, entry] of entries ?? [])
    if (entry.batchId === batchId && !ids.includes(id)) ids = [...ids, id]
  return ids
}

/** The batch's kinds of fruit, with those that the effect's jars hold now. */
function fruitIdsIn(effect: Effect, batchId: string, known: readonly string[]): readonly string[] {
  const ids = new Set(known)
  for (const jar of effect.jars?.values() ?? [])
    if (jar?.batchId === batchId)
      for (const { fruitId } of jar.fruit?.fruits ?? []) ids.add(fruitId)
  return ids.size === known.length ? known : [...ids]
}

function progressed(
  was: BatchProgress | undefined,
  stage: Stage,
  atMs: number,
): Omit<BatchProgress, keyof OwnIds> {
  if (!was) return { stage, startedAtMs: atMs, bands: [{ stage, fromMs: atMs }], moveCount: 1 }
  return {
    stage,
    startedAtMs: was.startedAtMs,
    bands: was.stage === stage ? was.bands : [...was.bands, { stage, fromMs: atMs }],
    moveCount: was.moveCount + 1,
  }
}
