import { screen, waitFor, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import * as z from 'zod'
import { HistoryDialog } from '../../../renderer/parts/amending/history-dialog.tsx'
import { fieldChanges, moveFields } from '../../../renderer/parts/amending/move-fields.ts'
import { Move, type RecordedMove } from '../../../shared/schemas/moves.ts'
import { jar, spiritLot, summary } from '../cellar-fixture.ts'
import type { Answers } from '../fake-bridge.ts'
import { showPart } from '../show.tsx'

const pour = (changed: object = {}): Move => ({
  at: '2026-09-10T08:00:00Z',
  kind: 'pourSpirit',
  batchId: 'damson',
  jarId: 'north',
  lotId: 'spirit',
  volumeMl: 500,
  ...changed,
})

describe('fieldChanges', () => {
  it('names each field that reads otherwise, wherever it stands, and no other', () => {
    const read = (brix: number, temperatureC: number): Move => ({
      at: '2026-09-10T08:00:00Z',
      kind: 'read',
      batchId: 'damson',
      jarId: 'north',
      reading: { instrument: 'refractometer', brix, temperatureC },
    })
    expect(fieldChanges(read(20, 18), read(21.5, 18))).toEqual([
      { path: 'reading.brix', field: 'brix', axis: undefined, before: 20, after: 21.5 },
    ])
    expect(fieldChanges(pour(), pour())).toEqual([])
    const changes = fieldChanges(pour(), pour({ volumeMl: 450, note: 'A weak one' }))
    expect(changes.map(({ field }) => field)).toEqual(['note', 'volumeMl'])
  })

  it('tells the scores of a taste by their axes', () => {
    const taste = (fruit: number): Move => ({
      at: '2026-09-10T08:00:00Z',
      kind: 'taste',
      batchId: 'damson',
      jarId: 'north',
      scores: { fruit, clarity: 3 },
    })
    expect(fieldChanges(taste(5), taste(7))).toMatchObject([
      { field: 'scores', axis: 'fruit', before: 5, after: 7 },
    ])
  })

  it('knows every field that a move can have', () => {
    const leaves = new Set<string>()
    const visit = (schema: unknown, name: string): void => {
      const { properties, anyOf, oneOf, items } = schema as Record<string, object | undefined>
      for (const [below, each] of Object.entries(properties ?? {})) {
        // Told as one.
        if (['goods', 'tissue', 'fruitIds', 'scores'].includes(below)) leaves.add(below)
        else visit(each, below)
      }
      for (const each of Object.values(anyOf ?? oneOf ?? {})) visit(each, name)
      if (items) visit(items, name)
      if (!properties && !anyOf && !oneOf && !items) leaves.add(name)
    }
    visit(z.toJSONSchema(Move), '')
    leaves.delete('kind')
    expect(leaves.size).toBeGreaterThan(30)
    expect([...leaves].filter((leaf) => !(leaf in moveFields))).toEqual([])
    expect(Object.keys(moveFields).filter((field) => !leaves.has(field))).toEqual([])
  })
})

describe('HistoryDialog', () => {
  const recorded: RecordedMove = {
    id: 'pour',
    seq: 3,
    groupId: 'g',
    recordedAt: '2026-09-10T09:00:00Z',
    version: 4,
    move: pour({ volumeMl: 400 }),
  }
  const answers: Answers = {
    'jars.list': [{ jar: jar() }],
    'pantry.list': [spiritLot()],
    'bottles.list': [],
    'batches.list': [summary()],
    'moves.history': [
      { version: 1, recordedAt: '2026-09-10T09:00:00Z', move: pour() },
      {
        version: 2,
        recordedAt: '2026-09-11T09:00:00Z',
        move: pour({ volumeMl: 450, note: 'Measured again' }),
      },
      { version: 3, recordedAt: '2026-09-12T09:00:00Z', move: null },
      { version: 4, recordedAt: '2026-09-13T09:00:00Z', move: pour({ volumeMl: 400 }) },
    ],
    'moves.previewAmend': {
      refusals: [],
      steps: [],
      warnings: [],
      breaks: [],
      differences: { batches: [], jars: [], bottles: [], opened: [], pantry: [] },
    },
    'moves.previewTasks': [],
    'moves.amend': { groupId: 'g', moveIds: ['pour'], warnings: [], changes: [] },
  }

  it('tells each version, the newest first, with what it changed field by field', async () => {
    showPart(<HistoryDialog recorded={recorded} onClose={() => undefined} />, { answers })
    const list = await screen.findByRole('list', { name: 'Every version of this move' })
    const versions = within(list)
      .getAllByRole('listitem')
      .map(({ textContent }) => textContent ?? '')
    expect(versions).toHaveLength(4)
    expect(versions[0]).toMatch(/^Version 4recorded 13 Sept? 2026.*the newest/)
    expect(versions[1]).toMatch(/Struck/)
    expect(versions[2]).toMatch(/Noteleft empty → Measured again/)
    expect(versions[2]).toMatch(/Volume500\sml → 450\sml/)
    expect(versions[3]).not.toMatch(/→/)
  })

  it('puts an older version back, by the newest one it was seen with', async () => {
    const { bridge, user } = showPart(
      <HistoryDialog recorded={recorded} onClose={() => undefined} />,
      { answers },
    )
    await screen.findByRole('list', { name: 'Every version of this move' })
    expect(screen.queryByRole('button', { name: 'Put version 4 back…' })).toBeNull()
    expect(screen.queryByRole('button', { name: 'Put version 3 back…' })).toBeNull()
    await user.click(screen.getByRole('button', { name: 'Put version 2 back…' }))
    await screen.findByRole('dialog', { name: 'Put this back?' })
    const go = screen.getByRole('button', { name: 'Put it back' })
    await waitFor(() => expect(go).toHaveProperty('disabled', false))
    await user.click(go)
    await waitFor(() =>
      expect(bridge.requests('moves.amend')).toMatchObject([
        { moveId: 'pour', fromVersion: 4, move: { volumeMl: 450, note: 'Measured again' } },
      ]),
    )
  })
})
