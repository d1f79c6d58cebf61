import { screen, within } from '@testing-library/react'
import { expect, it } from 'vitest'
import type { PantryLot } from '../../../../shared/schemas/cellar.ts'
import { spiritLot } from '../../cellar-fixture.ts'
import { showApp } from '../../show.tsx'
import { batchAnswers } from '../batch-page-fixture.ts'

it('begins the next form from what the last move left, however slowly the book tells it', async () => {
  let told: (lots: PantryLot[]) => void = () => undefined
  const slow = new Promise<PantryLot[]>((tell) => (told = tell))
  const { user, bridge } = showApp('/batches/damson', {
    ...batchAnswers,
    'pantry.list': [],
    'moves.record': () => {
      bridge.answer({ 'pantry.list': () => slow })
      return { groupId: 'g', moveIds: ['m'], warnings: [] }
    },
  })
  await screen.findByRole('heading', { name: 'Hedge damson', level: 1 })
  const log = within(screen.getByRole('region', { name: 'Log a move' }))
  await user.click(await log.findByRole('button', { name: 'Stir' }))
  await user.click(await log.findByRole('button', { name: 'Record' }))
  await screen.findByText(/^Recorded/)

  // The pantry on the screen is still the empty one from before.
  await user.click(log.getByRole('button', { name: 'Pour spirit' }))
  expect(log.queryByRole('form')).toBeNull()
  told([spiritLot()])
  const form = within(await log.findByRole('form', { name: 'Pour spirit' }))
  expect(form.queryByText('Bought on the way')).toBeNull()
  await user.type(form.getByRole('textbox', { name: /^How much/ }), '500')
  expect(await log.findByRole('img')).toBeTruthy()
})

it('keeps what is being written while the book is read again', async () => {
  const { user, bridge } = showApp('/batches/damson', batchAnswers)
  await screen.findByRole('heading', { name: 'Hedge damson', level: 1 })
  const log = within(screen.getByRole('region', { name: 'Log a move' }))
  await user.click(await log.findByRole('button', { name: 'Pour spirit' }))
  await user.type(await log.findByRole('textbox', { name: /^How much/ }), '50')
  bridge.answer({ 'pantry.list': () => new Promise(() => undefined) })
  bridge.bookChanged()
  const field = log.getByRole('textbox', { name: /^How much/ }) as HTMLInputElement
  await user.type(field, '0')
  expect(field.value).toBe('500')
})
