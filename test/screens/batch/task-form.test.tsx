import { screen, waitFor, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { spiritTask, task } from '../task-fixture.ts'
import { showApp } from '../show.tsx'
import { batchAnswers } from './batch-page-fixture.ts'

const path = '/batches/damson/do/damson.drawOff.north.1'

describe('a batch’s page opened for a task', () => {
  it('has its form filled in, and is a page again once that is recorded', async () => {
    const { user, bridge } = showApp(path, {
      ...batchAnswers,
      'schedule.task': task(),
      'moves.record': { groupId: 'g', moveIds: ['m'], warnings: [] },
    })
    const form = await screen.findByRole('form', { name: 'Draw off' })
    expect(within(form).getByRole('checkbox', { name: /North jar/ })).toHaveProperty(
      'checked',
      true,
    )
    bridge.answer({ 'schedule.task': null })
    await user.click(within(form).getByRole('button', { name: 'Record' }))
    await waitFor(() => expect(window.location.hash).toBe('#/batches/damson'))
    expect((await screen.findByText(/^Recorded/)).textContent).toContain(
      'Drew everything that pours',
    )
    expect(screen.queryByText('What you came for is done already.')).toBeNull()
    expect(bridge.requests('moves.record')[0]?.moves).toMatchObject([
      { kind: 'drawOff', batchId: 'damson', fromJarId: 'north', toJarId: 'south' },
    ])
  })

  it('brings the proposed amount', async () => {
    const log = { kind: 'pourSpirit' as const, jarIds: ['north'], amount: 640 }
    showApp(path, { ...batchAnswers, 'schedule.task': spiritTask({ batchId: 'damson', log }) })
    const form = await screen.findByRole('form', { name: 'Pour spirit' })
    const amount = within(form).getByRole('textbox', { name: 'How much' })
    expect((amount as HTMLInputElement).value).toBe('640')
  })

  it('goes back to the page when the form is left', async () => {
    const { user } = showApp(path, { ...batchAnswers, 'schedule.task': task() })
    await screen.findByRole('form', { name: 'Draw off' })
    await user.keyboard('{Escape}')
    await waitFor(() => expect(window.location.hash).toBe('#/batches/damson'))
    expect(screen.queryByRole('form')).toBeNull()
  })

  it('says so where the task is done already', async () => {
    showApp(path, { ...batchAnswers, 'schedule.task': null })
    expect(await screen.findByText('What you came for is done already.')).toBeTruthy()
    expect(screen.queryByRole('form')).toBeNull()
  })
})
