/** The tasks of one batch as the engine finds them, for a book written down by days. */
import { batchTasks, fruitOf, settledJar, stepsOf } from '../../../main/engine/index.ts'
import type { BatchToSchedule, ScheduledTask } from '../../../main/engine/index.ts'
import { buyFruit, buySpirit, buySugar, dayAt, folded, type Deed } from '../ledger/book-of-moves.ts'

export const batchId = 'batch'
export const atDay = (day: number): number => Date.parse(dayAt(day))

export type Lines = readonly (readonly [day: number, deed: Deed])[]

export const pantry: Lines = [
  [0, buyFruit('plums', 'damson', 20_000)],
  [0, buyFruit('quinces', 'quince', 20_000)],
  [0, buyFruit('cherries', 'sour_cherry', 20_000)],
  [0, buySpirit('spirit', 20_000, 70)],
  [0, buySugar('sugar', 20_000)],
]

export function batchAt(
  lines: Lines,
  day: number,
  change: Partial<BatchToSchedule> = {},
): BatchToSchedule {
  const { cellar, steps, refused } = folded([...pantry, ...lines])
  if (refused.length > 0) throw new Error(`refused: ${JSON.stringify(refused[0])}`)
  const nowMs = atDay(day)
  const jars = [...cellar.jars].filter(([, jar]) => jar.batchId === batchId)
  return {
    batchId,
    openedAtMs: atDay(0),
    progress: cellar.batches.get(batchId),
    steps: stepsOf(steps, batchId),
    jars: new Map(jars.map(([id, jar]) => [id, settledJar(jar, Math.max(nowMs, jar.atMs))])),
    lots: [...cellar.bottles].map(([id, { bottledAtMs, count }]) => ({ id, bottledAtMs, count })),
    forecasts: new Map(),
    plan: undefined,
    fruitOf,
    capacityMlOf: (jarId) => (jarId.startsWith('paper') ? undefined : 8000),
    spiritPctVol: 96,
    nowMs,
    ...change,
  }
}

export const tasksAt = (lines: Lines, day: number, change: Partial<BatchToSchedule> = {}) =>
  batchTasks(batchAt(lines, day, change))

export const one = (tasks: readonly ScheduledTask[], kind: ScheduledTask['kind']) => {
  const found = tasks.filter((task) => task.kind === kind)
  if (found.length !== 1) throw new Error(`${found.length} tasks of kind ${kind}`)
  return found[0] as ScheduledTask
}

export const dayOfMs = (ms: number | undefined): number =>
  ms === undefined ? Number.NaN : (ms - atDay(0)) / 86_400_000

const inBatch = { batchId, jarId: 'jar' }

/** A kilogram and a half of a fruit, a night under sugar first where `sugarG` is given. */
export const charged = (lotId: string, day: number, sugarG = 0): Lines => [
  [day, { kind: 'charge', ...inBatch, lotId, massG: 1500, cut: 'cut' }],
  ...(sugarG > 0
    ? ([[day, { kind: 'sugar', ...inBatch, lotId: 'sugar', massG: sugarG }]] as const)
    : []),
]

export const spirited = (day: number): Lines => [
  [day, { kind: 'pourSpirit', ...inBatch, lotId: 'spirit', volumeMl: 1500 }],
]

export const drawnOff = (day: number, toJarId = 'first'): Lines => [
  [day, { kind: 'drawOff', batchId, fromJarId: 'jar', toJarId }],
]

export const covered = (day: number): Lines => [
  [day, { kind: 'coverWithSugar', ...inBatch, lotId: 'sugar', massG: 350 }],
]

export const pressed = (day: number): Lines => [
  [day, { kind: 'press', batchId, fromJarId: 'jar', toJarId: 'third' }],
]

export const cleared = (day: number): Lines => [
  [day, { kind: 'discard', from: { jarId: 'jar', part: 'all' } }],
]

export const married = (day: number, ...from: string[]): Lines => [
  [day, { kind: 'marry', batchId, parts: from.map((jarId) => ({ jarId })), toJarId: 'demijohn' }],
]

export const filtered = (day: number, medium: 'racking' | 'paper' = 'paper'): Lines => [
  [day, { kind: 'filter', batchId, fromJarId: 'demijohn', toJarId: 'demijohn', medium }],
]

export const bottled = (day: number, bottleLotId = 'lot', count = 3): Lines => [
  [day, { kind: 'bottle', batchId, fromJarId: 'demijohn', bottleLotId, bottleSizeMl: 500, count }],
]

/** A quince batch up to each step of the trade's road. */
export const upToSpirit = [...charged('quinces', 1), ...spirited(1)]
export const upToDraw = [...upToSpirit, ...drawnOff(43)]
export const upToCover = [...upToDraw, ...covered(44)]
export const upToPour = [...upToCover, ...drawnOff(51, 'second')]
export const upToPress = [...upToPour, ...pressed(53)]
export const upToMarry = [...upToPress, ...cleared(53), ...married(54, 'first', 'second', 'third')]
