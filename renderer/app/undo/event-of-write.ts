/** What a write means for the undo stack: a new group, one taken back, or another book. */
import type { Answer, Channel, Request } from '../../../shared/channels.ts'
import { toldOf, type UndoEvent } from './undo-stack.ts'

type EventOf = {
  readonly [C in Channel]?: (asked: Request<C>, answer: Answer<C>) => UndoEvent | undefined
}

const begunAnew = (): UndoEvent => ({ kind: 'begunAnew' })

const events: EventOf = {
  'moves.record': ({ moves }, { groupId }) => ({
    kind: 'wrote',
    groupId,
    told: { act: 'recorded', moves, groupId },
  }),
  'moves.amend': (_asked, { groupId, changes }) => {
    const { act, moves } = toldOf(changes)
    return {
      kind: 'wrote',
      groupId,
      told: { act: act === 'takenBack' ? 'struck' : act, moves, groupId },
    }
  },
  'sheets.bringIn': (_asked, { groupId, changes }) => ({
    kind: 'wrote',
    groupId,
    told: { ...toldOf(changes), act: 'recorded', groupId },
  }),
  'moves.undo': (_asked, answer) => ({ kind: 'tookBack', answer }),
  // The list itself tells what was ticked.
  'purchases.tick': (_asked, { groupId }) =>
    groupId === null ? undefined : { kind: 'wrote', groupId, told: undefined },
  'cellar.openDemo': begunAnew,
  'cellar.openOwn': begunAnew,
  'cellar.removeDemo': begunAnew,
  'backups.restore': begunAnew,
  'exports.import': begunAnew,
  'rescue.accept': begunAnew,
  'rescue.beginAnew': begunAnew,
}

export const eventOfWrite = <C extends Channel>(
  channel: C,
  asked: Request<C>,
  answer: Answer<C>,
): UndoEvent | undefined => events[channel]?.(asked, answer)
