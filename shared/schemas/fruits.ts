import * as z from 'zod'
import { Id } from './basics.ts'
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

const Range = z.strictObject({ typical: z.number(), low: z.number(), high: z.number() })

/** One kind of fruit or botanical: facts from the library, with where each came from. */
export const Fruit = z.strictObject({
  id: Id,
  nameEn: z.string(),
  namePl: z.string(),
  latin: z.string(),
  kind: z.string(),
  composition: Composition,
  bulkDensityKgPerL: z.number(),
  kineticClass: KineticClass,
  /** Litres of liquid a kilogram of edible fruit still holds after draining, after pressing. */
  drainedLPerKg: z.number(),
  pressedLPerKg: z.number(),
  season: z.strictObject({ startMonth: z.number(), endMonth: z.number() }).optional(),
  preparation: z.string(),
  steepingStrengthPctVol: Range.optional(),
  steepingWeeks: Range.optional(),
  fruitKgPerLSpirit: Range.optional(),
  finishedSugarGPerL: Range.optional(),
  finishedStrengthPctVol: Range.optional(),
  restMonths: Range.optional(),
  hazards: z.array(z.string()),
  /** Source code by field; the codes are explained in the library's `sources`. */
  sources: z.record(z.string(), z.string()),
})
export type Fruit = z.infer<typeof Fruit>
