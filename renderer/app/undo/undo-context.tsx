/** Keeps the window's undo stack, which every write that makes a group of moves adds to. */
import { createContext, use, useReducer, type Dispatch, type ReactNode } from 'react'
import { afterEvent, emptyStack, type UndoEvent, type UndoStack } from './undo-stack.ts'

const StackContext = createContext<UndoStack>(emptyStack)
const EventContext = createContext<Dispatch<UndoEvent> | null>(null)

export const useUndoStack = (): UndoStack => use(StackContext)

export function useUndoEvents(): Dispatch<UndoEvent> {
  const dispatch = use(EventContext)
  if (!dispatch) throw new Error('useUndoEvents is used outside UndoProvider')
  return dispatch
}

export function UndoProvider({ children }: { children: ReactNode }) {
  const [stack, dispatch] = useReducer(afterEvent, emptyStack)
  return (
    <EventContext value={dispatch}>
      <StackContext value={stack}>{children}</StackContext>
    </EventContext>
  )
}
