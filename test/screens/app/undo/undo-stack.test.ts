import { describe, expect, it } from 'vitest'
import {
  afterEvent,
  emptyStack,
  toldOf,
  type UndoEvent,
} from '../../../../renderer/app/undo/undo-stack.ts'
import type { Move } from '../../../../shared/schemas/moves.ts'

const buy: Move = {
  at: '2026-11-25T12:00:00Z',
  kind: 'discard',
  from: { lotId: 'sloes' },
}
const change = { moveId: 'm', before: buy, after: null }
const wrote = (groupId: string): UndoEvent => ({ kind: 'wrote', groupId, told: undefined })
const tookBack = (undoes: string, groupId: string): UndoEvent => ({
  kind: 'tookBack',
  answer: { undoes, groupId, changes: [change] },
})
const after = (...events: UndoEvent[]) => {
  const { done, undone } = events.reduce(afterEvent, emptyStack)
  return { done, undone }
}

describe('afterEvent', () => {
  it('moves the last group to what was taken back, and back, under the name of the newest undo', () => {
    expect(after(wrote('a'), wrote('b'), tookBack('b', 'u1'))).toEqual({
      done: ['a'],
      undone: ['u1'],
    })
    expect(after(wrote('a'), wrote('b'), tookBack('b', 'u1'), tookBack('u1', 'u2'))).toEqual({
      done: ['a', 'u2'],
      undone: [],
    })
  })

  it('forgets what was taken back once something new is written', () => {
    expect(after(wrote('a'), tookBack('a', 'u1'), wrote('c'))).toEqual({ done: ['c'], undone: [] })
  })

  it('can put back what another window had written', () => {
    expect(after(wrote('a'), tookBack('theirs', 'u1'))).toEqual({ done: ['a'], undone: ['u1'] })
  })

  it('lets a group go that the book no longer takes back, and all of them with another book', () => {
    expect(after(wrote('a'), wrote('b'), { kind: 'gone', groupId: 'b' }).done).toEqual(['a'])
    expect(after(wrote('a'), tookBack('a', 'u1'), { kind: 'begunAnew' })).toEqual({
      done: [],
      undone: [],
    })
  })
})

describe('toldOf', () => {
  it('tells what went, what came, and what reads otherwise', () => {
    expect(toldOf([change])).toEqual({ act: 'takenBack', moves: [buy] })
    expect(toldOf([{ moveId: 'm', before: null, after: buy }]).act).toBe('putBack')
    expect(toldOf([{ moveId: 'm', before: buy, after: buy }]).act).toBe('changed')
  })
})
