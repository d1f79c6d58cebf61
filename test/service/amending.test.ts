/** What changing or striking a move of the past comes to, told before it is done. */
import { describe, expect, it } from 'vitest'
import type { Move } from '../../shared/schemas/moves.ts'
import { trial, withPantry, type Trial } from './with-service.ts'

const day = (date: string) => `${date}T09:00:00Z`
const damson = { batchId: 'damson', jarId: 'north' } as const
const charge: Move = {
  ...damson,
  at: day('2026-09-01'),
  kind: 'charge',
  lotId: 'damsons',
  massG: 1500,
  cut: 'pricked',
}
const pour = (volumeMl: number): Move => ({
  ...damson,
  at: day('2026-09-02'),
  kind: 'pourSpirit',
  lotId: 'spirit',
  volumeMl,
})
const water: Move = { ...damson, at: day('2026-09-02'), kind: 'pourWater', volumeMl: 600 }
const drawOff: Move = {
  at: day('2026-10-20'),
  kind: 'drawOff',
  batchId: 'damson',
  fromJarId: 'north',
  toJarId: 'demijohn',
}
const bottle: Move = {
  at: day('2026-10-21'),
  kind: 'bottle',
  batchId: 'damson',
  fromJarId: 'demijohn',
  bottleLotId: 'lot',
  bottleSizeMl: 200,
  count: 3,
}

/** A batch drawn off and partly bottled; the ids of its moves by kind. */
async function bottled() {
  const t = await trial()
  await withPantry(t)
  await t.ask('moves.record', { key: 'k', moves: [charge, water, pour(900), drawOff, bottle] })
  const { steps } = await t.ask('batches.page', { batchId: 'damson' })
  const idOf = (kind: Move['kind']) =>
    steps.find(({ recorded }) => recorded.move.kind === kind)!.recorded.id
  return { t, idOf }
}

const strengthNow = async (t: Trial) => {
  const lots = await t.ask('bottles.list', {})
  return lots.find(({ id }) => id === 'lot')!.liquid!.strengthPctVol
}

describe('moves.previewAmend', () => {
  it('tells each batch, jar, bottle lot and pantry lot as it is and as it would be', async () => {
    const { t, idOf } = await bottled()
    const asked = { moveId: idOf('pourSpirit'), move: pour(800) }
    const { differences, breaks } = await t.ask('moves.previewAmend', asked)
    expect(breaks).toEqual([])
    expect(differences.pantry).toHaveLength(1)
    expect(differences.pantry[0]).toMatchObject({ lotId: 'spirit' })
    expect(differences.pantry[0]?.before?.volumeMl).toBeCloseTo(1100, 6)
    expect(differences.pantry[0]?.after?.volumeMl).toBeCloseTo(1200, 6)
    const [lot] = differences.bottles
    expect(lot).toMatchObject({ bottleLotId: 'lot', name: 'Damson', before: { count: 3 } })
    const was = await strengthNow(t)
    expect(lot?.before?.liquid?.strengthPctVol).toBeCloseTo(was, 9)
    expect(lot?.after?.liquid?.strengthPctVol).toBeLessThan(was - 2)
    expect(differences.jars.map(({ jarId }) => jarId).toSorted()).toContain('demijohn')
    expect(differences.batches.map(({ batchId }) => batchId)).toEqual(['damson'])

    // What was told is what comes.
    await t.ask('moves.amend', { key: 'a', fromVersion: 1, ...asked })
    expect(await strengthNow(t)).toBeCloseTo(lot!.after!.liquid!.strengthPctVol, 9)
    t.service.close()
  })

  it('tells nothing of what stays as it is: a note differs in no number', async () => {
    const { t, idOf } = await bottled()
    const move = { ...pour(900), note: 'The last of the can' }
    const { differences } = await t.ask('moves.previewAmend', {
      moveId: idOf('pourSpirit'),
      move,
    })
    expect(Object.values(differences).flat()).toEqual([])
    t.service.close()
  })

  it('tells nothing while the move itself cannot be', async () => {
    const { t, idOf } = await bottled()
    const asked = { moveId: idOf('pourSpirit'), move: pour(9000) }
    const { differences, refusals } = await t.ask('moves.previewAmend', asked)
    expect(refusals).toMatchObject([{ index: 0, refusal: { code: 'notEnough' } }])
    expect(Object.values(differences).flat()).toEqual([])
    t.service.close()
  })

  it('names what would be impossible, and shows the cellar with that struck as well', async () => {
    const { t, idOf } = await bottled()
    const strike = { moveId: idOf('drawOff'), move: null }
    const { breaks } = await t.ask('moves.previewAmend', strike)
    expect(breaks).toMatchObject([
      { recorded: { move: { kind: 'bottle' } }, refusal: { code: 'nothingThere' } },
    ])
    const alsoStrike = [{ moveId: idOf('bottle'), fromVersion: 1 }]
    const again = await t.ask('moves.previewAmend', { ...strike, alsoStrike })
    expect(again.breaks).toEqual([])
    expect(again.differences.bottles).toMatchObject([
      { bottleLotId: 'lot', before: { count: 3 }, after: null },
    ])
    const volumes = again.differences.jars.map(({ jarId, before, after }) => [
      jarId,
      before ? Math.round(before.volumeMl) : null,
      after ? Math.round(after.volumeMl) : null,
    ])
    // All that is in the vessels now, and what the three bottles held, is back on the fruit.
    expect(volumes).toEqual([
      ['north', null, 1762],
      ['demijohn', 1162, null],
    ])
    t.service.close()
  })
})

describe('moves.amend', () => {
  it('strikes the moves that would be impossible together with it, and gives all back at once', async () => {
    const { t, idOf } = await bottled()
    const before = await t.ask('batches.page', { batchId: 'damson' })
    const strike = { key: 'a', moveId: idOf('drawOff'), fromVersion: 1, move: null }
    expect((await t.refusal('moves.amend', strike)).code).toBe('breaksLater')
    const alsoStrike = [{ moveId: idOf('bottle'), fromVersion: 1 }]
    const { groupId, changes } = await t.ask('moves.amend', { ...strike, alsoStrike })
    expect(changes.map((change) => change.before?.kind)).toEqual(['drawOff', 'bottle'])
    expect((await t.ask('batches.page', { batchId: 'damson' })).steps).toHaveLength(3)
    await t.ask('moves.undo', { key: 'u', groupId })
    const after = await t.ask('batches.page', { batchId: 'damson' })
    expect(after.summary).toEqual(before.summary)
    t.service.close()
  })

  it('refuses to strike a later move that was changed since it was looked at', async () => {
    const { t, idOf } = await bottled()
    const bottleId = idOf('bottle')
    const noted = { ...bottle, note: 'Corked by hand' }
    await t.ask('moves.amend', { key: 'n', moveId: bottleId, fromVersion: 1, move: noted })
    const refused = await t.refusal('moves.amend', {
      key: 'a',
      moveId: idOf('drawOff'),
      fromVersion: 1,
      move: null,
      alsoStrike: [{ moveId: bottleId, fromVersion: 1 }],
    })
    expect(refused.code).toBe('staleEdit')
    t.service.close()
  })
})

describe('moves.previewTasks', () => {
  it('tells the tasks that come up and fall away', async () => {
    const { t, idOf } = await bottled()
    const changes = await t.ask('moves.previewTasks', {
      moveId: idOf('drawOff'),
      move: null,
      alsoStrike: [{ moveId: idOf('bottle'), fromVersion: 1 }],
    })
    const kindsOf = (side: 'before' | 'after') => changes.flatMap((one) => one[side]?.kind ?? [])
    expect(kindsOf('after')).toContain('drawOff')
    expect(kindsOf('before')).not.toContain('drawOff')
    const schedule = await t.ask('schedule.list', { batchId: 'damson' })
    for (const { taskId, before } of changes)
      expect(before ?? undefined).toEqual(schedule.find(({ id }) => id === taskId))
    t.service.close()
  })
})
