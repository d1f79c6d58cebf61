import { describe, expect, it } from 'vitest'
import { fruitOf } from '../../../main/engine/fruit/fruit-library.ts'
import { usualYieldLPerKg } from '../../../main/engine/fruit/usual-yield.ts'
import { recipeOf, usualRecipe } from '../../../main/engine/season/kind-recipe.ts'
import type { SeasonFacts } from '../../../main/engine/season/season-facts.ts'
import { seasonKinds } from '../../../main/engine/season/season-kinds.ts'
import { paperSpec } from './paper-plan.ts'
import { cellar, plainWishes, stock, wish } from './season-cellar.ts'

const draftFacts = { fruitOf }
const startAt = '2026-11-23T00:00:00.000Z'
const day = 86_400_000

describe('recipeOf', () => {
  it('reads a draft per kilogram of fruit, and its days', () => {
    const recipe = recipeOf(paperSpec(), draftFacts)!
    // 2 kg of cherries: 450 g of sugar in all, 1500 mL poured and 250 to finish.
    expect(recipe.sweetener).toEqual({ id: 'sugar', gPerKg: 225 })
    expect(recipe.spirits).toEqual([{ strengthPctVol: 70, mlPerKg: 875 }])
    expect(recipe.fruits).toEqual([{ fruitId: 'sour_cherry', share: 1 }])
    // Two days under sugar and six weeks; a draw of a week; a day to marry, 14 to settle, one to filter.
    expect([recipe.drawnDay, recipe.emptiedDay, recipe.bottledDay]).toEqual([44, 51, 67])
    // Of spirit, sugar and juice about 1.56 L a kg are bottled; what settles together is a little more.
    expect(recipe.lPerKg).toBeGreaterThan(1.4)
    expect(recipe.lPerKg).toBeLessThan(recipe.settleMlPerKg / 1000)
    expect(recipe.settleMlPerKg).toBeLessThan(1700)
    // 1 kg at 0.655 kg/L would take 1.5 L loose; with 0.75 L of spirit and sugar it is about 1.63 L.
    expect(recipe.steepMlPerKg).toBeGreaterThan(1500)
    expect(recipe.steepMlPerKg).toBeLessThan(1800)
    expect(recipe.spec.vessels).toEqual({ steep: [], extracts: [] })
  })

  it('gives the same of a draft half as large, and adds the finish to the first spirit alone', () => {
    const spec = paperSpec({
      fruits: [
        { fruitId: 'sour_cherry', massG: 1500, refuseShare: 0.1, cut: 'pricked' },
        { fruitId: 'raspberry', massG: 500, refuseShare: 0, cut: 'whole' },
      ],
      spirits: [
        { strengthPctVol: 96, volumeMl: 800 },
        { strengthPctVol: 40, volumeMl: 600 },
      ],
      sweetenerId: 'honey',
    })
    const recipe = recipeOf(spec, draftFacts)!
    expect(recipe.spirits).toEqual([
      { strengthPctVol: 96, mlPerKg: 525 },
      { strengthPctVol: 40, mlPerKg: 300 },
    ])
    expect(recipe.fruits).toEqual([
      { fruitId: 'sour_cherry', share: 0.75 },
      { fruitId: 'raspberry', share: 0.25 },
    ])
    expect(recipe.sweetener.id).toBe('honey')
  })

  it('sums the room of several jars to steep in', () => {
    const vessel = { shape: 'jar' as const, capacityMl: 2500 }
    const two = paperSpec({ vessels: { steep: [vessel, vessel], extracts: [] } })
    const one = recipeOf(paperSpec(), draftFacts)!
    expect(recipeOf(two, draftFacts)!.steepMlPerKg / one.steepMlPerKg).toBeCloseTo(1, 6)
  })

  it('is none where the ledger would refuse the draft', () => {
    // No spirit at all comes out of a jar that is bottled with nothing in it.
    const nothing = paperSpec({
      spirits: [{ strengthPctVol: 70, volumeMl: 0 }],
      finishSpiritMl: 0,
      layeringSugarG: 0,
      sugarDraws: [],
      finishWaterMl: 0,
      finishSugarG: 0,
    })
    expect(recipeOf(nothing, draftFacts)).toBeUndefined()
  })
})

describe('usualRecipe', () => {
  it('finishes a fruit as strong and as sweet as the trade does, of fruit that usually gives three litres', () => {
    const recipe = usualRecipe(fruitOf('sour_cherry'), 96, startAt, draftFacts)!
    // Nine tenths of it are eaten.
    const edibleKg = (0.9 * recipe.spec.fruits[0]!.massG) / 1000
    expect(edibleKg * usualYieldLPerKg(fruitOf('sour_cherry'))).toBeCloseTo(3, 9)
    expect(recipe.spirits).toHaveLength(1)
    expect(recipe.spirits[0]!.strengthPctVol).toBe(96)
    // 32 % vol is all the ethanol there is, but for what stays in the fruit.
    const ethanolMl = recipe.spirits[0]!.mlPerKg * 0.96
    expect(ethanolMl / recipe.lPerKg / 1000).toBeGreaterThan(0.32)
    expect(ethanolMl / recipe.lPerKg / 1000).toBeLessThan(0.42)
    // 200 g/L, of which the cherries bring some.
    expect(recipe.sweetener.gPerKg / recipe.lPerKg).toBeGreaterThan(100)
    expect(recipe.sweetener.gPerKg / recipe.lPerKg).toBeLessThan(260)
  })
})

describe('seasonKinds', () => {
  const kindsOf = (change: Partial<SeasonFacts>) => seasonKinds(cellar(change))
  const cherryOf = (change: Partial<SeasonFacts> = {}) =>
    kindsOf({ stocks: [stock('sour_cherry', 2, 5)], ...change }).kinds[0]!

  it('has a kind for each that is drunk or wished for, once, and that the season knows', () => {
    const wishes = [
      wish('damson', { atLeastMl: 1000 }),
      wish('sour_cherry', { atLeastMl: 1000 }),
      wish('unknown', { atLeastMl: 1000 }),
    ]
    const { kinds, notices } = kindsOf({
      stocks: [stock('sour_cherry', 2, 5), stock('quince', 1, 1)],
      wishes: { ...plainWishes, wishes },
    })
    expect(kinds.map(({ fruit }) => fruit.id)).toEqual(['sour_cherry', 'quince', 'damson'])
    expect(notices).toEqual([])
    // Nothing is known of what was never drunk.
    expect(kinds[2]!.stock).toEqual({
      kindId: 'damson',
      volumeMl: 0,
      perYearMl: { value: 0, low: 0, high: 0 },
      givenShare: 0,
      isOwnHistory: false,
    })
    expect(kinds[2]!.demand.wantedMl).toBe(1000)
  })

  it('is ready after the middle of plenty, its bottling and its rest', () => {
    const cherry = cherryOf()
    const plenty = cherry.supply.flatMap((week, index) => (week === 'plenty' ? index : []))
    const middle = plenty[Math.floor(plenty.length / 2)]!
    // July, so about 33 weeks after the end of November.
    expect(middle).toBeGreaterThanOrEqual(32)
    expect(middle).toBeLessThanOrEqual(35)
    const expectedMs =
      Date.parse(startAt) + (middle * 7 + cherry.recipe!.bottledDay + 6 * 30.44) * day
    expect(cherry.readyMs).toBeCloseTo(expectedMs, -2)
    // Without plenty it is the middle of the season; sold all year, it is now.
    const fruits = [{ ...fruitOf('sour_cherry'), season: undefined, restMonths: undefined }]
    const allYear = cherryOf({ fruits })
    expect(allYear.readyMs).toBeCloseTo(
      Date.parse(startAt) + (allYear.recipe!.bottledDay + 6 * 30.44) * day,
      -2,
    )
    const plain = {
      ...fruitOf('sour_cherry'),
      season: { ...fruitOf('sour_cherry').season!, peakMonths: [] },
    }
    const even = cherryOf({ fruits: [plain] })
    const likely = even.supply.flatMap((week, index) => (week === 'likely' ? index : []))
    expect(likely.length).toBeGreaterThan(10)
    expect(even.readyMs - (even.recipe!.bottledDay + 6 * 30.44) * day).toBeCloseTo(
      Date.parse(startAt) + likely[Math.floor(likely.length / 2)]! * 7 * day,
      -2,
    )
  })

  it('counts what stands in jars and will be bottled to the stock', () => {
    const standing = {
      jars: [],
      settles: [],
      toCome: [
        { kindId: 'sour_cherry', volumeMl: 700 },
        { kindId: 'quince', volumeMl: 9000 },
        { kindId: 'sour_cherry', volumeMl: 300 },
      ],
    }
    const cherry = cherryOf({ standing, stocks: [stock('sour_cherry', 12, 5)] })
    expect(cherry.inJarsMl).toBe(1000)
    const without = cherryOf({ stocks: [stock('sour_cherry', 13, 5)] })
    expect(cherry.demand.leftThenMl).toEqual(without.demand.leftThenMl)
    expect(cherry.demand.leftThenMl.value).toBeGreaterThan(0)
  })

  it('goes into the bottles of its wish, or the usual ones', () => {
    const wishes = [
      wish('quince', { atLeastMl: 1, bottleSizeMl: 100 }),
      wish('sour_cherry', { atLeastMl: 1 }),
      wish('sour_cherry', { atLeastMl: 1, bottleSizeMl: 250, purpose: 'gift' }),
    ]
    expect(cherryOf({ wishes: { ...plainWishes, wishes } }).bottleSizeMl).toBe(250)
    expect(cherryOf().bottleSizeMl).toBe(500)
    expect(cherryOf({ wishes: { ...plainWishes, wishes } }).demand.needs).toContainEqual({
      because: 'gift',
      priority: 'should',
      volumeMl: 1,
    })
  })

  it('is made as it was last, unless that was no batch of it, or one with mistakes', () => {
    const known = (kindId: string, change: Parameters<typeof paperSpec>[0] = {}) => ({
      kindId,
      spec: paperSpec(change),
      batchId: 'last',
    })
    const own = cherryOf({ recipes: [known('quince'), known('sour_cherry')] })
    expect(own.known?.batchId).toBe('last')
    expect(own.recipe!.spirits[0]!.strengthPctVol).toBe(70)
    const fruits = (cherryG: number) => [
      { fruitId: 'raspberry', massG: 1000, refuseShare: 0, cut: 'whole' as const },
      { fruitId: 'sour_cherry', massG: cherryG, refuseShare: 0, cut: 'pricked' as const },
    ]
    const half = cherryOf({ recipes: [known('sour_cherry', { fruits: fruits(1000) })] })
    expect(half.known?.batchId).toBe('last')
    const less = cherryOf({ recipes: [known('sour_cherry', { fruits: fruits(900) })] })
    expect(less.known).toBeUndefined()
    // By the library then, with the season's spirit.
    expect(less.recipe!.spirits[0]!.strengthPctVol).toBe(96)
  })

  it('blends the litres that own batches gave from a kilogram of what can be eaten', () => {
    const ownYields = [
      { fruitId: 'quince', own: 9, batchIds: ['q'] },
      { fruitId: 'sour_cherry', own: 2, batchIds: ['a', 'b'] },
    ]
    const bare = cherryOf()
    const own = cherryOf({ ownYields })
    // 0.9 of a cherry is eaten: 1.8 L/kg as bought, half of it believed after two batches.
    expect(own.lPerKg.value).toBeCloseTo((1.8 + bare.recipe!.lPerKg) / 2, 9)
    expect(own.yieldBatchIds).toEqual(['a', 'b'])
    expect(bare.lPerKg.value).toBeCloseTo(bare.recipe!.lPerKg, 12)
    expect(bare.yieldBatchIds).toEqual([])
  })

  it('takes the days on which the cellar bought the fruit into account', () => {
    const fresh = [2025, 2026].map((year) => ({
      fruitId: 'sour_cherry',
      batchId: `${year}`,
      atMs: Date.UTC(year, 6, 16, 12) + 28 * day,
    }))
    const weekOf = (change: Partial<SeasonFacts>) => cherryOf(change).supply.indexOf('plenty')
    // Four weeks later in two years: half of it believed.
    expect(weekOf({ fresh }) - weekOf({})).toBe(2)
    const others = fresh.map((one) => ({ ...one, fruitId: 'quince' }))
    expect(weekOf({ fresh: others })).toBe(weekOf({}))
  })
})
