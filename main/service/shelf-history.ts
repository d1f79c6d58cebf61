/**
 * What the shelf's screens need of the past, read off the ledger in one walk: where the bottles of
 * each lot stood, what was tasted of it, and what came onto the shelf and left it.
 */
import { mapMatter, massOf, type Matter } from '../../shared/matter.ts'
import type { Transfer } from '../../shared/schemas/cellar.ts'
import type { Move, MoveOf, RecordedMove } from '../../shared/schemas/moves.ts'
import { alongLedger, liquidVolumeMl, type BottleState, type Step } from '../engine/index.ts'

export type Tasting = RecordedMove & { readonly move: MoveOf<'taste'> }

export interface LotHistory {
  /** Every move of the lot and of its opened bottles, tastings among them. */
  readonly steps: Step[]
  /** Bottles by shelf, after each move that changed where they stand. */
  readonly stands: { readonly atMs: number; readonly shelves: BottleState['shelves'] }[]
  /** Of the lot, and of the jars that it came from before it was bottled; the oldest first. */
  readonly tastings: Tasting[]
}

/** Liquid that came onto the shelf or left it, opened bottles included. */
export interface ShelfChange {
  readonly atMs: number
  readonly bottleLotId: string
  /** Above zero where it came. */
  readonly changeMl: number
  readonly way: 'drunk' | 'given' | 'other'
}

export interface ShelfHistory {
  readonly lots: Map<string, LotHistory>
  readonly changes: ShelfChange[]
  /** When the first fruit of each batch was charged. */
  readonly firstChargeMs: Map<string, number>
  readonly tastedInJar: Map<string, readonly Tasting[]>
  bottlings: number
}

export const shelfHistory = alongLedger<ShelfHistory>({
  start: () => ({
    lots: new Map(),
    changes: [],
    firstChargeMs: new Map(),
    tastedInJar: new Map(),
    bottlings: 0,
  }),
  take: (history, step) => {
    const { move } = step.recorded
    if (move.kind === 'charge' && !history.firstChargeMs.has(move.batchId))
      history.firstChargeMs.set(move.batchId, step.atMs)
    if (move.kind === 'bottle' || move.kind === 'bringIn') history.bottlings += 1
    passTastingsOn(history, step)
    if (isTasting(step.recorded)) keepTasting(history, step.recorded)
    else if (!step.effect.bottles && !step.effect.opened) return
    noteStands(history, step)
    for (const id of lotsOf(step)) lotOf(history, id).steps.push(step)
    noteChanges(history, step)
  },
})

function lotsOf({ recorded: { move }, effect }: Step): Set<string> {
  const ids = new Set(effect.bottles?.keys())
  for (const { bottleLotId } of effect.opened?.values() ?? []) ids.add(bottleLotId)
  if (move.kind === 'taste' && move.bottleLotId !== undefined) ids.add(move.bottleLotId)
  return ids
}

const isTasting = (recorded: RecordedMove): recorded is Tasting => recorded.move.kind === 'taste'

function lotOf({ lots }: ShelfHistory, bottleLotId: string): LotHistory {
  const known = lots.get(bottleLotId)
  if (known) return known
  const lot = { steps: [], stands: [], tastings: [] }
  lots.set(bottleLotId, lot)
  return lot
}

function keepTasting(history: ShelfHistory, tasting: Tasting): void {
  const { jarId, bottleLotId } = tasting.move
  if (bottleLotId !== undefined) lotOf(history, bottleLotId).tastings.push(tasting)
  if (jarId !== undefined)
    history.tastedInJar.set(jarId, [...(history.tastedInJar.get(jarId) ?? []), tasting])
}

/** What was tasted in a jar counts for where its liquid goes, until the jar stands empty. */
function passTastingsOn(history: ShelfHistory, { effect }: Step): void {
  const { tastedInJar } = history
  if (tastedInJar.size === 0 || !effect.jars) return
  for (const { from, to } of effect.transfers) {
    const tasted = tastedInJar.get(idIn(from, 'jar:') ?? '')
    if (!tasted) continue
    const toJar = idIn(to, 'jar:')
    const toLot = idIn(to, 'bottles:')
    if (toJar !== undefined)
      tastedInJar.set(toJar, [...new Set([...(tastedInJar.get(toJar) ?? []), ...tasted])])
    if (toLot !== undefined) lotOf(history, toLot).tastings.push(...tasted)
  }
  for (const [jarId, jar] of effect.jars) if (jar === null) tastedInJar.delete(jarId)
}

function noteStands(history: ShelfHistory, { atMs, effect }: Step): void {
  for (const [id, { shelves }] of effect.bottles ?? []) {
    const { stands } = lotOf(history, id)
    if (stands.at(-1)?.shelves !== shelves) stands.push({ atMs, shelves })
  }
}

function noteChanges({ changes }: ShelfHistory, { atMs, effect, recorded }: Step): void {
  for (const { from, to, matter } of effect.transfers) {
    const volumeMl = signedVolumeMl(matter)
    const [source, target] = [from, to].map((place) => lotIdOf(place, effect))
    if (source === target) continue
    const way = wayOf({ from, to }, recorded.move)
    if (source) changes.push({ atMs, bottleLotId: source, changeMl: -volumeMl, way })
    if (target) changes.push({ atMs, bottleLotId: target, changeMl: volumeMl, way })
  }
}

function wayOf({ to }: Pick<Transfer, 'from' | 'to'>, { kind }: Move): ShelfChange['way'] {
  if (to === 'outside:glass') return 'drunk'
  return kind === 'give' ? 'given' : 'other'
}

/** The bottle lot that a place of the shelf belongs to. */
function lotIdOf(place: string, { opened }: Step['effect']): string | undefined {
  const openedId = idIn(place, 'opened:')
  return openedId === undefined ? idIn(place, 'bottles:') : opened?.get(openedId)?.bottleLotId
}

const idIn = (place: string, kind: string): string | undefined =>
  place.startsWith(kind) ? place.slice(kind.length) : undefined

/** A correction may take out what was booked too much. */
function signedVolumeMl(matter: Matter): number {
  const volumeMl = liquidVolumeMl(mapMatter(matter, Math.abs))
  return massOf(matter) < 0 ? -volumeMl : volumeMl
}
