/** What a careful maker should see in a draft: jars too full and by which move, and cautions. */
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import type { Caution } from '../../../shared/schemas/cellar.ts'
import type { ChainStage, DraftWarning, PlannedVessel } from '../../../shared/schemas/drafts.ts'
import { jarCautions } from '../cautions/jar-cautions.ts'
import { settledJar, type JarState } from '../ledger/cellar-state.ts'
import { describeJar } from '../ledger/jar-liquid.ts'
import type { DraftFacts } from './buying.ts'
import type { DraftRun } from './run-draft.ts'

export interface Judging {
  readonly run: DraftRun
  readonly stages: readonly ChainStage[]
  readonly vessels: readonly PlannedVessel[]
  readonly facts: DraftFacts
}

/** The first move that fills a jar too far is the one to change; later ones say nothing new. */
export function fillWarnings({ run, stages, vessels }: Judging): DraftWarning[] {
  const capacityOf = new Map(vessels.map(({ jarId, capacityMl }) => [jarId, capacityMl]))
  const worst = new Map<string, DraftWarning>()
  for (const { recorded, effect, atMs } of run.folded.steps) {
    for (const [jarId, jar] of effect.jars ?? []) {
      const capacityMl = capacityOf.get(jarId)
      if (!jar || capacityMl === undefined) continue
      const { fillMl } = describeJar(jarId, jar)
      const code = fillMl > capacityMl ? 'overBrim' : 'overSafeFill'
      const limitMl = code === 'overBrim' ? capacityMl : safeFillFraction * capacityMl
      const key = `${code} ${jarId}`
      if (fillMl <= limitMl || worst.has(key) || worst.has(`overBrim ${jarId}`)) continue
      const moveIndex = recorded.seq - 1
      worst.set(key, { code, jarId, moveIndex, fillMl, limitMl, ...stageAt(stages, jarId, atMs) })
    }
  }
  const overBrim = new Set([...worst].filter(([, w]) => w.code === 'overBrim').map(jarOf))
  return [...worst]
    .filter((entry) => entry[1].code === 'overBrim' || !overBrim.has(jarOf(entry)))
    .map(([, warning]) => warning)
}

const jarOf = ([key]: readonly [string, DraftWarning]): string => key.slice(key.indexOf(' ') + 1)

function stageAt(stages: readonly ChainStage[], jarId: string, atMs: number) {
  const stage = stages.findLastIndex(
    ({ vessels, from }) =>
      Date.parse(from) <= atMs && vessels.some((vessel) => vessel.jarId === jarId),
  )
  return stage >= 0 ? { stage } : {}
}

const told = new Set<Caution['code']>([
  'sugarOnlyTooLong',
  'mayFerment',
  'weakForFruit',
  'uncovered',
  'sugarUndissolved',
  'stonesTooLong',
])

/** A hundredth of the sugar, in the last crystals, is not worth a warning on paper. */
const traceOfSugar = 0.01

/** The ledger's own cautions, asked of every jar at the end of each stage it stood through. */
export function cautionWarnings({ run, stages, vessels, facts }: Judging): DraftWarning[] {
  const warnings = new Map<string, DraftWarning>()
  for (const [stage, { to, inflows, vessels: standing }] of stages.entries()) {
    const sugarG = inflows.reduce(
      (sum, { what, massG }) => sum + (what === 'sugar' ? (massG ?? 0) : 0),
      0,
    )
    const endMs = Date.parse(to)
    for (const { jarId } of standing) {
      const jar = jarBefore(run, jarId, endMs)
      if (!jar) continue
      const capacityMl = vessels.find((vessel) => vessel.jarId === jarId)?.capacityMl ?? Infinity
      const cautions = jarCautions({
        jarId,
        jar: settledJar(jar, endMs),
        capacityMl,
        nowMs: endMs,
        fruitOf: facts.fruitOf,
      })
      for (const { code, value, limit } of cautions)
        if (
          told.has(code) &&
          value !== undefined &&
          limit !== undefined &&
          !(code === 'sugarUndissolved' && value < traceOfSugar * sugarG)
        )
          warnings.set(`${code} ${jarId}`, { code, jarId, value, limit, stage } as DraftWarning)
    }
  }
  return [...warnings.values()]
}

/** The jar as the last move before an instant left it. */
function jarBefore({ folded }: DraftRun, jarId: string, atMs: number): JarState | undefined {
  const step = folded.steps.findLast(
    (before) => before.atMs < atMs && before.effect.jars?.has(jarId),
  )
  return step?.effect.jars?.get(jarId) ?? undefined
}

export const refusedWarnings = ({ run }: Judging): DraftWarning[] =>
  run.folded.refused.map(({ recorded, refusal }) => ({
    code: 'refused',
    moveIndex: recorded.seq - 1,
    refusal,
  }))
