/** Made-up jars whose truth is known, with noisy readings: what a fit should find again. */
import {
  bandsOf,
  ensembleOf,
  fitSteeping,
  fold,
  forecastJars,
  fruitOf,
  fruitTissue,
  replayOf,
  spreadOf,
  stepsOf,
  sweetenerComposition,
  tuningOf,
} from '../../../main/engine/index.ts'
import { jarsAfter } from '../../../main/engine/steeping/forecast.ts'
import { replay } from '../../../main/engine/steeping/replay.ts'
import { describeLiquid } from '../../../main/engine/ledger/jar-liquid.ts'
import { settledJar } from '../../../main/engine/ledger/cellar-state.ts'
import type { Cut, Move, RecordedMove } from '../../../shared/schemas/moves.ts'

/** A seeded source of numbers between 0 and 1 (mulberry32, public domain). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

/** Normally distributed, mean 0 and deviation 1 (Box and Muller). */
const normal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())

const kinds: readonly (readonly [fruitId: string, cut: Cut])[] = [
  ['sour_cherry', 'whole'],
  ['blackcurrant', 'whole'],
  ['raspberry', 'whole'],
  ['plum', 'cut'],
  ['sloe', 'pricked'],
  ['quince', 'cut'],
  ['cornelian_cherry', 'whole'],
  ['strawberry', 'crushed'],
]

const startMs = Date.parse('2025-07-01T08:00:00Z')
const atDay = (day: number) => new Date(startMs + day * 86_400_000).toISOString()
const restMs = startMs + 100 * 365 * 86_400_000

export interface SyntheticJar {
  readonly readings: number
  readonly pctVolNoise: number
}

/** One jar with its readings fitted: where truth and bands lie. */
export function fittedJar(random: () => number, { readings, pctVolNoise }: SyntheticJar) {
  const [fruitId, cut] = kinds[Math.floor(random() * kinds.length)] as (typeof kinds)[number]
  const massG = 500 + 2500 * random()
  const facts = fruitTissue(fruitOf(fruitId))
  const spread = spreadOf(facts, cut)
  const halfDays = { whole: 4, pricked: 2, cut: 1, crushed: 1, frozen: 1 }[cut]
  // Readings where they tell something: from early on to nearly settled.
  const days = Array.from({ length: readings }, () => halfDays * 2 ** (4 * random() - 1)).sort(
    (a, b) => a - b,
  )
  const moves: Move[] = [
    {
      kind: 'buy',
      at: atDay(0),
      lotId: 'fruit',
      goods: { kind: 'fruit', fruitId, composition: fruitOf(fruitId).composition },
      massG,
    },
    {
      kind: 'buy',
      at: atDay(0),
      lotId: 'spirit',
      goods: { kind: 'spirit', strengthPctVol: 55 + 35 * random() },
      volumeMl: 10_000,
    },
    {
      kind: 'buy',
      at: atDay(0),
      lotId: 'sugar',
      goods: {
        kind: 'sweetener',
        sweetenerId: 'sugar',
        composition: sweetenerComposition('sugar'),
      },
      massG: 5000,
    },
    { kind: 'charge', at: atDay(0), batchId: 'b', jarId: 'j', lotId: 'fruit', massG, cut },
    {
      kind: 'sugar',
      at: atDay(0),
      batchId: 'b',
      jarId: 'j',
      lotId: 'sugar',
      massG: 1 + 0.3 * massG * random(),
    },
    {
      kind: 'pourSpirit',
      at: atDay(0.5),
      batchId: 'b',
      jarId: 'j',
      lotId: 'spirit',
      volumeMl: massG * (0.8 + 0.8 * random()),
    },
    ...days.map((day): Move => ({
      kind: 'read',
      at: atDay(0.5 + day),
      batchId: 'b',
      jarId: 'j',
      reading: { instrument: 'measuringJug', volumeMl: 100, temperatureC: 20 },
    })),
  ]
  const recorded = moves.map((move, index): RecordedMove => ({
    id: `m${index}`,
    seq: index + 1,
    groupId: `g${index}`,
    recordedAt: move.at,
    version: 1,
    move,
  }))
  const folded = fold(recorded, { fruitOf })
  const told = replayOf(stepsOf(folded.steps, 'b'), folded.cellar, 'b', fruitOf)
  const truth = tuningOf(spread, [normal(random), normal(random), normal(random)])
  const trueSteps = replay(told, truth).steps
  const taken = trueSteps.flatMap(({ recorded: { id, move }, effect }) => {
    if (move.kind !== 'read') return []
    const strengthPctVol = strengthIn(effect.jars?.get('j')) + pctVolNoise * normal(random)
    // The model adds its own 0.3 % vol: what is stated of the instrument is the rest.
    const strengthUncertaintyPctVol = Math.sqrt(pctVolNoise ** 2 - 0.3 ** 2)
    const interpretation = { strengthPctVol, strengthUncertaintyPctVol, doubts: [] }
    return [{ moveId: id, jarId: 'j', interpretation }]
  })
  const fit = fitSteeping({ replay: told, spread, readings: taken })
  const ensemble = ensembleOf(told, { spread, ...fit })
  const deviation = (index: number) => Math.sqrt(fit.covariance[index]?.[index] ?? 0)
  const { pace } = bandsOf(spread, fit.unknowns, [deviation(0), deviation(1), deviation(2)])
  const [forecast] = forecastJars(ensemble, 'b', Date.parse(atDay(60)))
  const trueJar = jarsAfter(trueSteps, 'b').get('j')
  if (!forecast || !trueJar) throw new Error('the jar came to nothing')
  return {
    pace,
    truePace: truth.pace,
    resting: forecast.resting.strengthPctVol,
    trueRestingPctVol: strengthIn(settledJar(trueJar, restMs)),
    outliers: fit.outliers.size,
  }
}

const strengthIn = (jar: ReturnType<typeof settledJar> | null | undefined): number =>
  (jar && describeLiquid(jar.bodies.free)?.strengthPctVol) ?? 0

export const holds = ({ low, high }: { low: number; high: number }, truth: number): boolean =>
  truth >= low && truth <= high
