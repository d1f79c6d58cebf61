/**
 * What this window did to the ledger, in order, and what it took back: groups of moves by the
 * book's name for each. Taking a group back makes one of its own, and taking that back is the redo.
 */
import type { Answer } from '../../../shared/channels.ts'
import type { Move } from '../../../shared/schemas/moves.ts'

export interface UndoStack {
  /** Newest last. */
  readonly done: readonly string[]
  readonly undone: readonly string[]
  /** What was done last, and the group that takes it back. */
  readonly told: Told | undefined
}

export interface Told {
  readonly act: 'recorded' | 'changed' | 'struck' | 'takenBack' | 'putBack'
  readonly moves: readonly Move[]
  readonly groupId: string
}

export type UndoEvent =
  | { readonly kind: 'wrote'; readonly groupId: string; readonly told: Told | undefined }
  | { readonly kind: 'tookBack'; readonly answer: Answer<'moves.undo'> }
  /** The book knows the group no longer, or it was taken back elsewhere. */
  | { readonly kind: 'gone'; readonly groupId: string }
  | { readonly kind: 'dismissed' }
  /** Another book was opened. */
  | { readonly kind: 'begunAnew' }

export const emptyStack: UndoStack = { done: [], undone: [], told: undefined }

export function afterEvent(stack: UndoStack, event: UndoEvent): UndoStack {
  switch (event.kind) {
    case 'wrote':
      return { done: [...stack.done, event.groupId], undone: [], told: event.told }
    case 'tookBack':
      return afterTakingBack(stack, event.answer)
    case 'gone':
      return { ...without(stack, event.groupId), told: undefined }
    case 'dismissed':
      return { ...stack, told: undefined }
    case 'begunAnew':
      return emptyStack
  }
}

const without = ({ done, undone }: UndoStack, groupId: string) => ({
  done: done.filter((id) => id !== groupId),
  undone: undone.filter((id) => id !== groupId),
})

function afterTakingBack(stack: UndoStack, answer: Answer<'moves.undo'>): UndoStack {
  const { groupId, undoes, changes } = answer
  const isRedo = stack.undone.includes(undoes)
  const { done, undone } = without(stack, undoes)
  return {
    done: isRedo ? [...done, groupId] : done,
    undone: isRedo ? undone : [...undone, groupId],
    told: { ...toldOf(changes), groupId },
  }
}

/** By what became of the moves: taking a strike back puts a move there again. */
export function toldOf(changes: Answer<'moves.undo'>['changes']): Pick<Told, 'act' | 'moves'> {
  const after = changes.flatMap((change) => change.after ?? [])
  const before = changes.flatMap((change) => change.before ?? [])
  if (after.length === 0) return { act: 'takenBack', moves: before }
  return { act: before.length === 0 ? 'putBack' : 'changed', moves: after }
}
