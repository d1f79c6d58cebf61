import { screen, waitFor, within } from '@testing-library/react'
import { describe, expect, it, vi } from 'vitest'
import { AmendDialog } from '../../../renderer/parts/amending/amend-dialog.tsx'
import { StrikeDialog } from '../../../renderer/parts/amending/strike-dialog.tsx'
import type { Answer } from '../../../shared/channels.ts'
import type { RecordedMove } from '../../../shared/schemas/moves.ts'
import { contents, jar, liquid, spiritLot, summary } from '../cellar-fixture.ts'
import type { Answers } from '../fake-bridge.ts'
import { showPart } from '../show.tsx'
import { spiritTask } from '../task-fixture.ts'

type Preview = Answer<'moves.previewAmend'>

const pour: RecordedMove = {
  id: 'pour',
  seq: 3,
  groupId: 'g0',
  recordedAt: '2026-09-10T08:00:00Z',
  version: 2,
  move: {
    at: '2026-09-10T08:00:00Z',
    kind: 'pourSpirit',
    batchId: 'damson',
    jarId: 'north',
    lotId: 'spirit',
    volumeMl: 500,
  },
}
const later: RecordedMove = {
  ...pour,
  id: 'later',
  seq: 4,
  version: 1,
  move: { at: '2026-09-20T08:00:00Z', kind: 'stir', batchId: 'damson', jarId: 'north' },
}
const numbers = (strengthPctVol: number, sugarGPerL: number, volumeMl: number) => ({
  strengthPctVol,
  sugarGPerL,
  volumeMl,
})
const differences: Preview['differences'] = {
  batches: [
    {
      batchId: 'damson',
      before: { stage: 'steeping', liquid: numbers(32.4, 180, 1500) },
      after: { stage: 'layered', liquid: null },
    },
  ],
  jars: [{ jarId: 'north', before: numbers(32.4, 180, 1500), after: numbers(30.1, 180, 1420) }],
  bottles: [
    {
      bottleLotId: 'lot',
      name: 'Damson 2025',
      before: { count: 3, liquid: numbers(28, 210, 500) },
      after: { count: 2, liquid: numbers(28, 210, 500) },
    },
  ],
  opened: [],
  pantry: [
    {
      lotId: 'spirit',
      goods: spiritLot().goods,
      before: { massG: 800, volumeMl: 1000 },
      after: { massG: 880, volumeMl: 1100 },
    },
  ],
}
const preview = (changed: Partial<Preview> = {}): Preview => ({
  refusals: [],
  steps: [],
  warnings: [],
  breaks: [],
  differences,
  ...changed,
})
const answers = (changed: Answers = {}): Answers => ({
  'jars.list': [{ jar: jar(), contents: contents({ liquid: liquid() }) }],
  'pantry.list': [spiritLot()],
  'bottles.list': [],
  'batches.list': [summary()],
  'moves.previewAmend': preview(),
  'moves.previewTasks': [],
  'moves.amend': { groupId: 'g', moveIds: ['pour'], warnings: [], changes: [] },
  ...changed,
})

const row = async (name: RegExp) => (await screen.findByRole('row', { name })).textContent

describe('StrikeDialog', () => {
  it('shows each number before and after, with its unit, and only then lets it be struck', async () => {
    let answer: (seen: Preview) => void = () => undefined
    const waiting = new Promise<Preview>((resolve) => {
      answer = resolve
    })
    const onClose = vi.fn<() => void>()
    const { user, bridge } = showPart(<StrikeDialog recorded={pour} onClose={onClose} />, {
      answers: answers({ 'moves.previewAmend': () => waiting }),
    })
    const go = screen.getByRole('button', { name: 'Strike it' })
    expect(screen.getByText('Reckoning what would follow…')).toBeTruthy()
    expect(go).toHaveProperty('disabled', true)
    answer(preview())
    expect(await row(/^Hedge damson/)).toMatch(/steeping → layered.*32\.4\s% vol → none/)
    expect(await row(/^North jar/)).toMatch(
      /32\.4\s% vol → 30\.1\s% vol180\sg\/L1\.50\sL → 1\.42\sL/,
    )
    expect(await row(/^Damson 2025/)).toMatch(/3 bottles → 2 bottles/)
    expect(await row(/^Spirit/)).toMatch(/1\.00\sL → 1\.10\sL/)
    await waitFor(() => expect(go).toHaveProperty('disabled', false))
    await user.click(go)
    await waitFor(() => expect(onClose).toHaveBeenCalledOnce())
    expect(bridge.requests('moves.amend')).toMatchObject([
      { moveId: 'pour', fromVersion: 2, move: null, alsoStrike: [] },
    ])
  })

  it('strikes what would be impossible as well, after another look', async () => {
    const breaks = [
      { recorded: later, refusal: { code: 'nothingThere' as const, place: 'jar:north' } },
    ]
    const { user, bridge } = showPart(<StrikeDialog recorded={pour} onClose={() => undefined} />, {
      answers: answers({
        'moves.previewAmend': ({ alsoStrike }) => preview(alsoStrike ? {} : { breaks }),
      }),
    })
    await screen.findByText(/would make 1 later move impossible/)
    expect(screen.getByRole('button', { name: 'Strike it' })).toHaveProperty('disabled', true)
    await user.click(screen.getByRole('button', { name: 'Strike it too' }))
    await screen.findByText('1 later move is struck with it:')
    expect(screen.getByText('Stirred North jar').tagName).toBe('S')
    await user.click(screen.getByRole('button', { name: 'Leave them standing' }))
    await screen.findByText(/would make 1 later move impossible/)
    await user.click(screen.getByRole('button', { name: 'Strike it too' }))
    await waitFor(() =>
      expect(screen.getByRole('button', { name: 'Strike it' })).toHaveProperty('disabled', false),
    )
    await user.click(screen.getByRole('button', { name: 'Strike it' }))
    await waitFor(() =>
      expect(bridge.requests('moves.amend')).toMatchObject([
        { alsoStrike: [{ moveId: 'later', fromVersion: 1 }] },
      ]),
    )
  })

  it('tells the tasks that follow', async () => {
    const task = spiritTask()
    showPart(<StrikeDialog recorded={pour} onClose={() => undefined} />, {
      answers: answers({
        'moves.previewTasks': [
          { taskId: 'a', before: null, after: task },
          { taskId: 'b', before: task, after: null },
        ],
      }),
    })
    const list = within(await screen.findByRole('region', { name: 'What would differ today' }))
    await list.findByText(/: new, /)
    expect(list.getByText(/: falls away$/)).toBeTruthy()
  })
})

describe('AmendDialog', () => {
  it('keeps what is typed, and is not saved before the answer about just that', async () => {
    const { user, bridge } = showPart(<AmendDialog recorded={pour} onClose={() => undefined} />, {
      answers: answers(),
    })
    const save = await screen.findByRole('button', { name: 'Amend' })
    await waitFor(() => expect(save).toHaveProperty('disabled', false))
    const amount = screen.getByLabelText(/^How much/)
    await user.clear(amount)
    await user.type(amount, '450')
    expect(save).toHaveProperty('disabled', true)
    await waitFor(() => expect(save).toHaveProperty('disabled', false))
    expect(bridge.requests('moves.previewAmend').at(-1)?.move).toMatchObject({ volumeMl: 450 })
    expect(amount).toHaveProperty('value', '450')
    await user.click(save)
    await waitFor(() =>
      expect(bridge.requests('moves.amend')).toMatchObject([
        { moveId: 'pour', fromVersion: 2, move: { volumeMl: 450 } },
      ]),
    )
  })

  it('asks one question at a time while the service reckons, and the newest next', async () => {
    const waiting: ((seen: Preview) => void)[] = []
    const { user, bridge } = showPart(<AmendDialog recorded={pour} onClose={() => undefined} />, {
      answers: answers({
        'moves.previewAmend': () =>
          new Promise<Preview>((resolve) => {
            waiting.push(resolve)
          }),
      }),
    })
    const asked = () => bridge.requests('moves.previewAmend')
    await waitFor(() => expect(asked()).toHaveLength(1))
    const amount = await screen.findByLabelText(/^How much/)
    for (const ml of ['410', '420', '430']) {
      await user.clear(amount)
      await user.type(amount, ml)
      await new Promise((resolve) => setTimeout(resolve, 200))
    }
    expect(asked()).toHaveLength(1)
    waiting[0]!(preview())
    await waitFor(() => expect(asked()).toHaveLength(2))
    expect(asked()[1]?.move).toMatchObject({ volumeMl: 430 })
    const save = screen.getByRole('button', { name: 'Amend' })
    expect(save).toHaveProperty('disabled', true)
    waiting[1]!(preview())
    await waitFor(() => expect(save).toHaveProperty('disabled', false))
  })

  it('offers the vessels of the batch it concerns, or of all where it concerns none', async () => {
    const discard: RecordedMove = {
      ...pour,
      move: {
        at: '2026-09-12T08:00:00Z',
        kind: 'discard',
        from: { jarId: 'north', part: 'pulp' },
      },
    }
    const standing = (id: string, name: string, batchId: string) => ({
      jar: jar({ id, name }),
      contents: contents({ jarId: id, batchId }),
    })
    const jars = {
      'jars.list': [
        standing('north', 'North jar', 'damson'),
        standing('south', 'South jar', 'damson'),
        standing('crock', 'Old crock', 'quince'),
      ],
    }
    const shown = showPart(
      <AmendDialog recorded={discard} ofBatchId="damson" onClose={() => undefined} />,
      { answers: answers(jars) },
    )
    expect(await screen.findByRole('radio', { name: /North jar/ })).toHaveProperty('checked', true)
    expect(screen.getByRole('radio', { name: /South jar/ })).toBeTruthy()
    expect(screen.queryByRole('radio', { name: /Old crock/ })).toBeNull()
    shown.unmount()
    showPart(<AmendDialog recorded={discard} onClose={() => undefined} />, {
      answers: answers(jars),
    })
    expect(await screen.findByRole('radio', { name: /Old crock/ })).toBeTruthy()
  })

  it('writes no version that reads as the one before', async () => {
    const onClose = vi.fn<() => void>()
    const { user, bridge } = showPart(<AmendDialog recorded={pour} onClose={onClose} />, {
      answers: answers(),
    })
    const save = await screen.findByRole('button', { name: 'Amend' })
    await waitFor(() => expect(save).toHaveProperty('disabled', false))
    await user.click(save)
    expect(onClose).toHaveBeenCalledOnce()
    expect(bridge.requests('moves.amend')).toEqual([])
  })

  it('tells why the move itself cannot be, and keeps the button shut', async () => {
    const refusal = { code: 'notEnough' as const, place: 'lot:spirit', asked: 500, available: 100 }
    showPart(<AmendDialog recorded={pour} onClose={() => undefined} />, {
      answers: answers({
        'moves.previewAmend': preview({
          refusals: [{ index: 0, refusal: { ...refusal, unit: 'ml', nearest: 100 } }],
        }),
      }),
    })
    expect((await screen.findAllByText(/100\sml/)).length).toBeGreaterThan(0)
    expect(screen.getByRole('button', { name: 'Amend' })).toHaveProperty('disabled', true)
    expect(screen.queryByRole('region', { name: 'What would differ today' })).toBeNull()
  })
})
