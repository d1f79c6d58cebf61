/** How fast a batch's curve and fit are, and how often their bands hold the truth. */
import {
  bandedCurve,
  ensembleOf,
  fitSteeping,
  fold,
  fruitOf,
  fruitTissue,
  replayOf,
  spreadOf,
  stepsOf,
  type FitReading,
} from '../../main/engine/index.ts'
import type { Move, RecordedMove } from '../../shared/schemas/moves.ts'
import { fittedJar, holds, seeded } from '../engine/steeping/synthetic-jars.ts'

const jars = 1000
const readingCount = 20

const at = (day: number) => new Date(Date.UTC(2025, 6, 1) + day * 86_400_000).toISOString()

/** Two jars of cherries over four months, drawn, sugared, drawn again and married; twenty readings. */
function batch(): RecordedMove[] {
  const batchId = 'b'
  const sugarLot = {
    kind: 'sweetener',
    sweetenerId: 'sugar',
    composition: {
      edibleFraction: 1,
      waterPct: 0,
      sugarPct: 100,
      acidPct: 0,
      solublesPct: 0,
      pulpPct: 0,
    },
  } as const
  const moves: Move[] = [
    {
      kind: 'buy',
      at: at(0),
      lotId: 'fruit',
      goods: {
        kind: 'fruit',
        fruitId: 'sour_cherry',
        composition: fruitOf('sour_cherry').composition,
      },
      massG: 4000,
    },
    {
      kind: 'buy',
      at: at(0),
      lotId: 'spirit',
      goods: { kind: 'spirit', strengthPctVol: 70 },
      volumeMl: 4000,
    },
    { kind: 'buy', at: at(0), lotId: 'sugar', goods: sugarLot, massG: 4000 },
    ...(['one', 'two'] as const).flatMap((jarId): Move[] => [
      { kind: 'charge', at: at(0), batchId, jarId, lotId: 'fruit', massG: 2000, cut: 'whole' },
      { kind: 'sugar', at: at(0), batchId, jarId, lotId: 'sugar', massG: 400 },
      { kind: 'pourSpirit', at: at(1), batchId, jarId, lotId: 'spirit', volumeMl: 2000 },
      ...Array.from({ length: readingCount / 2 }, (_, i): Move => ({
        kind: 'read',
        at: at(2 + i * 9),
        batchId,
        jarId,
        reading: { instrument: 'measuringJug', volumeMl: 100, temperatureC: 20 },
      })),
      { kind: 'drawOff', at: at(120), batchId, fromJarId: jarId, toJarId: `first-${jarId}` },
      { kind: 'coverWithSugar', at: at(120), batchId, jarId, lotId: 'sugar', massG: 500 },
      { kind: 'drawOff', at: at(127), batchId, fromJarId: jarId, toJarId: `second-${jarId}` },
    ]),
    {
      kind: 'marry',
      at: at(128),
      batchId,
      parts: ['first-one', 'second-one', 'first-two', 'second-two'].map((jarId) => ({ jarId })),
      toJarId: 'married',
    },
  ]
  return moves.map((move, index) => ({
    id: `m${index}`,
    seq: index + 1,
    groupId: `g${index}`,
    recordedAt: move.at,
    version: 1,
    move,
  }))
}

function medianMs(times: number, work: () => void): number {
  const found = Array.from({ length: times }, () => {
    const from = performance.now()
    work()
    return performance.now() - from
  })
  return found.sort((a, b) => a - b)[Math.floor(times / 2)] as number
}

export function run(): void {
  const folded = fold(batch(), { fruitOf })
  if (folded.refused.length > 0) throw new Error('the bench batch does not hold')
  const steps = stepsOf(folded.steps, 'b')
  const told = replayOf(steps, folded.cellar, 'b', fruitOf)
  const spread = spreadOf(fruitTissue(fruitOf('sour_cherry')), 'whole')
  const readings = steps.flatMap(({ recorded: { id, move } }, index): FitReading[] =>
    move.kind === 'read'
      ? [
          {
            moveId: id,
            jarId: move.jarId,
            interpretation: {
              strengthPctVol: 34 + 14 * 0.8 ** index + (index % 3) * 0.3,
              strengthUncertaintyPctVol: 0.4,
              doubts: [],
            },
          },
        ]
      : [],
  )
  const fitMs = medianMs(15, () => fitSteeping({ replay: told, spread, readings }))
  const fit = fitSteeping({ replay: told, spread, readings })
  const endMs = Date.UTC(2025, 11, 1)
  const foldMs = medianMs(31, () => fold(told.moves, { fruitOf, from: told.from }))
  const curveMs = medianMs(31, () =>
    bandedCurve(ensembleOf(told, { spread, ...fit }), 'b', endMs, 500),
  )
  console.log(
    `fit of ${readings.length} readings, ${told.moves.length} moves   ${fitMs.toFixed(1)} ms  ${(fitMs / foldMs).toFixed(0)} × one fold of the batch`,
  )
  console.log(
    `curve of 500 points with band, all quantities   ${curveMs.toFixed(1)} ms  ${(curveMs / foldMs).toFixed(0)} × one fold`,
  )

  for (const count of [1, 3, 6]) {
    const random = seeded(count)
    let [pace, resting, widthPctVol] = [0, 0, 0]
    for (let i = 0; i < jars; i += 1) {
      const jar = fittedJar(random, { readings: count, pctVolNoise: 0.5 })
      if (holds(jar.pace, jar.truePace)) pace += 1
      if (holds(jar.resting, jar.trueRestingPctVol)) resting += 1
      widthPctVol += (jar.resting.high - jar.resting.low) / jars
    }
    const pct = (hits: number) => `${((100 * hits) / jars).toFixed(1)} %`
    console.log(
      `${jars} jars of ${count} readings ± 0.5 % vol: true pace in its 90 % band ${pct(pace)}, resting strength ${pct(resting)} (band ${widthPctVol.toFixed(1)} % vol wide)`,
    )
  }
}
