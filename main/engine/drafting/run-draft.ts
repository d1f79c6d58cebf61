/** Runs a draft's moves through the ledger's own fold, in a cellar that holds nothing else. */
import type { Move, RecordedMove } from '../../../shared/schemas/moves.ts'
import type { DraftSpec } from '../../../shared/schemas/drafts.ts'
import { massOf, type Matter } from '../../../shared/matter.ts'
import { jarAt, type CellarState } from '../ledger/cellar-state.ts'
import { fold, type Folded } from '../ledger/fold.ts'
import { describeJar } from '../ledger/jar-liquid.ts'
import { largestUsualMl } from './draft-vessels.ts'
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import type { DraftFacts } from './buying.ts'
import { bottlingMove, plannedMoves, type PlannedMoves } from './planned-moves.ts'

/** Moves as the book would have recorded them, in the order given. */
export const asRecorded = (moves: readonly Move[], firstSeq = 1): RecordedMove[] =>
  moves.map((move, index) => ({
    id: `draft-${firstSeq + index}`,
    seq: firstSeq + index,
    groupId: 'draft',
    recordedAt: move.at,
    version: 1,
    move,
  }))

export interface DraftRun {
  readonly planned: PlannedMoves
  readonly moves: readonly RecordedMove[]
  readonly folded: Folded
}

/** More than stand in any cellar: a draft that needs more is shown in these, filled over the brim. */
const mostSteepJars = 60

/** The whole draft, to the bottles. */
export function runDraft(spec: DraftSpec, facts: DraftFacts): DraftRun {
  const one = runWith(spec, facts, 1)
  if (spec.vessels.steep.length > 0) return one
  const needed = Math.ceil(steepFillMl(one) / (safeFillFraction * largestUsualMl))
  const steepCount = Math.min(needed, mostSteepJars)
  return steepCount > 1 ? runWith(spec, facts, steepCount) : one
}

function runWith(spec: DraftSpec, facts: DraftFacts, steepCount: number): DraftRun {
  const planned = plannedMoves(spec, facts, steepCount)
  const before = asRecorded([...planned.toExtracts, ...planned.toFinish])
  const folded = fold(before, facts)
  const bottling = bottlingMove(spec, planned, folded.cellar)
  if (!bottling) return { planned, moves: before, folded }
  const last = asRecorded([bottling], before.length + 1)
  const tail = fold(last, { ...facts, from: folded.cellar })
  return {
    planned,
    moves: [...before, ...last],
    folded: {
      cellar: tail.cellar,
      steps: [...folded.steps, ...tail.steps],
      refused: [...folded.refused, ...tail.refused],
    },
  }
}

function steepFillMl({ planned, folded }: DraftRun): number {
  const steepIds = new Set(planned.jars.steep.map(({ jarId }) => jarId))
  let peakMl = 0
  for (const { effect } of folded.steps)
    for (const [jarId, jar] of effect.jars ?? [])
      if (jar && steepIds.has(jarId)) peakMl = Math.max(peakMl, describeJar(jarId, jar).fillMl)
  return peakMl
}

/** The extracts of a draft, before they are married: what the finish starts from. */
export const runToExtracts = (planned: PlannedMoves, facts: DraftFacts): CellarState =>
  fold(asRecorded(planned.toExtracts), facts).cellar

/** The liqueur just before it is bottled; undefined when there is none. */
export function runToFinish(
  planned: PlannedMoves,
  extracts: CellarState,
  facts: DraftFacts,
): Matter | undefined {
  const moves = asRecorded(planned.toFinish, planned.toExtracts.length + 1)
  const finished = fold(moves, { ...facts, from: extracts }).cellar
  const jar = jarAt(finished, planned.lastJar.jarId, planned.bottlingAtMs)
  return jar && massOf(jar.bodies.free) > 0 ? jar.bodies.free : undefined
}
