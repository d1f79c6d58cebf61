import * as z from 'zod'
import { CellarTemperatureC, Id, Instant, MatterShape, Name } from './basics.ts'
import { BottleLot, LedgerStep, Liquid } from './cellar.ts'
import { Cost } from './marrying.ts'
import { RecordedMove, Verdict } from './moves.ts'
import { Banded } from './steeping.ts'

export const ShelfLight = z.enum(['dark', 'dim', 'daylight'])
export type ShelfLight = z.infer<typeof ShelfLight>

/** A named place for bottles: how warm and how light it is there decides how they age. */
export const Shelf = z.strictObject({
  id: Id,
  name: Name,
  temperatureC: CellarTemperatureC,
  light: ShelfLight,
  isRetired: z.boolean(),
})
export type Shelf = z.infer<typeof Shelf>

/** The likeliest instant, and the band that holds the true one nine times in ten. */
export const InstantBand = z.strictObject({ early: Instant, likely: Instant, late: Instant })
export type InstantBand = z.infer<typeof InstantBand>

export const AgeingWindow = z.strictObject({
  phase: Verdict,
  readyAt: InstantBand,
  fadingAt: InstantBand,
  /** What moved the window away from the usual one of its fruit, the strongest first. */
  because: z.array(
    z.enum([
      'noHistory',
      'weak',
      'strong',
      'sweet',
      'tart',
      'cool',
      'warm',
      'light',
      'tastedYoung',
      'tastedReady',
      'tastedFading',
    ]),
  ),
  /** How much of the colour it was bottled with is left now, 0 to 1; absent where it fades little. */
  colourLeft: Banded.optional(),
})
export type AgeingWindow = z.infer<typeof AgeingWindow>

/** An uncorked bottle with what is left in it. */
export const OpenedBottle = z.strictObject({
  id: Id,
  bottleLotId: Id,
  batchId: Id,
  name: Name,
  openedAt: Instant,
  bottleSizeMl: z.number(),
  /** Described at 20 °C; absent once it is empty. */
  liquid: Liquid.optional(),
  /** Best drunk by then: a few months after it was opened. */
  bestBy: InstantBand,
})
export type OpenedBottle = z.infer<typeof OpenedBottle>

export const ShelfLot = z.strictObject({
  lot: BottleLot,
  /** The fruit that brought most of it, `other` where there was none. */
  kindId: Id,
  /** Every fruit in it, the most first. */
  fruitIds: z.array(Id),
  /** The year its first fruit was charged. */
  vintage: z.number().int(),
  window: AgeingWindow,
  costPerBottle: z.number().optional(),
  /** When it was tasted last, and what the maker thought. */
  lastTasted: z.strictObject({ at: Instant, verdict: Verdict.optional() }).optional(),
})
export type ShelfLot = z.infer<typeof ShelfLot>

export const ShelfLots = z.strictObject({
  lots: z.array(ShelfLot),
  opened: z.array(OpenedBottle),
  /** Lots to take from first, with what they lose by waiting. */
  drinkFirst: z.array(
    z.strictObject({
      bottleLotId: Id,
      because: z.enum(['opened', 'fading', 'fadingSoon', 'colour']),
      by: Instant.optional(),
    }),
  ),
})
export type ShelfLots = z.infer<typeof ShelfLots>

/** Stock of one kind over time, in litres at 20 °C: what was, and what the maker's own drinking leaves. */
export const KindStock = z.strictObject({
  kindId: Id,
  bottleCount: z.number().int(),
  volumeMl: z.number(),
  /** At the end of each month gone, and of each month to come. */
  past: z.array(z.strictObject({ at: Instant, volumeMl: z.number() })),
  forecast: z.array(z.strictObject({ at: Instant, volumeMl: Banded })),
  /** Drunk and given in a year. */
  perYearMl: Banded,
  givenShare: z.number().min(0).max(1),
  /** Absent where it lasts beyond the forecast, or nothing is there. */
  runsOut: z
    .strictObject({ early: Instant, likely: Instant.nullable(), late: Instant.nullable() })
    .optional(),
  /** False where too little was ever taken to tell; the cellar's other kinds then stand in. */
  isOwnHistory: z.boolean(),
})
export type KindStock = z.infer<typeof KindStock>

export const ShelfStock = z.strictObject({
  kinds: z.array(KindStock),
  /** Everything together. */
  all: KindStock,
})
export type ShelfStock = z.infer<typeof ShelfStock>

export const ShelfPage = z.strictObject({
  shelfLot: ShelfLot,
  opened: z.array(OpenedBottle),
  /** Every move of the lot and its opened bottles, tastings among them. */
  steps: z.array(LedgerStep),
  /** Tastings of the lot, and of the jars it was bottled from before that. */
  tastings: z.array(RecordedMove),
  /** Where its bottles stood: how warm and light, from when on. */
  stays: z.array(
    z.strictObject({ shelfId: Id.nullable(), from: Instant, count: z.number().int() }),
  ),
  /** Colour left from bottling to well past fading; empty where it fades little. */
  colour: z.array(z.strictObject({ at: Instant, left: Banded })),
  /** Other lots bottled from the same batch: other sizes, other days. */
  siblingIds: z.array(Id),
  costPerGlass: z.number().optional(),
  cost: Cost.optional(),
})
export type ShelfPage = z.infer<typeof ShelfPage>

/** Where matter came from, or went: places as circles, what passed between them as lines. */
export const LineageNode = z.strictObject({
  /** `lot:ID`, `jar:ID@batch`, `bottles:ID`, `opened:ID`, `outside:glass`, … */
  key: z.string(),
  kind: z.enum(['lot', 'jar', 'bottles', 'opened', 'outside']),
  /** Of the pantry lot, jar, bottle lot or opened bottle; the outside has none. */
  id: Id.optional(),
  batchId: Id.optional(),
  /** When matter first came there. */
  at: Instant.optional(),
  /** How many steps from the start: sources stand at 0. */
  depth: z.number().int().nonnegative(),
  /** Of the matter that is followed, what passed through here. */
  matter: MatterShape,
})
export type LineageNode = z.infer<typeof LineageNode>

export const Lineage = z.strictObject({
  nodes: z.array(LineageNode),
  links: z.array(z.strictObject({ from: z.string(), to: z.string(), matter: MatterShape })),
  /** Backward: what each purchase (or the tap) brought to what is in the bottle. */
  origins: z.array(z.strictObject({ key: z.string(), matter: MatterShape })),
  /** Forward: where the purchase is now. Adds up to all that was bought. */
  destinations: z.array(z.strictObject({ key: z.string(), matter: MatterShape })),
})
export type Lineage = z.infer<typeof Lineage>

/** Back from a bottle lot, or forward from a purchase. */
export const LineageRequest = z.union([
  z.strictObject({ bottleLotId: Id }),
  z.strictObject({ lotId: Id }),
])
export type LineageRequest = z.infer<typeof LineageRequest>
