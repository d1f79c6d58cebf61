/** The list of all moves: order, filters, parts of it, and putting struck ones back. */
import { describe, expect, it } from 'vitest'
import type { MoveFilter } from '../../shared/schemas/all-moves.ts'
import type { Move } from '../../shared/schemas/moves.ts'
import { trial, withPantry, type Trial } from './with-service.ts'

const at = (day: string) => `${day}T09:00:00Z`
const charge: Move = {
  at: at('2026-09-01'),
  kind: 'charge',
  batchId: 'damson',
  jarId: 'north',
  lotId: 'damsons',
  massG: 1000,
  cut: 'pricked',
  note: 'From the Hędge by the mill',
}
const spirit = (volumeMl: number): Move => ({
  at: at('2026-09-02'),
  kind: 'pourSpirit',
  batchId: 'damson',
  jarId: 'north',
  lotId: 'spirit',
  volumeMl,
})
/** Late on the last day of the year in UTC: the next year already, farther east. */
const old: Move = {
  at: '2019-12-31T23:30:00Z',
  kind: 'buy',
  lotId: 'old',
  goods: { kind: 'fruit', fruitId: 'sloe' },
  massG: 500,
}
const discard: Move = { at: at('2026-09-03'), kind: 'discard', from: { lotId: 'old' } }

async function filled() {
  const t = await trial({ timeZone: 'Europe/Warsaw' })
  await withPantry(t)
  await t.ask('moves.record', { key: 'k1', moves: [charge, spirit(700)] })
  await t.ask('moves.record', { key: 'k2', moves: [old] })
  await t.ask('moves.record', { key: 'k3', moves: [discard] })
  return t
}

const list = (t: Trial, filter: MoveFilter = {}, from = 0, count = 200) =>
  t.ask('moves.list', { filter, from, count })
const kinds = async (t: Trial, filter: MoveFilter) =>
  (await list(t, filter)).rows.map(({ recorded }) => recorded.move.kind)

describe('moves.list', () => {
  it('has every move of the book, the newest first, those of one instant as recorded', async () => {
    const t = await filled()
    const { total, rows, years } = await list(t)
    expect(total).toBe(7)
    expect(rows.map(({ recorded }) => recorded.move.kind)).toEqual([
      'discard',
      'pourSpirit',
      'charge',
      'buy',
      'buy',
      'buy',
      'buy',
    ])
    expect(rows.at(-1)?.recorded.move.at).toBe(old.at)
    expect(rows[1]?.batchIds).toEqual(['damson'])
    expect(years).toEqual([2026, 2025, 2024, 2023, 2022, 2021, 2020])
    t.service.close()
  })

  it('sends no more than is asked for, from where it is asked', async () => {
    const t = await filled()
    const whole = await list(t)
    const parts = await Promise.all([0, 3, 6].map((from) => list(t, {}, from, 3)))
    expect(parts.map(({ rows }) => rows.length)).toEqual([3, 3, 1])
    expect(parts.flatMap(({ rows }) => rows)).toEqual(whole.rows)
    expect((await t.refusal('moves.list', { filter: {}, from: 0, count: 201 })).code).toBe(
      'badInput',
    )
    t.service.close()
  })

  it('keeps to a batch, a vessel, a kind, and a year of the maker’s calendar', async () => {
    const t = await filled()
    expect(await kinds(t, { batchId: 'damson' })).toEqual(['pourSpirit', 'charge'])
    expect(await kinds(t, { jarId: 'north', kind: 'charge' })).toEqual(['charge'])
    expect(await kinds(t, { jarId: 'south' })).toEqual([])
    expect(await kinds(t, { year: 2020 })).toEqual(['buy'])
    expect(await kinds(t, { year: 2019 })).toEqual([])
    t.service.close()
  })

  it('finds words of notes and of names, without case and accents, in either language', async () => {
    const t = await filled()
    expect(await kinds(t, { text: 'hedge MILL' })).toEqual(['charge'])
    expect(await kinds(t, { text: 'hedge north' })).toEqual(['charge'])
    expect(await kinds(t, { text: 'sloe' })).toEqual(['discard', 'buy'])
    expect(await kinds(t, { text: 'tarnin' })).toEqual(['discard', 'buy'])
    expect(await kinds(t, { text: 'hedge sloe' })).toEqual([])
    t.service.close()
  })

  it('is up to date after a write, and says what was done last', async () => {
    const t = await filled()
    expect((await list(t)).total).toBe(7)
    const { groupId, moveIds } = await t.ask('moves.record', { key: 'k4', moves: [spirit(50)] })
    const { total, last } = await list(t)
    expect(total).toBe(8)
    expect(last).toEqual({ groupId, moveIds })
    t.service.close()
  })

  it('has the struck ones apart, as they read last, and each can be put back', async () => {
    const t = await filled()
    const [row] = (await list(t, { kind: 'discard' })).rows
    const moveId = row!.recorded.id
    const noted = { ...discard, note: 'Gone soft' }
    await t.ask('moves.amend', { key: 'a1', moveId, fromVersion: 1, move: noted })
    await t.ask('moves.amend', { key: 'a2', moveId, fromVersion: 2, move: null })
    expect(await kinds(t, { kind: 'discard' })).toEqual([])
    const [gone] = (await list(t, { isStruck: true })).rows
    expect(gone?.recorded).toMatchObject({ id: moveId, version: 3, move: noted })

    const again = { key: 'a3', moveId, fromVersion: 3, move: null }
    expect((await t.refusal('moves.amend', again)).code).toBe('notFound')
    const preview = await t.ask('moves.previewAmend', { moveId, move: noted })
    expect(preview.differences.pantry).toMatchObject([{ lotId: 'old' }])
    const back = await t.ask('moves.amend', { ...again, move: noted })
    expect(back.changes).toMatchObject([{ before: null, after: noted }])
    expect(await kinds(t, { kind: 'discard' })).toEqual(['discard'])
    expect((await list(t, { isStruck: true })).rows).toEqual([])
    t.service.close()
  })

  it('refuses to put back what cannot be any more, and what was changed since', async () => {
    const t = await filled()
    const [row] = (await list(t, { kind: 'pourSpirit' })).rows
    const moveId = row!.recorded.id
    await t.ask('moves.amend', { key: 'a1', moveId, fromVersion: 1, move: null })
    await t.ask('moves.record', { key: 'k5', moves: [spirit(1900)] })
    const back = { key: 'a2', moveId, fromVersion: 2, move: spirit(700) }
    // The later pour took the spirit.
    expect((await t.refusal('moves.amend', back)).code).toBe('breaksLater')
    expect((await t.refusal('moves.amend', { ...back, fromVersion: 1 })).code).toBe('staleEdit')
    t.service.close()
  })
})
