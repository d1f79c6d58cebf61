/** What the finder can do besides leading somewhere. */
import { useMemo } from 'react'
import type { Settings } from '../../../shared/channels.ts'
import { useWrite } from '../queries.ts'
import type { ShortcutId } from '../shortcuts.ts'
import { useWords } from '../words/use-words.ts'
import type { Finding } from './rank-findings.ts'

export function useActions(onOpen: (sheet: ShortcutId) => void): readonly Finding[] {
  const t = useWords()
  const { mutate } = useWrite('cellar.changeSettings')
  return useMemo(() => {
    const action = (name: 'settings' | 'day' | 'night' | 'keys', act: () => void): Finding => ({
      id: `action:${name}`,
      kind: 'action',
      name: t(`finder.actions.${name}`),
      act,
    })
    const show = (theme: Settings['theme']) => () => mutate({ theme })
    return [
      action('settings', () => onOpen('settings')),
      action('day', show('light')),
      action('night', show('dark')),
      action('keys', () => onOpen('keys')),
    ]
  }, [t, mutate, onOpen])
}
