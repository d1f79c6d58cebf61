import * as z from 'zod'
import { Id, Name } from './basics.ts'
import { Composition } from './goods.ts'

/** How liquid gets in and out of a kind of fruit; names the row of the half-time table. */
export const KineticClass = z.enum([
  'cutSoft',
  'softWhole',
  'thinSkin',
  'waxySkin',
  'hardSlice',
  'dry',
  'driedFruit',
])
export type KineticClass = z.infer<typeof KineticClass>

/** Typical, low and high value; low ≤ typical ≤ high. */
export const Range = z
  .strictObject({
    typical: z.number().nonnegative(),
    low: z.number().nonnegative(),
    high: z.number().nonnegative(),
  })
  .refine((r) => r.low <= r.typical && r.typical <= r.high, 'low ≤ typical ≤ high is needed')
export type Range = z.infer<typeof Range>

/** The piece as the trade steeps it: half a slice's thickness, or a radius. */
export const Piece = z.strictObject({
  shape: z.enum(['slab', 'cylinder', 'sphere']),
  halfSizeMm: z.number().min(0.1).max(50),
})
export type Piece = z.infer<typeof Piece>

const litresPerKg = z.number().nonnegative().max(5)

/** What decides how a fruit treats liquid. A charge keeps it, as a purchase keeps its composition. */
export const FruitTissue = z.strictObject({
  kineticClass: KineticClass,
  /** Left out where the pieces have no geometry of their own. */
  piece: Piece.optional(),
  /** Litres of liquid a kilogram of edible fruit still holds after draining, after pressing. */
  drainedLPerKg: litresPerKg,
  pressedLPerKg: litresPerKg,
  bulkDensityKgPerL: z.number().positive().max(3),
  /** How many times faster than the class this fruit was found to be; learned, 1 when left out. */
  pace: z.number().min(0.05).max(20).optional(),
})
export type FruitTissue = z.infer<typeof FruitTissue>

const Month = z.number().int().min(1).max(12)
const text = z.string().max(2000)

/** One kind of fruit or botanical: facts from the library, with where each came from. */
export const Fruit = z.strictObject({
  id: Id,
  nameEn: Name,
  namePl: z.string().max(120),
  latin: z.string().max(120),
  kind: z.string().min(1).max(40),
  composition: Composition,
  ...FruitTissue.shape,
  drainedRangeLPerKg: Range.optional(),
  pressedRangeLPerKg: Range.optional(),
  /** In the north-temperate zone, with the months of plenty. */
  season: z
    .strictObject({ startMonth: Month, endMonth: Month, peakMonths: z.array(Month).max(12) })
    .optional(),
  /** Weeks by which the season lies later (or, below zero, earlier) around the Mediterranean. */
  mediterraneanShiftWeeks: z.number().min(-12).max(12).optional(),
  preparation: text,
  steepingStrengthPctVol: Range.optional(),
  steepingWeeks: Range.optional(),
  fruitKgPerLSpirit: Range.optional(),
  finishedSugarGPerL: Range.optional(),
  finishedStrengthPctVol: Range.optional(),
  restMonths: Range.optional(),
  drinkByYears: Range.optional(),
  /** How likely pectin clouds the liqueur. */
  pectinHaze: z.enum(['low', 'medium', 'high']).optional(),
  hazards: z.array(text).max(20),
  /** Source code by field; the codes are explained in the library's `sources`. */
  sources: z.record(z.string().max(80), z.string().max(400)),
})
export type Fruit = z.infer<typeof Fruit>

/** Where a cellar's fruit comes from: the library, the maker's copy of it, or a fruit of their own. */
export const FruitOrigin = z.enum(['library', 'edited', 'own'])
export type FruitOrigin = z.infer<typeof FruitOrigin>

/** One quantity learned from the maker's finished batches, shrunk to the library's value. */
export const Learned = z.strictObject({
  /** The mean of the maker's own, the library's value, and what is reckoned with. */
  own: z.number(),
  library: z.number(),
  blended: z.number(),
  batchIds: z.array(Id).min(1),
})
export type Learned = z.infer<typeof Learned>

export const FruitLearned = z.strictObject({
  fruitId: Id,
  drainedLPerKg: Learned.optional(),
  pressedLPerKg: Learned.optional(),
  /** Finished litres per kilogram of edible fruit; the library's is the trade's usual yield. */
  yieldLPerKg: Learned.optional(),
  /** Times faster than the kinetic class. */
  pace: Learned.optional(),
})
export type FruitLearned = z.infer<typeof FruitLearned>

export const FruitPage = z.strictObject({
  /** As this cellar reckons with it. */
  fruit: Fruit,
  origin: FruitOrigin,
  /** The library's own row, absent for a fruit of the maker's own. */
  library: Fruit.optional(),
  learned: FruitLearned.optional(),
  /** True while a purchase, draft, recipe or plan names it. */
  isUsed: z.boolean(),
  /** What each source code of the fruit stands for. */
  sourceMeanings: z.record(z.string(), z.string()),
})
export type FruitPage = z.infer<typeof FruitPage>
