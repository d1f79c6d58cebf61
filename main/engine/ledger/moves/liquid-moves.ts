/** Liquid from jar to jar: drawing off, pressing, marrying, filtering. */
import { noMatter, splitMatter, type Matter } from '../../../../shared/matter.ts'
import type { Stage, Transfer } from '../../../../shared/schemas/cellar.ts'
import type { FilterMedium, MoveOf } from '../../../../shared/schemas/moves.ts'
import { freshJar, jarAt, jarPlace, type CellarState, type JarState } from '../cellar-state.ts'
import { killed } from '../fruit-charge.ts'
import { freeVolumeMl } from '../jar-liquid.ts'
import {
  allowed,
  nothingThere,
  notEnough,
  refused,
  shareOf,
  slackMl,
  type Outcome,
} from '../refusal.ts'
import type { MoveContext } from './context.ts'
import {
  afterTaking,
  heldVolumeMl,
  occupiedJar,
  pourInto,
  receivingJar,
  takeLiquid,
} from './jar-access.ts'

export function drawOff(
  cellar: CellarState,
  move: MoveOf<'drawOff'>,
  { atMs }: MoveContext,
): Outcome {
  const source = occupiedJar(cellar, move.fromJarId, move.batchId, atMs)
  if (!source.ok) return source
  const freeMl = freeVolumeMl(source.found)
  if (move.volumeMl === undefined && freeMl < slackMl) return nothingThere(jarPlace(move.fromJarId))
  return passOn(cellar, move, atMs, source.found, move.volumeMl ?? freeMl, {
    stage: 'drawnOff',
    leave: (left) => ({
      ...left,
      stage: left.fruit ? 'drawnOff' : left.stage,
      fruit: left.fruit && { ...left.fruit, isUnderSugar: false },
    }),
  })
}

/** Fruit that sugar has shrunk already still gives up a fifth when pressed; estimate. */
const leastLeftByPressing = 0.8

export function press(cellar: CellarState, move: MoveOf<'press'>, { atMs }: MoveContext): Outcome {
  const source = occupiedJar(cellar, move.fromJarId, move.batchId, atMs)
  if (!source.ok) return source
  const { fruit } = source.found
  if (!fruit) return refused({ code: 'noFruit', place: jarPlace(move.fromJarId) })
  const heldMl = heldVolumeMl(source.found)
  const squeezedMl = heldMl - Math.min(fruit.pressedMl, leastLeftByPressing * heldMl)
  const volumeMl = move.volumeMl ?? freeVolumeMl(source.found) + squeezedMl
  if (volumeMl < slackMl) return nothingThere(jarPlace(move.fromJarId))
  return passOn(cellar, move, atMs, source.found, volumeMl, {
    stage: 'pressed',
    leave: (left) => ({
      ...left,
      stage: 'pressed',
      fruit: { ...killed(fruit), isUnderSugar: false, holdMl: heldVolumeMl(left) },
    }),
  })
}

/** Takes liquid out of one jar and pours it into another of the same batch, or an empty one. */
function passOn(
  cellar: CellarState,
  move: { batchId: string; fromJarId: string; toJarId: string },
  atMs: number,
  source: JarState,
  volumeMl: number,
  rule: { stage: Stage; leave: (left: JarState) => JarState },
): Outcome {
  const { fromJarId, toJarId, batchId } = move
  if (fromJarId === toJarId) return refused({ code: 'sameJar', place: jarPlace(fromJarId) })
  const target = receivingJar(cellar, toJarId, batchId, atMs, rule.stage)
  if (!target.ok) return target
  const drawn = takeLiquid(fromJarId, source, volumeMl)
  if (!drawn.ok) return drawn
  const { taken, left } = drawn.found
  const filled = pourInto(target.found, taken)
  const after = afterTaking(fromJarId, rule.leave(left))
  return allowed({
    jars: new Map([
      [fromJarId, after.left],
      [toJarId, { ...filled, strongestPctVol: strongest(filled, source) }],
    ]),
    transfers: [
      { from: jarPlace(fromJarId), to: jarPlace(toJarId), matter: taken },
      ...after.rinsed,
    ],
    stage: rule.stage,
  })
}

const strongest = (a: JarState, b: JarState) => Math.max(a.strongestPctVol, b.strongestPctVol)

/** Pours several liquids together. Parts may come from other batches: that is what marrying is. */
export function marry(cellar: CellarState, move: MoveOf<'marry'>, { atMs }: MoveContext): Outcome {
  const jars = new Map<string, JarState | null>()
  const transfers: Transfer[] = []
  const there = jarAt(cellar, move.toJarId, atMs)
  const isPart = move.parts.some((part) => part.jarId === move.toJarId)
  if (there && there.batchId !== move.batchId && !isPart)
    return refused({ code: 'jarTaken', place: jarPlace(move.toJarId), batchId: there.batchId })
  let target: JarState = {
    ...(there ?? freshJar(move.batchId, atMs, 'married')),
    batchId: move.batchId,
    stage: there?.fruit ? there.stage : 'married',
  }
  for (const { jarId, volumeMl } of move.parts) {
    if (jarId === move.toJarId) continue
    if (jars.has(jarId)) return refused({ code: 'sameJar', place: jarPlace(jarId) })
    const source = occupiedJar(cellar, jarId, undefined, atMs)
    if (!source.ok) return source
    const askedMl = volumeMl ?? freeVolumeMl(source.found)
    if (askedMl < slackMl) return nothingThere(jarPlace(jarId))
    const drawn = takeLiquid(jarId, source.found, askedMl)
    if (!drawn.ok) return drawn
    const after = afterTaking(jarId, drawn.found.left)
    jars.set(jarId, after.left)
    target = pourInto(
      { ...target, strongestPctVol: strongest(target, source.found) },
      drawn.found.taken,
    )
    transfers.push({
      from: jarPlace(jarId),
      to: jarPlace(move.toJarId),
      matter: drawn.found.taken,
    })
    transfers.push(...after.rinsed)
  }
  if (transfers.length === 0) return nothingThere(jarPlace(move.toJarId))
  jars.set(move.toJarId, target)
  return allowed({ jars, transfers, stage: 'married' })
}

/** Share of the volume that each medium keeps back; common practice, no source. */
export const usualLoss: Record<FilterMedium, number> = {
  sieve: 0.01,
  cloth: 0.025,
  paper: 0.03,
  racking: 0.03,
}

export function filter(
  cellar: CellarState,
  move: MoveOf<'filter'>,
  { atMs }: MoveContext,
): Outcome {
  const { fromJarId, toJarId, batchId, medium } = move
  const source = occupiedJar(cellar, fromJarId, batchId, atMs)
  if (!source.ok) return source
  const freeMl = freeVolumeMl(source.found)
  if (freeMl < slackMl) return nothingThere(jarPlace(fromJarId))
  const lossMl = move.lossMl ?? usualLoss[medium] * freeMl
  const lost = shareOf(lossMl, freeMl, 0)
  if (lost === undefined) return notEnough(jarPlace(fromJarId), 'ml', lossMl, freeMl)
  const { part: loss, rest: clear } = splitMatter(source.found.bodies.free, lost)
  const transfers: Transfer[] = [{ from: jarPlace(fromJarId), to: 'outside:filter', matter: loss }]
  const left = withFree(source.found, fromJarId === toJarId ? clear : noMatter)
  if (fromJarId === toJarId)
    return allowed({
      jars: new Map([[fromJarId, { ...left, stage: left.fruit ? left.stage : 'filtered' }]]),
      transfers,
      stage: 'filtered',
    })
  const target = receivingJar(cellar, toJarId, batchId, atMs, 'filtered')
  if (!target.ok) return target
  const filled = pourInto(target.found, clear)
  const after = afterTaking(fromJarId, left)
  transfers.push({ from: jarPlace(fromJarId), to: jarPlace(toJarId), matter: clear })
  transfers.push(...after.rinsed)
  return allowed({
    jars: new Map([
      [fromJarId, after.left],
      [toJarId, { ...filled, strongestPctVol: strongest(filled, source.found) }],
    ]),
    transfers,
    stage: 'filtered',
  })
}

const withFree = (jar: JarState, free: Matter): JarState => ({
  ...jar,
  bodies: { ...jar.bodies, free },
})
