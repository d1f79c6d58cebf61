/**
 * How much liquid did a batch's fruit keep, by the maker's own jug?
 *
 * Method: whatever went into a jar is known, so when all that was drawn off was measured, what
 * stays (free and held) is known too. The drained value is taken right after the last draw-off
 * before the fruit was covered with sugar, pressed, crushed or thrown away; the pressed value right
 * after the press. One draw-off left to the ledger's own estimate spoils what follows it.
 * In: the steps of one batch. Out: L of liquid per kg of edible fruit, all its jars together.
 * Leaves out: values of zero or less and above 3 L/kg, which no fruit holds; a jug misread by less.
 */
import type { Move } from '../../../shared/schemas/moves.ts'
import type { JarState } from '../ledger/cellar-state.ts'
import type { Step } from '../ledger/fold.ts'
import { wholeVolumeMl } from '../ledger/jar-liquid.ts'

export interface MeasuredHold {
  readonly drainedLPerKg?: number
  readonly pressedLPerKg?: number
}

interface Hold {
  readonly liquidMl: number
  readonly edibleG: number
}

/** What is known of the fruit in one jar so far. */
interface Watch {
  /** Every litre that left the fruit was measured. */
  isMeasured: boolean
  /** Right after the last draw-off, while nothing else was done to the fruit. */
  drained: Hold | undefined
  /** The fruit was covered, pressed or crushed: it no longer drains as it would have. */
  isHandled: boolean
}

const mostMlPerG = 3

export function measuredHold(steps: readonly Step[], batchId: string): MeasuredHold {
  const watches = new Map<string, Watch>()
  const drained: Hold[] = []
  const pressed: Hold[] = []
  const close = (watch: Watch) => {
    if (watch.drained && !watch.isHandled) drained.push(watch.drained)
    watch.drained = undefined
    watch.isHandled = true
  }

  for (const { recorded, effect } of steps) {
    const { move } = recorded
    for (const [jarId, jar] of effect.jars ?? []) {
      const watch = watches.get(jarId)
      if (!watch) {
        if (jar?.fruit && jar.batchId === batchId)
          watches.set(jarId, { isMeasured: true, drained: undefined, isHandled: false })
        continue
      }
      switch (deedOn(jarId, move, jar)) {
        case 'handled':
          close(watch)
          break
        case 'drawn':
          watch.isMeasured &&= isMeasuring(move)
          watch.drained = watch.isMeasured ? holdOf(jar) : undefined
          break
        case 'pressed':
          close(watch)
          watch.isMeasured &&= isMeasuring(move)
          if (watch.isMeasured) pressed.push(...list(holdOf(jar)))
          break
        case 'looked':
          break
        case 'put right':
          if (watch.drained) watch.drained = holdOf(jar)
          break
        case 'refilled':
          watch.drained = undefined
          break
        case 'taken unmeasured':
          watch.isMeasured = false
          watch.drained = undefined
          break
      }
      if (!jar?.fruit) watches.delete(jarId)
    }
  }
  return { ...named('drainedLPerKg', drained), ...named('pressedLPerKg', pressed) }
}

type Deed =
  'handled' | 'drawn' | 'pressed' | 'looked' | 'put right' | 'refilled' | 'taken unmeasured'

/** What a move is to the fruit of a jar that it touched. */
function deedOn(jarId: string, move: Move, jar: JarState | null): Deed {
  switch (move.kind) {
    case 'drawOff':
      return move.fromJarId === jarId ? 'drawn' : 'refilled'
    case 'press':
      return move.fromJarId === jarId ? 'pressed' : 'refilled'
    case 'sugar':
      // Layers of sugar on raw fruit: it has yet to be drained for the first time.
      return jar?.fruit?.cells === 'living' ? 'refilled' : 'handled'
    case 'coverWithSugar':
    case 'crush':
      return 'handled'
    case 'discard':
      return 'jarId' in move.from && move.from.part === 'liquid' ? 'taken unmeasured' : 'handled'
    case 'charge':
    case 'addAcid':
    case 'pourSpirit':
    case 'pourWater':
      return 'refilled'
    case 'correct':
      return 'put right'
    case 'marry':
    case 'filter':
      return move.toJarId === jarId ? 'refilled' : 'taken unmeasured'
    case 'bottle':
      return 'taken unmeasured'
    case 'unbottle':
      return 'refilled'
    case 'buy':
    case 'keep':
    case 'stir':
    case 'read':
    case 'bringIn':
    case 'drawBottle':
    case 'give':
    case 'breakBottle':
    case 'shelve':
    case 'openBottle':
    case 'pourGlass':
    case 'topUp':
    case 'taste':
    case 'remark':
      return 'looked'
  }
}

const isMeasuring = (move: Move) => 'volumeMl' in move && move.volumeMl !== undefined

function holdOf(jar: JarState | null): Hold | undefined {
  if (!jar?.fruit) return undefined
  const hold = { liquidMl: wholeVolumeMl(jar), edibleG: jar.fruit.edibleG }
  const mlPerG = hold.liquidMl / hold.edibleG
  return mlPerG > 0 && mlPerG <= mostMlPerG ? hold : undefined
}

const list = <T>(value: T | undefined): T[] => (value === undefined ? [] : [value])

function named<Key extends string>(key: Key, holds: readonly Hold[]) {
  if (holds.length === 0) return {}
  const sum = (of: keyof Hold) => holds.reduce((total, hold) => total + hold[of], 0)
  return { [key]: sum('liquidMl') / sum('edibleG') } as { [K in Key]: number }
}
