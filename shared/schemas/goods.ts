import * as z from 'zod'
import { Id, Name } from './basics.ts'

const pct = z.number().min(0).max(100)

/**
 * What a gram of fruit or sweetener is made of: percent of the edible mass; stones, cores and
 * other inert parts are the rest of the bought mass. Kept inside the purchase, so that later
 * changes to the fruit library never change what was once bought.
 */
export const Composition = z
  .strictObject({
    edibleFraction: z.number().positive().max(1),
    waterPct: pct,
    sugarPct: pct,
    acidPct: pct,
    solublesPct: pct,
    pulpPct: pct,
  })
  .refine(
    (c) => Math.abs(c.waterPct + c.sugarPct + c.acidPct + c.solublesPct + c.pulpPct - 100) < 1e-6,
    'the parts must add up to 100 %',
  )
export type Composition = z.infer<typeof Composition>

/** What a pantry lot is. `composition` is filled in from the library when it is left out. */
export const Goods = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('fruit'),
    fruitId: Id,
    name: Name.optional(),
    composition: Composition.optional(),
  }),
  z.strictObject({
    kind: z.literal('spirit'),
    name: Name.optional(),
    strengthPctVol: z.number().positive().max(97.2),
  }),
  z.strictObject({
    kind: z.literal('sweetener'),
    sweetenerId: z.enum(['sugar', 'honey']),
    name: Name.optional(),
    composition: Composition.optional(),
  }),
  /** Citric acid, as powder: what a flat liqueur is sharpened with. */
  z.strictObject({ kind: z.literal('acid'), name: Name.optional() }),
])
export type Goods = z.infer<typeof Goods>
