/** What is done without moving matter: standing a jar warmer, stirring, reading, tasting, crushing. */
import type { MoveOf } from '../../../../shared/schemas/moves.ts'
import { msPerDay } from '../../../../shared/spans-of-time.ts'
import { bottlesPlace, jarPlace, restarted, type CellarState } from '../cellar-state.ts'
import { crushedFruit } from '../fruit-charge.ts'
import { wholeVolumeMl } from '../jar-liquid.ts'
import { allowed, nothingThere, refused, slackMl, type Outcome } from '../refusal.ts'
import type { MoveContext } from './context.ts'
import { occupiedJar } from './jar-access.ts'

export function stir(cellar: CellarState, move: MoveOf<'stir'>, { atMs }: MoveContext): Outcome {
  const jar = occupiedJar(cellar, move.jarId, move.batchId, atMs)
  if (!jar.ok) return jar
  // Stirring mixes what was poured in; once that has happened it changes nothing.
  const { clock } = jar.found
  const isMixed = atMs - clock.atMs >= 2 * clock.lagDays * msPerDay
  const stirred = isMixed ? jar.found : restarted(jar.found, 0)
  return allowed({ jars: new Map([[move.jarId, stirred]]), transfers: [] })
}

export function keep(cellar: CellarState, move: MoveOf<'keep'>, { atMs }: MoveContext): Outcome {
  const jar = occupiedJar(cellar, move.jarId, move.batchId, atMs)
  if (!jar.ok) return jar
  const { keeping } = jar.found
  const kept = {
    temperatureC: move.temperatureC ?? keeping.temperatureC,
    turned: move.turned ?? keeping.turned,
  }
  return allowed({ jars: new Map([[move.jarId, { ...jar.found, keeping: kept }]]), transfers: [] })
}

/** A reading never changes mass: what it means is worked out beside the ledger. */
export const read = (cellar: CellarState, move: MoveOf<'read'>, { atMs }: MoveContext): Outcome =>
  lookedInto(cellar, move, atMs)

function lookedInto(
  cellar: CellarState,
  { jarId, batchId }: { jarId: string; batchId: string },
  atMs: number,
): Outcome {
  const jar = occupiedJar(cellar, jarId, batchId, atMs)
  if (!jar.ok) return jar
  if (wholeVolumeMl(jar.found) < slackMl) return nothingThere(jarPlace(jarId))
  return allowed({ jars: new Map([[jarId, jar.found]]), transfers: [] })
}

export function crush(cellar: CellarState, move: MoveOf<'crush'>, { atMs }: MoveContext): Outcome {
  const jar = occupiedJar(cellar, move.jarId, move.batchId, atMs)
  if (!jar.ok) return jar
  const { fruit } = jar.found
  if (!fruit) return refused({ code: 'noFruit', place: jarPlace(move.jarId) })
  return allowed({
    jars: new Map([[move.jarId, { ...jar.found, fruit: crushedFruit(fruit) }]]),
    transfers: [],
  })
}

/** The scores are read off the moves; here only what was tasted must be there. */
export function taste(cellar: CellarState, move: MoveOf<'taste'>, { atMs }: MoveContext): Outcome {
  const { batchId, jarId, bottleLotId } = move
  if (jarId !== undefined) return lookedInto(cellar, { jarId, batchId }, atMs)
  const lotId = bottleLotId ?? ''
  const place = bottlesPlace(lotId)
  const lot = cellar.bottles.get(lotId)
  if (!lot) return refused({ code: 'unknownPlace', place })
  if (lot.batchId !== batchId) return refused({ code: 'jarTaken', place, batchId: lot.batchId })
  return allowed({ transfers: [] })
}

export const remark = (): Outcome => allowed({ transfers: [] })
