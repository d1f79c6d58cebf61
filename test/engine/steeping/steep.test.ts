import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addMatter, matterKinds, matterOf, noMatter, type Matter } from '../../../shared/matter.ts'
import { liquidVolumeMl } from '../../../main/engine/solution/liquid-volume.ts'
import { restingLiquid, type Bodies } from '../../../main/engine/steeping/bodies.ts'
import { usualKeeping, type Keeping } from '../../../main/engine/steeping/keeping.ts'
import type { Pace, Way } from '../../../main/engine/steeping/pace.ts'
import {
  steep,
  steepingPath,
  type Start,
  type Tissue,
} from '../../../main/engine/steeping/steep.ts'

const grams = fc.double({ min: 0, max: 5000, noNaN: true })
const matter = (pulp: boolean): fc.Arbitrary<Matter> =>
  fc.record({
    ethanolG: grams,
    waterG: fc.double({ min: 1, max: 5000, noNaN: true }),
    sugarG: grams,
    acidG: fc.double({ min: 0, max: 100, noNaN: true }),
    solublesG: fc.double({ min: 0, max: 200, noNaN: true }),
    pulpG: pulp ? fc.double({ min: 1, max: 500, noNaN: true }) : fc.constant(0),
  })
const bodies: fc.Arbitrary<Bodies> = fc.record({
  free: matter(false),
  held: matter(true),
  bed: grams.map((sugarG) => matterOf({ sugarG })),
})
const halfTime = fc.double({ min: 0.1, max: 30, noNaN: true })
const ways = ['slab', 'cylinder', 'sphere', 'skin', 'firstOrder'] as const
const tissue: fc.Arbitrary<Tissue> = fc.record({
  cells: fc.constantFrom('living', 'dead'),
  edibleG: fc.double({ min: 100, max: 5000, noNaN: true }),
  rawWaterG: fc.double({ min: 100, max: 4500, noNaN: true }),
  holdMl: fc.double({ min: 50, max: 3000, noNaN: true }),
  pace: fc.record({
    way: fc.constantFrom(...ways),
    halfTimeDays: fc.record({
      ethanol: halfTime,
      extract: halfTime,
      colour: halfTime,
      osmosis: halfTime,
    }),
  }),
})
const keeping: fc.Arbitrary<Keeping> = fc.record({
  temperatureC: fc.double({ min: 0, max: 40, noNaN: true }),
  turned: fc.constantFrom('daily', 'weekly', 'never'),
})
const lag = fc.constantFrom(0, 0.3, 2, 7)
const days = fc.double({ min: 0, max: 400, noNaN: true })

const total = ({ free, held, bed }: Bodies) => addMatter(addMatter(free, held), bed)

const still = (start: Bodies, fruit: Tissue | null): Start => ({
  start,
  tissue: fruit,
  keeping: usualKeeping,
  lagDays: 0,
})

const paceOf = (way: Way): Pace => ({
  way,
  halfTimeDays: { ethanol: 2, extract: 4, colour: 5, osmosis: 1.5 },
})

describe('steep', () => {
  it('conserves every kind of matter and leaves nothing negative', () => {
    fc.assert(
      fc.property(
        bodies,
        fc.option(tissue),
        keeping,
        lag,
        days,
        (start, fruit, kept, lagDays, elapsed) => {
          const end = steep({ start, tissue: fruit, keeping: kept, lagDays }, elapsed)
          for (const kind of matterKinds) {
            expect(total(end)[kind]).toBeCloseTo(total(start)[kind], 8)
            for (const body of [end.free, end.held, end.bed])
              expect(body[kind]).toBeGreaterThanOrEqual(-1e-8)
          }
        },
      ),
      { numRuns: 3000 },
    )
  })

  it('moves every liquid one way: never past its rest, never back', () => {
    fc.assert(
      fc.property(bodies, tissue, days, days, (start, fruit, a, b) => {
        const path = steepingPath(still(start, { ...fruit, cells: 'dead' }))
        const [first, then] = [path(Math.min(a, b)).bodies, path(Math.max(a, b)).bodies]
        const rest = path(1e6).bodies
        for (const kind of ['ethanolG', 'waterG', 'acidG', 'solublesG'] as const)
          expect(Math.abs(then.held[kind] - rest.held[kind])).toBeLessThanOrEqual(
            Math.abs(first.held[kind] - rest.held[kind]) + 1e-6,
          )
      }),
    )
  })

  it('rests where the mass balance says, whatever the way', () => {
    fc.assert(
      fc.property(bodies, tissue, (start, fruit) => {
        const end = steep(still(start, { ...fruit, cells: 'dead' }), 1e5)
        const rest = restingLiquid(start)
        const share = end.held.waterG / rest.waterG
        for (const kind of ['ethanolG', 'sugarG', 'acidG', 'solublesG'] as const)
          expect(end.held[kind]).toBeCloseTo(share * rest[kind], 4)
      }),
    )
  })

  it('does nothing in no time', () => {
    fc.assert(
      fc.property(bodies, tissue, lag, (start, fruit, lagDays) => {
        const from = { ...still(start, fruit), lagDays }
        expect(steep(from, 0)).toEqual(start)
      }),
    )
  })

  it('draws half a fruit’s drawable water in one osmosis half-time, and sugar dissolves in it', () => {
    // 1 kg of fruit with 850 g of water under 500 g of sugar: 66 % can be drawn in the end
    // (craft reference, sugar layer on raw fruit, r = 0.5), half of that in one half-time.
    const start = {
      free: noMatter,
      held: matterOf({ waterG: 850, sugarG: 80, pulpG: 40 }),
      bed: matterOf({ sugarG: 500 }),
    }
    const fruit: Tissue = {
      cells: 'living',
      edibleG: 1000,
      rawWaterG: 850,
      holdMl: 600,
      pace: paceOf('skin'),
    }
    const end = steep(still(start, fruit), 1.5)
    expect(end.free.waterG).toBeCloseTo(850 * 0.66 * 0.5, 0)
    expect(end.free.sugarG).toBeCloseTo(500, 6)
    expect(end.held.sugarG).toBe(80)
  })

  it('leaves sugar that strong spirit cannot dissolve at the bottom', () => {
    const start = {
      free: matterOf({ ethanolG: 900, waterG: 100 }),
      held: noMatter,
      bed: matterOf({ sugarG: 200 }),
    }
    const end = steep(still(start, null), 60)
    expect(end.bed.sugarG).toBeGreaterThan(150)
    expect(restingLiquid(start).sugarG).toBeCloseTo(200 - end.bed.sugarG, 6)
  })

  /** One kilogram of fruit under 60 % spirit; the fruit holds two thirds of the liquid at rest. */
  const jar = {
    free: matterOf({ ethanolG: 474, waterG: 406 }),
    held: matterOf({ waterG: 860, sugarG: 80, acidG: 15, pulpG: 25 }),
    bed: noMatter,
  }
  const dead = (way: Way): Tissue => ({
    cells: 'dead',
    edibleG: 1000,
    rawWaterG: 860,
    // So that alpha is 1.5, at which half-times are told.
    holdMl: liquidVolumeMl(total(jar)) / 2.5,
    pace: paceOf(way),
  })
  const ethanolThrough = (from: Start, elapsedDays: number): number => {
    const rest = steep(from, 1e6).held.ethanolG
    return steep(from, elapsedDays).held.ethanolG / rest
  }

  it.each(ways)('is half-way after one half-time at alpha 1.5 (%s)', (way) => {
    expect(ethanolThrough(still(jar, dead(way)), 2)).toBeCloseTo(0.5, 4)
  })

  it.each(ways)(
    'gives up acid and sugar, and colour, each at a half-time of its own (%s)',
    (way) => {
      const from = still(jar, dead(way))
      const rest = steep(from, 1e6).held
      const { held } = steep(from, 4)
      // Half of the way from what the fruit brought to what it keeps, after four days.
      for (const kind of ['acidG', 'sugarG', 'solublesG'] as const)
        expect(held[kind]).toBeCloseTo((jar.held[kind] + rest[kind]) / 2, 2)
      expect(held.pulpG).toBe(25)
      expect(steepingPath(from)(5).colourFraction).toBeCloseTo(0.5, 3)
      expect(steepingPath(from)(0).colourFraction).toBe(0)
    },
  )

  it.each([
    ['daily', 0.5],
    ['weekly', 1],
    ['never', 4],
  ] as const)(
    'dissolves half of what can dissolve in its own time when turned %s',
    (turned, halfDays) => {
      const start = {
        free: matterOf({ ethanolG: 300, waterG: 700 }),
        held: noMatter,
        bed: matterOf({ sugarG: 200 }),
      }
      const from = { ...still(start, null), keeping: { ...usualKeeping, turned } }
      expect(steep(from, halfDays).bed.sugarG).toBeCloseTo(100, 9)
      expect(steep(from, halfDays).free.sugarG).toBeCloseTo(100, 9)
      expect(steep(from, 3 * halfDays).bed.sugarG).toBeCloseTo(25, 9)
      // Fruit in it changes nothing of that.
      const fruit = steep({ ...from, tissue: dead('firstOrder') }, halfDays)
      expect(fruit.bed).toEqual(matterOf({ sugarG: 100 }))
      expect(steepingPath(from)(9).colourFraction).toBe(0)
    },
  )

  it('is faster when warm: 1.5 times for ten degrees', () => {
    // Craft reference, section 2.2: activation energy 30 kJ/mol; 10 °C runs at 0.647 of 20 °C.
    const cold = {
      ...still(jar, dead('firstOrder')),
      keeping: { ...usualKeeping, temperatureC: 10 },
    }
    expect(ethanolThrough(cold, 2 / 0.647)).toBeCloseTo(0.5, 3)
  })

  it('loses the days until spirit and syrup are mixed', () => {
    const turned = { ...still(jar, dead('firstOrder')), lagDays: 7 }
    expect(ethanolThrough(turned, 1)).toBeLessThan(0.03)
    // Long after, exactly the lag is lost.
    expect(1 - ethanolThrough(turned, 60)).toBeCloseTo(2 ** -((60 - 7) / 2), 10)
  })

  it('refuses time that runs backwards', () => {
    expect(() => steep(still(jar, null), -1)).toThrow('elapsed time is -1 d, must be 0 or more')
  })
})
