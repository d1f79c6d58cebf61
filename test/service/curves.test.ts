/** How a batch steeps, over the contract: curve and band, what-if, forecast, comparison. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Answer } from '../../shared/channels.ts'
import type { Reading } from '../../shared/schemas/readings.ts'
import type { WhatIf } from '../../shared/schemas/steeping.ts'
import { trial, withPantry, type Trial } from './with-service.ts'

const place = { batchId: 'damson', jarId: 'north' } as const
const on = (day: number) => new Date(Date.UTC(2026, 8, 1 + day, 9)).toISOString()

let t: Trial
beforeEach(async () => {
  t = await trial()
  await withPantry(t)
  t.setNow(on(2))
  await t.ask('moves.record', {
    key: 'steep',
    moves: [
      { ...place, kind: 'charge', at: on(1), lotId: 'damsons', massG: 1500, cut: 'whole' },
      { ...place, kind: 'pourSpirit', at: on(1), lotId: 'spirit', volumeMl: 1000 },
      { ...place, kind: 'pourWater', at: on(1), volumeMl: 300 },
    ],
  })
})
afterEach(() => t.service.close())

const curve = (whatIf?: WhatIf) =>
  t.ask('batches.curve', { batchId: 'damson', points: 100, ...(whatIf && { whatIf }) })
const forecast = async () => {
  const { jars } = await t.ask('batches.forecast', { batchId: 'damson' })
  const [jar] = jars
  if (!jar) throw new Error('no jar steeps')
  return jar
}
type Point = Answer<'batches.curve'>['series'][number]['points'][number]
const bandAt = (points: readonly Point[], at: string) => {
  const point = points.find((found) => found.at >= at)
  if (!point?.low || !point.high) throw new Error(`no band at ${at}`)
  return point.high.strengthPctVol - point.low.strengthPctVol
}
const northOf = ({ series }: Pick<Answer<'batches.curve'>, 'series'>) => {
  const found = series.find(({ key }) => key === 'north')
  if (!found) throw new Error('no curve of the jar')
  return found.points
}

/** What a careful boil-off would read of the jar as the ledger has it. */
async function readBoilOff(day: number): Promise<string> {
  t.setNow(on(day))
  const reading: Reading = {
    instrument: 'boilOff',
    densityBeforeKgPerM3: 957 - 3 * (1 - 0.8 ** day),
    densityAfterKgPerM3: 1002 + 16 * (1 - 0.8 ** day),
    temperatureC: 20,
  }
  const { moveIds } = await t.ask('moves.record', {
    key: `read-${day}`,
    moves: [{ ...place, kind: 'read', at: on(day), reading, isConfirmed: true }],
  })
  return moveIds[0] as string
}

describe('batches.curve', () => {
  it('tells all quantities with a band, and runs on past now', async () => {
    const { now, series } = await curve()
    const north = northOf({ series })
    expect(north.at(-1)?.at.localeCompare(now)).toBe(1)
    const early = bandAt(north, on(3))
    expect(early).toBeGreaterThan(0)
    const banded = north.flatMap((point) =>
      point.low && point.high ? [{ point, low: point.low, high: point.high }] : [],
    )
    expect(banded.length).toBeGreaterThan(0.9 * north.length)
    for (const { point, low, high } of banded)
      for (const quantity of ['strengthPctVol', 'sugarGPerL', 'acidGPerL', 'volumeMl'] as const) {
        expect(low[quantity]).toBeLessThanOrEqual(point[quantity])
        expect(high[quantity]).toBeGreaterThanOrEqual(point[quantity])
      }
  })

  it('narrows its band with readings, and says what they are worth', async () => {
    const before = await curve()
    for (const day of [3, 6, 10]) await readBoilOff(day)
    const after = await curve()
    expect(before.fit?.readingsUsed).toBe(0)
    expect(after.fit?.readingsUsed).toBe(3)
    expect(after.readings.map(({ isUsed }) => isUsed)).toEqual([true, true, true])
    for (const { residualSigmas } of after.readings) expect(residualSigmas).toBeTypeOf('number')
    for (const day of [4, 8, 12])
      expect(bandAt(northOf(after), on(day))).toBeLessThan(bandAt(northOf(before), on(day)))
  })

  it('answers what if without writing: warmer and cut is faster', async () => {
    const { moveCount } = (await t.ask('batches.page', { batchId: 'damson' })).summary
    const drawOffAt = on(6)
    const { whatIf } = await curve({ since: 'start', temperatureC: 28, cut: 'cut', drawOffAt })
    const [outcome] = whatIf?.outcomes ?? []
    expect(outcome?.changed.extractFraction).toBeGreaterThan(
      (outcome?.asIs.extractFraction ?? 1) + 0.1,
    )
    expect(outcome?.changed.at).toBe(outcome?.asIs.at)
    for (const { points } of whatIf?.series ?? [])
      for (const { at } of points) expect(at <= drawOffAt).toBe(true)
    const page = await t.ask('batches.page', { batchId: 'damson' })
    expect(page.summary.moveCount).toBe(moveCount)
  })

  it('changes nothing before now when the change is from now on', async () => {
    t.setNow(on(5))
    const { now, series, whatIf } = await curve({ since: 'now', temperatureC: 35, turned: 'daily' })
    const asIs = new Map(northOf({ series }).map((point) => [point.at, point]))
    const changed = northOf({ series: whatIf?.series ?? [] })
    const past = changed.filter(({ at }) => at < now && asIs.has(at))
    expect(past.length).toBeGreaterThan(10)
    for (const point of past)
      expect(point.strengthPctVol).toBeCloseTo(asIs.get(point.at)?.strengthPctVol ?? 0, 9)
    const later = changed.find(({ at }) => at > on(8))
    expect(later?.acidGPerL).toBeGreaterThan(asIs.get(later?.at ?? '')?.acidGPerL ?? Infinity)
  })
})

describe('an outlook that is kept', () => {
  const warmer: WhatIf = { since: 'now', temperatureC: 26 }
  const cooler: WhatIf = { since: 'start', temperatureC: 12 }

  it('answers as one worked out afresh does, for every question', async () => {
    const kept = [await curve(warmer), await curve(cooler), await curve(), await forecast()]
    t.setNow(on(5))
    expect((await curve()).now).toBe(on(5))
    // Gone back to the first instant, nothing of it is kept any more.
    t.setNow(on(2))
    const [fresh, ...others] = [await curve(cooler), await curve(), await forecast()]
    expect([await curve(warmer), fresh, ...others]).toEqual(kept)
  })

  it('stands for a minute, and not beyond a new reading', async () => {
    const first = await curve(warmer)
    t.setNow(new Date(Date.parse(on(2)) + 59_000).toISOString())
    const { series, now, whatIf } = await curve(warmer)
    expect({ series, now, whatIf }).toEqual({
      series: first.series,
      now: first.now,
      whatIf: first.whatIf,
    })
    t.setNow(new Date(Date.parse(on(2)) + 61_000).toISOString())
    expect((await curve(warmer)).now).not.toBe(first.now)
    await readBoilOff(20)
    const told = await curve(warmer)
    expect(told.readings).toHaveLength(1)
    expect(told.fit?.readingsUsed).toBe(1)
    expect(northOf(told)).not.toEqual(northOf(first))
  })

  it('goes with the facts of the fruit', async () => {
    const { fit } = await curve()
    const { fruit } = await t.ask('fruits.page', { fruitId: 'damson' })
    const { low = 0.3, typical = 0.8, high = 1.2 } = fruit.drainedRangeLPerKg ?? {}
    const drainedRangeLPerKg = { low: low / 2, typical, high: 2 * high }
    await t.ask('fruits.keep', { ...fruit, drainedRangeLPerKg })
    expect((await curve()).fit?.priorHold).not.toEqual(fit?.priorHold)
  })
})

describe('batches.forecast', () => {
  it('tells where the jar goes and when it is there', async () => {
    const jar = await forecast()
    expect(jar.now.strengthPctVol.value).toBeGreaterThan(jar.resting.strengthPctVol.value)
    expect(jar.isSettled).toBe(false)
    const { early, typical, late } = jar.settledAt
    expect(early && typical && late && early <= typical && typical <= late).toBe(true)
    expect(jar.weekChange.strengthPctVol).toBeLessThan(0)
    expect(jar.extractFraction.value).toBeGreaterThan(0)
    expect(jar.extractFraction.value).toBeLessThan(1)
  })

  it('is settled a year later, at its resting value', async () => {
    t.setNow(on(400))
    const jar = await forecast()
    expect(jar.isSettled).toBe(true)
    expect(jar.now.strengthPctVol.value).toBeCloseTo(jar.resting.strengthPctVol.value, 2)
    expect(jar.sugarDraw?.draw).toBe(1)
    expect(jar.sugarDraw?.recoveredEthanolMl).toBeLessThan(jar.sugarDraw?.heldEthanolMl ?? 0)
  })

  it('has nothing to say of a batch without fruit', async () => {
    await t.ask('batches.open', {
      id: 'empty',
      name: 'Empty',
      colour: '#445566',
      note: '',
      openedAt: on(1),
    })
    expect(await t.ask('batches.forecast', { batchId: 'empty' })).toEqual({ jars: [] })
    expect((await t.refusal('batches.forecast', { batchId: 'nowhere' })).code).toBe('notFound')
  })
})

describe('a charge', () => {
  it('keeps how its fruit was known to steep on the day', async () => {
    const { steps } = await t.ask('batches.page', { batchId: 'damson' })
    const charge = steps.map(({ recorded }) => recorded.move).find(({ kind }) => kind === 'charge')
    expect(charge).toMatchObject({ tissue: { kineticClass: 'waxySkin' } })
  })
})

describe('batches.compare', () => {
  it('counts days from each batch’s own first move', async () => {
    const [damson] = await t.ask('batches.compare', { batchIds: ['damson'], points: 20 })
    expect(damson?.batchId).toBe('damson')
    expect(damson?.points[0]?.day).toBe(0)
    expect(damson?.points.at(-1)?.day).toBeCloseTo(1, 3)
  })
})
