/** Which form of the log is open. */
import { useEffect, useRef, useState } from 'react'
import type { LoggedKind } from '../../parts/moves/kinds.ts'
import type { OpenForm, Prefill } from './log/log-panel.tsx'

export function useLog() {
  const [open, setOpen] = useState<OpenForm>()
  const [serial, setSerial] = useState(0)
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

  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (isBusyElsewhere(event)) return
      const isPlain = !event.ctrlKey && !event.metaKey && !event.altKey
      if (!isPlain || event.key.toLowerCase() !== 'l') return
      goToPicker()
      event.preventDefault()
    }
    window.addEventListener('keydown', onKeyDown)
    return () => window.removeEventListener('keydown', onKeyDown)
  })

  return { open, openForm, focusRef }
}

/** True while somebody types, or a dialog is open. */
function isBusyElsewhere({ target, defaultPrevented }: KeyboardEvent): boolean {
  if (defaultPrevented || !(target instanceof Element)) return true
  return (
    target.closest('input, select, textarea, [contenteditable], [role=dialog], [role=menu]') !==
    null
  )
}
