import { screen, waitFor, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { stops } from '../../../renderer/app/tour/stops.ts'
import { status } from '../cellar-fixture.ts'
import { showApp } from '../show.tsx'

const demo = { 'cellar.status': status({ isDemo: true, hasDemo: true }) }

const card = () => within(screen.getByRole('complementary', { name: 'A walk round' }))

describe('the walk round the demo', () => {
  it('leads from screen to screen, and takes the focus along', async () => {
    const { user } = showApp('/fruits', demo)
    await user.click(await screen.findByRole('button', { name: 'Show me round' }))
    for (const { path } of stops) {
      await waitFor(() => expect(window.location.hash).toBe(`#${path}`))
      expect(document.activeElement).toBe(card().getByRole('heading', { level: 2 }))
      await user.click(card().getByRole('button', { name: /^(Next|Done)$/ }))
    }
    expect(screen.queryByRole('complementary', { name: 'A walk round' })).toBeNull()
  })

  it('goes back, and is left at any stop', async () => {
    const { user } = showApp('/fruits', demo)
    await user.click(await screen.findByRole('button', { name: 'Show me round' }))
    await user.click(card().getByRole('button', { name: 'Next' }))
    await user.click(card().getByRole('button', { name: 'Back' }))
    await waitFor(() => expect(window.location.hash).toBe(`#${stops[0].path}`))
    await user.click(card().getByRole('button', { name: 'Leave the walk' }))
    expect(screen.queryByRole('complementary', { name: 'A walk round' })).toBeNull()
  })
})
