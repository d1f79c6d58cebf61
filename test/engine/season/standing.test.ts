import { describe, expect, it } from 'vitest'
import { fruitOf } from '../../../main/engine/fruit/fruit-library.ts'
import {
  emptyCellar,
  freshJar,
  type BatchProgress,
  type FruitCharge,
  type JarState,
} from '../../../main/engine/ledger/cellar-state.ts'
import { standingOf } from '../../../main/engine/season/standing.ts'
import { emptyBodies } from '../../../main/engine/steeping/bodies.ts'
import type { Stage } from '../../../shared/schemas/cellar.ts'
import { matterOf } from '../../../shared/matter.ts'
import { buyFruit, folded } from '../ledger/book-of-moves.ts'

const day = 86_400_000
const nowMs = 1000 * day

/** A charge as the ledger makes it, of the fruits named. */
const chargeOf = (fruitIds: readonly string[]): FruitCharge => {
  const { cellar } = folded([
    [0, buyFruit('lot', 'sour_cherry', 1000)],
    [
      0,
      {
        kind: 'charge',
        batchId: 'b',
        jarId: 'j',
        lotId: 'lot',
        massG: 1000,
        refuseG: 0,
        cut: 'pricked',
      },
    ],
  ])
  const { fruit } = cellar.jars.get('j')!
  return { ...fruit!, fruits: fruitIds.map((fruitId) => ({ fruitId, massG: 500 })) }
}

/** Water stands for liquid: a gram of it is 1.0018 mL at 20 °C. */
const mlPerG = 1 / 0.9982
const water = (freeG: number, heldG = 0) => ({
  ...emptyBodies,
  free: matterOf({ waterG: freeG }),
  held: matterOf({ waterG: heldG }),
})

const jarOf = (batchId: string, stage: Stage, sinceDays: number, change: Partial<JarState>) => ({
  ...freshJar(batchId, nowMs - sinceDays * day, stage),
  ...change,
})

const standing = (jars: Record<string, JarState>, fruitIds: Record<string, string[]> = {}) => {
  const progress = (ids: readonly string[]): BatchProgress => ({
    stage: 'steeping',
    startedAtMs: 0,
    bands: [],
    moveCount: 1,
    fruitIds: ids,
    bottleLotIds: [],
    openedIds: [],
  })
  const batches = new Map(Object.entries(fruitIds).map(([id, ids]) => [id, progress(ids)]))
  return standingOf({ jars: new Map(Object.entries(jars)), batches }, fruitOf, nowMs)
}

describe('standingOf', () => {
  it('finds nothing in an empty cellar', () => {
    expect(standingOf(emptyCellar(), fruitOf, nowMs)).toEqual({
      jars: [],
      settles: [],
      toCome: [],
    })
  })

  it('empties a steeping jar after the fruit’s own weeks and a sugar draw, and lets its extract settle', () => {
    // Sour cherry steeps 6 weeks: drawn on day 42 of which 10 are gone, empty ten days later.
    const { jars, settles, toCome } = standing(
      {
        a: jarOf('cherry', 'steeping', 10, {
          fruit: chargeOf(['sour_cherry']),
          bodies: water(1000, 400),
        }),
      },
      { cherry: ['sour_cherry', 'quince'] },
    )
    expect(jars).toHaveLength(1)
    expect(jars[0]).toMatchObject({ jarId: 'a', batchId: 'cherry', untilMs: nowMs + 42 * day })
    expect(jars[0]!.fillMl).toBeCloseTo(1400 * mlPerG, 0)
    // Half of what the fruit holds is lost, and six hundredths of all.
    const leftMl = 0.94 * 1200 * mlPerG
    expect(settles).toHaveLength(1)
    expect(settles[0]).toMatchObject({
      batchId: 'cherry',
      fromMs: nowMs + 32 * day,
      untilMs: nowMs + (42 + 16) * day,
    })
    expect(settles[0]!.volumeMl).toBeCloseTo(leftMl, 0)
    expect(toCome).toHaveLength(1)
    expect(toCome[0]!.kindId).toBe('sour_cherry')
    expect(toCome[0]!.volumeMl).toBeCloseTo(leftMl, 0)
  })

  it('waits for the slowest of several fruits, and six weeks for one without its own', () => {
    const until = (fruitIds: readonly string[]) =>
      standing({
        a: jarOf('b', 'layered', 0, { fruit: chargeOf(fruitIds), bodies: water(500) }),
      }).jars[0]!.untilMs
    const weeksOf = (id: string) => fruitOf(id).steepingWeeks!.typical
    expect(weeksOf('quince')).toBeGreaterThan(weeksOf('lemon_peel'))
    const slowMs = nowMs + (weeksOf('quince') * 7 + 10) * day
    expect(until(['lemon_peel', 'quince'])).toBe(slowMs)
    expect(until(['quince', 'lemon_peel'])).toBe(slowMs)
    const unknown = (id: string) => ({ ...fruitOf(id), steepingWeeks: undefined })
    const { jars } = standingOf(
      {
        jars: new Map([['a', jarOf('b', 'steeping', 0, { fruit: chargeOf(['lemon_peel']) })]]),
        batches: new Map(),
      },
      unknown,
      nowMs,
    )
    expect(jars[0]!.untilMs).toBe(nowMs + (42 + 10) * day)
  })

  it('empties fruit under sugar ten days after it was covered, and what is overdue within a week', () => {
    const untilMs = (stage: Stage, sinceDays: number) =>
      standing({
        a: jarOf('b', stage, sinceDays, {
          fruit: chargeOf(['sour_cherry']),
          bodies: water(500),
        }),
      }).jars[0]!.untilMs
    expect(untilMs('sugarDraw', 1)).toBe(nowMs + 9 * day)
    expect(untilMs('sugarDraw', 30)).toBe(nowMs + 7 * day)
    expect(untilMs('steeping', 300)).toBe(nowMs + 7 * day)
  })

  it('draws an overdue batch off now, into a jar that is asked for only while it steeps', () => {
    const fruit = chargeOf(['sour_cherry'])
    const overdue = standing({ a: jarOf('b', 'steeping', 300, { fruit, bodies: water(500) }) })
    expect(overdue.settles[0]).toMatchObject({ fromMs: nowMs, untilMs: nowMs + (7 + 16) * day })
    const drawing = standing({ a: jarOf('b', 'sugarDraw', 1, { fruit, bodies: water(500) }) })
    expect(drawing.settles).toEqual([])
    // An extract that stands there already has its jar.
    const both = standing({
      a: jarOf('b', 'steeping', 10, { fruit, bodies: water(500) }),
      e: jarOf('b', 'drawnOff', 1, { bodies: water(800) }),
    })
    expect(both.settles).toEqual([])
  })

  it('keeps an extract until the last fruit of its batch is out and it has settled', () => {
    const fruit = chargeOf(['sour_cherry'])
    const { jars, toCome } = standing({
      a: jarOf('b', 'steeping', 10, { fruit, bodies: water(500) }),
      c: jarOf('b', 'steeping', 20, { fruit, bodies: water(300) }),
      e: jarOf('b', 'drawnOff', 1, { bodies: water(800) }),
      f: jarOf('b', 'filtered', 1, { bodies: water(100) }),
    })
    expect(jars.map(({ jarId, untilMs }) => [jarId, (untilMs - nowMs) / day])).toEqual([
      ['a', 42],
      ['c', 32],
      ['e', 42 + 16],
      ['f', 42 + 2],
    ])
    // One batch, one line; nobody wrote down of which fruit.
    expect(toCome).toHaveLength(1)
    expect(toCome[0]!.kindId).toBe('other')
    expect(toCome[0]!.volumeMl).toBeCloseTo(0.94 * 1700 * mlPerG, 0)
  })

  it('lets an extract without fruit settle 16 days, a filtered one 2, and at least a week from now', () => {
    const days = (stage: Stage, sinceDays: number) =>
      (standing({ e: jarOf('b', stage, sinceDays, { bodies: water(800) }) }).jars[0]!.untilMs -
        nowMs) /
      day
    expect(days('drawnOff', 1)).toBe(15)
    expect(days('married', 3)).toBe(13)
    expect(days('filtered', 1)).toBe(7)
    expect(days('drawnOff', 100)).toBe(7)
  })

  it('draws several jars of a batch off from the first that is due', () => {
    const fruit = chargeOf(['sour_cherry'])
    const { settles } = standing({
      a: jarOf('b', 'steeping', 10, { fruit, bodies: water(500) }),
      c: jarOf('b', 'steeping', 20, { fruit, bodies: water(300) }),
    })
    expect(settles).toHaveLength(1)
    expect(settles[0]).toMatchObject({
      fromMs: nowMs + 22 * day,
      untilMs: nowMs + (42 + 16) * day,
    })
    expect(settles[0]!.volumeMl).toBeCloseTo(0.94 * 800 * mlPerG, 0)
  })

  it('counts a rinse of less than 50 mL as nothing to come', () => {
    const toCome = (freeMl: number) =>
      standing({ e: jarOf('b', 'drawnOff', 1, { bodies: water(freeMl / 0.94 / mlPerG) }) }).toCome
    expect(toCome(49.9)).toEqual([])
    expect(toCome(50.1)).toHaveLength(1)
  })

  it('tells batch by batch', () => {
    const told = standing(
      {
        a: jarOf('one', 'drawnOff', 1, { bodies: water(800) }),
        b: jarOf('two', 'drawnOff', 1, { bodies: water(400) }),
      },
      { one: ['plum'], two: [] },
    )
    expect(told.jars.map(({ jarId, batchId }) => [jarId, batchId])).toEqual([
      ['a', 'one'],
      ['b', 'two'],
    ])
    expect(told.toCome.map(({ kindId }) => kindId)).toEqual(['plum', 'other'])
  })
})
