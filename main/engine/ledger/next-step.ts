/** What comes next for a batch, and when, by the trade's usual intervals and the fruit's own. */
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { Stage } from '../../../shared/schemas/cellar.ts'
import type { JarState } from './cellar-state.ts'
import { freeVolumeMl } from './jar-liquid.ts'
import { restDays, steepingDays, usualDays, type Days } from './usual-days.ts'

export type Action =
  | 'charge'
  | 'addSpirit'
  | 'drawOff'
  | 'coverWithSugar'
  | 'pourOffSugarDraw'
  | 'marry'
  | 'filter'
  | 'bottle'
  | 'taste'
  | 'none'

export interface Next {
  readonly action: Action
  readonly earlyMs?: number
  readonly dueMs?: number
  readonly lateMs?: number
  readonly jarIds: readonly string[]
}

export interface BatchNow {
  readonly stage: Stage
  readonly sinceMs: number
  readonly jars: ReadonlyMap<string, JarState>
  readonly fruits: readonly Fruit[]
}

export function nextStep(batch: BatchNow): Next {
  const withFruit = jarIds(batch, (jar) => jar.fruit !== null)
  const withLiquid = jarIds(batch, (jar) => jar.fruit === null && freeVolumeMl(jar) >= 1)
  switch (batch.stage) {
    case 'empty':
      return { action: 'charge', jarIds: [] }
    case 'layered':
      return within(
        batch,
        'addSpirit',
        usualDays.addSpirit,
        jarIds(batch, () => true),
      )
    case 'steeping':
      return within(batch, 'drawOff', steepingDays(batch.fruits), withFruit)
    case 'drawnOff': {
      // Jars of one batch are drawn off one by one: those still steeping come first.
      const steeping = jarIds(batch, (jar) => jar.stage === 'steeping')
      if (steeping.length > 0) {
        const sinceMs = Math.min(...steeping.map((id) => batch.jars.get(id)?.stageSinceMs ?? 0))
        return within({ ...batch, sinceMs }, 'drawOff', steepingDays(batch.fruits), steeping)
      }
      const undrawn = jarIds(batch, (jar) => jar.fruit?.sugarDraws === 0)
      if (undrawn.length > 0)
        return within(batch, 'coverWithSugar', usualDays.coverWithSugar, undrawn)
      return together(batch, withLiquid)
    }
    case 'sugarDraw':
      return within(
        batch,
        'pourOffSugarDraw',
        usualDays.pourOffSugarDraw,
        jarIds(batch, (jar) => jar.fruit?.isUnderSugar === true),
      )
    case 'pressed':
      return together(batch, withLiquid)
    case 'married':
      return within(batch, 'filter', usualDays.filter, withLiquid)
    case 'filtered':
      return within(batch, 'bottle', usualDays.bottle, withLiquid)
    case 'resting':
      return within(batch, 'taste', restDays(batch.fruits), [])
    case 'finished':
      return { action: 'none', jarIds: [] }
  }
}

/** Several extracts are married first; a single one goes straight to the filter. */
const together = (batch: BatchNow, withLiquid: string[]): Next =>
  withLiquid.length > 1
    ? within(batch, 'marry', usualDays.marry, withLiquid)
    : within(batch, 'filter', usualDays.filter, withLiquid)

function within(
  { sinceMs }: BatchNow,
  action: Action,
  [early, due, late]: Days,
  jars: string[],
): Next {
  return {
    action,
    earlyMs: sinceMs + early * msPerDay,
    dueMs: sinceMs + due * msPerDay,
    lateMs: sinceMs + late * msPerDay,
    jarIds: jars,
  }
}

const jarIds = (batch: BatchNow, matches: (jar: JarState) => boolean): string[] =>
  [...batch.jars].filter(([, jar]) => matches(jar)).map(([id]) => id)
