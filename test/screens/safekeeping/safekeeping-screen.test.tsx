import { screen, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { matterOf } from '../../../shared/matter.ts'
import { cellar } from '../cellar-fixture.ts'
import { showApp as show } from '../show.tsx'
import type { Answers } from '../fake-bridge.ts'
import { backupState, noBackups } from './backups-fixture.ts'
import { verdictOn } from '../../../renderer/screens/safekeeping/balance-rows.ts'

const showApp = (path: string, answers: Answers = {}) =>
  show(path, { 'backups.state': backupState(), 'backups.list': noBackups, ...answers })

const sound = {
  integrity: 'ok',
  moveCount: 41,
  lotsDiffering: [],
  bottleLotsDiffering: [],
  refusedMoves: [],
}

const balance = cellar['cellar.balance']
if (typeof balance !== 'object') throw new Error('the fixture has no balance')

describe('SafekeepingScreen', () => {
  it('says where the book is and that it adds up', async () => {
    showApp('/safekeeping')
    expect(await screen.findByText('/home/maker/cellar.ratafia')).toBeTruthy()
    expect(
      await screen.findByText(/The book adds up: of 3.50.kg that came in, 0.g is missing/),
    ).toBeTruthy()
    const row = screen.getByRole('row', { name: /In jars/ })
    expect(
      within(row)
        .getAllByRole('cell')
        .map(({ textContent }) => textContent),
    ).toEqual(['0.600', '2.000', '0.500', '0.000', '0.000', '0.000', '3.100'])
  })

  it('says so when it does not add up', async () => {
    showApp('/safekeeping', {
      'cellar.balance': { ...balance, missing: matterOf({ sugarG: 12 }) },
    })
    expect(await screen.findByText(/does not add up.*12.g is missing/)).toBeTruthy()
  })

  it('checks the book when asked, and tells what it found', async () => {
    const { bridge, user } = showApp('/safekeeping', { 'cellar.check': sound })
    await user.click(await screen.findByRole('button', { name: 'Check the book' }))
    expect(await screen.findByText(/The book is sound: 41 moves/)).toBeTruthy()
    bridge.answer({
      'cellar.check': { ...sound, integrity: 'page 7 is lost', lotsDiffering: ['a'] },
    })
    await user.click(screen.getByRole('button', { name: 'Check the book' }))
    expect(await screen.findByText(/The file is damaged: page 7 is lost/)).toBeTruthy()
    expect(screen.getByText(/Rebuild them/)).toBeTruthy()
  })

  it('rebuilds the lists when asked, and holds them against the moves', async () => {
    const { bridge, user } = showApp('/safekeeping', {
      'cellar.rebuild': {},
      'cellar.check': sound,
    })
    await user.click(await screen.findByRole('button', { name: 'Rebuild the lists' }))
    expect(await screen.findByText('The lists were made anew from the moves.')).toBeTruthy()
    expect(await screen.findByText(/The book is sound: 41 moves/)).toBeTruthy()
    expect(bridge.requests('cellar.rebuild')).toHaveLength(1)
  })
})

describe('verdictOn', () => {
  it('takes the trace that rounding leaves for balanced, and a microgram a kilogram not', () => {
    const missing = (sugarG: number) => verdictOn({ ...balance, missing: matterOf({ sugarG }) })
    expect(missing(2e-7).isBalanced).toBe(true)
    expect(missing(-4e-6).isBalanced).toBe(false)
  })
})
