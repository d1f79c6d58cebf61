import { screen } from '@testing-library/react'
import { useState } from 'react'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { ErrorBoundary } from '../../../renderer/app/error-boundary.tsx'
import { showPart } from '../show.tsx'

beforeEach(() => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
})
afterEach(() => {
  vi.restoreAllMocks()
})

function Broken(): never {
  throw new Error('this screen breaks')
}

function Window() {
  const [path, setPath] = useState('/broken')
  return (
    <>
      <button type="button" onClick={() => setPath('/sound')}>
        Elsewhere
      </button>
      <ErrorBoundary resetKey={path}>
        {path === '/broken' ? <Broken /> : <p>A sound screen</p>}
      </ErrorBoundary>
    </>
  )
}

describe('ErrorBoundary', () => {
  it('says that the screen stopped, and lets another be opened', async () => {
    const { user } = showPart(<Window />)
    expect(screen.getByText(/This screen stopped working/)).toBeTruthy()
    expect(screen.getByRole('button', { name: 'Open again' })).toBeTruthy()
    await user.click(screen.getByRole('button', { name: 'Elsewhere' }))
    expect(screen.getByText('A sound screen')).toBeTruthy()
  })
})
