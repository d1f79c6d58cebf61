/**
 * Which very jar does each load stand in?
 *
 * Loads of one size are intervals of whole weeks. By their start, each takes the free jar that was
 * left last, so that the others stay free longest; where the program lets no more of them overlap
 * than there are jars, one is always free (jar-program.ts tells why). Today's batches come first and
 * keep their own jars. Throws where a load finds none: that would be a bug of the program.
 */
import type { JarClass } from './season-program.ts'

export interface JarLoad {
  readonly classIndex: number
  readonly fromWeek: number
  /** Empty again, before it is washed. */
  readonly toWeek: number
}

export interface TakenJar {
  readonly jarId: string
  readonly untilWeek: number
}

/** The jar of each load, in the order of the loads. */
export function assignJars(
  loads: readonly JarLoad[],
  classes: readonly JarClass[],
  taken: readonly TakenJar[],
  cleaningWeeks: number,
): string[] {
  const freeFrom = new Map<string, number>(
    classes.flatMap(({ jarIds }) => jarIds).map((jarId) => [jarId, 0]),
  )
  for (const { jarId, untilWeek } of taken)
    if (freeFrom.has(jarId)) freeFrom.set(jarId, untilWeek + cleaningWeeks)
  const found: string[] = []
  const inOrder = loads
    .map((load, index) => ({ load, index }))
    .sort((a, b) => a.load.fromWeek - b.load.fromWeek || a.load.toWeek - b.load.toWeek)
  for (const { load, index } of inOrder) {
    const jarId = (classes[load.classIndex]?.jarIds ?? [])
      .filter((id) => (freeFrom.get(id) ?? 0) <= load.fromWeek)
      .reduce<string | undefined>(
        (last, id) =>
          last === undefined || (freeFrom.get(id) ?? 0) > (freeFrom.get(last) ?? 0) ? id : last,
        undefined,
      )
    if (jarId === undefined) throw new Error(`no jar is free for a load in week ${load.fromWeek}`)
    freeFrom.set(jarId, load.toWeek + cleaningWeeks)
    found[index] = jarId
  }
  return found
}
