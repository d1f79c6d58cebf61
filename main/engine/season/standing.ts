/**
 * Which jars are taken by today's batches, until when, and what will come out of them?
 *
 * Method: each jar's stage and the day it began, with the trade's usual intervals and the fruit's own
 * weeks: a jar with fruit is empty after its steeping and one sugar draw, an extract waits for the
 * last of its batch and then settles. What is overdue leaves within a week. Of the liquid, half of
 * what the fruit holds and six hundredths in the filters are taken for lost (craft reference,
 * filtration; the half is an estimate).
 * In: the jars of the folded cellar, the fruits. Out: per jar the instant it is empty, mL to come;
 * per batch that still steeps, what it is drawn off into and when.
 * Leaves out: what a maker keeps in a jar on purpose; what stands ready counts as leaving soon.
 */
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import { wholeMatter } from '../ledger/moves/jar-access.ts'
import type { CellarState, JarState } from '../ledger/cellar-state.ts'
import { liquidVolumeMl } from '../solution/liquid-volume.ts'

export interface StandingJar {
  readonly jarId: string
  readonly batchId: string
  readonly untilMs: number
  readonly fillMl: number
}

/** Liquid that will need a jar of its own when a batch of today is drawn off. */
export interface StandingSettle {
  readonly batchId: string
  readonly fromMs: number
  readonly untilMs: number
  readonly volumeMl: number
}

export interface Standing {
  readonly jars: readonly StandingJar[]
  readonly settles: readonly StandingSettle[]
  /** What is to be bottled from the jars, by the first fruit of the batch. */
  readonly toCome: readonly { readonly kindId: string; readonly volumeMl: number }[]
}

const usual = { steepWeeks: 6, drawDays: 10, settleDays: 16, filteredDays: 2, overdueDays: 7 }
const heldBackShare = 0.5
const filteredShare = 0.94
/** Less is a rinse, and no batch. */
const leastMl = 50

export function standingOf(
  { jars, batches }: Pick<CellarState, 'jars' | 'batches'>,
  fruitOf: (fruitId: string) => Fruit,
  nowMs: number,
): Standing {
  const byBatch = Map.groupBy(jars, ([, jar]) => jar.batchId)
  const told = [...byBatch].map(([batchId, own]) => {
    const kindId = batches.get(batchId)?.fruitIds[0] ?? 'other'
    return ofBatch(batchId, kindId, own, fruitOf, nowMs)
  })
  return {
    jars: told.flatMap((batch) => batch.jars),
    settles: told.flatMap((batch) => batch.settles),
    toCome: told.flatMap((batch) => batch.toCome),
  }
}

function ofBatch(
  batchId: string,
  kindId: string,
  own: readonly [string, JarState][],
  fruitOf: (fruitId: string) => Fruit,
  nowMs: number,
): Standing {
  const soonMs = nowMs + usual.overdueDays * msPerDay
  const drawn = new Map(own.map(([id, jar]) => [id, drawnMs(jar, fruitOf)]))
  const emptiedMs = (id: string, { fruit, stageSinceMs, stage }: JarState) => {
    const dueMs =
      stage === 'layered' || stage === 'steeping'
        ? (drawn.get(id) as number) + usual.drawDays * msPerDay
        : stageSinceMs + usual.drawDays * msPerDay
    return fruit ? Math.max(soonMs, dueMs) : -Infinity
  }
  const lastFruitMs = Math.max(...own.map(([id, jar]) => emptiedMs(id, jar)))
  const settledMs = (jar: JarState) => {
    const days = jar.stage === 'filtered' ? usual.filteredDays : usual.settleDays
    return Math.max(soonMs, jar.stageSinceMs + days * msPerDay, lastFruitMs + days * msPerDay)
  }
  const steeping = own.filter(([, { stage }]) => stage === 'layered' || stage === 'steeping')
  const hasExtract = own.some(([, { fruit }]) => fruit === null)
  const volumeMl = own.reduce((sum, [, jar]) => sum + toComeMl(jar), 0)
  const firstDrawnMs = Math.min(...steeping.map(([id]) => Math.max(nowMs, drawn.get(id) ?? nowMs)))
  return {
    jars: own.map(([jarId, jar]) => ({
      jarId,
      batchId,
      untilMs: jar.fruit ? emptiedMs(jarId, jar) : settledMs(jar),
      fillMl: liquidVolumeMl(wholeMatter(jar)),
    })),
    settles:
      steeping.length > 0 && !hasExtract
        ? [
            {
              batchId,
              fromMs: firstDrawnMs,
              untilMs: lastFruitMs + usual.settleDays * msPerDay,
              volumeMl,
            },
          ]
        : [],
    toCome: volumeMl < leastMl ? [] : [{ kindId, volumeMl }],
  }
}

function drawnMs({ fruit, stageSinceMs }: JarState, fruitOf: (fruitId: string) => Fruit): number {
  const weeks = (fruit?.fruits ?? []).map(
    ({ fruitId }) => fruitOf(fruitId).steepingWeeks?.typical ?? usual.steepWeeks,
  )
  return stageSinceMs + Math.max(0, ...weeks) * 7 * msPerDay
}

const toComeMl = ({ bodies }: JarState): number =>
  filteredShare * (liquidVolumeMl(bodies.free) + (1 - heldBackShare) * liquidVolumeMl(bodies.held))
