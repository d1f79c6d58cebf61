/** What the forms of the log may offer: the cellar's vessels, the pantry, the batch's bottles. */
import type { BottleLot, Jar, JarContents, PantryLot } from '../../../../shared/schemas/cellar.ts'
import type { Goods } from '../../../../shared/schemas/goods.ts'

export interface StandingJar {
  readonly jar: Jar
  readonly contents?: JarContents | undefined
}

export interface LogContext {
  /** Empty for a move that concerns no batch: then what stands in any vessel is offered. */
  readonly batchId: string
  /** Every vessel of the cellar that is in use. */
  readonly jars: readonly StandingJar[]
  readonly pantry: readonly PantryLot[]
  /** The batch's own. */
  readonly bottleLots: readonly BottleLot[]
  readonly now: () => string
  readonly newId: () => string
}

/** Less than this is a wet jar or an empty bag. */
const least = 0.5

export const ownJars = ({ jars, batchId }: LogContext): StandingJar[] =>
  jars.filter(({ contents }) => contents && (batchId === '' || contents.batchId === batchId))

export const emptyJars = ({ jars }: LogContext): StandingJar[] =>
  jars.filter(({ contents, jar }) => !contents && !jar.isRetired)

export const foreignJars = ({ jars, batchId }: LogContext): StandingJar[] =>
  jars.filter(({ contents }) => contents && contents.batchId !== batchId)

export const hasFruit = ({ contents }: StandingJar): boolean => (contents?.fruits.length ?? 0) > 0

export const freeMl = ({ contents }: StandingJar): number => contents?.liquid?.volumeMl ?? 0

export const hasLiquid = (standing: StandingJar): boolean => freeMl(standing) >= least

export const jarIdsOf = (jars: readonly StandingJar[]): string[] => jars.map(({ jar }) => jar.id)

/** What is left in a pantry lot: ml of spirit, g of everything else. */
export const leftIn = (lot: PantryLot): number =>
  lot.goods.kind === 'spirit' ? (lot.volumeMl ?? 0) : lot.massG

/** Lots of one kind of goods that still hold something, last bought first. */
export const lotsOf = ({ pantry }: Pick<LogContext, 'pantry'>, kind: Goods['kind']): PantryLot[] =>
  pantry
    .filter((lot) => lot.goods.kind === kind && leftIn(lot) >= least)
    .sort((a, b) => b.boughtAt.localeCompare(a.boughtAt))

/** A vessel filled beyond this share has no room for turning and warmth. */
export const safeShare = 0.95

/**
 * The smallest vessel that takes a volume with room to spare: an empty one, or else one of the
 * batch's own without fruit that has the room beside what stands in it.
 */
export function fittingJar(
  context: LogContext,
  volumeMl: number,
  taken: readonly string[] = [],
): StandingJar | undefined {
  const free = (standing: StandingJar) => !taken.includes(standing.jar.id)
  const fits = ({ jar, contents }: StandingJar) =>
    safeShare * jar.capacityMl - (contents?.fillMl ?? 0) >= volumeMl
  const bySize = (a: StandingJar, b: StandingJar) => a.jar.capacityMl - b.jar.capacityMl
  const empty = emptyJars(context).filter(free).filter(fits).sort(bySize)
  const own = ownJars(context)
    .filter((standing) => !hasFruit(standing))
    .filter(free)
    .filter(fits)
    .sort(bySize)
  return empty[0] ?? own[0]
}
