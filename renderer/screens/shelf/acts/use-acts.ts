/** The act whose dialog is open, what was done last, and taking it back. */
import { useEffect, useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { newId } from '../../../app/new-id.ts'
import { useWrite } from '../../../app/queries.ts'
import { useMoveWords } from '../../../parts/moves/use-move-words.ts'
import type { Move } from '../../../../shared/schemas/moves.ts'
import type { Act } from './act.ts'

export interface Acts {
  readonly open: Act | undefined
  begin: (act: Act) => void
  leave: () => void
  /** `groupId` is what the book calls them together: an undo takes back these and no others. */
  recorded: (moves: readonly Move[], groupId: string) => void
  /** What was recorded or taken back last. */
  readonly told: string | undefined
  /** Absent where there is nothing to take back just now. */
  readonly undo: (() => void) | undefined
  readonly undoError: Error | null
}

export function useActs(): Acts {
  const t = useWords()
  const moveWords = useMoveWords()
  const write = useWrite('moves.undo')
  const [open, setOpen] = useState<Act>()
  const [told, setTold] = useState<{ words: string; groupId?: string }>()

  function together(moves: readonly Move[]): string {
    const [first, ...others] = moves
    if (!first) return ''
    const what = moveWords(first, moves)
    return others.length === 0 ? what : t('shelf.told.andMore', { what, count: others.length })
  }

  function recorded(moves: readonly Move[], groupId: string) {
    setTold({ words: t('shelf.told.recorded', { what: together(moves) }), groupId })
    setOpen(undefined)
  }

  const groupId = told?.groupId
  const undo =
    groupId === undefined
      ? undefined
      : () => {
          if (write.isPending) return
          write.mutate(
            { key: newId(), groupId },
            {
              onSuccess: ({ struck }) =>
                setTold({
                  words:
                    struck.length === 0
                      ? t('shelf.told.undoneNothing')
                      : t('shelf.told.undone', { what: together(struck.map(({ move }) => move)) }),
                }),
            },
          )
        }

  useEffect(() => {
    if (!undo) return undefined
    const onKeyDown = (event: KeyboardEvent) => {
      const isUndo =
        (event.ctrlKey || event.metaKey) && !event.shiftKey && event.key.toLowerCase() === 'z'
      if (!isUndo || isBusyElsewhere(event)) return
      event.preventDefault()
      undo()
    }
    window.addEventListener('keydown', onKeyDown)
    return () => window.removeEventListener('keydown', onKeyDown)
  })

  return {
    open,
    begin: setOpen,
    leave: () => setOpen(undefined),
    recorded,
    told: told?.words,
    undo,
    undoError: write.error,
  }
}

/** True while somebody types, or a dialog is open. */
function isBusyElsewhere({ target, defaultPrevented }: KeyboardEvent): boolean {
  if (defaultPrevented || !(target instanceof Element)) return true
  return (
    target.closest('input, select, textarea, [contenteditable], [role=dialog], [role=menu]') !==
    null
  )
}
