/** The keys that work on every screen, in one table: what is listed is what works. */
import { useEffect, useEffectEvent } from 'react'

export const shortcuts = [
  { id: 'find', key: 'k' },
  { id: 'settings', key: ',' },
  { id: 'keys', key: '/' },
] as const
export type ShortcutId = (typeof shortcuts)[number]['id']

const isMac = /mac/i.test(navigator.platform)

/** Held with the letter; the platform's own way of writing it. */
export const keyText = (key: string): string =>
  isMac ? `⌘${key.toUpperCase()}` : `Ctrl+${key.toUpperCase()}`

/** The value of `aria-keyshortcuts` for the same key. */
export const ariaKeys = (key: string): string =>
  `${isMac ? 'Meta' : 'Control'}+${key.toUpperCase()}`

/** A sheet over the page has the keyboard to itself. */
const isSheetOpen = () => document.querySelector('[role=dialog],[role=alertdialog]') !== null

export function useShortcuts(act: (id: ShortcutId) => void): void {
  const onKey = useEffectEvent((event: KeyboardEvent) => {
    const isHeld = isMac ? event.metaKey && !event.ctrlKey : event.ctrlKey && !event.metaKey
    if (!isHeld || event.altKey || event.shiftKey || event.isComposing) return
    const shortcut = shortcuts.find(({ key }) => key === event.key.toLowerCase())
    if (!shortcut) return
    event.preventDefault()
    if (!event.repeat && !isSheetOpen()) act(shortcut.id)
  })
  useEffect(() => {
    const listener = (event: KeyboardEvent) => onKey(event)
    window.addEventListener('keydown', listener)
    return () => window.removeEventListener('keydown', listener)
  }, [])
}
