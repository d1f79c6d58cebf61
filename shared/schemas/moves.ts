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

/** Acid stirred into the liquid of a jar, weighed as powder. */
export const AddAcid = z.strictObject({
  ...inBatch,
  kind: z.literal('addAcid'),
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

/** From where on the shelf: left out, from wherever the lot stands, what has no place first. */
const fromShelf = { shelfId: Id.optional() }

export const Bottle = z.strictObject({
  ...inBatch,
  kind: z.literal('bottle'),
  fromJarId: Id,
  bottleLotId: Id,
  bottleSizeMl: VolumeMl,
  count: Count,
  name: Name.optional(),
  /** Where the bottles are laid down. */
  shelfId: Id.optional(),
})

/** Bottles that no jar of this book filled: older than the book, or from another cellar. */
export const BringIn = z.strictObject({
  ...inBatch,
  kind: z.literal('bringIn'),
  bottleLotId: Id,
  bottleSizeMl: VolumeMl,
  count: Count,
  strengthPctVol: StrengthPctVol,
  sugarGPerL: SugarGPerL,
  /** What it was made of, as far as its maker knows; in equal parts. */
  fruitIds: z.array(Id).max(12).optional(),
  name: Name.optional(),
  /** Where the bottles stand. */
  shelfId: Id.optional(),
})

/** Bottles opened and poured back into a jar, as older vintages are when extracts are married. */
export const Unbottle = z.strictObject({
  ...inBatch,
  ...fromShelf,
  kind: z.literal('unbottle'),
  bottleLotId: Id,
  count: Count,
  toJarId: Id,
})

/** Bottles drunk whole. */
export const DrawBottle = z.strictObject({
  ...always,
  ...fromShelf,
  kind: z.literal('drawBottle'),
  bottleLotId: Id,
  count: Count,
})

export const Give = z.strictObject({
  ...always,
  ...fromShelf,
  kind: z.literal('give'),
  bottleLotId: Id,
  count: Count,
})

/** Bottles that broke or leaked away. */
export const BreakBottle = z.strictObject({
  ...always,
  ...fromShelf,
  kind: z.literal('breakBottle'),
  bottleLotId: Id,
  count: Count,
})

/** Bottles carried from one place on the shelf to another; null where they have no place. */
export const Shelve = z.strictObject({
  ...always,
  kind: z.literal('shelve'),
  bottleLotId: Id,
  count: Count,
  fromShelfId: Id.nullable(),
  toShelfId: Id.nullable(),
})

/** One bottle uncorked: from now on it has a level of its own. */
export const OpenBottle = z.strictObject({
  ...always,
  ...fromShelf,
  kind: z.literal('openBottle'),
  bottleLotId: Id,
  openedId: Id,
})

export const PourGlass = z.strictObject({
  ...always,
  kind: z.literal('pourGlass'),
  openedId: Id,
  /** Left out: all that is left. */
  volumeMl: VolumeMl.optional(),
})

/** An opened bottle filled up from another opened one, so that less air stands above it. */
export const TopUp = z.strictObject({
  ...always,
  kind: z.literal('topUp'),
  openedId: Id,
  fromOpenedId: Id,
  /** Left out: as much as there is and as fits. */
  volumeMl: VolumeMl.optional(),
})

export const TasteAxis = z.enum([
  'aroma',
  'fruit',
  'sweetness',
  'sourness',
  'bitterness',
  'heat',
  'length',
  'clarity',
  'colour',
])
export type TasteAxis = z.infer<typeof TasteAxis>

/** What the maker thinks of its age: this moves the window of the lot. */
export const Verdict = z.enum(['young', 'ready', 'fading'])
export type Verdict = z.infer<typeof Verdict>

/** A glass tasted, of a jar or of a bottle lot; the words are the note. Moves no matter. */
export const Taste = z
  .strictObject({
    ...inBatch,
    kind: z.literal('taste'),
    jarId: Id.optional(),
    bottleLotId: Id.optional(),
    /** The glass it was tasted from. */
    glass: Name.optional(),
    /** From 0, none, to 10, as much as can be. */
    scores: z.partialRecord(TasteAxis, z.number().min(0).max(10)),
    verdict: Verdict.optional(),
  })
  .refine(
    (taste) => (taste.jarId === undefined) !== (taste.bottleLotId === undefined),
    'a jar or a bottle lot is needed, not both',
  )
export type Taste = z.infer<typeof Taste>

/** What is thrown away: part of a jar, of a pantry lot, or bottles. */
export const Discard = z.strictObject({
  ...always,
  kind: z.literal('discard'),
  from: z.union([
    z.strictObject({ jarId: Id, part: z.enum(['all', 'pulp', 'liquid']) }),
    z.strictObject({ lotId: Id, massG: MassG.optional(), volumeMl: VolumeMl.optional() }),
    z.strictObject({ bottleLotId: Id, count: Count, ...fromShelf }),
    z.strictObject({ openedId: Id }),
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
    /** Counted on one place of the shelf, or with it left out, everywhere. */
    z.strictObject({
      bottleLotId: Id,
      count: z.number().int().nonnegative(),
      shelfId: Id.nullable().optional(),
    }),
    z.strictObject({ openedId: Id, volumeMl: z.number().nonnegative() }),
  ]),
})

export const Remark = z.strictObject({ ...inBatch, kind: z.literal('remark') })

/** Everything a maker does to a batch, as the trade calls it. */
export const Move = z.discriminatedUnion('kind', [
  Buy,
  Charge,
  Sugar,
  AddAcid,
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
  BringIn,
  Unbottle,
  DrawBottle,
  Give,
  BreakBottle,
  Shelve,
  OpenBottle,
  PourGlass,
  TopUp,
  Taste,
  Discard,
  Correct,
  Remark,
])
export type Move = z.infer<typeof Move>
export type MoveKind = Move['kind']
/** In the order of the contract. */
export const moveKinds: readonly MoveKind[] = Move.options.map(({ shape }) => shape.kind.value)
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
