import { screen, waitFor } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import type { Move } from '../../../../shared/schemas/moves.ts'
import { refused, type Answers } from '../../fake-bridge.ts'
import { useWrite } from '../../../../renderer/app/queries.ts'
import { UndoNotice } from '../../../../renderer/app/undo/undo-notice.tsx'
import { useUndo } from '../../../../renderer/app/undo/use-undo.ts'
import { showApp, showPart } from '../../show.tsx'

const pour = (volumeMl: number): Move => ({
  at: '2026-11-25T12:00:00Z',
  kind: 'pourWater',
  batchId: 'damson',
  jarId: 'north',
  volumeMl,
})

const drawOff: Move = {
  at: '2026-11-25T12:00:00Z',
  kind: 'drawOff',
  batchId: 'damson',
  fromJarId: 'north',
  toJarId: 'south',
  volumeMl: 700,
}

/** A ledger of groups that can be taken back once each, as the service has it. */
function ledger(): Answers {
  let serial = 0
  const groups = new Map<string, Move | null>()
  const made = (move: Move | null) => {
    const groupId = `g${(serial += 1)}`
    groups.set(groupId, move)
    return groupId
  }
  return {
    'moves.record': ({ moves }) => ({ groupId: made(moves[0]!), moveIds: ['m'], warnings: [] }),
    'moves.undo': ({ groupId }) => {
      const move = groups.get(groupId ?? '')
      if (move === undefined) return refused('nothingToUndo')
      groups.delete(groupId ?? '')
      const isTaking = !groupId?.startsWith('u')
      const undoId = isTaking ? `u${groupId}` : made(move)
      if (isTaking) groups.set(undoId, move)
      const [before, after] = isTaking ? [move, null] : [null, move]
      return { groupId: undoId, undoes: groupId!, changes: [{ moveId: 'm', before, after }] }
    },
  }
}

function Recorder() {
  const record = useWrite('moves.record')
  return (
    <>
      {[100, 200, 300].map((ml) => (
        <button
          key={ml}
          onClick={() => record.mutate({ key: String(ml), moves: [pour(ml)] })}
        >{`pour ${ml}`}</button>
      ))}
      <UndoNotice undoing={useUndo()} />
    </>
  )
}

const told = () => screen.getByRole('status', { name: 'What was done last' }).textContent

describe('the undo notice', () => {
  it('goes back and forth through all that the window did', async () => {
    const { user, bridge } = showPart(<Recorder />, { answers: ledger() })
    for (const ml of [100, 200, 300]) {
      await user.click(screen.getByRole('button', { name: `pour ${ml}` }))
      await waitFor(() => expect(told()).toMatch(new RegExp(`^Recorded: Poured ${ml}`)))
    }
    await user.click(screen.getByRole('button', { name: 'Undo' }))
    await waitFor(() => expect(told()).toMatch(/^Taken back: Poured 300/))
    // The hand stays on the button, which now leads the other way.
    expect(document.activeElement?.textContent).toBe('Redo')
    await user.click(screen.getByRole('button', { name: 'Redo' }))
    await waitFor(() => expect(told()).toMatch(/^Put back: Poured 300/))
    expect(bridge.requests('moves.undo').map(({ groupId }) => groupId)).toEqual(['g3', 'ug3'])
    await user.click(screen.getByRole('button', { name: 'Undo' }))
    await waitFor(() => expect(told()).toMatch(/^Taken back: Poured 300/))
    await user.click(screen.getByRole('button', { name: 'Hide' }))
    expect(told()).toBe('')
  })

  it('says why a group cannot be taken back, with what rests on it, and keeps it for later', async () => {
    const answers = ledger()
    const { user, bridge } = showPart(<Recorder />, {
      answers: {
        ...answers,
        'moves.undo': () =>
          refused('breaksLater', {
            breaks: [
              {
                recorded: {
                  id: 'late',
                  seq: 9,
                  groupId: 'x',
                  recordedAt: '2026-11-25T12:00:00Z',
                  version: 1,
                  move: drawOff,
                },
                refusal: {
                  code: 'notEnough',
                  place: 'jar:north',
                  unit: 'ml',
                  asked: 700,
                  available: 100,
                },
              },
            ],
          }),
      },
    })
    await user.click(screen.getByRole('button', { name: 'pour 100' }))
    await user.click(await screen.findByRole('button', { name: 'Undo' }))
    expect((await screen.findByRole('alert')).textContent).toMatch(/later moves impossible/)
    expect(screen.getByText(/Drew.*700/)).toBeTruthy()
    bridge.answer(answers)
    await user.click(screen.getByRole('button', { name: 'pour 200' }))
    await waitFor(() => expect(told()).toMatch(/^Recorded: Poured 200/))
    expect(screen.queryByRole('alert')).toBeNull()
    await user.click(screen.getByRole('button', { name: 'Undo' }))
    await waitFor(() => expect(told()).toMatch(/^Taken back: Poured 200/))
    await user.click(screen.getByRole('button', { name: 'pour 300' }))
    await waitFor(() => expect(told()).toMatch(/^Recorded: Poured 300/))
  })
})

describe('a group that was taken back elsewhere', () => {
  it('is let go with a word, and what was done before it comes next', async () => {
    const answers = ledger()
    const { user, bridge } = showPart(<Recorder />, { answers })
    for (const ml of [100, 200]) {
      await user.click(screen.getByRole('button', { name: `pour ${ml}` }))
      await waitFor(() => expect(told()).toMatch(new RegExp(`^Recorded: Poured ${ml}`)))
    }
    bridge.answer({ 'moves.undo': () => refused('nothingToUndo') })
    await user.click(screen.getByRole('button', { name: 'Undo' }))
    expect((await screen.findByRole('alert')).textContent).toBe('There is nothing left to undo.')
    expect(told()).toBe('')
    expect(bridge.requests('moves.undo')).toMatchObject([{ groupId: 'g2' }])
  })
})

describe('the keys', () => {
  it('take back and put back on any screen, and leave an open sheet alone', async () => {
    const { user, bridge } = showApp('/batches/damson', ledger())
    await screen.findByRole('heading', { level: 1 })
    await user.keyboard('{Control>}z{/Control}')
    expect(bridge.requests('moves.undo')).toEqual([])
    await user.keyboard('{Control>}/{/Control}')
    const keys = await screen.findByRole('dialog', { name: 'Keys' })
    expect(keys.textContent).toContain('Ctrl+Shift+Z')
    expect(keys.textContent).toContain('Take back what was done last')
  })
})
