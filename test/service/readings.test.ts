/** Readings in the ledger: kept as the instrument showed them, interpreted anew each time. */
import Database from 'better-sqlite3'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Reading } from '../../shared/schemas/readings.ts'
import { trial, withPantry, type Trial } from './with-service.ts'

const readAt = '2026-09-10T08:00:00Z'
const boilOff = {
  instrument: 'boilOff',
  densityBeforeKgPerM3: 985.4,
  densityAfterKgPerM3: 1036.6,
  temperatureC: 19.5,
} as const

let t: Trial
beforeEach(async () => {
  t = await trial()
  await withPantry(t)
  const place = { batchId: 'damson', jarId: 'north', at: '2026-09-02T08:00:00Z' } as const
  await t.ask('moves.record', {
    key: 'liquid',
    moves: [
      { ...place, kind: 'pourSpirit', lotId: 'spirit', volumeMl: 500 },
      { ...place, kind: 'pourWater', volumeMl: 500 },
    ],
  })
})
afterEach(() => t.service.close())

async function record(reading: Reading) {
  const move = { kind: 'read', at: readAt, batchId: 'damson', jarId: 'north', reading } as const
  const { moveIds } = await t.ask('moves.record', {
    key: `read-${reading.instrument}`,
    moves: [move],
  })
  return { move, moveId: moveIds[0] as string }
}
const readingOnCurve = async () =>
  (await t.ask('batches.curve', { batchId: 'damson', points: 10 })).readings[0]

describe('a reading in the ledger', () => {
  it('is stored as the instrument showed it: no row of the book holds an interpretation', async () => {
    await record(boilOff)
    expect((await readingOnCurve())?.interpretation).toHaveProperty('strengthUncertaintyPctVol')
    const book = new Database(t.options.ownFile, { readonly: true })
    const tables = book
      .prepare(`SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'`)
      .pluck()
      .all() as string[]
    const rows = tables.flatMap((name) => book.prepare(`SELECT * FROM "${name}"`).all())
    book.close()
    const text = JSON.stringify(rows)
    // The row that holds the reading is there, and holds what was read.
    expect(text).toContain('boilOff')
    expect(text).toContain('1036.6')
    for (const word of ['interpretation', 'ncertainty', 'doubts']) expect(text).not.toContain(word)
  })

  it('means the same on the page as on the curve, worked out from the raw numbers', async () => {
    const { moveId } = await record(boilOff)
    const page = await t.ask('batches.page', { batchId: 'damson' })
    const step = page.steps.find(({ recorded }) => recorded.id === moveId)
    expect(step?.recorded.move).toMatchObject({ kind: 'read', reading: boilOff })
    expect(step?.interpretation).toEqual((await readingOnCurve())?.interpretation)
  })

  it('is reinterpreted when it is amended: the raw number decides', async () => {
    const { move, moveId } = await record({
      instrument: 'alcoholometer',
      readingPctVol: 45,
      temperatureC: 20,
    })
    expect((await readingOnCurve())?.interpretation.strengthPctVol).toBeCloseTo(45, 9)
    await t.ask('moves.amend', {
      key: 'colder',
      moveId,
      fromVersion: 1,
      move: { ...move, reading: { ...move.reading, temperatureC: 10 } as Reading },
    })
    expect((await readingOnCurve())?.interpretation.strengthPctVol).toBeGreaterThan(48)
  })

  it('is used when nothing speaks against it', async () => {
    await record({ instrument: 'alcoholometer', readingPctVol: 47, temperatureC: 20 })
    expect(await readingOnCurve()).toMatchObject({ isUsed: true, interpretation: { doubts: [] } })
  })

  it.each([
    [
      { instrument: 'alcoholometer', readingPctVol: 99, temperatureC: 20 },
      'strongerThanAnythingPoured',
    ],
    [{ instrument: 'alcoholometer', readingPctVol: 120, temperatureC: 20 }, 'outOfRange'],
    [
      {
        instrument: 'hydrometerAndRefractometer',
        densityKgPerM3: 950,
        brix: 60,
        temperatureC: 20,
      },
      'noSuchMixture',
    ],
  ] as const)('is kept but not used until confirmed when doubtful: %o', async (reading, doubt) => {
    const { move, moveId } = await record(reading)
    const doubtful = await readingOnCurve()
    expect(doubtful?.interpretation.doubts).toContain(doubt)
    expect(doubtful?.isUsed).toBe(false)
    await t.ask('moves.amend', {
      key: 'confirm',
      moveId,
      fromVersion: 1,
      move: { ...move, isConfirmed: true },
    })
    const confirmed = await readingOnCurve()
    expect(confirmed?.isUsed).toBe(true)
    expect(confirmed?.interpretation.doubts).toContain(doubt)
  })

  it('changes no matter: the jar holds to the gram what it held before', async () => {
    const held = async () => (await t.ask('jars.list', {})).map(({ contents }) => contents?.free)
    const before = await held()
    await record(boilOff)
    expect(await held()).toEqual(before)
  })
})
