import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addMatter, matterKinds, matterOf, noMatter, type Matter } from '../../../shared/matter.ts'
import {
  restingLiquid,
  settle,
  type Bodies,
  type Tissue,
} from '../../../main/engine/steeping/settle.ts'

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
const tissue: fc.Arbitrary<Tissue> = fc.record({
  cells: fc.constantFrom('living', 'dead'),
  edibleG: fc.double({ min: 100, max: 5000, noNaN: true }),
  rawWaterG: fc.double({ min: 100, max: 4500, noNaN: true }),
  holdMl: fc.double({ min: 50, max: 3000, noNaN: true }),
  halfTimeDays: fc.record({ ethanol: halfTime, extract: halfTime, osmosis: halfTime }),
})
const days = fc.double({ min: 0, max: 400, noNaN: true })

const total = ({ free, held, bed }: Bodies) => addMatter(addMatter(free, held), bed)

describe('settle', () => {
  it('conserves every kind of matter and leaves nothing negative', () => {
    fc.assert(
      fc.property(bodies, fc.option(tissue), days, (start, fruit, elapsed) => {
        const end = settle(start, fruit, elapsed)
        for (const kind of matterKinds) {
          expect(total(end)[kind]).toBeCloseTo(total(start)[kind], 8)
          for (const body of [end.free, end.held, end.bed])
            expect(body[kind]).toBeGreaterThanOrEqual(-1e-8)
        }
      }),
      { numRuns: 3000 },
    )
  })

  it('comes to the same in one go and in two', () => {
    fc.assert(
      fc.property(bodies, fc.option(tissue), days, days, (start, fruit, first, second) => {
        const twice = settle(settle(start, fruit, first), fruit, second)
        const once = settle(start, fruit, first + second)
        for (const kind of matterKinds) {
          expect(twice.free[kind]).toBeCloseTo(once.free[kind], 5)
          expect(twice.held[kind]).toBeCloseTo(once.held[kind], 5)
          expect(twice.bed[kind]).toBeCloseTo(once.bed[kind], 5)
        }
      }),
      { numRuns: 3000 },
    )
  })

  it('does nothing in no time', () => {
    fc.assert(
      fc.property(bodies, tissue, (start, fruit) => {
        const dead = { ...fruit, cells: 'dead' as const }
        const end = settle(start, dead, 0)
        for (const kind of matterKinds) expect(end.held[kind]).toBeCloseTo(start.held[kind], 8)
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
      halfTimeDays: { ethanol: 2, extract: 4, osmosis: 1.5 },
    }
    const end = settle(start, fruit, 1.5)
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
    const end = settle(start, null, 60)
    expect(end.bed.sugarG).toBeGreaterThan(150)
    expect(restingLiquid(start).sugarG).toBeCloseTo(200 - end.bed.sugarG, 6)
  })

  it('refuses time that runs backwards', () => {
    expect(() => settle({ free: noMatter, held: noMatter, bed: noMatter }, null, -1)).toThrow(
      RangeError,
    )
  })
})
