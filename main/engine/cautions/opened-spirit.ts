/**
 * Which opened spirit should be looked at: is it shut?
 *
 * No move tells of a stopper. The ledger knows when a lot was first poured from, and when last. Strong
 * spirit that has stood since, and of which something is left, is asked about once, until it is poured
 * from again: open, it loses strength, and from 60 % vol on its vapour catches fire at 22 °C and
 * below (flash-point table). The days and the least volume are common practice, no source.
 * In: the pantry, when each lot was poured from, what the maker said. Out: cautions.
 * Leaves out: what evaporates. Nobody knows that who did not see the stopper.
 */
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { Caution } from '../../../shared/schemas/cellar.ts'
import type { LotState } from '../ledger/cellar-state.ts'
import { liquidVolumeMl } from '../solution/liquid-volume.ts'
import type { Pouring } from '../ledger/pourings.ts'

export const strongSpiritPctVol = 60
export const untouchedDays = 30
export const leastLeftMl = 100

export interface SpiritToCheck {
  readonly lots: ReadonlyMap<string, LotState>
  readonly pourings: ReadonlyMap<string, Pouring>
  /** By lot: when the maker last said that it is shut. */
  readonly shutAtMs: ReadonlyMap<string, number>
  readonly nowMs: number
}

export function openedSpirit({ lots, pourings, shutAtMs, nowMs }: SpiritToCheck): Caution[] {
  return [...pourings].flatMap(([lotId, { firstMs, lastMs }]): Caution[] => {
    const lot = lots.get(lotId)
    if (lot?.goods.kind !== 'spirit' || lot.goods.strengthPctVol < strongSpiritPctVol) return []
    const isAsked = nowMs - lastMs >= untouchedDays * msPerDay
    const isAnswered = (shutAtMs.get(lotId) ?? Number.NEGATIVE_INFINITY) >= lastMs
    const leftMl = liquidVolumeMl(lot.matter)
    if (!isAsked || isAnswered || leftMl < leastLeftMl) return []
    const since = new Date(firstMs).toISOString()
    return [{ code: 'openedSpirit', severity: 'note', lotId, since, value: leftMl }]
  })
}
