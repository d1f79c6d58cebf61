/** What a group of the form shows, and how it tells of a change. */
import type { DraftPin, DraftSpec, DraftWindow } from '../../../shared/schemas/drafts.ts'

export interface Turning {
  readonly spec: DraftSpec
  /** A number that others may follow: it is held from then on. */
  readonly turn: (pin: DraftPin, spec: Partial<DraftSpec>) => void
  /** A number that a solve never changes. */
  readonly set: (spec: Partial<DraftSpec>) => void
  readonly pin: (
    pin: DraftPin,
  ) => { isHeld: boolean; onHold: (isHeld: boolean) => void } | undefined
  readonly usual: (window: DraftWindow) => string | undefined
}
