import { screen } from '@testing-library/react'
import { describe, expect, it, vi } from 'vitest'
import { Button } from '../../../renderer/parts/button/button.tsx'
import { showPart } from '../show.tsx'

describe('Button', () => {
  it('does its work once pressed, by mouse or key', async () => {
    const work = vi.fn<() => void>()
    const { user } = showPart(<Button onPress={work}>Pour</Button>)
    await user.click(screen.getByRole('button', { name: 'Pour' }))
    await user.keyboard('{Enter}')
    expect(work).toHaveBeenCalledTimes(2)
  })

  it('keeps the focus and does nothing more while it is busy', async () => {
    const work = vi.fn<() => void>()
    const submit = vi.fn<(event: { preventDefault: () => void }) => void>((event) =>
      event.preventDefault(),
    )
    const { user } = showPart(
      <form onSubmit={submit}>
        <Button type="submit" isBusy onPress={work}>
          Pour
        </Button>
      </form>,
    )
    await user.click(screen.getByRole('button', { name: 'Pour' }))
    expect(document.activeElement).toBe(screen.getByRole('button', { name: 'Pour' }))
    expect(work).not.toHaveBeenCalled()
    expect(submit).not.toHaveBeenCalled()
  })
})
