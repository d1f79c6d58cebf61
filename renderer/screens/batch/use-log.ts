/** Which form of the log is open, what was told last, and taking the last moves back. */
import { useEffect, useRef, useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'
import type { Move } from '../../../shared/schemas/moves.ts'
import type { LoggedKind } from './log/kinds.ts'
import type { OpenForm, Prefill } from './log/log-panel.tsx'
import { useMoveWords } from '../../parts/moves/use-move-words.ts'

export function useLog(batchId: string) {
  const t = useWords()
  const moveWords = useMoveWords()
  const undo = useWrite('moves.undo')
  const [open, setOpen] = useState<OpenForm>()
  const [serial, setSerial] = useState(0)
  const [told, setTold] = useState<{ words: string; groupId?: string }>()
  /** The first kind of the picker: where the next move is begun. */
  const focusRef = useRef<HTMLButtonElement>(null)

  function goToPicker() {
    focusRef.current?.focus()
  }

  function openForm(kind: LoggedKind | undefined, prefill?: Prefill) {
    setSerial((before) => before + 1)
    setOpen(kind && { kind, prefill, serial: serial + 1 })
    if (kind === undefined) goToPicker()
  }

  function together(moves: readonly Move[]): string {
    // A purchase on the way is not what was meant to be done.
    const meant = moves.filter(({ kind }) => kind !== 'buy')
    const [first, ...others] = meant.length > 0 ? meant : moves
    if (!first) return ''
    const what = moveWords(first, moves)
    return others.length === 0 ? what : t('batch.log.andMore', { what, count: others.length })
  }

  function recorded(moves: readonly Move[], groupId: string) {
    setTold({ words: t('batch.log.recorded', { what: together(moves) }), groupId })
    openForm(undefined)
  }

  function undoLast() {
    if (undo.isPending) return
    undo.mutate(
      // What was just recorded may name no batch, as bottles drawn do: it is taken back by its group.
      { key: newId(), ...(told?.groupId === undefined ? { batchId } : { groupId: told.groupId }) },
      {
        onSuccess: ({ struck }) =>
          setTold({
            words:
              struck.length === 0
                ? t('batch.log.undoneNothing')
                : t('batch.log.undone', { what: together(struck.map(({ move }) => move)) }),
          }),
      },
    )
  }

  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (isBusyElsewhere(event)) return
      const isUndo = (event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z'
      const isPlain = !event.ctrlKey && !event.metaKey && !event.altKey
      if (isUndo && !event.shiftKey) undoLast()
      else if (isPlain && event.key.toLowerCase() === 'l') goToPicker()
      else return
      event.preventDefault()
    }
    window.addEventListener('keydown', onKeyDown)
    return () => window.removeEventListener('keydown', onKeyDown)
  })

  return { open, openForm, told, recorded, undoLast, undoError: undo.error, focusRef }
}

/** True while somebody types, or a dialog is open. */
function isBusyElsewhere({ target, defaultPrevented }: KeyboardEvent): boolean {
  if (defaultPrevented || !(target instanceof Element)) return true
  return (
    target.closest('input, select, textarea, [contenteditable], [role=dialog], [role=menu]') !==
    null
  )
}
