/** A form filled in as the plan has it: amounts and jars. What it is taken from is what is at hand. */
import type { Move } from '../../../../shared/schemas/moves.ts'
import type { Draft } from './drafts/draft.ts'

/** `isJar` tells the maker's own vessels from those that were only drawn on paper. */
export function asPlanned(draft: Draft, planned: Move, isJar: (jarId: string) => boolean): Draft {
  const jarIds = 'jarId' in planned && isJar(planned.jarId) ? { jarIds: [planned.jarId] } : {}
  if (draft.kind === 'charge' && planned.kind === 'charge') {
    const { massG, refuseG, cut } = planned
    return { ...draft, ...jarIds, amount: massG, refuseG, cut }
  }
  if (
    (draft.kind === 'sugar' && planned.kind === 'sugar') ||
    (draft.kind === 'coverWithSugar' && planned.kind === 'coverWithSugar')
  )
    return { ...draft, ...jarIds, amount: planned.massG }
  if (
    (draft.kind === 'pourSpirit' && planned.kind === 'pourSpirit') ||
    (draft.kind === 'pourWater' && planned.kind === 'pourWater')
  )
    return { ...draft, ...jarIds, amount: planned.volumeMl }
  if (draft.kind === 'bottle' && planned.kind === 'bottle')
    return { ...draft, bottleSizeMl: planned.bottleSizeMl, count: planned.count }
  // What is poured off, pressed, married or filtered is what stands there, not what was foreseen.
  return draft
}
