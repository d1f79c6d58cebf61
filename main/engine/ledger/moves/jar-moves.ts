/** What is done to one jar without moving matter: stirring, reading, crushing, a remark. */
import type { MoveOf } from '../../../../shared/schemas/moves.ts'
import { jarPlace, type CellarState } from '../cellar-state.ts'
import { crushedFruit } from '../fruit-charge.ts'
import { wholeVolumeMl } from '../jar-liquid.ts'
import { allowed, nothingThere, refused, slackMl, type Outcome } from '../refusal.ts'
import type { MoveContext } from './context.ts'
import { occupiedJar } from './jar-access.ts'

export function stir(cellar: CellarState, move: MoveOf<'stir'>, { atMs }: MoveContext): Outcome {
  const jar = occupiedJar(cellar, move.jarId, move.batchId, atMs)
  if (!jar.ok) return jar
  return allowed({ jars: new Map([[move.jarId, jar.found]]), transfers: [] })
}

/** A reading never changes mass: what it means is worked out beside the ledger. */
export function read(cellar: CellarState, move: MoveOf<'read'>, { atMs }: MoveContext): Outcome {
  const jar = occupiedJar(cellar, move.jarId, move.batchId, atMs)
  if (!jar.ok) return jar
  if (wholeVolumeMl(jar.found) < slackMl) return nothingThere(jarPlace(move.jarId))
  return allowed({ jars: new Map([[move.jarId, jar.found]]), transfers: [] })
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

export const remark = (): Outcome => allowed({ transfers: [] })
