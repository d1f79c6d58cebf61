/** How fast the ledger is read: folding it whole against going on from where it stood. */
import {
  describeJar,
  fold,
  fruitOf,
  curveOf,
  sampleTimes,
  stepsOf,
  sweetenerComposition,
} from '../../main/engine/index.ts'
import type { Move, RecordedMove } from '../../shared/schemas/moves.ts'

const batches = 500

/** A ledger of many plain batches, one after another in the same few jars. */
function longLedger(): RecordedMove[] {
  const moves: Move[] = []
  const cherries = fruitOf('sour_cherry').composition
  for (let i = 0; i < batches; i += 1) {
    const day = (offset: number) => new Date(Date.UTC(1990, 0, 1 + i * 20 + offset)).toISOString()
    const batchId = `batch${i}`
    const jarId = `jar${i % 12}`
    const extractId = `demijohn${i % 4}`
    moves.push(
      {
        at: day(0),
        kind: 'buy',
        lotId: `f${i}`,
        goods: { kind: 'fruit', fruitId: 'sour_cherry', composition: cherries },
        massG: 2000,
      },
      {
        at: day(0),
        kind: 'buy',
        lotId: `s${i}`,
        goods: { kind: 'spirit', strengthPctVol: 96 },
        volumeMl: 1400,
      },
      {
        at: day(0),
        kind: 'buy',
        lotId: `w${i}`,
        goods: {
          kind: 'sweetener',
          sweetenerId: 'sugar',
          composition: sweetenerComposition('sugar'),
        },
        massG: 900,
      },
      { at: day(0), kind: 'charge', batchId, jarId, lotId: `f${i}`, massG: 2000, cut: 'pricked' },
      { at: day(0), kind: 'sugar', batchId, jarId, lotId: `w${i}`, massG: 400 },
      { at: day(1), kind: 'pourWater', batchId, jarId, volumeMl: 600 },
      { at: day(1), kind: 'pourSpirit', batchId, jarId, lotId: `s${i}`, volumeMl: 1400 },
      { at: day(2), kind: 'stir', batchId, jarId },
      { at: day(9), kind: 'drawOff', batchId, fromJarId: jarId, toJarId: extractId },
      { at: day(9), kind: 'coverWithSugar', batchId, jarId, lotId: `w${i}`, massG: 400 },
      { at: day(11), kind: 'drawOff', batchId, fromJarId: jarId, toJarId: extractId },
      { at: day(11), kind: 'discard', from: { jarId, part: 'all' } },
      {
        at: day(12),
        kind: 'filter',
        batchId,
        fromJarId: extractId,
        toJarId: extractId,
        medium: 'paper',
      },
      {
        at: day(13),
        kind: 'bottle',
        batchId,
        fromJarId: extractId,
        bottleLotId: `b${i}`,
        bottleSizeMl: 500,
        count: 4,
      },
      { at: day(13), kind: 'discard', from: { jarId: extractId, part: 'all' } },
      { at: day(15), kind: 'drawBottle', bottleLotId: `b${i}`, count: 1 },
    )
  }
  return moves.map((move, index) => ({
    id: `m${index}`,
    seq: index + 1,
    groupId: `g${index}`,
    recordedAt: move.at,
    version: 1,
    move,
  }))
}

function timed<T>(times: number, act: () => T): { ms: number; value: T } {
  let value = act()
  const start = performance.now()
  for (let i = 0; i < times; i += 1) value = act()
  return { ms: (performance.now() - start) / times, value }
}

export function run(): void {
  const ledger = longLedger()
  const whole = timed(3, () => fold(ledger, { fruitOf }))
  if (whole.value.refused.length > 0) throw new Error('the bench ledger does not hold')
  const one = ledger
    .slice(-1)
    .map((recorded) => ({ ...recorded, id: 'one-more', seq: ledger.length + 1 }))
  const next = timed(2000, () => fold(one, { fruitOf, from: whole.value.cellar }))
  const steps = stepsOf(whole.value.steps, 'batch250')
  const last = steps.at(-1)?.atMs ?? 0
  const times = sampleTimes(steps, last, 300)
  const curve = timed(20, () => curveOf(steps, 'batch250', times))
  const jar = steps
    .flatMap((step) => [...(step.effect.jars?.values() ?? [])])
    .find((found) => found !== null)
  if (!jar) throw new Error('the bench batch has no jar')
  const described = timed(5000, () => describeJar('jar', jar))

  const perMove = whole.ms / ledger.length
  console.log(
    `fold of ${ledger.length} moves            ${whole.ms.toFixed(0)} ms, ${Math.round(ledger.length / (whole.ms / 1000))} moves/s`,
  )
  console.log(
    `one more move                    ${next.ms.toFixed(3)} ms, ${(whole.ms / next.ms).toFixed(0)} times faster than folding all again`,
  )
  console.log(
    `a batch's curve, 300 points      ${curve.ms.toFixed(1)} ms, as long as folding ${(curve.ms / perMove).toFixed(0)} moves`,
  )
  console.log(
    `a jar described                  ${described.ms.toFixed(4)} ms, as long as folding ${(described.ms / perMove).toFixed(1)} moves`,
  )
}
