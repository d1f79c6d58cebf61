/**
 * Where everything is at one instant: jars, pantry lots, bottle lots, opened bottles, and the boundary places
 * through which matter enters and leaves. Entries are never changed in place: a move yields an
 * Effect, and `commit` puts the effect's new entries in.
 */
import {
  addMatter,
  massOf,
  matterKinds,
  noMatter,
  scaleMatter,
  subtractMatter,
  type Matter,
} from '../../../shared/matter.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { Stage, Transfer } from '../../../shared/schemas/cellar.ts'
import type { FruitTissue } from '../../../shared/schemas/fruits.ts'
import type { Goods } from '../../../shared/schemas/goods.ts'
import type { Cut } from '../../../shared/schemas/moves.ts'
import { emptyBodies, type Bodies } from '../steeping/bodies.ts'
import type { ShelfCounts } from './shelf-counts.ts'
import { mixingLagDays, usualKeeping, type Keeping } from '../steeping/keeping.ts'
import { BranchingMap } from './branching-map.ts'
import { steepingPath, type SteepingPath, type Tissue } from '../steeping/steep.ts'

export const boundaries = [
  'outside:supplier',
  'outside:tap',
  'outside:elsewhere',
  'outside:glass',
  'outside:gift',
  'outside:waste',
  'outside:filter',
  'outside:correction',
] as const
export type Boundary = (typeof boundaries)[number]

export const jarPlace = (jarId: string) => `jar:${jarId}`
export const lotPlace = (lotId: string) => `lot:${lotId}`
export const bottlesPlace = (bottleLotId: string) => `bottles:${bottleLotId}`
export const openedPlace = (openedId: string) => `opened:${openedId}`

/** One charge of fruit, with all that decides its pace. */
export interface FruitPart {
  readonly facts: FruitTissue
  readonly cut: Cut
  readonly pieceMm: number | undefined
  /** Pieces that many times that size, or the usual one. */
  readonly pieceScale: number
  readonly edibleG: number
}

/** The fruit of a jar: its tissue, and what the trade does to it. */
export interface FruitCharge extends Tissue {
  readonly fruits: readonly { readonly fruitId: string; readonly massG: number }[]
  readonly parts: readonly FruitPart[]
  /** Liquid it still holds once pressed. */
  readonly pressedMl: number
  /** Room the loose pieces take before liquid covers them. */
  readonly bulkMl: number
  readonly sugarDraws: number
  /** Covered with sugar since it was last drained: more sugar belongs to the same draw. */
  readonly isUnderSugar: boolean
}

/** The instant from which a jar steeps undisturbed, and how it stood then. */
export interface Clock {
  readonly atMs: number
  readonly bodies: Bodies
  /** Days until what was poured in last is mixed. */
  readonly lagDays: number
  /** Share of the fruit's colour given up by then. */
  readonly colourFraction: number
}

export interface JarState {
  readonly batchId: string
  readonly bodies: Bodies
  readonly colourFraction: number
  readonly fruit: FruitCharge | null
  readonly keeping: Keeping
  readonly clock: Clock
  readonly stage: Stage
  /** Since when it has stood at this stage. */
  readonly stageSinceMs: number
  /** The instant that `bodies` describes. */
  readonly atMs: number
  /** Strength of the strongest spirit that went in: nothing in the jar can be stronger. */
  readonly strongestPctVol: number
}

export interface LotState {
  readonly goods: Goods
  readonly boughtAtMs: number
  readonly bought: Matter
  readonly matter: Matter
  readonly priceMinor: number | undefined
}

export interface BottleState {
  readonly batchId: string
  readonly name: string | undefined
  readonly bottledAtMs: number
  readonly bottleSizeMl: number
  readonly filledCount: number
  /** Full ones, wherever they stand. */
  readonly count: number
  /** Where they stand; the counts add up to `count`. */
  readonly shelves: ShelfCounts
  readonly perBottle: Matter
}

/** All that is in a lot's full bottles. */
export const matterInBottles = (lot: BottleState): Matter => scaleMatter(lot.perBottle, lot.count)

/** An uncorked bottle. It keeps its lot whatever it is topped up with, and stays here once empty. */
export interface OpenedState {
  readonly bottleLotId: string
  readonly batchId: string
  readonly openedAtMs: number
  readonly bottleSizeMl: number
  readonly matter: Matter
}

export const isStanding = ({ matter }: OpenedState): boolean => massOf(matter) > 0

/** How far a batch has come, and the bands it went through. */
export interface BatchProgress {
  readonly stage: Stage
  readonly startedAtMs: number
  readonly bands: readonly { readonly stage: Stage; readonly fromMs: number }[]
  readonly moveCount: number
  /** The kinds of fruit charged, in the order of their first charge. */
  readonly fruitIds: readonly string[]
  /** What it was bottled into, and which of those bottles were opened. */
  readonly bottleLotIds: readonly string[]
  readonly openedIds: readonly string[]
}

export interface CellarState {
  readonly jars: ReadonlyMap<string, JarState>
  readonly lots: ReadonlyMap<string, LotState>
  readonly bottles: ReadonlyMap<string, BottleState>
  readonly opened: ReadonlyMap<string, OpenedState>
  readonly batches: ReadonlyMap<string, BatchProgress>
  readonly outside: ReadonlyMap<Boundary, Matter>
}

/** What one move does: the new entries (null where a jar is left empty) and the matter moved. */
export interface Effect {
  readonly jars?: ReadonlyMap<string, JarState | null>
  readonly lots?: ReadonlyMap<string, LotState>
  readonly bottles?: ReadonlyMap<string, BottleState>
  readonly opened?: ReadonlyMap<string, OpenedState>
  readonly transfers: readonly Transfer[]
  /** The stage that the move brings its batch to. */
  readonly stage?: Stage
}

/** A state that `commit` may write to. Only the fold makes one, and it never lets it be shared. */
export interface WorkingCellar extends CellarState {
  readonly jars: Map<string, JarState>
  readonly lots: BranchingMap<string, LotState>
  readonly bottles: BranchingMap<string, BottleState>
  readonly opened: BranchingMap<string, OpenedState>
  readonly batches: BranchingMap<string, BatchProgress>
  readonly outside: Map<Boundary, Matter>
}

export const emptyCellar = (): WorkingCellar => ({
  jars: new Map(),
  lots: new BranchingMap(),
  bottles: new BranchingMap(),
  opened: new BranchingMap(),
  batches: new BranchingMap(),
  outside: new Map(boundaries.map((place) => [place, noMatter])),
})

/** A state to go on from. Jars are few, and emptied ones are taken out: they are copied. */
export const branchCellar = (cellar: CellarState): WorkingCellar => ({
  jars: new Map(cellar.jars),
  lots: branchOf(cellar.lots),
  bottles: branchOf(cellar.bottles),
  opened: branchOf(cellar.opened),
  batches: branchOf(cellar.batches),
  outside: new Map(cellar.outside),
})

const branchOf = <K, V>(map: ReadonlyMap<K, V>): BranchingMap<K, V> =>
  map instanceof BranchingMap ? map.branch() : new BranchingMap(map)

export const freshJar = (batchId: string, atMs: number, stage: Stage): JarState => ({
  batchId,
  bodies: emptyBodies,
  colourFraction: 0,
  fruit: null,
  keeping: usualKeeping,
  clock: { atMs, bodies: emptyBodies, lagDays: 0, colourFraction: 0 },
  stage,
  stageSinceMs: atMs,
  atMs,
  strongestPctVol: 0,
})

/** What a clock leads to is asked many times, for curves above all. */
const paths = new WeakMap<Clock, SteepingPath>()

function pathOf({ clock, fruit, keeping }: JarState): SteepingPath {
  const known = paths.get(clock)
  if (known) return known
  const { bodies, lagDays } = clock
  const path = steepingPath({ start: bodies, tissue: fruit, keeping, lagDays })
  paths.set(clock, path)
  return path
}

/** The jar as it stands at another instant of its clock: what happened inside since its last move. */
export function settledJar(jar: JarState, atMs: number): JarState {
  if (atMs === jar.atMs) return jar
  const { bodies, colourFraction } = pathOf(jar)((atMs - jar.clock.atMs) / msPerDay)
  const kept = 1 - jar.clock.colourFraction
  return { ...jar, bodies, colourFraction: 1 - kept * (1 - colourFraction), atMs }
}

/** Its bodies alone, for those who ask for many instants. */
export const bodiesAt = (jar: JarState, atMs: number): Bodies =>
  atMs === jar.atMs ? jar.bodies : pathOf(jar)((atMs - jar.clock.atMs) / msPerDay).bodies

/** The jar with its clock started anew: from here it steeps by what stands in it now. */
export const restarted = (jar: JarState, lagDays: number): JarState => ({
  ...jar,
  clock: {
    atMs: jar.atMs,
    bodies: jar.bodies,
    lagDays,
    colourFraction: jar.colourFraction,
  },
})

export function jarAt(cellar: CellarState, jarId: string, atMs: number): JarState | undefined {
  const jar = cellar.jars.get(jarId)
  return jar && settledJar(jar, atMs)
}

/**
 * The effect with each jar's stage dated, from this move where it is new, else as it was; and with
 * its clock started anew where the move changed what steeps. What was poured in has to mix first.
 */
export function dated(cellar: CellarState, effect: Effect): Effect {
  if (!effect.jars) return effect
  const jars = new Map<string, JarState | null>()
  for (const [id, jar] of effect.jars)
    jars.set(id, jar && datedJar(cellar.jars.get(id), id, jar, effect))
  return { ...effect, jars }
}

function datedJar(was: JarState | undefined, id: string, jar: JarState, effect: Effect): JarState {
  const isAsBefore = was && was.batchId === jar.batchId && was.stage === jar.stage
  const isPouredInto = effect.transfers.some(({ to }) => to === jarPlace(id))
  const steeping =
    was && isUndisturbed(was, jar)
      ? jar
      : restarted(jar, isPouredInto ? mixingLagDays[jar.keeping.turned] : 0)
  return { ...steeping, stageSinceMs: isAsBefore ? was.stageSinceMs : jar.atMs }
}

/** Only looked at, or told to be stirred: what stands in it is what its clock says. */
function isUndisturbed(was: JarState, jar: JarState): boolean {
  if (jar.clock !== was.clock) return true
  if (jar.fruit !== was.fruit || jar.keeping !== was.keeping) return false
  const { bodies } = settledJar(was, jar.atMs)
  return (['free', 'held', 'bed'] as const).every((body) =>
    matterKinds.every((kind) => bodies[body][kind] === jar.bodies[body][kind]),
  )
}

/** Puts a move's effect into the working state. */
export function commit(cellar: WorkingCellar, effect: Effect): void {
  for (const [id, jar] of effect.jars ?? []) {
    if (jar) cellar.jars.set(id, jar)
    else cellar.jars.delete(id)
  }
  for (const [id, lot] of effect.lots ?? []) cellar.lots.set(id, lot)
  for (const [id, bottles] of effect.bottles ?? []) cellar.bottles.set(id, bottles)
  for (const [id, opened] of effect.opened ?? []) cellar.opened.set(id, opened)
  for (const { from, to, matter } of effect.transfers) {
    moveOutside(cellar, from, (there) => subtractMatter(there, matter))
    moveOutside(cellar, to, (there) => addMatter(there, matter))
  }
}

function moveOutside(cellar: WorkingCellar, place: string, change: (there: Matter) => Matter) {
  const there = cellar.outside.get(place as Boundary)
  if (there) cellar.outside.set(place as Boundary, change(there))
}
