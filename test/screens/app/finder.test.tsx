import { screen, waitFor, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { rankFindings, type Finding } from '../../../renderer/app/finder/rank-findings.ts'
import { showApp } from '../show.tsx'

describe('the finder', () => {
  it('opens with Ctrl+K and leads to what is typed, by keyboard alone', async () => {
    const { user } = showApp('/today')
    await screen.findByRole('heading', { level: 1 })
    await user.keyboard('{Control>}k{/Control}')
    await user.type(await screen.findByRole('searchbox'), 'fruit cal')
    await screen.findByRole('menuitem', { name: /Fruit calendar/ })
    await user.keyboard('{Enter}')
    await waitFor(() => expect(window.location.hash).toBe('#/season/fruit'))
    expect(screen.queryByRole('dialog')).toBeNull()
  })

  it('opens the settings, and says so when nothing is called that', async () => {
    const { user } = showApp('/today')
    await user.click(await screen.findByRole('button', { name: 'Find' }))
    const box = await screen.findByRole('searchbox')
    await user.type(box, 'zzz')
    await screen.findByText(/Nothing is called that/)
    await user.clear(box)
    await user.type(box, 'settings')
    await user.click(await screen.findByRole('menuitem', { name: /Settings/ }))
    expect(await screen.findByRole('dialog', { name: 'Settings of this cellar' })).toBeTruthy()
  })

  it('lists its keys, and leaves a sheet that is open alone', async () => {
    const { user } = showApp('/today')
    await screen.findByRole('heading', { level: 1 })
    await user.keyboard('{Control>}/{/Control}')
    const keys = await screen.findByRole('dialog', { name: 'Keys' })
    expect(within(keys).getByText('Ctrl+K')).toBeTruthy()
    await user.keyboard('{Control>}k{/Control}')
    expect(screen.getByRole('dialog', { name: 'Keys' })).toBeTruthy()
    expect(screen.queryByRole('searchbox')).toBeNull()
  })
})

describe('what is found', () => {
  const named = (kind: Finding['kind'], name: string, also?: string): Finding => ({
    id: `${kind}:${name}`,
    kind,
    name,
    also,
  })
  const names = (typed: string, findings: readonly Finding[]) =>
    rankFindings(findings, typed, 10).map(({ name }) => name)

  it('begins with names that begin so, then with words that do, then with what holds them', () => {
    const findings = [
      named('fruit', 'Black cherry'),
      named('lot', 'Blackcherry old'),
      named('batch', 'Wild', 'cherry'),
      named('jar', 'Cherry jar'),
    ]
    expect(names('cherry', findings)).toEqual([
      'Cherry jar',
      'Black cherry',
      'Wild',
      'Blackcherry old',
    ])
  })

  it('needs every word, and neither case nor accents', () => {
    const findings = [named('fruit', 'Śliwka węgierka'), named('fruit', 'Śliwka mirabelka')]
    expect(names('WEGIER sli', findings)).toEqual(['Śliwka węgierka'])
    expect(names('(.*', findings)).toEqual([])
  })

  it('begins with screens and actions while nothing is typed', () => {
    const findings = [named('batch', 'Sloe'), named('action', 'Settings'), named('screen', 'Today')]
    expect(names(' ', findings)).toEqual(['Settings', 'Today'])
  })
})
