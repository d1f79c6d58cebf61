/** Where matter came from, or went: the contract's `Lineage` with instants in milliseconds. */
import type { Matter } from '../../../shared/matter.ts'
import type { LineageNode } from '../../../shared/schemas/shelf.ts'

export interface LineagePlace extends Pick<LineageNode, 'key' | 'kind' | 'depth'> {
  /** Of the pantry lot, jar, bottle lot or opened bottle; the outside has none. */
  readonly id?: string
  /** Of jars: a jar is a place of its own for each batch it held. */
  readonly batchId?: string
  /** When matter that is followed first came there; absent for the tap and other sources outside. */
  readonly atMs?: number
  /** What is followed and came through here; twice what went round between two jars. */
  readonly matter: Matter
}

export interface LineageLink {
  readonly from: string
  readonly to: string
  readonly matter: Matter
}

export interface LineageShare {
  readonly key: string
  readonly matter: Matter
}

export interface LineageFound {
  readonly nodes: readonly LineagePlace[]
  readonly links: readonly LineageLink[]
  /** Backward: add up to all that was ever put into the place. Forward: the place itself. */
  readonly origins: readonly LineageShare[]
  /** Forward: add up to all that was bought. Backward: the place itself. */
  readonly destinations: readonly LineageShare[]
}

/** What of a bottle lot each fruit brought in grams, pulp aside, the most first. */
export interface FruitInBottles {
  /** `honey` for honey. */
  readonly fruitId: string
  readonly massG: number
}
