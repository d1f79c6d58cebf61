/** What differs today when a move of the past is changed or struck. */
import * as z from 'zod'
import { Id } from './basics.ts'
import { Liquid, Stage } from './cellar.ts'
import { Goods } from './goods.ts'
import { Task } from './tasks.ts'

/** The numbers that a maker compares. */
export const LiquidNumbers = Liquid.pick({
  volumeMl: true,
  strengthPctVol: true,
  sugarGPerL: true,
})
export type LiquidNumbers = z.infer<typeof LiquidNumbers>

/** Each side is null where there is nothing: no liquid in the jar, no such lot. */
const sides = <T extends z.ZodType>(side: T) => ({
  before: side.nullable(),
  after: side.nullable(),
})

export const Differences = z.strictObject({
  batches: z.array(
    z.strictObject({
      batchId: Id,
      ...sides(z.strictObject({ stage: Stage, liquid: LiquidNumbers.nullable() })),
    }),
  ),
  /** The liquid that pours. */
  jars: z.array(z.strictObject({ jarId: Id, ...sides(LiquidNumbers) })),
  /** Full bottles, and what is in one of them. */
  bottles: z.array(
    z.strictObject({
      bottleLotId: Id,
      name: z.string(),
      ...sides(z.strictObject({ count: z.number().int(), liquid: LiquidNumbers.nullable() })),
    }),
  ),
  /** Uncorked bottles. */
  opened: z.array(z.strictObject({ openedId: Id, name: z.string(), ...sides(LiquidNumbers) })),
  pantry: z.array(
    z.strictObject({
      lotId: Id,
      goods: Goods,
      /** `volumeMl` of spirits alone. */
      ...sides(z.strictObject({ massG: z.number(), volumeMl: z.number().optional() })),
    }),
  ),
})
export type Differences = z.infer<typeof Differences>

/** Tasks that come up, fall away, or go to another day. */
export const TaskDifference = z.strictObject({ taskId: z.string(), ...sides(Task) })
export type TaskDifference = z.infer<typeof TaskDifference>
