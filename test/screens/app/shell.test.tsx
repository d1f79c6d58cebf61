import { screen, waitFor, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { status } from '../cellar-fixture.ts'
import { refused } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'

describe('Shell', () => {
  it('leads to every screen by a word', async () => {
    showApp('/today')
    const navigation = within(await screen.findByRole('navigation', { name: 'Screens' }))
    const links = navigation.getAllByRole('link')
    expect(links.map(({ textContent }) => textContent)).toEqual([
      'Today',
      'Batches',
      'Draft',
      'Marry',
      'Shelf',
      'Season',
      'Bench',
      'Jars & pantry',
      'Fruit',
      'Safekeeping',
    ])
    expect(links[0]?.getAttribute('aria-current')).toBe('page')
  })

  it('tells the demo from one’s own book, and leaves or removes it', async () => {
    const { bridge, user } = showApp('/today', {
      'cellar.status': status({ isDemo: true, hasDemo: true }),
      'cellar.removeDemo': status(),
    })
    expect(await screen.findByText(/Nothing here touches your own book/)).toBeTruthy()
    expect(screen.getByRole('button', { name: 'Back to my cellar' })).toBeTruthy()
    bridge.answer({ 'cellar.status': status() })
    await user.click(screen.getByRole('button', { name: 'Remove the demo' }))
    await waitFor(() => expect(screen.queryByText(/Nothing here touches/)).toBeNull())
    expect(bridge.requests('cellar.removeDemo')).toHaveLength(1)
  })

  it('keeps the theme, and puts it on the page', async () => {
    const { bridge, user } = showApp('/today', { 'cellar.changeSettings': status().settings })
    await user.click(await screen.findByRole('button', { name: 'Settings' }))
    bridge.answer({
      'cellar.status': status({ settings: { ...status().settings, theme: 'dark' } }),
    })
    await user.click(screen.getByRole('radio', { name: 'Night' }))
    expect(bridge.requests('cellar.changeSettings')).toEqual([{ theme: 'dark' }])
    await waitFor(() => expect(document.documentElement.dataset['theme']).toBe('dark'))
  })

  it('says when Ratafia is gone', async () => {
    showApp('/today', { 'cellar.status': () => refused('internal', { lost: true }) })
    expect((await screen.findByRole('alert')).textContent).toContain('Ratafia does not answer')
  })

  it('does not trust an answer that breaks the contract', async () => {
    showApp('/today', { 'cellar.status': { ...status(), host: 'fax' } as never })
    expect((await screen.findByRole('alert')).textContent).toContain('Something went wrong')
  })

  it('says of an unknown path that it leads nowhere', async () => {
    showApp('/nowhere')
    expect(await screen.findByText('No such screen')).toBeTruthy()
  })
})
