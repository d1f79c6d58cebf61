/**
 * Which stages did a batch go through, what flowed into each, and what came out?
 *
 * Reads steps of the ledger, planned or real, so that both are told in the same words: fruit under
 * sugar, under spirit, each sugar draw, pressing, marrying with what is added, filtering, bottling.
 * In: one batch's steps in order. Out: stages in order, liquids described at 20 °C.
 * Leaves out: readings, corrections and what is drunk; liquid thrown away is in no stage.
 */
import { addMatter, massOf, noMatter, sumMatter, type Matter } from '../../../shared/matter.ts'
import type { ChainStage, StageInflow, StageKey } from '../../../shared/schemas/drafts.ts'
import type { JarContents, Transfer } from '../../../shared/schemas/cellar.ts'
import type { Move } from '../../../shared/schemas/moves.ts'
import { settledJar, type Effect, type JarState } from '../ledger/cellar-state.ts'
import type { Step } from '../ledger/fold.ts'
import { describeJar, describeLiquid } from '../ledger/jar-liquid.ts'
import { liquidVolumeMl } from '../solution/liquid-volume.ts'

/** A stage while its moves are being read. */
interface OpenStage {
  readonly key: StageKey
  readonly ordinal: number
  readonly fromMs: number
  toMs: number
  readonly inflows: StageInflow[]
  readonly jars: Map<string, { contents: JarContents; peakFillMl: number }>
  poured: Matter
  lossMl: number
  bottles: number
  /** Liquid was taken from it: what comes in after that begins another. */
  isDrawn: boolean
}

export function chainStages(steps: readonly Step[], batchId: string, endMs: number): ChainStage[] {
  const stages: OpenStage[] = []
  const jars = new Map<string, JarState>()
  for (const step of steps) {
    const key = stageOf(step, jars, batchId)
    const stage = key && openStage(stages, key, step)
    lookBack(stages, stage, step, jars)
    for (const [jarId, jar] of step.effect.jars ?? []) {
      if (jar?.batchId === batchId) jars.set(jarId, jar)
      else jars.delete(jarId)
    }
    if (stage) takeIn(stage, step, jars)
  }
  for (const [jarId, jar] of jars) {
    const stage = lastWith(stages, jarId)
    const at = Math.max(endMs, jar.atMs)
    if (stage && !stage.isDrawn)
      noteContents(stage, jarId, describeJar(jarId, settledJar(jar, at)), at)
  }
  return stages.map(told)
}

/** Which stage a move belongs to; undefined when it belongs to none. */
function stageOf(
  { recorded: { move }, effect }: Step,
  jars: ReadonlyMap<string, JarState>,
  batchId: string,
): StageKey | undefined {
  if ('batchId' in move && move.batchId !== batchId) return undefined
  switch (move.kind) {
    case 'charge':
    case 'sugar':
    case 'addAcid':
    case 'pourSpirit':
    case 'pourWater': {
      const jar = effect.jars?.get(move.jarId)
      if (!jar?.fruit) return jars.size === 0 ? 'layered' : 'married'
      return jar.stage === 'layered' ? 'layered' : 'steeping'
    }
    case 'coverWithSugar':
      return effect.jars?.get(move.jarId)?.stage === 'sugarDraw' ? 'sugarDraw' : 'layered'
    case 'drawOff': {
      const jar = jars.get(move.fromJarId)
      if (!jar?.fruit) return 'filtered'
      return jar.fruit.isUnderSugar && jar.fruit.sugarDraws > 0 ? 'sugarDraw' : 'steeping'
    }
    case 'press':
      return 'pressed'
    case 'marry':
    case 'unbottle':
      return 'married'
    case 'filter':
      return jars.get(move.fromJarId)?.fruit ? undefined : 'filtered'
    case 'bottle':
      return 'bottled'
    case 'buy':
    case 'keep':
    case 'stir':
    case 'read':
    case 'crush':
    case 'bringIn':
    case 'drawBottle':
    case 'give':
    case 'breakBottle':
    case 'shelve':
    case 'openBottle':
    case 'pourGlass':
    case 'topUp':
    case 'taste':
    case 'discard':
    case 'correct':
    case 'remark':
      return undefined
  }
}

const isPouringOff = ({ kind }: Move) => kind === 'drawOff' || kind === 'press'

function openStage(stages: OpenStage[], key: StageKey, { recorded, atMs }: Step): OpenStage {
  const last = stages.findLast((stage) => stage.key === key)
  const isOver = last?.isDrawn === true && !isPouringOff(recorded.move)
  if (last && !isOver) return last
  const stage: OpenStage = {
    key,
    ordinal: (last?.ordinal ?? 0) + 1,
    fromMs: atMs,
    toMs: atMs,
    inflows: [],
    jars: new Map(),
    poured: noMatter,
    lossMl: 0,
    bottles: 0,
    isDrawn: false,
  }
  stages.push(stage)
  return stage
}

const lastWith = (stages: readonly OpenStage[], jarId: string) =>
  stages.findLast((stage) => stage.jars.has(jarId))

function noteContents(stage: OpenStage, jarId: string, contents: JarContents, atMs: number) {
  const before = stage.jars.get(jarId)
  const peakFillMl = Math.max(before?.peakFillMl ?? 0, contents.fillMl)
  stage.jars.set(jarId, { contents, peakFillMl })
  stage.toMs = Math.max(stage.toMs, atMs)
}

/** Before a move disturbs a jar: how it stood at the end of the stage that held it. */
function lookBack(
  stages: readonly OpenStage[],
  next: OpenStage | undefined,
  { effect, atMs, recorded }: Step,
  jars: ReadonlyMap<string, JarState>,
) {
  for (const jarId of effect.jars?.keys() ?? []) {
    const jar = jars.get(jarId)
    const stage = lastWith(stages, jarId)
    if (!jar || !stage || stage.isDrawn) continue
    if (stage !== next || isPouringOff(recorded.move))
      noteContents(stage, jarId, describeJar(jarId, settledJar(jar, atMs)), atMs)
    if (recorded.move.kind === 'bottle') stage.isDrawn = true
  }
}

function takeIn(stage: OpenStage, { recorded: { move }, effect, atMs }: Step, jars: Jars) {
  stage.toMs = Math.max(stage.toMs, atMs)
  if (move.kind === 'bottle') {
    stage.bottles += move.count
    stage.poured = addMatter(stage.poured, sumOf(effect.transfers, 'bottles:'))
    return
  }
  if (isPouringOff(move)) {
    stage.isDrawn = true
    stage.poured = addMatter(stage.poured, sumOf(effect.transfers, 'jar:'))
    return
  }
  if (move.kind === 'filter') stage.lossMl += volumeOf(effect.transfers, 'outside:filter')
  stage.inflows.push(...inflowsOf(move, effect))
  for (const jarId of effect.jars?.keys() ?? []) {
    const jar = jars.get(jarId)
    if (jar) noteContents(stage, jarId, describeJar(jarId, jar), atMs)
  }
}

type Jars = ReadonlyMap<string, JarState>

const sumOf = (transfers: readonly Transfer[], to: string): Matter =>
  sumMatter(transfers.filter((transfer) => transfer.to.startsWith(to)).map(({ matter }) => matter))

const volumeOf = (transfers: readonly Transfer[], to: string): number =>
  liquidVolumeMl(sumOf(transfers, to))

function inflowsOf(move: Move, { jars, transfers }: Effect): StageInflow[] {
  switch (move.kind) {
    case 'charge': {
      const fruitId = jars?.get(move.jarId)?.fruit?.fruits.at(-1)?.fruitId
      const massG = move.massG - (move.refuseG ?? 0)
      return [{ what: 'fruit', massG, ...(fruitId && { fruitId }) }]
    }
    case 'sugar':
    case 'coverWithSugar':
      return [{ what: 'sugar', massG: move.massG }]
    case 'pourSpirit':
      return liquidsIn('spirit', transfers)
    case 'pourWater':
      return liquidsIn('water', transfers)
    case 'marry':
      return liquidsIn('extract', transfers)
    default:
      return []
  }
}

const liquidsIn = (what: StageInflow['what'], transfers: readonly Transfer[]): StageInflow[] =>
  transfers
    .filter(({ to }) => to.startsWith('jar:'))
    .flatMap(({ matter }) => describeLiquid(matter) ?? [])
    .map(({ volumeMl, strengthPctVol }) => ({ what, volumeMl, strengthPctVol }))

function told(stage: OpenStage): ChainStage {
  const vessels = [...stage.jars].map(([jarId, vessel]) => ({ jarId, ...vessel }))
  const standing = sumMatter(vessels.map(({ contents }) => contents.free))
  const liquid = describeLiquid(massOf(stage.poured) > 0 ? stage.poured : standing)
  return {
    key: stage.key,
    ordinal: stage.ordinal,
    from: instant(stage.fromMs),
    to: instant(stage.toMs),
    inflows: stage.inflows,
    vessels,
    ...(liquid && { liquid }),
    ...(stage.lossMl > 0 && { lossMl: stage.lossMl }),
    ...(stage.bottles > 0 && { bottles: stage.bottles }),
  }
}

const instant = (atMs: number): string => new Date(atMs).toISOString()
