import { describe, expect, it } from 'vitest'
import * as z from 'zod'
import { eventOfWrite } from '../../../../renderer/app/undo/event-of-write.ts'
import { channels, type Channel } from '../../../../shared/channels.ts'

/** As much of a request and an answer as any of these channels has. */
const asked = { moves: [] }
const answer = { groupId: 'g', undoes: 'u', changes: [] }
const eventOf = (channel: Channel) => eventOfWrite(channel, asked as never, answer as never)

const makingGroups = (Object.keys(channels) as Channel[]).filter((name) => {
  const { effect, reply } = channels[name]
  return effect === 'write' && reply instanceof z.ZodObject && 'groupId' in reply.shape
})

describe('eventOfWrite', () => {
  it('hears of every group of moves that a channel makes, so that all of them can be taken back', () => {
    expect(makingGroups).toEqual(
      expect.arrayContaining(['moves.amend', 'moves.record', 'moves.undo', 'purchases.tick']),
    )
    expect(makingGroups.filter((name) => eventOf(name) === undefined)).toEqual([])
  })

  it('begins anew with another book', () => {
    const opening = [
      'cellar.openDemo',
      'cellar.openOwn',
      'backups.restore',
      'exports.import',
    ] as const
    expect(opening.map((name) => eventOf(name)?.kind)).toEqual(opening.map(() => 'begunAnew'))
  })

  it('says nothing of a tick that the ledger keeps no account of, nor of what moves nothing', () => {
    const list = {} as never
    const tick = { key: 'k', lineKey: 'corks', isTicked: true }
    expect(eventOfWrite('purchases.tick', tick, { list, groupId: null })).toBeUndefined()
    expect(eventOf('jars.change')).toBeUndefined()
  })
})
