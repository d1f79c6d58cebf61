/** A batch's history read off the ledger: where it stood, how it changed, what it yielded. */
import type { Stage } from '../../../shared/schemas/cellar.ts'
import { alongLedger } from './along-ledger.ts'
import { settledJar, type CellarState, type JarState } from './cellar-state.ts'
import type { Step } from './fold.ts'
import { freeVolumeMl } from './jar-liquid.ts'

interface OwnSteps {
  readonly all: Step[]
  /** As they were last told; a batch that is left alone keeps the same array. */
  told: readonly Step[] | undefined
}

const stepsByBatch = alongLedger<Map<string, OwnSteps>>({
  start: () => new Map(),
  take: (byBatch, step) => {
    for (const batchId of step.batchIds) {
      const own = byBatch.get(batchId)
      if (!own) byBatch.set(batchId, { all: [step], told: undefined })
      else {
        own.all.push(step)
        own.told = undefined
      }
    }
  },
})

const noSteps: readonly Step[] = Object.freeze([])

export function stepsOf(steps: readonly Step[], batchId: string): readonly Step[] {
  const own = stepsByBatch(steps).get(batchId)
  if (!own) return noSteps
  own.told ??= own.all.slice()
  return own.told
}

/** A stretch of time in which a jar held one batch at one stage. */
export interface Span {
  readonly jarId: string
  readonly batchId: string
  readonly stage: Stage
  readonly fromMs: number
  /** Undefined while the jar still holds it. */
  readonly toMs: number | undefined
  /** The jar as it stood when the stretch ended, or now. */
  readonly last: JarState
}

/** Which liquid stood where, and for how long. */
export function jarSpans(steps: readonly Step[], batchId: string, nowMs: number): Span[] {
  const spans: Span[] = []
  const open = new Map<string, { stage: Stage; fromMs: number; last: JarState }>()
  const close = (jarId: string, toMs: number) => {
    const span = open.get(jarId)
    if (!span) return
    open.delete(jarId)
    // Moves logged at the same minute leave no stretch worth drawing.
    if (toMs > span.fromMs)
      spans.push({ jarId, batchId, ...span, toMs, last: settledJar(span.last, toMs) })
  }
  for (const { atMs, effect } of steps) {
    for (const [jarId, jar] of effect.jars ?? []) {
      const held = jar?.batchId === batchId ? jar : null
      const span = open.get(jarId)
      if (span && held?.stage === span.stage) open.set(jarId, { ...span, last: held })
      else {
        close(jarId, atMs)
        if (held) open.set(jarId, { stage: held.stage, fromMs: atMs, last: held })
      }
    }
  }
  for (const [jarId, span] of open)
    spans.push({ jarId, batchId, ...span, toMs: undefined, last: settledJar(span.last, nowMs) })
  return spans.sort((a, b) => a.fromMs - b.fromMs || (a.jarId < b.jarId ? -1 : 1))
}

export interface Yield {
  readonly fruitG: number
  readonly sugarAddedG: number
  readonly ethanolPouredG: number
  readonly ethanolInHandG: number
  readonly liquidMl: number
  readonly bottledMl: number
}

/** What went into a batch and what came out of it, so far. */
export function yieldOf(steps: readonly Step[], cellar: CellarState, batchId: string): Yield {
  let fruitG = 0
  let sugarAddedG = 0
  let ethanolPouredG = 0
  for (const { recorded, effect } of steps) {
    const { move } = recorded
    if (!('batchId' in move) || move.batchId !== batchId) continue
    if (move.kind === 'charge') fruitG += move.massG - (move.refuseG ?? 0)
    if (move.kind === 'sugar' || move.kind === 'coverWithSugar')
      for (const { matter } of effect.transfers) sugarAddedG += matter.sugarG
    if (move.kind === 'pourSpirit')
      for (const { matter } of effect.transfers) ethanolPouredG += matter.ethanolG
  }
  let ethanolInHandG = 0
  let liquidMl = 0
  for (const jar of cellar.jars.values()) {
    if (jar.batchId !== batchId) continue
    ethanolInHandG += jar.bodies.free.ethanolG
    liquidMl += freeVolumeMl(jar)
  }
  let bottledMl = 0
  for (const id of cellar.batches.get(batchId)?.bottleLotIds ?? []) {
    const lot = cellar.bottles.get(id)
    if (!lot) continue
    ethanolInHandG += lot.perBottle.ethanolG * lot.filledCount
    bottledMl += lot.bottleSizeMl * lot.filledCount
  }
  return { fruitG, sugarAddedG, ethanolPouredG, ethanolInHandG, liquidMl, bottledMl }
}
