/** How far each batch has come: its stage after a move, and the bands of stages it went through. */
import type { Stage } from '../../../shared/schemas/cellar.ts'
import type { BatchProgress, CellarState, Effect, WorkingCellar } from './cellar-state.ts'

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
    const stage = stageNow(cellar, batchId, told ?? was?.stage ?? 'empty')
    const fruitIds = fruitIdsIn(effect, batchId, was?.fruitIds ?? [])
    cellar.batches.set(batchId, { ...progressed(was, stage, atMs), fruitIds })
  }
}

/** What stands in the cellar overrules what the last move said. */
function stageNow(cellar: CellarState, batchId: string, told: Stage): Stage {
  for (const jar of cellar.jars.values()) if (jar.batchId === batchId) return told
  let hasBottles = false
  for (const lot of cellar.bottles.values()) {
    if (lot.batchId !== batchId) continue
    if (lot.count > 0) return 'resting'
    hasBottles = true
  }
  return hasBottles || told !== 'empty' ? 'finished' : 'empty'
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
): Omit<BatchProgress, 'fruitIds'> {
  if (!was) return { stage, startedAtMs: atMs, bands: [{ stage, fromMs: atMs }], moveCount: 1 }
  return {
    stage,
    startedAtMs: was.startedAtMs,
    bands: was.stage === stage ? was.bands : [...was.bands, { stage, fromMs: atMs }],
    moveCount: was.moveCount + 1,
  }
}
