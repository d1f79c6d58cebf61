/** Puts the theme on the page; `system`, or not yet known, follows the machine. */
import { useEffect } from 'react'
import type { Settings } from '../../../shared/channels.ts'

export function useTheme(theme: Settings['theme'] = 'system'): void {
  useEffect(() => {
    const root = document.documentElement
    if (theme === 'system') delete root.dataset['theme']
    else root.dataset['theme'] = theme
  }, [theme])
}
