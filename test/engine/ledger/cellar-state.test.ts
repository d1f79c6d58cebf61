import { describe, expect, it } from 'vitest'
import { jarAt } from '../../../main/engine/ledger/cellar-state.ts'
import { mixingLagDays } from '../../../main/engine/steeping/keeping.ts'
import { buyFruit, buySpirit, buySugar, dayAt, folded, type Deed } from './book-of-moves.ts'

type Lines = readonly (readonly [day: number, deed: Deed])[]

const inJar = { batchId: 'a', jarId: 'jar' }
const at = (day: number) => Date.parse(dayAt(day))
const steeped: Lines = [
  [0, buyFruit('fruit', 'sour_cherry', 2000)],
  [0, buySpirit('spirit', 3000, 70)],
  [0, buySugar('sugar', 1000)],
  [1, { kind: 'charge', ...inJar, lotId: 'fruit', massG: 1000, cut: 'whole' }],
  [2, { kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl: 1000 }],
]
const jarAfter = (...lines: Lines) => {
  const { cellar, refused } = folded([...steeped, ...lines])
  expect(refused).toEqual([])
  const jar = cellar.jars.get('jar')
  if (!jar) throw new Error('the jar stands empty')
  return jar
}

describe('the stage of a jar', () => {
  it('is dated from the move that brought it, and stays so while more comes in', () => {
    expect(jarAfter()).toMatchObject({ stage: 'steeping', stageSinceMs: at(2) })
    const more = jarAfter([5, { kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl: 100 }])
    expect(more).toMatchObject({ stage: 'steeping', stageSinceMs: at(2), atMs: at(5) })
    const drawn = jarAfter([30, { kind: 'drawOff', batchId: 'a', fromJarId: 'jar', toJarId: 'b' }])
    expect(drawn).toMatchObject({ stage: 'drawnOff', stageSinceMs: at(30) })
  })

  it('is dated anew for the next batch in the same jar', () => {
    const next = jarAfter(
      [5, { kind: 'discard', from: { jarId: 'jar', part: 'all' } }],
      [6, { kind: 'charge', batchId: 'b', jarId: 'jar', lotId: 'fruit', massG: 500, cut: 'whole' }],
      [7, { kind: 'pourSpirit', batchId: 'b', jarId: 'jar', lotId: 'spirit', volumeMl: 500 }],
    )
    expect(next).toMatchObject({ batchId: 'b', stage: 'steeping', stageSinceMs: at(7) })
  })
})

describe('the clock of a jar', () => {
  it('starts anew with a lag where something was poured in, and has to mix first', () => {
    expect(jarAfter().clock).toMatchObject({ atMs: at(2), lagDays: mixingLagDays.weekly })
    expect(mixingLagDays.weekly).toBeGreaterThan(0)
    const drawn = jarAfter([
      30,
      { kind: 'drawOff', batchId: 'a', fromJarId: 'jar', toJarId: 'b', volumeMl: 300 },
    ])
    expect(drawn.clock).toMatchObject({ atMs: at(30), lagDays: 0 })
  })

  it('goes on where a jar was only looked at, or told to be turned as it is', () => {
    const tasted = jarAfter([9, { kind: 'taste', ...inJar, scores: {} }])
    expect(tasted.clock.atMs).toBe(at(2))
    const warmer = jarAfter([9, { kind: 'keep', ...inJar, temperatureC: 26 }])
    expect(warmer.clock.atMs).toBe(at(9))
    expect(warmer.keeping).toMatchObject({ temperatureC: 26, turned: 'weekly' })
    const turned = jarAfter([9, { kind: 'keep', ...inJar, turned: 'daily' }])
    expect(turned.keeping).toEqual({ ...jarAfter().keeping, turned: 'daily' })
  })

  it('tells what stands there at any instant, and keeps all of it', () => {
    const { cellar } = folded(steeped)
    const [early, late] = [5, 60].map((day) => jarAt(cellar, 'jar', at(day)))
    expect(early?.bodies.free.ethanolG ?? 0).toBeGreaterThan(late?.bodies.free.ethanolG ?? 0)
    const ethanolIn = (jar: typeof early) =>
      (jar?.bodies.free.ethanolG ?? 0) + (jar?.bodies.held.ethanolG ?? 0)
    expect(ethanolIn(early)).toBeCloseTo(ethanolIn(late), 6)
    expect(late?.colourFraction ?? 0).toBeGreaterThan(early?.colourFraction ?? 1)
    expect(jarAt(cellar, 'nowhere', at(5))).toBeUndefined()
  })
})

describe('what lies outside', () => {
  it('holds less by all that was bought and more by all that was thrown away', () => {
    const { cellar } = folded([
      ...steeped,
      [5, { kind: 'discard', from: { jarId: 'jar', part: 'all' } }],
    ])
    const supplier = cellar.outside.get('outside:supplier')
    const waste = cellar.outside.get('outside:waste')
    expect(supplier?.sugarG).toBeLessThan(-1000)
    // A litre at 70 % vol, by the density of ethanol.
    expect(waste?.ethanolG).toBeCloseTo(1000 * 0.7 * 0.78924, 0)
    expect(cellar.outside.get('outside:tap')).toMatchObject({ waterG: 0 })
  })
})
