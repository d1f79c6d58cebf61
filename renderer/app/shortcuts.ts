/** The keys that work on every screen, in one table: what is listed is what works. */
import { useEffect, useEffectEvent } from 'react'

interface Key {
  readonly key: string
  readonly withShift?: boolean
}

export const shortcuts = [
  { id: 'find', keys: [{ key: 'k' }], isForPage: false },
  { id: 'undo', keys: [{ key: 'z' }], isForPage: true },
  { id: 'redo', keys: [{ key: 'z', withShift: true }, { key: 'y' }], isForPage: true },
  { id: 'settings', keys: [{ key: ',' }], isForPage: false },
  { id: 'keys', keys: [{ key: '/' }], isForPage: false },
] as const satisfies readonly {
  id: string
  keys: readonly Key[]
  /** A field that is typed in has these for itself, and so has an open menu. */
  isForPage: boolean
}[]
export type ShortcutId = (typeof shortcuts)[number]['id']

const isMac = /mac/i.test(navigator.platform)

/** Held with the letter; the platform's own way of writing it. */
export const keyText = ({ key, withShift }: Key): string =>
  isMac
    ? `${withShift ? '⇧' : ''}⌘${key.toUpperCase()}`
    : `Ctrl+${withShift ? 'Shift+' : ''}${key.toUpperCase()}`

/** A sheet over the page has the keyboard to itself. */
const isSheetOpen = () => document.querySelector('[role=dialog],[role=alertdialog]') !== null

/** Where the key has a meaning of its own: a text being written, a menu. */
const hasKeysItself = ({ target }: KeyboardEvent): boolean =>
  target instanceof Element &&
  target.closest(
    'input:not([type=checkbox], [type=radio], [type=range], [type=button]), textarea, [contenteditable], [role=menu]',
  ) !== null

export function useShortcuts(act: (id: ShortcutId) => void): void {
  const onKey = useEffectEvent((event: KeyboardEvent) => {
    const isHeld = isMac ? event.metaKey && !event.ctrlKey : event.ctrlKey && !event.metaKey
    if (!isHeld || event.altKey || event.isComposing || event.defaultPrevented) return
    const shortcut = shortcuts.find(({ keys }) =>
      keys.some(
        ({ key, withShift = false }: Key) =>
          key === event.key.toLowerCase() && withShift === event.shiftKey,
      ),
    )
    if (!shortcut || (shortcut.isForPage && hasKeysItself(event))) return
    event.preventDefault()
    if (!event.repeat && !isSheetOpen()) act(shortcut.id)
  })
  useEffect(() => {
    const listener = (event: KeyboardEvent) => onKey(event)
    window.addEventListener('keydown', listener)
    return () => window.removeEventListener('keydown', listener)
  }, [])
}
