/**
 * What did the matter in each place cost?
 *
 * Money goes with matter: a purchase puts its price on its lot, and whatever leaves a place takes
 * the share of the money that it is of the place's mass without pulp. Normal losses (what filters
 * keep, pulp thrown away, a rinsed trace) carry none: their money stays on what remains, on the
 * batch's other places when the jar is emptied, and is written off only when nothing remains.
 * Water and corrections carry none. In: the steps of a fold. Out: smallest units of money, with
 * fractions; all of them add up to what was spent. Leaves out: bottles, labour, rent.
 */
import type { Cost } from '../../../shared/schemas/marrying.ts'
import { massOf, type Matter } from '../../../shared/matter.ts'
import { bottlesPlace, jarPlace, openedPlace } from './cellar-state.ts'
import type { Step } from './fold.ts'

export interface Costs {
  /** Of jars, pantry lots, bottle lots and opened bottles by the ledger's names; only what holds matter or money. */
  readonly places: ReadonlyMap<string, Cost>
  readonly spent: Cost
  readonly drunk: Cost
  readonly given: Cost
  readonly wasted: Cost
}

export interface Purse {
  minor: number
  isComplete: boolean
  /** Without pulp: nobody pays for what is thrown away. */
  massG: number
  batchId: string | undefined
  hasFruit: boolean
}

const emptyPurse = (): Purse => ({
  minor: 0,
  isComplete: true,
  massG: 0,
  batchId: undefined,
  hasFruit: false,
})

/** Less than this is rounding, in grams. */
const traceG = 1e-6
const hair = 1e-9

/** Where the money is after some steps; `payStep` carries it on by one more. */
export interface Purses {
  readonly byPlace: Map<string, Purse>
  /** The places that ever held something of each batch. */
  readonly placesOfBatch: Map<string, Set<string>>
  readonly spent: Purse
}

export const openPurses = (): Purses => ({
  byPlace: new Map(),
  placesOfBatch: new Map(),
  spent: emptyPurse(),
})

export function costsOf(steps: readonly Step[]): Costs {
  const purses = openPurses()
  for (const step of steps) payStep(purses, step)
  return costsIn(purses)
}

export function payStep(purses: Purses, step: Step): void {
  const { move } = step.recorded
  if (move.kind === 'buy') {
    const isComplete = move.priceMinor !== undefined
    pay(purseOf(purses, `lot:${move.lotId}`), { minor: move.priceMinor ?? 0, isComplete })
    pay(purses.spent, { minor: move.priceMinor ?? 0, isComplete })
  }
  // What they cost was spent before the book, or by somebody else.
  if (move.kind === 'bringIn')
    pay(purseOf(purses, bottlesPlace(move.bottleLotId)), { minor: 0, isComplete: false })
  for (const place of new Set(step.effect.transfers.map(({ from }) => from)))
    if (!place.startsWith('outside:')) passOn(purses, step, place)
  for (const { from, to, matter } of step.effect.transfers) {
    weigh(purses, from, -paidMass(matter))
    weigh(purses, to, paidMass(matter))
  }
  nameBatches(purses, step)
  for (const { from, to } of step.effect.transfers)
    for (const place of [from, to]) settleEmptied(purses, place)
}

export function costsIn({ byPlace, spent }: Purses): Costs {
  const of = (place: string) => costOf(byPlace.get(place) ?? emptyPurse())
  const places = new Map<string, Cost>()
  for (const [place, purse] of byPlace)
    if (!place.startsWith('outside:') && (purse.massG > traceG || purse.minor !== 0))
      places.set(place, costOf(purse))
  return {
    places,
    spent: costOf(spent),
    drunk: of('outside:glass'),
    given: of('outside:gift'),
    wasted: of('outside:waste'),
  }
}

const costOf = ({ minor, isComplete }: Purse): Cost => ({ minor, isComplete })

/** Fruit and sugar lots are paid for with all that is in them; pulp counts there too. */
const paidMass = (matter: Matter): number => massOf(matter) - matter.pulpG

function purseOf({ byPlace }: Purses, place: string): Purse {
  const known = byPlace.get(place)
  if (known) return known
  const purse = emptyPurse()
  byPlace.set(place, purse)
  return purse
}

function pay(purse: Purse, { minor, isComplete }: Cost): void {
  purse.minor += minor
  purse.isComplete &&= isComplete
}

/** Boundaries have no end of matter; only what is inside is weighed. */
function weigh(purses: Purses, place: string, massG: number): void {
  if (!place.startsWith('outside:')) purseOf(purses, place).massG += massG
}

/** Sends the money of what leaves a place after it. */
function passOn(purses: Purses, { recorded, effect }: Step, place: string): void {
  const source = purseOf(purses, place)
  const leaving = effect.transfers.filter(({ from }) => from === place)
  const takers = leaving.filter(({ to }) => isPaidFor(recorded.move, to, source))
  const takenG = takers.reduce((sum, { matter }) => sum + paidMass(matter), 0)
  const leavingG = leaving.reduce((sum, { matter }) => sum + paidMass(matter), 0)
  if (takenG <= 0 || source.massG <= 0) return
  // Stones and stalks taken out of fruit are paid for by the fruit that is used.
  const goneG = place.startsWith('lot:') || isEmptied(effect, place) ? leavingG : takenG
  const isAll = isEmptied(effect, place) || goneG > source.massG * (1 - hair)
  const share = isAll ? 1 : goneG / source.massG
  const minor = source.minor * share
  for (const { to, matter } of takers)
    pay(purseOf(purses, to), {
      minor: (minor * paidMass(matter)) / takenG,
      isComplete: source.isComplete,
    })
  source.minor = share === 1 ? 0 : source.minor - minor
}

/** Places of the cellar, what is drunk or given, and what is thrown away but for spent fruit. */
function isPaidFor(move: Step['recorded']['move'], to: string, { hasFruit }: Purse): boolean {
  if (!to.startsWith('outside:')) return true
  if (to === 'outside:glass' || to === 'outside:gift') return true
  if (to !== 'outside:waste') return false
  if (move.kind === 'breakBottle') return true
  if (move.kind !== 'discard') return false
  return !('jarId' in move.from) || move.from.part === 'liquid' || !hasFruit
}

const isEmptied = ({ jars }: Step['effect'], place: string): boolean =>
  place.startsWith('jar:') && jars?.get(place.slice('jar:'.length)) === null

function nameBatches(purses: Purses, { effect }: Step): void {
  for (const [jarId, jar] of effect.jars ?? [])
    if (jar) name(purses, jarPlace(jarId), jar.batchId).hasFruit = jar.fruit !== null
  for (const [id, lot] of effect.bottles ?? []) name(purses, bottlesPlace(id), lot.batchId)
  for (const [id, opened] of effect.opened ?? []) name(purses, openedPlace(id), opened.batchId)
}

function name(purses: Purses, place: string, batchId: string): Purse {
  const purse = purseOf(purses, place)
  purse.batchId = batchId
  const places = purses.placesOfBatch.get(batchId)
  if (places) places.add(place)
  else purses.placesOfBatch.set(batchId, new Set([place]))
  return purse
}

/**
 * Money left where no matter is goes to the batch's jars, else its bottles, else its opened ones,
 * else it is lost.
 */
function settleEmptied(purses: Purses, place: string): void {
  const purse = purses.byPlace.get(place)
  if (!purse || purse.massG > traceG || place.startsWith('outside:')) return
  if (purse.minor !== 0) {
    const heirs = heirsOf(purses, purse, place)
    const massG = heirs.reduce((sum, heir) => sum + heir.massG, 0)
    for (const heir of heirs)
      pay(heir, { minor: (purse.minor * heir.massG) / massG, isComplete: purse.isComplete })
    if (heirs.length === 0) pay(purseOf(purses, 'outside:waste'), purse)
  }
  Object.assign(purse, emptyPurse())
}

function heirsOf(purses: Purses, { batchId }: Purse, emptied: string): Purse[] {
  if (batchId === undefined) return []
  const places = [...(purses.placesOfBatch.get(batchId) ?? [])]
  for (const kind of ['jar:', 'bottles:', 'opened:']) {
    const heirs = places
      .filter((place) => place !== emptied && place.startsWith(kind))
      .map((place) => purseOf(purses, place))
      .filter((heir) => heir.batchId === batchId && heir.massG > traceG)
    if (heirs.length > 0) return heirs
  }
  return []
}

/** All the money there is, wherever it is: what was spent, to rounding. */
export const totalMinor = ({ places, drunk, given, wasted }: Costs): number =>
  [...places.values(), drunk, given, wasted].reduce((sum, { minor }) => sum + minor, 0)
