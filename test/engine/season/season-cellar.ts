/** Facts of a season made up for a test: library fruits, round numbers. */
import { fruitLibrary } from '../../../main/engine/fruit/fruit-library.ts'
import type { SeasonFacts, StockOfKind } from '../../../main/engine/season/season-facts.ts'
import type { Jar } from '../../../shared/schemas/cellar.ts'
import type { SeasonWish, SeasonWishes } from '../../../shared/schemas/season.ts'

export const jar = (id: string, capacityMl: number, shape: Jar['shape'] = 'jar'): Jar => ({
  id,
  name: id,
  shape,
  capacityMl,
  isRetired: false,
})

export const stock = (kindId: string, volumeL: number, perYearL: number): StockOfKind => ({
  kindId,
  volumeMl: volumeL * 1000,
  perYearMl: { value: perYearL * 1000, low: perYearL * 800, high: perYearL * 1200 },
  givenShare: 0.25,
  isOwnHistory: true,
})

export const wish = (kindId: string, change: Partial<SeasonWish>): SeasonWish => ({
  id: `wish-${kindId}-${change.purpose ?? 'drink'}`,
  kindId,
  purpose: 'drink',
  priority: 'should',
  note: '',
  ...change,
})

export const plainWishes: SeasonWishes = {
  wishes: [],
  limits: { isSpiritAtHandOnly: false },
  prices: {
    fruits: [
      { fruitId: 'sour_cherry', minorPerKg: 450 },
      { fruitId: 'raspberry', minorPerKg: 900 },
      { fruitId: 'damson', minorPerKg: 300 },
      { fruitId: 'quince', minorPerKg: 350 },
    ],
    spirits: [{ strengthPctVol: 96, minorPerL: 1800 }],
    sugarMinorPerKg: 120,
    bottleMinor: 90,
    corkMinor: 20,
    labelMinor: 10,
  },
  reserveMonths: 0,
  spiritPctVol: 96,
  bottleSizeMl: 500,
  cleaningWeeks: 1,
}

export const cellar = (change: Partial<SeasonFacts> = {}): SeasonFacts => ({
  nowMs: Date.parse('2026-11-25T18:00:00Z'),
  startMs: Date.parse('2026-11-25T18:00:00Z'),
  wishes: plainWishes,
  region: { zone: 'northTemperate', ownShiftWeeks: 0 },
  fruits: [...fruitLibrary.values()],
  fresh: [],
  stocks: [
    stock('sour_cherry', 2, 5),
    stock('raspberry', 1, 4),
    stock('damson', 3, 3),
    stock('quince', 1, 2),
  ],
  ownYields: [],
  recipes: [],
  jars: [
    jar('a', 3000),
    jar('b', 3000),
    jar('c', 4000),
    jar('d', 5000),
    jar('e', 5000, 'demijohn'),
    jar('f', 2000),
  ],
  standing: { jars: [], settles: [], toCome: [] },
  pantry: { fruits: [], spirits: [], sweeteners: [] },
  lastPaid: { fruits: [], spirits: [] },
  ...change,
})

/** Twenty jars of a well-filled cellar. */
const jarSizes: readonly (readonly [capacityMl: number, count: number])[] = [
  [2000, 4],
  [3000, 4],
  [4000, 6],
  [5000, 3],
  [10_000, 2],
  [15_000, 1],
]

/** Twenty jars, and so many litres of each kind drunk in a year, more or less, with none left. */
export const wholeYear = (kindIds: readonly string[], litres: number): SeasonFacts =>
  cellar({
    jars: jarSizes.flatMap(([capacityMl, count], size) =>
      Array.from({ length: count }, (_, index) => jar(`jar-${size}-${index}`, capacityMl)),
    ),
    stocks: kindIds.map((id, index) => stock(id, 0, (litres * (6 + (index % 5))) / 8)),
  })
