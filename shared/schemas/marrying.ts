/** Marrying and mending: what may go in, what is wished for, what it comes to. Touches no book. */
import * as z from 'zod'
import { Count, Id, VolumeMl } from './basics.ts'
import { Liquid } from './cellar.ts'

/** A place as the ledger names it: `jar:…`, `lot:…`, `bottles:…`, `outside:tap`, `outside:acid`. */
export const Place = z.string().regex(/^(jar|lot|bottles|outside):[A-Za-z0-9_-]{1,64}$/)

export const AmountUnit = z.enum(['ml', 'g', 'bottles'])
export type AmountUnit = z.infer<typeof AmountUnit>

const amount = z.number().nonnegative().max(10_000_000).optional()

/** In the part's own unit: ml of a liquid, g of a sweetener or acid, bottles of a bottle lot. */
const limits = { least: amount, most: amount, keepBack: amount }
export interface PartLimits {
  readonly least?: number | undefined
  readonly most?: number | undefined
  readonly keepBack?: number | undefined
}

export const MarryPart = z.strictObject({ place: Place, ...limits })
export type MarryPart = z.infer<typeof MarryPart>

/** Not less than `low`, not more than `high`; both the same for an exact wish. */
const wish = (greatest: number) => {
  const bound = z.number().min(0).max(greatest).optional()
  return z
    .strictObject({ low: bound, high: bound })
    .refine(({ low = 0, high = greatest }) => low <= high, 'low must not be above high')
}
export interface Wish {
  readonly low?: number | undefined
  readonly high?: number | undefined
}

/** Of the blend at 20 °C. */
const composition = {
  strengthPctVol: wish(100).optional(),
  sugarGPerL: wish(1200).optional(),
  acidGPerL: wish(1000).optional(),
}

export const BottleWish = z.strictObject({
  sizeMl: VolumeMl.max(100_000),
  /** Left out: as many as can be filled. */
  count: Count.max(5000).optional(),
})
export type BottleWish = z.infer<typeof BottleWish>

/** With neither volume nor bottles wished for, as much as can be is made. */
export const MarryWishes = z.strictObject({
  ...composition,
  volumeMl: wish(10_000_000).optional(),
  bottles: z.array(BottleWish).min(1).max(6).optional(),
})
export type MarryWishes = z.infer<typeof MarryWishes>

export const WishName = z.enum(['strengthPctVol', 'sugarGPerL', 'acidGPerL', 'volumeMl'])
export type WishName = z.infer<typeof WishName>

const parts = z
  .array(MarryPart)
  .min(1)
  .max(40)
  .refine(
    (all) => new Set(all.map(({ place }) => place)).size === all.length,
    'a place is named twice',
  )

export const MarryRequest = z.strictObject({
  parts,
  wishes: MarryWishes,
  /** Of all blends that meet the wishes: most of the extracts, least money, or even shares of them. */
  prefer: z.enum(['useUp', 'cheapest', 'even']),
  /** What is kept when not all can be had. */
  holds: z.enum(['composition', 'volume']),
  /** The vessel to pour into. When it is a part itself, all of it is used. */
  toJarId: Id.optional(),
})
export type MarryRequest = z.infer<typeof MarryRequest>

/** Money in the smallest unit, with fractions. */
export const Cost = z.strictObject({
  minor: z.number(),
  /** False where something that went in has no known price. */
  isComplete: z.boolean(),
})
export type Cost = z.infer<typeof Cost>

export const BlendAmount = z.strictObject({
  place: Place,
  unit: AmountUnit,
  amount: z.number(),
  /** As a liquid at 20 °C before it is mixed; of sugar, the room it takes dissolved. */
  volumeMl: z.number(),
  massG: z.number(),
  /** Nothing more of it may be used. */
  isUsedUp: z.boolean(),
  cost: Cost,
})
export type BlendAmount = z.infer<typeof BlendAmount>

export const BrokenWish = z.strictObject({
  wish: WishName,
  low: z.number().optional(),
  high: z.number().optional(),
  reached: z.number(),
  reason: z.enum([
    // no mixture of these parts is like that, whatever else is wished
    'beyondParts',
    // the parts could, but not together with the other wishes
    'conflict',
    // more sugar than the liquid dissolves
    'saturation',
    // there is not enough of the places named
    'stock',
    // more must be used of the places named than fits
    'leastUse',
    // water and nothing that limits it: say how much
    'noEnd',
  ]),
  /** What these parts can reach, with the other wishes kept where the reason is a conflict. */
  reachable: z.strictObject({ low: z.number(), high: z.number() }).optional(),
  places: z.array(Place),
})
export type BrokenWish = z.infer<typeof BrokenWish>

export const PourRow = z.strictObject({
  sizeMl: z.number(),
  count: z.number().int(),
  /** Of each part in the table's order, for one bottle. */
  amounts: z.array(z.number()),
  /** What those whole amounts make. */
  filledMl: z.number(),
  strengthPctVol: z.number(),
  sugarGPerL: z.number(),
})

export const PourTable = z.strictObject({
  /** In the order of pouring. */
  columns: z.array(
    z.strictObject({
      place: Place,
      unit: AmountUnit.exclude(['bottles']),
      total: z.number(),
      remainder: z.number(),
    }),
  ),
  rows: z.array(PourRow),
})
export type PourTable = z.infer<typeof PourTable>

export const Fill = z.strictObject({
  jarId: Id,
  fillMl: z.number(),
  capacityMl: z.number(),
  /** Up to the safe fill line. */
  safeMl: z.number(),
})
export type Fill = z.infer<typeof Fill>

const blend = {
  /** In the order of pouring. */
  amounts: z.array(BlendAmount),
  /** Absent when nothing can be made. */
  liquid: Liquid.optional(),
  /** What mixing takes from the volume. */
  contractionMl: z.number(),
  /** Sugar beyond what dissolves, by the guide of the solubility. */
  undissolvedG: z.number(),
  cost: Cost,
  broken: z.array(BrokenWish),
  /** Parts of which less is there than must be used. */
  cutShort: z.array(Place),
  fill: Fill.optional(),
}

export const MarryReply = z.strictObject({
  ...blend,
  bottles: z.array(z.strictObject({ sizeMl: z.number(), count: z.number().int() })),
  /** What no whole bottle holds. */
  restMl: z.number(),
  pourTable: PourTable.optional(),
})
export type MarryReply = z.infer<typeof MarryReply>

export const Trouble = z.enum(['tooSweet', 'tooWeak', 'tooStrong', 'tooSour', 'tooFlat', 'hazy'])
export type Trouble = z.infer<typeof Trouble>

export const MendRequest = z.strictObject({
  jarId: Id,
  /** What the jar's liquid shall be like; what is left out may change. */
  wishes: z.strictObject(composition),
  /** What may be added. */
  parts: z.array(MarryPart).max(20),
})
export type MendRequest = z.infer<typeof MendRequest>

const doses = z.strictObject({ low: z.number(), high: z.number() })

export const MendReply = z.strictObject({
  before: Liquid,
  costBefore: Cost,
  ...blend,
  trial: z.strictObject({
    sampleMl: z.number(),
    amounts: z.array(z.strictObject({ place: Place, unit: AmountUnit, amount: z.number() })),
    volumeMl: z.number(),
  }),
  /** For a haze: what the trade adds to a jar of this size. */
  haze: z.strictObject({
    bentoniteG: doses,
    /** Water to swell it in. */
    bentoniteWaterMl: doses,
  }),
})
export type MendReply = z.infer<typeof MendReply>

export const PlaceCost = z.strictObject({
  place: z.string(),
  cost: Cost,
  /** Of what is left there: ml of a liquid, g of fruit or sweetener, bottles. */
  amount: z.number(),
  unit: AmountUnit,
  perLitre: z.number().optional(),
  perBottle: z.number().optional(),
  perGlass: z.number().optional(),
})
export type PlaceCost = z.infer<typeof PlaceCost>

export const CellarCosts = z.strictObject({
  glassMl: z.number(),
  /** Pantry lots, jars and bottle lots that are not empty. */
  places: z.array(PlaceCost),
  spent: Cost,
  drunk: Cost,
  given: Cost,
  wasted: Cost,
})
export type CellarCosts = z.infer<typeof CellarCosts>
