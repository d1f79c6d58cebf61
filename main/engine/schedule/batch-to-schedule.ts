/** All that the tasks of a batch are read off. */
import type { Plan } from '../../../shared/schemas/drafts.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { BatchProgress, JarState } from '../ledger/cellar-state.ts'
import type { Step } from '../ledger/fold.ts'

/** When a jar's strength has come to rest, and when nearly all the extract is out. */
export interface DrawForecast {
  readonly settledMs: number | undefined
  readonly extractedMs: number | undefined
  /** Own readings stand behind it; without any it is the library's pace, good to a factor of 2 or 3. */
  readonly hasReadings: boolean
}

/** A bottle lot of the batch, the first bottled first. */
export interface LotToTaste {
  readonly id: string
  readonly bottledAtMs: number
  readonly count: number
  /** By its own ageing; left out, the usual rest of its fruit is reckoned with. */
  readonly readyAtMs?: number
}

export interface BatchToSchedule {
  readonly batchId: string
  readonly openedAtMs: number
  /** Undefined while nothing was done yet. */
  readonly progress: BatchProgress | undefined
  /** The batch's own. */
  readonly steps: readonly Step[]
  /** The batch's own, as they stand now. */
  readonly jars: ReadonlyMap<string, JarState>
  readonly lots: readonly LotToTaste[]
  readonly forecasts: ReadonlyMap<string, DrawForecast>
  readonly plan: Plan | undefined
  readonly fruitOf: (fruitId: string) => Fruit
  /** To the brim; undefined for a vessel that is only on paper. */
  readonly capacityMlOf: (jarId: string) => number | undefined
  /** Of the strongest spirit in the pantry; undefined with none there. */
  readonly spiritPctVol: number | undefined
  readonly nowMs: number
}
