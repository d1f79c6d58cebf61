/** What the shelf has to tell to Today: what came ready, what fades, what runs low. */
import type { FadingBottles } from '../engine/index.ts'
import type { KindStock, ShelfLot } from '../../shared/schemas/shelf.ts'
import type { Session } from './session.ts'

export interface ShelfNews {
  readonly cameReady: readonly ShelfLot[]
  readonly runningLow: readonly KindStock[]
  readonly fading: readonly FadingBottles[]
}

export function shelfNews(_session: Session): ShelfNews {
  return { cameReady: [], runningLow: [], fading: [] }
}
