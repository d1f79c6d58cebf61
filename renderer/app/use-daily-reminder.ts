/** In a browser window: asks once an hour whether there is something to remind of, and shows it. */
import { useEffect } from 'react'
import { useLocation } from 'wouter'
import { useBridge } from './bridge-context.tsx'
import { call } from './calls.ts'
import { noticeRight, showNotice } from './notices.ts'
import { useWords } from './words/use-words.ts'

const everyMs = 3_600_000
/** More names than these are no summary. */
const mostNames = 3

export function useDailyReminder(isWished: boolean): void {
  const t = useWords()
  const bridge = useBridge()
  const [, navigate] = useLocation()
  useEffect(() => {
    if (!isWished) return undefined
    async function ask() {
      // Without the right to show it the day's one reminder would be used up for nothing.
      if (noticeRight() !== 'granted') return
      const reminder = await call(bridge, 'today.remind', {}).catch(() => null)
      if (!reminder) return
      const { count, batchNames } = reminder
      const names = batchNames.slice(0, mostNames).join(', ')
      const others = batchNames.length - mostNames
      const body = others > 0 ? t('today.reminders.more', { names, count: others }) : names
      showNotice(t('today.reminders.notice', { count }), body, () => navigate('/today'))
    }
    void ask()
    const timer = setInterval(() => void ask(), everyMs)
    return () => clearInterval(timer)
  }, [isWished, bridge, navigate, t])
}
