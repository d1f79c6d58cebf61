/** Short ways to write a ledger down in tests: moves with days for instants and ids made up. */
import type { Move, RecordedMove } from '../../../shared/schemas/moves.ts'
import { fold, fruitOf, sweetenerComposition } from '../../../main/engine/index.ts'

type DistributiveOmit<T, K extends PropertyKey> = T extends unknown ? Omit<T, K> : never

/** A move without its instant. */
export type Deed = DistributiveOmit<Move, 'at'>

const start = Date.parse('2024-06-01T08:00:00Z')

export const dayAt = (day: number): string => new Date(start + day * 86_400_000).toISOString()

/** Moves as the book would have recorded them, at the given days. */
export const recorded = (deeds: readonly (readonly [day: number, deed: Deed])[]): RecordedMove[] =>
  deeds.map(([day, deed], index) => ({
    id: `m${index}`,
    seq: index + 1,
    groupId: `g${index}`,
    recordedAt: dayAt(day),
    version: 1,
    move: { at: dayAt(day), ...deed } as Move,
  }))

export const folded = (deeds: readonly (readonly [day: number, deed: Deed])[]) =>
  fold(recorded(deeds), { fruitOf })

export const buyFruit = (lotId: string, fruitId: string, massG: number): Deed => ({
  kind: 'buy',
  lotId,
  goods: { kind: 'fruit', fruitId, composition: fruitOf(fruitId).composition },
  massG,
})

export const buySugar = (lotId: string, massG: number): Deed => ({
  kind: 'buy',
  lotId,
  goods: {
    kind: 'sweetener',
    sweetenerId: 'sugar',
    composition: sweetenerComposition('sugar'),
  },
  massG,
})

export const buyAcid = (lotId: string, massG: number): Deed => ({
  kind: 'buy',
  lotId,
  goods: { kind: 'acid' },
  massG,
})

export const buySpirit = (lotId: string, volumeMl: number, strengthPctVol: number): Deed => ({
  kind: 'buy',
  lotId,
  goods: { kind: 'spirit', strengthPctVol },
  volumeMl,
})
