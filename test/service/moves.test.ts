import { describe, expect, it } from 'vitest'
import { createService } from '../../main/service/create-service.ts'
import { matterKinds } from '../../shared/matter.ts'
import type { Move } from '../../shared/schemas/moves.ts'
import { trial, withPantry, type Trial } from './with-service.ts'

const charge = (massG: number, jarId = 'north', at = '2026-09-01T09:00:00Z'): Move => ({
  at,
  kind: 'charge',
  batchId: 'damson',
  jarId,
  lotId: 'damsons',
  massG,
  cut: 'pricked',
})
const spirit = (volumeMl: number, at = '2026-09-02T09:00:00Z', jarId = 'north'): Move => ({
  at,
  kind: 'pourSpirit',
  batchId: 'damson',
  jarId,
  lotId: 'spirit',
  volumeMl,
})
const water = (volumeMl: number, at = '2026-09-02T09:00:00Z'): Move => ({
  at,
  kind: 'pourWater',
  batchId: 'damson',
  jarId: 'north',
  volumeMl,
})
const drawOff = (at = '2026-11-10T09:00:00Z'): Move => ({
  at,
  kind: 'drawOff',
  batchId: 'damson',
  fromJarId: 'north',
  toJarId: 'demijohn',
})

async function steeping(): Promise<Trial> {
  const t = await trial()
  await withPantry(t)
  await t.ask('moves.record', { key: 'k1', moves: [charge(1500)] })
  await t.ask('moves.record', { key: 'k2', moves: [water(300), spirit(900)] })
  return t
}

const page = (t: Trial) => t.ask('batches.page', { batchId: 'damson' })

describe('moves.record', () => {
  it('shows strength, sugar and volume of the jar after each move', async () => {
    const t = await steeping()
    const { steps, summary } = await page(t)
    expect(summary.stage).toBe('steeping')
    expect(steps.map((step) => step.recorded.move.kind)).toEqual([
      'charge',
      'pourWater',
      'pourSpirit',
    ])
    const after = steps.at(-1)?.after[0]
    expect(after?.jarId).toBe('north')
    // 900 mL of 96 % into 300 mL of water: 72.9 % vol of 1.18 L, and the fruit's juice beside it.
    expect(after?.liquid?.strengthPctVol).toBeGreaterThan(70)
    expect(after?.liquid?.volumeMl).toBeGreaterThan(1150)
    expect(after?.resting?.strengthPctVol).toBeLessThan(45)
    t.service.close()
  })

  it('writes once however often the same request comes', async () => {
    const t = await steeping()
    const first = await t.ask('moves.record', { key: 'k3', moves: [water(100)] })
    const second = await t.ask('moves.record', { key: 'k3', moves: [water(100)] })
    expect(second.moveIds).toEqual(first.moveIds)
    expect((await page(t)).steps).toHaveLength(4)
    t.service.close()
  })

  it('refuses more than there is, says what is there and the nearest, and writes nothing', async () => {
    const t = await steeping()
    const error = await t.refusal('moves.record', { key: 'k3', moves: [spirit(1500)] })
    expect(error.code).toBe('notEnough')
    expect(error.details).toMatchObject({ place: 'lot:spirit', unit: 'ml', asked: 1500 })
    expect(error.details['available']).toBeCloseTo(1100, 6)
    expect(error.details['nearest']).toBeCloseTo(1100, 6)
    expect((await page(t)).steps).toHaveLength(3)
    t.service.close()
  })

  it('writes all moves of a group or none', async () => {
    const t = await steeping()
    await t.refusal('moves.record', { key: 'k3', moves: [water(100), spirit(5000)] })
    expect((await page(t)).steps).toHaveLength(3)
    t.service.close()
  })

  it('refuses a jar that holds another batch', async () => {
    const t = await steeping()
    const sloe = {
      id: 'sloe',
      name: 'Sloe',
      colour: '#223355',
      note: '',
      openedAt: '2026-09-05T00:00:00Z',
    }
    await t.ask('batches.open', sloe)
    const move = { ...water(100), batchId: 'sloe' }
    const error = await t.refusal('moves.record', { key: 'k3', moves: [move] })
    expect(error).toMatchObject({ code: 'jarTaken', details: { batchId: 'damson' } })
    t.service.close()
  })

  it('refuses the future, and matter that came only later', async () => {
    const t = await steeping()
    const future = await t.refusal('moves.record', {
      key: 'a',
      moves: [water(10, '2027-01-01T00:00:00Z')],
    })
    expect(future.code).toBe('inTheFuture')
    const early = await t.refusal('moves.record', {
      key: 'b',
      moves: [spirit(10, '2026-08-01T00:00:00Z')],
    })
    expect(early).toMatchObject({
      code: 'beforeItExisted',
      details: { from: '2026-09-01T08:00:00.000Z' },
    })
    t.service.close()
  })

  it('refuses bad input by field, an unknown jar and an unknown batch', async () => {
    const t = await steeping()
    const bad = await t.refusal('moves.record', { key: 'a', moves: [water(-5)] })
    expect(bad.code).toBe('badInput')
    expect(JSON.stringify(bad.details)).toContain('volumeMl')
    const jar = await t.refusal('moves.record', {
      key: 'b',
      moves: [{ ...water(5), jarId: 'attic' } as Move],
    })
    expect(jar).toMatchObject({ code: 'notFound', details: { what: 'jar', id: 'attic' } })
    const batch = await t.refusal('moves.record', {
      key: 'c',
      moves: [{ ...water(5), batchId: 'fig' } as Move],
    })
    expect(batch).toMatchObject({ code: 'notFound', details: { what: 'batch', id: 'fig' } })
    t.service.close()
  })

  it('warns of strong spirit where it is poured', async () => {
    const t = await steeping()
    const { warnings } = await t.ask('moves.record', { key: 'k3', moves: [spirit(100)] })
    expect(warnings).toContainEqual(expect.objectContaining({ code: 'strongSpirit', limit: 40 }))
    t.service.close()
  })
})

describe('moves.preview', () => {
  it('tells what a move would do and changes nothing', async () => {
    const t = await steeping()
    const preview = await t.ask('moves.preview', { moves: [drawOff()] })
    expect(preview.refusals).toEqual([])
    expect(
      preview.steps[0]?.after.find(({ jarId }) => jarId === 'demijohn')?.liquid?.volumeMl,
    ).toBeGreaterThan(900)
    expect((await page(t)).steps).toHaveLength(3)
    t.service.close()
  })

  it('tells what a move in the past would break later', async () => {
    const t = await steeping()
    await t.ask('moves.record', { key: 'k3', moves: [spirit(1100, '2026-09-03T09:00:00Z')] })
    const preview = await t.ask('moves.preview', { moves: [spirit(200, '2026-09-02T08:00:00Z')] })
    expect(preview.refusals).toEqual([])
    expect(preview.breaks).toHaveLength(1)
    expect(preview.breaks[0]?.recorded.move).toMatchObject({ kind: 'pourSpirit', volumeMl: 1100 })
    t.service.close()
  })
})

describe('moves.amend', () => {
  it('puts a new version in the place of the old one and keeps both', async () => {
    const t = await steeping()
    const moveId = (await page(t)).steps[2]?.recorded.id as string
    await t.ask('moves.amend', { key: 'a1', moveId, fromVersion: 1, move: spirit(700) })
    const { steps } = await page(t)
    expect(steps[2]?.recorded).toMatchObject({ id: moveId, version: 2, move: { volumeMl: 700 } })
    const history = await t.ask('moves.history', { moveId })
    expect(history.map(({ move }) => move)).toMatchObject([{ volumeMl: 900 }, { volumeMl: 700 }])
    const spiritLot = (await t.ask('pantry.list', {})).find(({ id }) => id === 'spirit')
    expect(spiritLot?.volumeMl).toBeCloseTo(1300, 6)
    t.service.close()
  })

  it('refuses what would break later moves, with the list of them', async () => {
    const t = await steeping()
    const moveId = (await page(t)).steps[0]?.recorded.id as string
    await t.ask('moves.record', {
      key: 'k3',
      moves: [{ at: '2026-09-03T00:00:00Z', kind: 'crush', batchId: 'damson', jarId: 'north' }],
    })
    const error = await t.refusal('moves.amend', { key: 'a1', moveId, fromVersion: 1, move: null })
    expect(error.code).toBe('breaksLater')
    expect(error.details['breaks']).toMatchObject([
      { recorded: { move: { kind: 'crush' } }, refusal: { code: 'noFruit' } },
    ])
    expect((await page(t)).steps).toHaveLength(4)
    t.service.close()
  })

  it('refuses an edit of a version that is no longer the newest', async () => {
    const t = await steeping()
    const moveId = (await page(t)).steps[1]?.recorded.id as string
    await t.ask('moves.amend', { key: 'a1', moveId, fromVersion: 1, move: water(250) })
    const error = await t.refusal('moves.amend', {
      key: 'a2',
      moveId,
      fromVersion: 1,
      move: water(1),
    })
    expect(error.code).toBe('staleEdit')
    t.service.close()
  })
})

describe('moves.undo', () => {
  it('takes back what was recorded last, together, and then what came before it', async () => {
    const t = await steeping()
    const before = await page(t)
    await t.ask('moves.record', {
      key: 'k3',
      moves: [
        drawOff(),
        { at: '2026-11-10T10:00:00Z', kind: 'crush', batchId: 'damson', jarId: 'north' },
      ],
    })
    const { changes } = await t.ask('moves.undo', { key: 'u1' })
    expect(changes.map((change) => change.before?.kind)).toEqual(['drawOff', 'crush'])
    expect(await page(t)).toEqual(before)
    await t.ask('moves.undo', { key: 'u2', batchId: 'damson' })
    expect((await page(t)).steps.map((step) => step.recorded.move.kind)).toEqual(['charge'])
    t.service.close()
  })

  it('takes back an amendment, and a strike', async () => {
    const t = await steeping()
    const moveId = (await page(t)).steps[1]?.recorded.id as string
    const before = await page(t)
    await t.ask('moves.amend', { key: 'a1', moveId, fromVersion: 1, move: water(250) })
    await t.ask('moves.undo', { key: 'u1' })
    expect((await page(t)).summary).toEqual(before.summary)
    await t.ask('moves.amend', { key: 'a2', moveId, fromVersion: 3, move: null })
    expect((await page(t)).steps).toHaveLength(2)
    await t.ask('moves.undo', { key: 'u2' })
    expect((await page(t)).summary).toEqual(before.summary)
    t.service.close()
  })

  it('takes back a bottle drawn from the batch, though the move names no batch', async () => {
    const t = await steeping()
    const bottling = { kind: 'bottle', batchId: 'damson', bottleLotId: 'lot', bottleSizeMl: 100 }
    const draw = { kind: 'drawBottle', bottleLotId: 'lot', count: 1 }
    const at = '2026-11-10T10:00:00Z'
    await t.ask('moves.record', { key: 'k3', moves: [drawOff()] })
    const bottled = { ...bottling, at, fromJarId: 'demijohn', count: 2 }
    await t.ask('moves.record', { key: 'k4', moves: [bottled as Move] })
    await t.ask('moves.record', { key: 'k5', moves: [{ ...draw, at } as Move] })
    const { changes } = await t.ask('moves.undo', { key: 'u1', batchId: 'damson' })
    expect(changes.map((change) => change.before?.kind)).toEqual(['drawBottle'])
    t.service.close()
  })

  it('takes back the group that is named and no other, once', async () => {
    const t = await steeping()
    const before = await page(t)
    const crush = { at: '2026-11-10T10:00:00Z', kind: 'crush', batchId: 'damson', jarId: 'north' }
    const { groupId } = await t.ask('moves.record', { key: 'k3', moves: [crush as Move] })
    const remark = { ...crush, kind: 'remark', jarId: undefined, note: 'Smells of almonds' }
    const { jarId: _none, ...later } = remark
    await t.ask('moves.record', { key: 'k4', moves: [later as Move] })
    const { changes } = await t.ask('moves.undo', { key: 'u1', groupId })
    expect(changes.map((change) => change.before?.kind)).toEqual(['crush'])
    expect((await page(t)).steps).toHaveLength(before.steps.length + 1)
    expect((await t.refusal('moves.undo', { key: 'u2', groupId })).code).toBe('nothingToUndo')
    expect((await t.refusal('moves.undo', { key: 'u3', groupId: 'none' })).code).toBe(
      'nothingToUndo',
    )
    t.service.close()
  })

  it('puts back what an undo took away, and takes it away again, as often as asked', async () => {
    const t = await steeping()
    const { groupId } = await t.ask('moves.record', { key: 'k3', moves: [drawOff()] })
    const drawn = await page(t)
    const taken = await t.ask('moves.undo', { key: 'u1', groupId })
    expect(taken).toMatchObject({ undoes: groupId, changes: [{ after: null }] })
    const without = await page(t)
    const put = await t.ask('moves.undo', { key: 'u2', groupId: taken.groupId })
    expect(put.changes).toMatchObject([{ before: null, after: { kind: 'drawOff' } }])
    expect((await page(t)).summary).toEqual(drawn.summary)
    await t.ask('moves.undo', { key: 'u3', groupId: put.groupId })
    expect(await page(t)).toEqual(without)
    t.service.close()
  })

  it('answers a repeated request as the first time, and does nothing twice', async () => {
    const t = await steeping()
    const first = await t.ask('moves.undo', { key: 'u1' })
    const after = await page(t)
    expect(await t.ask('moves.undo', { key: 'u1' })).toEqual(first)
    expect(await page(t)).toEqual(after)
    t.service.close()
  })

  it('takes back what was put back before what was recorded earlier', async () => {
    const t = await steeping()
    const { groupId } = await t.ask('moves.record', { key: 'k3', moves: [drawOff()] })
    const taken = await t.ask('moves.undo', { key: 'u1', groupId })
    const put = await t.ask('moves.undo', { key: 'u2', groupId: taken.groupId })
    const last = await t.ask('moves.undo', { key: 'u3', batchId: 'damson' })
    expect(last.undoes).toBe(put.groupId)
    const earlier = await t.ask('moves.undo', { key: 'u4', batchId: 'damson' })
    expect(earlier.changes.map((change) => change.before?.kind)).toEqual([
      'pourWater',
      'pourSpirit',
    ])
    t.service.close()
  })

  it('refuses to put back what cannot be any more, by its own reason', async () => {
    const t = await steeping()
    const pour = { ...spirit(1100, '2026-09-05T09:00:00Z') }
    const { groupId } = await t.ask('moves.record', { key: 'k3', moves: [pour] })
    const taken = await t.ask('moves.undo', { key: 'u1', groupId })
    await t.ask('moves.record', { key: 'k4', moves: [spirit(800, '2026-09-04T09:00:00Z')] })
    const before = await page(t)
    const error = await t.refusal('moves.undo', { key: 'u2', groupId: taken.groupId })
    expect(error).toMatchObject({ code: 'notEnough', details: { asked: 1100 } })
    expect(await page(t)).toEqual(before)
    t.service.close()
  })

  it('refuses to take back a version that was changed since, which would lose the change', async () => {
    const t = await steeping()
    const moveId = (await page(t)).steps[1]?.recorded.id as string
    const amend = { moveId, move: water(250) }
    const { groupId } = await t.ask('moves.amend', { key: 'a1', fromVersion: 1, ...amend })
    const later = { moveId, move: water(200), fromVersion: 2 }
    const second = await t.ask('moves.amend', { key: 'a2', ...later })
    expect((await t.refusal('moves.undo', { key: 'u1', groupId })).code).toBe('staleEdit')
    await t.ask('moves.undo', { key: 'u2', groupId: second.groupId })
    const { changes } = await t.ask('moves.undo', { key: 'u3', groupId })
    expect(changes).toMatchObject([{ before: { volumeMl: 250 }, after: { volumeMl: 300 } }])
    t.service.close()
  })

  it('says so when there is nothing to undo', async () => {
    const t = await trial()
    expect((await t.refusal('moves.undo', { key: 'u1' })).code).toBe('nothingToUndo')
    t.service.close()
  })
})

describe('the book', () => {
  it('shows the same after it was closed and opened again, to the bit', async () => {
    const t = await steeping()
    await t.ask('moves.record', { key: 'k3', moves: [drawOff()] })
    const before = [
      await page(t),
      await t.ask('pantry.list', {}),
      await t.ask('cellar.balance', {}),
    ]
    t.service.close()
    const again = await createService(t.options)
    const read = async (channel: string, request: unknown) => {
      const reply = await again.dispatch(channel, request)
      return reply.ok && reply.value
    }
    expect(await read('batches.page', { batchId: 'damson' })).toEqual(before[0])
    expect(await read('pantry.list', {})).toEqual(before[1])
    expect(await read('cellar.balance', {})).toEqual(before[2])
    again.close()
  })

  it('balances: all that came in is somewhere, drunk, given or thrown away', async () => {
    const t = await steeping()
    await t.ask('moves.record', {
      key: 'k3',
      moves: [
        drawOff(),
        {
          at: '2026-11-11T09:00:00Z',
          kind: 'filter',
          batchId: 'damson',
          fromJarId: 'demijohn',
          toJarId: 'south',
          medium: 'paper',
        },
        {
          at: '2026-11-12T09:00:00Z',
          kind: 'bottle',
          batchId: 'damson',
          fromJarId: 'south',
          bottleLotId: 'half',
          bottleSizeMl: 500,
          count: 1,
        },
        { at: '2026-11-13T09:00:00Z', kind: 'drawBottle', bottleLotId: 'half', count: 1 },
        { at: '2026-11-14T09:00:00Z', kind: 'discard', from: { jarId: 'north', part: 'all' } },
      ],
    })
    const books = await t.ask('cellar.balance', {})
    for (const kind of matterKinds) expect(Math.abs(books.missing[kind])).toBeLessThan(1e-9 * 6000)
    expect(books.drunk.ethanolG).toBeGreaterThan(100)
    expect(books.wasted.pulpG).toBeGreaterThan(50)
    t.service.close()
  })

  it('finds its derived rows as the ledger tells them, and mends them when they are not', async () => {
    const t = await steeping()
    expect(await t.ask('cellar.check', {})).toMatchObject({
      integrity: 'ok',
      moveCount: 6,
      lotsDiffering: [],
    })
    t.service.close()
    const { openBook, closeBook } = await import('../../main/cellar/open-book.ts')
    const book = openBook(t.options.ownFile)
    book.exec("UPDATE pantry_lot SET left_g = 1 WHERE id = 'sugar'")
    closeBook(book)
    const again = await createService(t.options)
    expect(await again.dispatch('cellar.check', {})).toMatchObject({
      value: { lotsDiffering: ['sugar'] },
    })
    await again.dispatch('cellar.rebuild', {})
    expect(await again.dispatch('cellar.check', {})).toMatchObject({ value: { lotsDiffering: [] } })
    again.close()
  })
})

describe('a move that physics has no formula for', () => {
  it('is refused by its field, whatever the ledger holds', async () => {
    const t = await steeping()
    const frozen = { ...water(100), temperatureC: -5 } as Move
    const boiling = { ...spirit(100), temperatureC: 55 } as Move
    for (const move of [frozen, boiling]) {
      const error = await t.refusal('moves.record', { key: 'k', moves: [move] })
      expect(error.code).toBe('badInput')
      expect(JSON.stringify(error.details)).toContain('temperatureC')
    }
    t.service.close()
  })

  it('names a fruit that the library does not have', async () => {
    const t = await steeping()
    const goods = {
      kind: 'fruit' as const,
      fruitId: 'moonberry',
      composition: {
        edibleFraction: 1,
        waterPct: 90,
        sugarPct: 10,
        acidPct: 0,
        solublesPct: 0,
        pulpPct: 0,
      },
    }
    const buy: Move = { at: '2026-09-01T08:00:00Z', kind: 'buy', lotId: 'm', goods, massG: 10 }
    const error = await t.refusal('moves.record', { key: 'k', moves: [buy] })
    expect(error).toMatchObject({ code: 'notFound', details: { what: 'fruit', id: 'moonberry' } })
    t.service.close()
  })
})
