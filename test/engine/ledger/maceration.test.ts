import { describe, expect, it } from 'vitest'
import {
  describeJar,
  describeLiquid,
  fruitOf,
  jarPlace,
  settledJar,
  type CellarState,
  type JarState,
} from '../../../main/engine/index.ts'
import { macerationChecks as checks } from '../../references/maceration-checks.ts'
import { buyFruit, buySpirit, buySugar, folded, type Deed } from './book-of-moves.ts'

type Line = readonly [day: number, deed: Deed]

const batchId = 'batch'
const years = 3 * 365

const expectWithin = (
  value: number,
  { expected, tolerance }: { expected: number; tolerance: number },
) => expect(Math.abs(value - expected)).toBeLessThanOrEqual(tolerance)

/** A purchase of fruit of which this share is juicy; the rest is stones. */
function fruitLot(fruitId: string, massKg: number, edibleFraction: number): Deed {
  const deed = buyFruit('fruit', fruitId, massKg * 1000)
  if (deed.kind !== 'buy' || deed.goods.kind !== 'fruit') throw new Error('not fruit')
  const composition = { ...fruitOf(fruitId).composition, edibleFraction }
  return { ...deed, goods: { ...deed.goods, composition } }
}

function steeped(fruit: {
  fruitId: string
  fruitKg: number
  edibleFraction: number
  spiritL: number
  spiritPctVol: number
  sugarKg?: number
}): readonly Line[] {
  const jarId = 'jar'
  const sugarG = 1000 * (fruit.sugarKg ?? 0)
  return [
    [0, fruitLot(fruit.fruitId, fruit.fruitKg, fruit.edibleFraction)],
    [0, buySpirit('spirit', fruit.spiritL * 1000, fruit.spiritPctVol)],
    [0, buySugar('sugar', 2000)],
    [
      0,
      { kind: 'charge', batchId, jarId, lotId: 'fruit', massG: fruit.fruitKg * 1000, cut: 'cut' },
    ],
    ...(sugarG > 0
      ? [[0, { kind: 'sugar', batchId, jarId, lotId: 'sugar', massG: sugarG }] as const]
      : []),
    [0, { kind: 'pourSpirit', batchId, jarId, lotId: 'spirit', volumeMl: fruit.spiritL * 1000 }],
  ]
}

function jarLater(cellar: CellarState, jarId: string): JarState {
  const jar = cellar.jars.get(jarId)
  if (!jar) throw new Error(`no ${jarId}`)
  return settledJar(jar, jar.atMs + years * 86_400_000)
}

function restingStrength(deeds: readonly Line[]): number {
  const liquid = describeLiquid(jarLater(folded(deeds).cellar, 'jar').bodies.free)
  if (!liquid) throw new Error('no liquid')
  return liquid.strengthPctVol
}

describe('the first juice that sugar draws', () => {
  it('is no liquid until it could be told as a millilitre', () => {
    const lines = steeped({
      fruitId: 'plum',
      fruitKg: 1.2,
      edibleFraction: 0.95,
      spiritL: 0.7,
      spiritPctVol: 70,
      sugarKg: 0.15,
    }).slice(0, -1)
    const jar = folded(lines).cellar.jars.get('jar') as JarState
    const after = (minutes: number) =>
      describeJar('jar', settledJar(jar, jar.atMs + minutes * 60_000))
    expect(after(0)).not.toHaveProperty('liquid')
    const soon = Array.from({ length: 120 }, (_, minute) => after(minute))
    const first = soon.find(({ liquid }) => liquid)?.liquid
    // It begins at half a millilitre, and a minute brings less than five.
    expect(first?.volumeMl).toBeGreaterThanOrEqual(0.5)
    expect(first?.volumeMl).toBeLessThan(5)
    expect(after(12 * 60).liquid?.volumeMl).toBeGreaterThan(first?.volumeMl ?? 0)
    const traces = soon.filter(({ liquid }) => !liquid).map(({ free }) => free.waterG)
    expect(Math.max(...traces)).toBeLessThan(0.6)
  })
})

describe('steeping to equilibrium', () => {
  const industrial = checks.industrialSourCherry
  const cherries = {
    fruitId: 'sour_cherry',
    fruitKg: industrial.fruitKg,
    spiritL: (100 * industrial.pureAlcoholL) / industrial.spiritPctVol,
    spiritPctVol: industrial.spiritPctVol,
  }

  it('rests where a published industrial sour cherry infusion does: 31 % vol', () => {
    const deeds = steeped({ ...cherries, edibleFraction: industrial.edibleFraction })
    expectWithin(restingStrength(deeds), industrial.strengthPctVol)
  })

  it('would rest weaker if stones gave juice', () => {
    const deeds = steeped({
      ...cherries,
      edibleFraction: checks.stonesCountedAsFlesh.edibleFraction,
    })
    expectWithin(restingStrength(deeds), checks.stonesCountedAsFlesh.strengthPctVol)
  })

  it('rests at the usual strength of sloes in 40 % spirit', () => {
    expectWithin(
      restingStrength(steeped({ fruitId: 'sloe', ...checks.sloe })),
      checks.sloe.strengthPctVol,
    )
  })

  it('rests at 46 % vol for raspberries by the handbook of 1855', () => {
    const deeds = steeped({ fruitId: 'raspberry', ...checks.raspberry })
    expectWithin(restingStrength(deeds), checks.raspberry.strengthPctVol)
  })
})

describe('stoned sour cherries, one sugar draw, pressed and married', () => {
  const check = checks.stonedSourCherry
  const steep = steeped({
    fruitId: 'sour_cherry',
    fruitKg: 1,
    edibleFraction: 1,
    spiritL: 1,
    spiritPctVol: 70,
    sugarKg: 0.3,
  })
  const draw: Line[] = [
    ...steep,
    [300, { kind: 'drawOff', batchId, fromJarId: 'jar', toJarId: 'first' }],
    [300, { kind: 'coverWithSugar', batchId, jarId: 'jar', lotId: 'sugar', massG: 250 }],
    [600, { kind: 'drawOff', batchId, fromJarId: 'jar', toJarId: 'second' }],
  ]
  const whole: Line[] = [
    ...draw,
    [600, { kind: 'press', batchId, fromJarId: 'jar', toJarId: 'pressings' }],
    [
      601,
      {
        kind: 'marry',
        batchId,
        parts: [{ jarId: 'first' }, { jarId: 'second' }, { jarId: 'pressings' }],
        toJarId: 'demijohn',
      },
    ],
  ]

  it('rests at 2.10 L of 33.4 % vol and 184 g/L in all', () => {
    const { resting } = describeJar('jar', jarLater(folded(steep).cellar, 'jar'))
    expectWithin((resting?.volumeMl ?? 0) / 1000, check.volumeL)
    expectWithin(resting?.strengthPctVol ?? 0, check.strengthPctVol)
    expectWithin(resting?.sugarGPerL ?? 0, check.sugarGPerL)
  })

  it('gives 0.45 L of 27 % vol to the sugar draw, 56 % of what the fruit held', () => {
    const { cellar, steps } = folded(draw)
    const second = describeLiquid((cellar.jars.get('second') as JarState).bodies.free)
    expectWithin((second?.volumeMl ?? 0) / 1000, check.draw.volumeL)
    expectWithin(second?.strengthPctVol ?? 0, check.draw.strengthPctVol)
    const covered = steps.find((step) => step.recorded.move.kind === 'coverWithSugar')
    const heldG = covered?.effect.jars?.get('jar')?.bodies.held.ethanolG ?? 0
    const drawnG = (cellar.jars.get('second') as JarState).bodies.free.ethanolG
    expectWithin(drawnG / heldG, check.draw.recovered)
  })

  it('marries to 1.97 L of 31.7 % vol and 257 g/L, with 89 % of the ethanol', () => {
    const { cellar, steps, refused } = folded(whole)
    expect(refused).toEqual([])
    const married = cellar.jars.get('demijohn') as JarState
    const liquid = describeLiquid(married.bodies.free)
    expectWithin((liquid?.volumeMl ?? 0) / 1000, check.married.volumeL)
    expectWithin(liquid?.strengthPctVol ?? 0, check.married.strengthPctVol)
    expectWithin(liquid?.sugarGPerL ?? 0, check.married.sugarGPerL)
    const poured = steps.find((step) => step.recorded.move.kind === 'pourSpirit')
    const transfer = poured?.effect.transfers[0]
    expect(transfer?.to).toBe(jarPlace('jar'))
    expectWithin(
      married.bodies.free.ethanolG / (transfer?.matter.ethanolG ?? 1),
      check.married.ethanolRecovered,
    )
  })
})

describe('a country batch of stalks, as the trade makes it', () => {
  // Common practice, no source: about 3 kg of rhubarb layered with sugar in two jars, 0.7 L of water
  // and two portions of 0.5 L of 95 % spirit to each, four months, two sugar draws of two days;
  // about eight ordinary bottles come out. How much sugar is not told: half the fruit's mass in the
  // layers, a quarter of it at each draw, the library's usual amounts.
  const jars = ['one', 'two'] as const
  const sugarG = (day: number, jarId: string, massG: number): Line => [
    day,
    { kind: 'sugar', batchId, jarId, lotId: 'sugar', massG },
  ]
  const draw = (day: number, jarId: string): Line[] => [
    [day, { kind: 'crush', batchId, jarId }],
    [day, { kind: 'coverWithSugar', batchId, jarId, lotId: 'sugar', massG: 375 }],
    [day + 2, { kind: 'drawOff', batchId, fromJarId: jarId, toJarId: 'all' }],
  ]
  const country: Line[] = [
    [0, buyFruit('fruit', 'rhubarb', 3000)],
    [0, buySpirit('spirit', 2000, 95)],
    [0, buySugar('sugar', 4000)],
    ...jars.flatMap((jarId): Line[] => [
      [0, { kind: 'charge', batchId, jarId, lotId: 'fruit', massG: 1500, cut: 'cut' }],
      sugarG(0, jarId, 750),
      [1, { kind: 'pourWater', batchId, jarId, volumeMl: 700 }],
      [1, { kind: 'pourSpirit', batchId, jarId, lotId: 'spirit', volumeMl: 500 }],
      [3, { kind: 'pourSpirit', batchId, jarId, lotId: 'spirit', volumeMl: 500 }],
      [121, { kind: 'drawOff', batchId, fromJarId: jarId, toJarId: 'all' }],
      ...draw(121, jarId),
      ...draw(123, jarId),
    ]),
  ]

  it('comes to between 5 and 8 L of 20 to 35 % vol', () => {
    const { cellar, refused } = folded(country)
    expect(refused).toEqual([])
    const all = cellar.jars.get('all')
    const liquid = all && describeLiquid(all.bodies.free)
    if (!liquid) throw new Error('nothing came out')
    expect(liquid.volumeMl).toBeGreaterThan(5000)
    expect(liquid.volumeMl).toBeLessThan(8000)
    expect(liquid.strengthPctVol).toBeGreaterThan(20)
    expect(liquid.strengthPctVol).toBeLessThan(35)
  })
})
