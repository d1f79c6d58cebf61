/**
 * The hand that keeps the demo's book: it asks only what a screen could ask, and a refusal ends
 * the demo with its reason, because a demo with a hole would teach the wrong thing.
 */
import type { Answer, Channel, Request } from '../../shared/channels.ts'
import type { JarContents } from '../../shared/schemas/cellar.ts'
import type { Move } from '../../shared/schemas/moves.ts'
import type { Dispatch } from '../service/service.ts'
import { instant } from './days.ts'

export interface CellarHand {
  ask: <C extends Channel>(channel: C, request: Request<C>) => Promise<Answer<C>>
  /** Records moves that belong together; their ids, in order. */
  record: (...moves: readonly Move[]) => Promise<string[]>
  /** Writes a move anew, or strikes it. */
  amend: (moveId: string, move: Move | null) => Promise<void>
  /** Takes back what was recorded last in a batch. */
  undo: (batchId: string) => Promise<void>
  /** What stands in a jar at an instant: a preview of stirring it, which writes nothing. */
  look: (batchId: string, jarId: string, atMs: number) => Promise<JarContents>
}

export function cellarHand(dispatch: Dispatch): CellarHand {
  let requests = 0
  const key = () => `alder-end-${(requests += 1)}`

  const ask: CellarHand['ask'] = async (channel, request) => {
    const reply = await dispatch(channel, request)
    if (!reply.ok) {
      const { code, message, details } = reply.error
      throw new Error(
        `the demo's ${channel} was refused: ${code}: ${message} ${JSON.stringify(details)} ` +
          `asked: ${JSON.stringify(request)}`,
      )
    }
    // The service checked the reply against this channel's schema.
    return reply.value as Answer<typeof channel>
  }

  return {
    ask,
    record: async (...moves) =>
      (await ask('moves.record', { key: key(), moves: [...moves] })).moveIds,
    amend: async (moveId, move) => {
      await ask('moves.amend', { key: key(), moveId, fromVersion: 1, move })
    },
    undo: async (batchId) => {
      await ask('moves.undo', { key: key(), batchId })
    },
    look: async (batchId, jarId, atMs) => {
      const moves: Move[] = [{ kind: 'stir', at: instant(atMs), batchId, jarId }]
      const { steps } = await ask('moves.preview', { moves })
      const contents = steps[0]?.after[0]
      if (!contents) throw new Error(`the demo found nothing in jar ${jarId} of ${batchId}`)
      return contents
    },
  }
}
