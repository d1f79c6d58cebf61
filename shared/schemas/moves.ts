import * as z from 'zod'
import {
  CellarTemperatureC,
  Count,
  Id,
  Instant,
  MassG,
  Name,
  Note,
  StrengthPctVol,
  SugarGPerL,
  PouringTemperatureC,
  VolumeMl,
} from './basics.ts'
import { FruitTissue } from './fruits.ts'
import { Goods } from './goods.ts'
import { Reading } from './readings.ts'

const always = { at: Instant, note: Note.optional() }
const inBatch = { ...always, batchId: Id }

/** How the fruit went into the jar. It decides how fast liquid passes in and out. */
export const Cut = z.enum(['whole', 'pricked', 'cut', 'crushed', 'frozen'])
export type Cut = z.infer<typeof Cut>

/** How often a jar is turned or stirred: spirit floats on syrup, and only mixing brings it to the fruit. */
export const Turned = z.enum(['daily', 'weekly', 'never'])
export type Turned = z.infer<typeof Turned>

export const Buy = z.strictObject({
  ...always,
  kind: z.literal('buy'),
  lotId: Id,
  goods: Goods,
  /** Fruit and sweeteners are bought by mass, spirit by volume at 20 °C. */
  massG: MassG.optional(),
  volumeMl: VolumeMl.optional(),
  /** In the smallest unit of the cellar's currency. */
  priceMinor: z.number().int().nonnegative().optional(),
})

export const Charge = z.strictObject({
  ...inBatch,
  kind: z.literal('charge'),
  jarId: Id,
  lotId: Id,
  massG: MassG,
  /** Stones, stalks, peel taken out before charging: part of `massG`, goes to waste. */
  refuseG: z.number().nonnegative().optional(),
  cut: Cut,
  /** Thickness of the slices, or diameter of the pieces, where the maker measured it. */
  pieceMm: z.number().min(0.5).max(100).optional(),
  /** How this fruit treats liquid, as known on the day; filled in from the library when left out. */
  tissue: FruitTissue.optional(),
})

export const Sugar = z.strictObject({
  ...inBatch,
  kind: z.literal('sugar'),
  jarId: Id,
  lotId: Id,
  massG: MassG,
})

export const PourSpirit = z.strictObject({
  ...inBatch,
  kind: z.literal('pourSpirit'),
  jarId: Id,
  lotId: Id,
  volumeMl: VolumeMl,
  temperatureC: PouringTemperatureC.optional(),
})

export const PourWater = z.strictObject({
  ...inBatch,
  kind: z.literal('pourWater'),
  jarId: Id,
  volumeMl: VolumeMl,
  temperatureC: PouringTemperatureC.optional(),
})

/** How the jar is kept from now on: how warm, and how often it is turned. */
export const Keep = z.strictObject({
  ...inBatch,
  kind: z.literal('keep'),
  jarId: Id,
  temperatureC: CellarTemperatureC.optional(),
  turned: Turned.optional(),
})

export const Stir = z.strictObject({ ...inBatch, kind: z.literal('stir'), jarId: Id })

export const Read = z.strictObject({
  ...inBatch,
  kind: z.literal('read'),
  jarId: Id,
  reading: Reading,
  /** A doubtful reading counts only once its maker has confirmed it. */
  isConfirmed: z.boolean().optional(),
})

export const DrawOff = z.strictObject({
  ...inBatch,
  kind: z.literal('drawOff'),
  fromJarId: Id,
  toJarId: Id,
  /** Left out: all the free liquid. */
  volumeMl: VolumeMl.optional(),
})

export const Press = z.strictObject({
  ...inBatch,
  kind: z.literal('press'),
  fromJarId: Id,
  toJarId: Id,
  /** Left out: down to what a pressed fruit of this kind still holds. */
  volumeMl: VolumeMl.optional(),
})

export const Crush = z.strictObject({ ...inBatch, kind: z.literal('crush'), jarId: Id })

export const CoverWithSugar = z.strictObject({
  ...inBatch,
  kind: z.literal('coverWithSugar'),
  jarId: Id,
  lotId: Id,
  massG: MassG,
})

export const Marry = z.strictObject({
  ...inBatch,
  kind: z.literal('marry'),
  parts: z
    .array(z.strictObject({ jarId: Id, volumeMl: VolumeMl.optional() }))
    .min(1)
    .max(50),
  toJarId: Id,
})

export const FilterMedium = z.enum(['sieve', 'cloth', 'paper', 'racking'])
export type FilterMedium = z.infer<typeof FilterMedium>

export const Filter = z.strictObject({
  ...inBatch,
  kind: z.literal('filter'),
  fromJarId: Id,
  toJarId: Id,
  medium: FilterMedium,
  /** Left out: the usual loss of the medium. */
  lossMl: z.number().nonnegative().max(10_000_000).optional(),
})

export const Bottle = z.strictObject({
  ...inBatch,
  kind: z.literal('bottle'),
  fromJarId: Id,
  bottleLotId: Id,
  bottleSizeMl: VolumeMl,
  count: Count,
  name: Name.optional(),
})

/** Bottles opened and poured back into a jar, as older vintages are when extracts are married. */
export const Unbottle = z.strictObject({
  ...inBatch,
  kind: z.literal('unbottle'),
  bottleLotId: Id,
  count: Count,
  toJarId: Id,
})

export const DrawBottle = z.strictObject({
  ...always,
  kind: z.literal('drawBottle'),
  bottleLotId: Id,
  count: Count,
})

export const Give = z.strictObject({
  ...always,
  kind: z.literal('give'),
  bottleLotId: Id,
  count: Count,
})

/** What is thrown away: part of a jar, of a pantry lot, or bottles. */
export const Discard = z.strictObject({
  ...always,
  kind: z.literal('discard'),
  from: z.union([
    z.strictObject({ jarId: Id, part: z.enum(['all', 'pulp', 'liquid']) }),
    z.strictObject({ lotId: Id, massG: MassG.optional(), volumeMl: VolumeMl.optional() }),
    z.strictObject({ bottleLotId: Id, count: Count }),
  ]),
})

/** Puts the book right where the cellar shows something else: the only move that makes or unmakes matter. */
export const Correct = z.strictObject({
  ...always,
  kind: z.literal('correct'),
  found: z.union([
    z.strictObject({
      jarId: Id,
      volumeMl: VolumeMl.optional(),
      strengthPctVol: StrengthPctVol.optional(),
      sugarGPerL: SugarGPerL.optional(),
    }),
    z.strictObject({
      lotId: Id,
      massG: z.number().nonnegative().optional(),
      volumeMl: z.number().nonnegative().optional(),
    }),
    z.strictObject({ bottleLotId: Id, count: z.number().int().nonnegative() }),
  ]),
})

export const Remark = z.strictObject({ ...inBatch, kind: z.literal('remark') })

/** Everything a maker does to a batch, as the trade calls it. */
export const Move = z.discriminatedUnion('kind', [
  Buy,
  Charge,
  Sugar,
  PourSpirit,
  PourWater,
  Keep,
  Stir,
  Read,
  DrawOff,
  Press,
  Crush,
  CoverWithSugar,
  Marry,
  Filter,
  Bottle,
  Unbottle,
  DrawBottle,
  Give,
  Discard,
  Correct,
  Remark,
])
export type Move = z.infer<typeof Move>
export type MoveKind = Move['kind']
export type MoveOf<K extends MoveKind> = Extract<Move, { kind: K }>

/** A move as the book holds it: `seq` is the order of recording and decides between equal instants. */
export const RecordedMove = z.strictObject({
  id: Id,
  seq: z.number().int().positive(),
  /** Moves recorded together are undone together. */
  groupId: Id,
  recordedAt: Instant,
  /** 1 when first recorded; each amendment adds one. */
  version: z.number().int().positive(),
  move: Move,
})
export type RecordedMove = z.infer<typeof RecordedMove>
