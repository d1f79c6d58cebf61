import { screen, waitFor, within } from '@testing-library/react'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { usualSettings as usual } from '../../../renderer/app/settings-context.ts'
import { status } from '../cellar-fixture.ts'
import { showApp } from '../show.tsx'

afterEach(() => vi.unstubAllGlobals())

/** A browser's notices: what was asked, and what was shown. */
function stubNotices(permission: NotificationPermission, answers: NotificationPermission) {
  const shown: { title: string; body: string | undefined; click: () => void }[] = []
  const asked: string[] = []
  class DoubleNotification extends EventTarget {
    static permission = permission
    static requestPermission = async () => {
      asked.push('asked')
      DoubleNotification.permission = answers
      return answers
    }
    constructor(title: string, options: NotificationOptions = {}) {
      super()
      const click = () => void this.dispatchEvent(new Event('click'))
      shown.push({ title, body: options.body, click })
    }
    readonly close = () => {}
  }
  vi.stubGlobal('Notification', DoubleNotification)
  return { shown, asked }
}

const withReminders = (reminders: boolean) => ({
  'cellar.status': status({ settings: { ...usual, language: 'en', reminders } }),
})
const reminder = { count: 5, batchNames: ['Plum', 'Sloe', 'Quince', 'Walnut'] }

async function openSettings(user: ReturnType<typeof showApp>['user']) {
  await user.click(await screen.findByRole('button', { name: 'Settings' }))
  return within(await screen.findByRole('dialog', { name: 'Settings of this cellar' }))
}

describe('notices on the desktop', () => {
  it('are asked for by the press that wishes them, and by nothing else', async () => {
    const { asked } = stubNotices('default', 'granted')
    const settings = { ...usual, reminders: true }
    const { user, bridge } = showApp('/today', {
      ...withReminders(false),
      'cellar.changeSettings': settings,
    })
    const dialog = await openSettings(user)
    expect(asked).toEqual([])
    await user.click(dialog.getByRole('radio', { name: 'On' }))
    await waitFor(() =>
      expect(bridge.requests('cellar.changeSettings')).toEqual([{ reminders: true }]),
    )
    expect(asked).toEqual(['asked'])
  })

  it('are not switched on where the browser says no', async () => {
    stubNotices('default', 'denied')
    const { user, bridge } = showApp('/today', withReminders(false))
    const dialog = await openSettings(user)
    await user.click(dialog.getByRole('radio', { name: 'On' }))
    expect(await dialog.findByText(/does not let this page show notices/)).toBeTruthy()
    expect(bridge.requests('cellar.changeSettings')).toEqual([])
  })

  it('tell once what wants hands, and lead to Today', async () => {
    const { shown } = stubNotices('granted', 'granted')
    showApp('/bench', { ...withReminders(true), 'today.remind': reminder })
    await waitFor(() => expect(shown).toHaveLength(1))
    expect(shown[0]).toMatchObject({
      title: '5 things want your hands',
      body: 'Plum, Sloe, Quince and 1 more',
    })
    shown[0]?.click()
    await waitFor(() => expect(window.location.hash).toBe('#/today'))
  })

  it('do not use the day’s reminder up where they cannot be shown', async () => {
    const { shown, asked } = stubNotices('default', 'granted')
    const { user, bridge } = showApp('/today', { ...withReminders(true), 'today.remind': reminder })
    const dialog = await openSettings(user)
    expect(dialog.getByText('The browser has not been asked yet at this address.')).toBeTruthy()
    expect(bridge.requests('today.remind')).toEqual([])
    expect([shown, asked]).toEqual([[], []])
  })

  it('are not asked for where nobody wishes them', async () => {
    stubNotices('granted', 'granted')
    const { bridge } = showApp('/today', withReminders(false))
    await screen.findByText('2 things want your hands.')
    expect(bridge.requests('today.remind')).toEqual([])
  })
})
