/** The batches that are under way today, one at every stage, of whatever fruit the year offers. */
import { msPerDay, msPerHour } from '../../shared/spans-of-time.ts'
import { fruitOf } from '../engine/index.ts'
import { litresPerKg, rhythmOf, type BatchPlan, type Rhythm } from './batch-plan.ts'
import { atHour, isWithin, monthOf } from './days.ts'
import { houseKinds, type HouseKind, type KindName } from './house-kinds.ts'

interface Slot {
  /** The stage that is over, by its place in the rhythm, and for how many days. */
  readonly since: keyof Rhythm | 'start'
  readonly days: number
  /** How much of a jar the fruit takes with its spirit. */
  readonly litres: number
  /** In order of preference; the last stands in from the freezer when none is in season. */
  readonly kinds: readonly [KindName, ...KindName[]]
}

const slots: readonly Slot[] = [
  {
    since: 'start',
    days: 12,
    litres: 4.4,
    kinds: ['sloe', 'walnut', 'orangePeel', 'damson'],
  },
  { since: 'start', days: 48, litres: 3.6, kinds: ['cornelian', 'rowan', 'walnut', 'cornelian'] },
  {
    since: 'drawOff',
    days: 1,
    litres: 1.8,
    kinds: ['japaneseQuince', 'plum', 'apricot', 'sourCherry'],
  },
  {
    since: 'cover',
    days: 4,
    litres: 2.7,
    kinds: ['damson', 'blackcurrant', 'raspberry', 'damson'],
  },
  {
    since: 'press',
    days: 2,
    litres: 2.6,
    kinds: ['plum', 'apricot', 'raspberry', 'quince', 'plum'],
  },
  {
    since: 'marry',
    days: 9,
    litres: 1.8,
    kinds: ['blackberry', 'quince', 'orangePeel', 'strawberry', 'blackcurrant'],
  },
  {
    since: 'filter',
    days: 2,
    litres: 1.8,
    kinds: ['raspberry', 'sloe', 'gingerHoney', 'raspberry'],
  },
  {
    since: 'bottle',
    days: 16,
    litres: 3.6,
    kinds: ['sourCherry', 'strawberry', 'quince', 'cornelian', 'strawberry'],
  },
]

/** Layered this morning: sugar is drawing the juice, the spirit comes tomorrow. */
const layeredKinds = ['quince', 'strawberry', 'raspberry', 'sourCherry', 'raspberry'] as const
const layeredHours = 14

export function batchesUnderWay(nowMs: number): BatchPlan[] {
  const used = new Set<KindName>()
  const planned = (name: KindName, startMs: number, litres: number): BatchPlan => {
    used.add(name)
    const kind = houseKinds[name]
    const fruitKg = Math.round((20 * litres) / litresPerKg(kind)) / 20
    const isFromFreezer = !isPicked(kind, startMs)
    return { kind, startMs, fruitKg, isFromFreezer, isSparse: false, mishaps: [] }
  }
  const layeredMs = nowMs - layeredHours * msPerHour
  const layered = planned(
    chosen(layeredKinds, () => layeredMs, used),
    layeredMs,
    8.8,
  )
  const others = slots.map(({ since, days, litres, kinds }) => {
    const startOf = (name: KindName) => {
      const before = since === 'start' ? 0 : rhythmOf(houseKinds[name])[since]
      return atHour(nowMs - (before + days) * msPerDay, 15)
    }
    const name = chosen(kinds, startOf, used)
    return planned(name, startOf(name), litres)
  })
  return [layered, ...others]
}

const isPicked = (kind: HouseKind, ms: number): boolean => {
  const { season } = fruitOf(kind.ingredients[0].fruitId)
  return season === undefined || isWithin(monthOf(ms), season)
}

/** The first kind in season that no other slot has, else the one from the freezer. */
function chosen(
  kinds: readonly [KindName, ...KindName[]],
  startOf: (name: KindName) => number,
  used: ReadonlySet<KindName>,
): KindName {
  const fresh = kinds.find((name) => !used.has(name) && isPicked(houseKinds[name], startOf(name)))
  return fresh ?? kinds.at(-1) ?? kinds[0]
}
