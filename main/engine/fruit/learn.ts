/**
 * What do the maker's own batches teach about a fruit?
 *
 * Method: batches with one kind of fruit each give one value; the mean of n of them is shrunk to
 * what the fruit's facts say as if those were two batches more, (n mean + 2 facts) / (n + 2) (craft
 * reference, yields and retention; the two are an estimate). Pace is a ratio and blends on logs.
 * In: the folded ledger, the fruit's facts, and the pace that the readings of a batch fit.
 * Out: own mean, facts, blend, and the batches behind it: litres per kg of edible fruit, times
 * faster than the kinetic class.
 * Leaves out: batches of several fruits; yields of what was married across batches, and of flowers,
 * peel and spices, whose litres follow from the spirit and not from them.
 */
import type { Fruit, FruitLearned, Learned } from '../../../shared/schemas/fruits.ts'
import { stepsOf, yieldOf } from '../ledger/batch-story.ts'
import type { BatchProgress, CellarState } from '../ledger/cellar-state.ts'
import type { Folded, Step } from '../ledger/fold.ts'
import { measuredHold } from './measured-hold.ts'
import { usualYieldLPerKg } from './usual-yield.ts'

export interface LearnOptions {
  /** How many times faster than its kinetic class the readings say; undefined where too few. */
  readonly paceOf: (batchId: string, steps: readonly Step[]) => number | undefined
}

/** One batch's word on its fruit. */
interface Lesson {
  readonly batchId: string
  readonly drainedLPerKg?: number
  readonly pressedLPerKg?: number
  readonly yieldLPerKg?: number
  readonly pace?: number
}
type Quantity = Exclude<keyof Lesson, 'batchId'>

const factsCountAs = 2

/** Undefined while no batch has anything to say of it. */
export function learn(
  { cellar, steps }: Pick<Folded, 'cellar' | 'steps'>,
  fruit: Fruit,
  { paceOf }: LearnOptions,
): FruitLearned | undefined {
  const batchIds = [...cellar.batches].flatMap(([batchId, batch]) =>
    isOfOneFruit(batch, fruit.id) ? [batchId] : [],
  )
  const lessons = batchIds.map((batchId): Lesson => {
    const own = stepsOf(steps, batchId)
    const yieldLPerKg = finishedLPerKg(own, cellar, batchId, fruit)
    const pace = paceOf(batchId, own)
    return {
      batchId,
      ...measuredHold(own, batchId),
      ...(yieldLPerKg !== undefined && { yieldLPerKg }),
      ...(pace !== undefined && { pace }),
    }
  })
  const learned = learnedOf(fruit, lessons)
  return Object.keys(learned).length > 1 ? learned : undefined
}

const isOfOneFruit = ({ fruitIds }: BatchProgress, fruitId: string) =>
  fruitIds.length === 1 && fruitIds[0] === fruitId

function learnedOf(fruit: Fruit, lessons: readonly Lesson[]): FruitLearned {
  const blend = (of: Quantity, facts: number, scale = plain) => {
    const learned = blended(lessons, of, facts, scale)
    return learned ? { [of]: learned } : {}
  }
  return {
    fruitId: fruit.id,
    ...blend('drainedLPerKg', fruit.drainedLPerKg),
    ...blend('pressedLPerKg', fruit.pressedLPerKg),
    ...blend('yieldLPerKg', usualYieldLPerKg(fruit)),
    ...blend('pace', fruit.pace ?? 1, logarithmic),
  }
}

interface Scale {
  readonly to: (value: number) => number
  readonly from: (value: number) => number
}
const plain: Scale = { to: (value) => value, from: (value) => value }
const logarithmic: Scale = { to: Math.log, from: Math.exp }

function blended(
  lessons: readonly Lesson[],
  of: Quantity,
  facts: number,
  { to, from }: Scale,
): Learned | undefined {
  const told = lessons.flatMap(({ batchId, [of]: value }) =>
    value === undefined ? [] : { batchId, value },
  )
  if (told.length === 0) return undefined
  const mean = told.reduce((sum, { value }) => sum + to(value), 0) / told.length
  const weight = told.length / (told.length + factsCountAs)
  return {
    own: from(mean),
    library: facts,
    blended: from(weight * mean + (1 - weight) * to(facts)),
    batchIds: told.map(({ batchId }) => batchId),
  }
}

/** Bottled litres per kg of edible fruit, once the batch has left its jars. */
function finishedLPerKg(
  own: readonly Step[],
  cellar: CellarState,
  batchId: string,
  fruit: Fruit,
): number | undefined {
  const stage = cellar.batches.get(batchId)?.stage
  if (stage !== 'resting' && stage !== 'finished') return undefined
  if (fruit.kineticClass === 'dry' || fruit.kineticClass === 'driedFruit') return undefined
  if (own.some(isMixing)) return undefined
  const { bottledMl } = yieldOf(own, cellar, batchId)
  const edibleG = chargedG(own)
  return bottledMl > 0 && edibleG > 0 ? bottledMl / edibleG : undefined
}

/** Liquid of other batches came in or went there, or bottles were opened back into a jar. */
const isMixing = ({ batchIds, effect, recorded }: Step) =>
  (batchIds.size > 1 && effect.jars !== undefined) || recorded.move.kind === 'unbottle'

/** Edible grams of all that was charged: without stones, and without what was thrown away first. */
function chargedG(own: readonly Step[]): number {
  let edibleG = 0
  const inJarG = new Map<string, number>()
  for (const { recorded, effect } of own)
    for (const [jarId, jar] of effect.jars ?? []) {
      const nowG = jar?.fruit?.edibleG ?? 0
      if (recorded.move.kind === 'charge') edibleG += nowG - (inJarG.get(jarId) ?? 0)
      inJarG.set(jarId, nowG)
    }
  return edibleG
}
