/** A batch on paper: the numbers a maker turns, what they lead to, and recipes kept of them. */
import * as z from 'zod'
import {
  BeginningInstant,
  CellarTemperatureC,
  Colour,
  Count,
  Id,
  Instant,
  MassG,
  Name,
  Note,
  StrengthPctVol,
  SugarGPerL,
  VolumeMl,
} from './basics.ts'
import { JarContents, JarShape, Liquid } from './cellar.ts'
import { Refusal } from './errors.ts'
import { Cut, FilterMedium, Move, RecordedMove, Turned } from './moves.ts'

const amount = z.number().nonnegative().max(10_000_000)
const priceMinor = z.number().nonnegative().max(1_000_000_000)

export const DraftFruit = z.strictObject({
  fruitId: Id,
  /** As bought. */
  massG: MassG,
  /** Stones, stalks and peel taken out before charging, as a share of the mass bought. */
  refuseShare: z.number().min(0).max(0.9),
  cut: Cut,
  /** Prices in the smallest unit of the cellar's currency. */
  priceMinorPerKg: priceMinor.optional(),
})
export type DraftFruit = z.infer<typeof DraftFruit>

export const DraftSpirit = z.strictObject({
  strengthPctVol: z.number().min(5).max(97.2),
  volumeMl: VolumeMl,
  priceMinorPerL: priceMinor.optional(),
})
export type DraftSpirit = z.infer<typeof DraftSpirit>

/** A vessel of the maker's own, or one of a usual size when `jarId` is left out. */
export const DraftVessel = z.strictObject({
  jarId: Id.optional(),
  name: Name.optional(),
  shape: JarShape,
  capacityMl: VolumeMl,
})
export type DraftVessel = z.infer<typeof DraftVessel>

/** Left empty, vessels of a usual size are found that hold it all. */
export const DraftVessels = z.strictObject({
  /** The fruit is shared among these by their size. */
  steep: z.array(DraftVessel).max(6),
  /** One for each extract; the last one takes the rest. */
  extracts: z.array(DraftVessel).max(6),
  married: DraftVessel.optional(),
})
export type DraftVessels = z.infer<typeof DraftVessels>

export const DraftSpec = z.strictObject({
  startAt: BeginningInstant,
  fruits: z.array(DraftFruit).min(1).max(6),
  sweetenerId: z.enum(['sugar', 'honey']),
  sweetenerPriceMinorPerKg: priceMinor.optional(),
  /** Sugar in layers with the raw fruit, days before the spirit. */
  layeringSugarG: amount,
  layeringDays: z.number().min(0).max(60),
  /** Poured on the fruit together; the last draws and the finish use the first of them. */
  spirits: z.array(DraftSpirit).min(1).max(4),
  steepWaterMl: amount,
  steepWeeks: z.number().min(0.1).max(260),
  temperatureC: CellarTemperatureC,
  turned: Turned,
  sugarDraws: z.array(z.strictObject({ sugarG: MassG, days: z.number().min(0.1).max(365) })).max(4),
  isPressed: z.boolean(),
  /** What is added to the extracts once they are together. */
  finishWaterMl: amount,
  finishSugarG: amount,
  finishSpiritMl: amount,
  /** Days the married liquid settles before it is filtered. */
  settleDays: z.number().min(0).max(365),
  filters: z.array(FilterMedium).max(4),
  bottleSizeMl: z.number().min(10).max(20_000),
  bottlePriceMinor: priceMinor.optional(),
  vessels: DraftVessels,
})
export type DraftSpec = z.infer<typeof DraftSpec>

/** The amounts that a solve may change; a pin holds one of them. */
export const DraftPin = z.enum([
  'fruit',
  'spirit',
  'steepWater',
  'layeringSugar',
  'drawSugar',
  'finishWater',
  'finishSugar',
  'finishSpirit',
])
export type DraftPin = z.infer<typeof DraftPin>

/** What is wanted of the finished liqueur; what is left out follows from the rest. */
export const DraftWishes = z.strictObject({
  volumeMl: VolumeMl.optional(),
  /** Instead of a volume: so many of the draft's bottles. */
  bottles: Count.optional(),
  strengthPctVol: StrengthPctVol.optional(),
  sugarGPerL: SugarGPerL.optional(),
  acidGPerL: z.number().min(0).max(100).optional(),
})
export type DraftWishes = z.infer<typeof DraftWishes>

export const StageKey = z.enum([
  'layered',
  'steeping',
  'sugarDraw',
  'pressed',
  'married',
  'filtered',
  'bottled',
])
export type StageKey = z.infer<typeof StageKey>

/** What came into a stage: fruit and sweetener by mass, liquids by volume at 20 °C. */
export const StageInflow = z.strictObject({
  what: z.enum(['fruit', 'sugar', 'spirit', 'water', 'extract']),
  fruitId: Id.optional(),
  massG: z.number().optional(),
  volumeMl: z.number().optional(),
  strengthPctVol: z.number().optional(),
})
export type StageInflow = z.infer<typeof StageInflow>

export const StageVessel = z.strictObject({
  jarId: Id,
  /** As it stood at the end of the stage. */
  contents: JarContents,
  /** The highest it was filled right after a move. */
  peakFillMl: z.number(),
})
export type StageVessel = z.infer<typeof StageVessel>

/** One stage of the chain, planned or real. */
export const ChainStage = z.strictObject({
  key: StageKey,
  /** 1 for the first of its key: the second sugar draw is 2. */
  ordinal: z.number().int().positive(),
  from: Instant,
  to: Instant,
  inflows: z.array(StageInflow),
  vessels: z.array(StageVessel),
  /** What is poured out of it, or stands in it in the end. */
  liquid: Liquid.optional(),
  /** Kept back by filters. */
  lossMl: z.number().optional(),
  bottles: z.number().int().optional(),
})
export type ChainStage = z.infer<typeof ChainStage>

/** Of the fruit library's windows, the one that a draft left. */
export const DraftWindow = z.enum([
  'steepingStrengthPctVol',
  'fruitKgPerLSpirit',
  'steepingWeeks',
  'finishedSugarGPerL',
  'finishedStrengthPctVol',
])
export type DraftWindow = z.infer<typeof DraftWindow>

const atStage = { stage: z.number().int().nonnegative().optional() }

export const DraftWarning = z.discriminatedUnion('code', [
  z.strictObject({
    code: z.literal('outsideWindow'),
    window: DraftWindow,
    value: z.number(),
    low: z.number(),
    high: z.number(),
    ...atStage,
  }),
  /** Filled above the safe line, or above the brim, by the move of that index. */
  z.strictObject({
    code: z.enum(['overBrim', 'overSafeFill']),
    jarId: Id,
    moveIndex: z.number().int().nonnegative(),
    fillMl: z.number(),
    limitMl: z.number(),
    ...atStage,
  }),
  z.strictObject({
    code: z.enum([
      'sugarOnlyTooLong',
      'mayFerment',
      'weakForFruit',
      'uncovered',
      'sugarUndissolved',
      'stonesTooLong',
    ]),
    jarId: Id,
    value: z.number(),
    limit: z.number(),
    ...atStage,
  }),
  z.strictObject({
    code: z.literal('refused'),
    moveIndex: z.number().int().nonnegative(),
    refusal: Refusal,
    ...atStage,
  }),
])
export type DraftWarning = z.infer<typeof DraftWarning>

export const Purchase = z.strictObject({
  what: z.enum(['fruit', 'spirit', 'sweetener', 'bottle']),
  fruitId: Id.optional(),
  sweetenerId: z.enum(['sugar', 'honey']).optional(),
  strengthPctVol: z.number().optional(),
  massG: z.number().optional(),
  volumeMl: z.number().optional(),
  count: z.number().int().optional(),
  priceMinor: z.number().optional(),
})
export type Purchase = z.infer<typeof Purchase>

export const PlannedVessel = z.strictObject({
  ...DraftVessel.shape,
  jarId: Id,
  role: z.enum(['steep', 'extract', 'married']),
  /** Found by the program, not chosen by the maker. */
  isUsualSize: z.boolean(),
  peakFillMl: z.number(),
})
export type PlannedVessel = z.infer<typeof PlannedVessel>

/** A fruit library's window beside the draft's own number. */
export const WindowShown = z.strictObject({
  window: DraftWindow,
  value: z.number(),
  low: z.number(),
  typical: z.number(),
  high: z.number(),
})
export type WindowShown = z.infer<typeof WindowShown>

export const DraftOutcome = z.strictObject({
  moves: z.array(Move),
  stages: z.array(ChainStage),
  vessels: z.array(PlannedVessel),
  windows: z.array(WindowShown),
  warnings: z.array(DraftWarning),
  /** The liqueur as it goes into the bottles; absent when nothing comes out. */
  finished: Liquid.optional(),
  bottles: z.number().int().nonnegative(),
  bottledMl: z.number(),
  /** Too little for one more bottle. */
  remainderMl: z.number(),
  bottledAt: Instant.optional(),
  readyAt: Instant.optional(),
  drinkBy: Instant.optional(),
  purchases: z.array(Purchase),
  /** Of what has a price; `isWholeCost` tells whether everything has one. */
  costMinor: z.number().optional(),
  isWholeCost: z.boolean(),
})
export type DraftOutcome = z.infer<typeof DraftOutcome>

export const WishName = z.enum(['volumeMl', 'bottles', 'strengthPctVol', 'sugarGPerL', 'acidGPerL'])
export type WishName = z.infer<typeof WishName>

/** A wish that cannot be met: why, the limit, and how near the nearest draft comes. */
export const UnmetWish = z.strictObject({
  wish: WishName,
  wanted: z.number(),
  nearest: z.number(),
  reason: z.enum(['strongerThanSpirit', 'sweeterThanSaturation', 'heldByPins', 'outOfReach']),
  limit: z.number(),
})
export type UnmetWish = z.infer<typeof UnmetWish>

export const DraftSolution = z.strictObject({
  spec: DraftSpec,
  outcome: DraftOutcome,
  unmet: z.array(UnmetWish),
})
export type DraftSolution = z.infer<typeof DraftSolution>

/** A batch on paper, kept to go on with. */
export const Draft = z.strictObject({
  id: Id,
  name: Name,
  spec: DraftSpec,
  pins: z.array(DraftPin).max(DraftPin.options.length),
  /** Present when the draft was made from what is wanted. */
  wishes: DraftWishes.optional(),
  note: Note,
})
export type Draft = z.infer<typeof Draft>

export const KeptDraft = z.strictObject({
  draft: Draft,
  createdAt: Instant,
  changedAt: Instant,
})
export type KeptDraft = z.infer<typeof KeptDraft>

/** A house recipe: a draft kept for next year. Changing one adds a version; old ones stay. */
export const Recipe = z.strictObject({
  id: Id,
  name: Name,
  note: Note,
  version: z.number().int().positive(),
  keptAt: Instant,
  spec: DraftSpec,
  /** The batch it was read off, where it was. */
  fromBatchId: Id.optional(),
  /** Batches started from any of its versions. */
  batchIds: z.array(Id),
})
export type Recipe = z.infer<typeof Recipe>

export const RecipeScale = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('fruit'), massG: MassG }),
  z.strictObject({ by: z.literal('jar'), capacityMl: VolumeMl }),
  z.strictObject({ by: z.literal('bottles'), count: Count }),
])
export type RecipeScale = z.infer<typeof RecipeScale>

/** The plan that a batch was started with. */
export const Plan = z.strictObject({
  batchId: Id,
  startedAt: Instant,
  spec: DraftSpec,
  moves: z.array(Move),
  recipeId: Id.optional(),
  recipeVersion: z.number().int().positive().optional(),
})
export type Plan = z.infer<typeof Plan>

/** A stage as it was planned, as it was, and as it is to be expected from where things stand. */
export const FollowedStage = z.strictObject({
  key: StageKey,
  ordinal: z.number().int().positive(),
  planned: ChainStage.optional(),
  real: ChainStage.optional(),
  expected: ChainStage.optional(),
})
export type FollowedStage = z.infer<typeof FollowedStage>

export const FollowedMove = z.strictObject({ planned: Move, real: RecordedMove.optional() })
export type FollowedMove = z.infer<typeof FollowedMove>

/** A jar that the rest of the plan names, and that another batch stands in. */
export const TakenJar = z.strictObject({
  jarId: Id,
  /** The batch that stands there now. */
  batchId: Id,
  /** When the plan needs it first. */
  neededAt: Instant,
})
export type TakenJar = z.infer<typeof TakenJar>

export const FollowedPlan = z.strictObject({
  plan: Plan,
  moves: z.array(FollowedMove),
  /** The next planned move, its jars being those really used so far. */
  next: Move.optional(),
  stages: z.array(FollowedStage),
  taken: z.array(TakenJar),
  planned: Liquid.optional(),
  /** What is bottled, or will be when the rest goes by the plan. */
  expected: Liquid.optional(),
})
export type FollowedPlan = z.infer<typeof FollowedPlan>

export const StartDraft = z.strictObject({
  batchId: Id,
  name: Name,
  colour: Colour,
  spec: DraftSpec,
  recipeId: Id.optional(),
  recipeVersion: z.number().int().positive().optional(),
})
export type StartDraft = z.infer<typeof StartDraft>
