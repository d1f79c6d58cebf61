/** The sets of jars that one load may fill: one or two to steep in, one or two to settle in. */
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import { leastFillFraction, type JarClass, type Way } from './season-program.ts'

export interface LoadShape {
  /** How many jars of each class. */
  readonly steep: readonly number[]
  readonly settle: readonly number[]
  /** The same of the classes that it wants any of. */
  readonly wants: readonly {
    readonly classIndex: number
    readonly steep: number
    readonly settle: number
  }[]
  readonly leastKg: number
  readonly mostKg: number
  /** Room in jars, times the weeks that it is taken. */
  readonly jarLWeeks: number
  /** Jar room for each litre made, when filled as far as may be. */
  readonly jarWeeks: number
}

/**
 * The thriftiest are enough: those that waste more room are hardly ever the better choice. Every
 * single pair is there, so that what fits any jars at all is found.
 */
const mostShapes = 150

/** The thriftiest with jar room first. */
export function loadShapes(
  way: Way,
  classes: readonly JarClass[],
  cleaningWeeks: number,
): LoadShape[] {
  const sets = setsOfJars(classes)
  const capacityMl = (set: readonly number[]) =>
    set.reduce((sum, count, index) => sum + count * (classes[index]?.capacityMl ?? 0), 0)
  const steepWeeks = way.emptiedWeek + cleaningWeeks
  const settleWeeks = way.settleToWeek - way.settleFromWeek + cleaningWeeks
  const shapes = sets.flatMap((steep) =>
    sets.flatMap((settle): LoadShape[] => {
      const steepMl = capacityMl(steep)
      const settleMl = capacityMl(settle)
      const steepKg = steepMl / way.steepMlPerKg
      const settleKg = settleMl / way.settleMlPerKg
      const leastKg = leastFillFraction * Math.max(steepKg, settleKg)
      const mostKg = safeFillFraction * Math.min(steepKg, settleKg)
      if (leastKg > mostKg) return []
      const jarLWeeks = (steepMl * steepWeeks + settleMl * settleWeeks) / 1000
      const wants = classes.flatMap((_, classIndex) => {
        const want = { classIndex, steep: steep[classIndex] ?? 0, settle: settle[classIndex] ?? 0 }
        return want.steep + want.settle > 0 ? want : []
      })
      const jarWeeks = jarLWeeks / (mostKg * way.lPerKg)
      return [{ steep, settle, wants, leastKg, mostKg, jarLWeeks, jarWeeks }]
    }),
  )
  const isPair = ({ steep, settle }: LoadShape) => countOf(steep) === 1 && countOf(settle) === 1
  return shapes
    .sort((a, b) => a.jarWeeks - b.jarWeeks)
    .filter((shape, index) => index < mostShapes || isPair(shape))
}

const countOf = (jars: readonly number[]): number => jars.reduce((sum, count) => sum + count, 0)

/** Every one or two jars there are, as counts of each class. */
function setsOfJars(classes: readonly JarClass[]): number[][] {
  const counts = (...jars: number[]) =>
    classes.map((_, index) => jars.filter((jar) => jar === index).length)
  const isThere = (set: readonly number[]) =>
    set.every((count, index) => count <= (classes[index]?.jarIds.length ?? 0))
  return classes
    .flatMap((_, one) => [
      counts(one),
      ...classes.slice(one).map((_other, at) => counts(one, one + at)),
    ])
    .filter(isThere)
}
