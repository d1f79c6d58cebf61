/** A form filled in as the plan has it: amounts and jars. What it is taken from is what is at hand. */
import type { Move } from '../../../../shared/schemas/moves.ts'
import type { Draft } from './drafts/draft.ts'

/** `isJar` tells vessels that the batch may use from another's, and from those drawn on paper. */
export function asPlanned(draft: Draft, planned: Move, isJar: (jarId: string) => boolean): Draft {
  const jarId = 'jarId' in planned ? planned.jarId : undefined
  const jarIds = jarId !== undefined && isJar(jarId) ? { jarIds: [jarId] } : {}
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
  if (draft.kind === 'filter' && planned.kind === 'filter')
    return { ...draft, ...into(planned.toJarId, isJar), medium: planned.medium }
  // What is poured off, pressed or married is what stands there, not what was foreseen.
  if (
    (draft.kind === 'drawOff' && planned.kind === 'drawOff') ||
    (draft.kind === 'press' && planned.kind === 'press') ||
    (draft.kind === 'marry' && planned.kind === 'marry')
  )
    return { ...draft, ...into(planned.toJarId, isJar) }
  return draft
}

const into = (toJarId: string, isJar: (jarId: string) => boolean) =>
  isJar(toJarId) ? { toJarId } : {}
