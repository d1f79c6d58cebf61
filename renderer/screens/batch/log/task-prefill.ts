/** A form filled in as a task proposes it: which jars, how much, through what. What is known better stays. */
import type { Proposal } from '../../../../shared/schemas/tasks.ts'
import { fullBottles, type BottlingDraft } from '../../../parts/moves/drafts/bottling.ts'
import type { Draft } from '../../../parts/moves/drafts/draft.ts'
import { freeMl, type LogContext } from '../../../parts/moves/drafts/log-context.ts'

export function asProposed(draft: Draft, proposal: Proposal, context: LogContext): Draft {
  const { jarIds, amount } = proposal
  const [jarId] = jarIds
  switch (draft.kind) {
    case 'charge':
    case 'coverWithSugar':
    case 'pourSpirit': {
      const { refuseG = draft.refuseG, cut = draft.cut } = proposal
      return { ...draft, jarIds: some(jarIds, draft.jarIds), amount, refuseG, cut }
    }
    case 'stir':
      return { ...draft, jarIds: some(jarIds, draft.jarIds) }
    case 'drawOff':
    case 'press': {
      const fromJarIds = some(jarIds, draft.fromJarIds)
      // The vessel was chosen for what usually pours: it must not be one that is poured from.
      const isTaken = draft.toJarId !== undefined && fromJarIds.includes(draft.toJarId)
      return { ...draft, fromJarIds, toJarId: isTaken ? undefined : draft.toJarId }
    }
    case 'marry':
      return { ...draft, jarIds: some(jarIds, draft.jarIds) }
    case 'filter':
      return {
        ...draft,
        medium: proposal.medium ?? draft.medium,
        ...(jarId !== undefined &&
          jarId !== draft.fromJarId && { fromJarId: jarId, toJarId: jarId }),
      }
    case 'bottle':
      return bottled(draft, proposal, context)
    case 'discard':
      return jarId === undefined ? draft : { ...draft, subject: 'jar', jarId, part: 'all' }
    case 'taste': {
      const { bottleLotId } = proposal
      return bottleLotId === undefined ? draft : { ...draft, jarId: undefined, bottleLotId }
    }
    default:
      return draft
  }
}

const some = (proposed: readonly string[], usual: readonly string[]): readonly string[] =>
  proposed.length > 0 ? proposed : usual

function bottled(
  draft: BottlingDraft,
  { jarIds, bottleSizeMl, count }: Proposal,
  { jars }: LogContext,
): BottlingDraft {
  const fromJarId = jarIds[0] ?? draft.fromJarId
  const from = jars.find(({ jar }) => jar.id === fromJarId)
  const sizeMl = bottleSizeMl ?? draft.bottleSizeMl
  const full = from && sizeMl !== undefined ? fullBottles(freeMl(from), sizeMl) : draft.count
  // No more than planned, and no more than there is.
  const planned = count === undefined || full === undefined ? full : Math.min(count, full)
  return { ...draft, fromJarId, bottleSizeMl: sizeMl, count: planned }
}
