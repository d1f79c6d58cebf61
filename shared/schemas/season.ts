/** The fruit year of a region, what is wished of next season, and the plan that follows from both. */
import * as z from 'zod'
import { Id, Instant, MassG, Name, Note, VolumeMl } from './basics.ts'
import { JarShape } from './cellar.ts'
import { DraftSpec } from './drafts.ts'
import { Learned } from './fruits.ts'
import { Cost } from './marrying.ts'
import { InstantBand } from './shelf.ts'
import { Banded } from './steeping.ts'

const amount = z.number().nonnegative()
const priceMinor = z.number().nonnegative().max(1_000_000_000)
/** Counted from the first week of the plan, which is 0. */
const week = z.number().int().nonnegative().max(200)

/** Where the fruit grows; weeks later (above zero) or earlier by the maker's own knowledge. */
export const Region = z.strictObject({
  zone: z.enum(['northTemperate', 'mediterranean', 'southTemperate']),
  ownShiftWeeks: z.number().min(-12).max(12),
})
export type Region = z.infer<typeof Region>

/** How sure a fruit is to be had in a week: not at all, in some years, in most, in plenty. */
export const Supply = z.enum(['none', 'maybe', 'likely', 'plenty'])
export type Supply = z.infer<typeof Supply>

export const FruitSeason = z.strictObject({
  fruitId: Id,
  isAllYear: z.boolean(),
  /** Seasons that touch the weeks shown, in order; empty where it is sold all year. */
  spans: z.array(
    z.strictObject({
      from: InstantBand,
      to: InstantBand,
      peakFrom: Instant.optional(),
      peakTo: Instant.optional(),
    }),
  ),
  /** One for each week shown. */
  weeks: z.array(Supply),
  /** Weeks by which the maker's own dates lie later than the region's; absent without any. */
  learned: z.strictObject({ shiftWeeks: Learned, boughtAt: z.array(Instant) }).optional(),
  /** What the pantry has of it now, frozen or dried: to be used in any week. */
  pantryG: amount,
  /** When one is bought or in a jar: the kinds that this cellar makes come first. */
  isOwnKind: z.boolean(),
})
export type FruitSeason = z.infer<typeof FruitSeason>

export const SeasonCalendar = z.strictObject({
  region: Region,
  /** The Monday of each week shown, 52 of them. */
  weekStarts: z.array(Instant),
  fruits: z.array(FruitSeason),
})
export type SeasonCalendar = z.infer<typeof SeasonCalendar>

export const WishPriority = z.enum(['must', 'should', 'could'])
export type WishPriority = z.infer<typeof WishPriority>

/** What the maker wants of a kind next season, beyond or below what the forecast asks for. */
export const SeasonWish = z
  .strictObject({
    id: Id,
    /** A fruit of this cellar. */
    kindId: Id,
    /** `drink`: so much at least in all. `gift`: so much on top of what is drunk. */
    purpose: z.enum(['drink', 'gift']),
    priority: WishPriority,
    atLeastMl: z.number().nonnegative().max(10_000_000).optional(),
    /** 0: none of it this year. */
    atMostMl: z.number().nonnegative().max(10_000_000).optional(),
    /** The bottles it goes into; left out, the plan's usual ones. */
    bottleSizeMl: z.number().min(10).max(20_000).optional(),
    note: Note,
  })
  .refine(
    ({ atLeastMl, atMostMl }) => atLeastMl !== undefined || atMostMl !== undefined,
    'at least or at most is needed',
  )
  .refine(
    ({ atLeastMl = 0, atMostMl = Infinity }) => atLeastMl <= atMostMl,
    'at least cannot be more than at most',
  )
export type SeasonWish = z.infer<typeof SeasonWish>

/** What must not be passed; a limit left out is none. Jars are always those that the cellar has. */
export const SeasonLimits = z.strictObject({
  moneyMinor: priceMinor.optional(),
  /** Bottles there is still room for. */
  shelfBottles: z.number().int().nonnegative().max(100_000).optional(),
  /** Only the spirit in the pantry is used, none is bought. */
  isSpiritAtHandOnly: z.boolean(),
})
export type SeasonLimits = z.infer<typeof SeasonLimits>

/** Prices the maker expects; what is left out is taken from the last purchase, where there is one. */
export const SeasonPrices = z.strictObject({
  fruits: z.array(z.strictObject({ fruitId: Id, minorPerKg: priceMinor })).max(200),
  spirits: z
    .array(z.strictObject({ strengthPctVol: z.number().min(5).max(97.2), minorPerL: priceMinor }))
    .max(20),
  sugarMinorPerKg: priceMinor.optional(),
  honeyMinorPerKg: priceMinor.optional(),
  bottleMinor: priceMinor.optional(),
  corkMinor: priceMinor.optional(),
  labelMinor: priceMinor.optional(),
})
export type SeasonPrices = z.infer<typeof SeasonPrices>

/** All that a plan is made from besides the book. */
export const SeasonWishes = z.strictObject({
  wishes: z.array(SeasonWish).max(200),
  limits: SeasonLimits,
  prices: SeasonPrices,
  /** Months of drinking that are kept in hand beyond the year. */
  reserveMonths: z.number().min(0).max(60),
  /** The spirit that is bought, and cut to what each fruit wants. */
  spiritPctVol: z.number().min(20).max(97.2),
  bottleSizeMl: z.number().min(10).max(20_000),
  /** Weeks that a jar stands empty between two loads, to be washed and aired. */
  cleaningWeeks: z.number().int().min(0).max(4),
})
export type SeasonWishes = z.infer<typeof SeasonWishes>

/** Where a yield came from: own batches blended in, or the recipe alone, reckoned by the engine. */
export const SeasonYield = z.strictObject({
  /** Finished litres per kilogram of fruit as bought; the band holds nine batches in ten. */
  lPerKg: Banded,
  basis: z.enum(['own', 'recipe']),
  /** Finished batches behind it. */
  batchIds: z.array(Id),
  /** The house recipe it is made by; absent where the library's usual way is taken. */
  recipeId: Id.optional(),
  /** Or the batch it was last made as. */
  likeBatchId: Id.optional(),
})
export type SeasonYield = z.infer<typeof SeasonYield>

export const SeasonNeed = z.strictObject({
  because: z.enum(['drinking', 'reserve', 'gift', 'wish']),
  priority: WishPriority,
  volumeMl: amount,
})
export type SeasonNeed = z.infer<typeof SeasonNeed>

/** What can stand in the way of a bottle. */
export const SeasonLimit = z.enum([
  'jars',
  'money',
  'shelf',
  'spirit',
  /** The fruit is to be had in other weeks than those left, or in none of the year. */
  'fruitWeeks',
  /** The wish itself says at most so much. */
  'wish',
  /** What is missing would not fill even the smallest jars far enough. */
  'tooLittle',
  /** The engine could not make the recipe. */
  'recipe',
])
export type SeasonLimit = z.infer<typeof SeasonLimit>

export const SeasonKind = z.strictObject({
  kindId: Id,
  stock: z.strictObject({
    bottledMl: amount,
    /** What stands in jars now and will be bottled, as far as it can be told. */
    inJarsMl: amount,
    perYearMl: Banded,
    givenShare: z.number().min(0).max(1),
    isOwnHistory: z.boolean(),
  }),
  /** What is laid down this season is ready then; from then on it is to last a year. */
  readyAt: Instant,
  /** What will be left of today's stock by then. */
  leftThenMl: Banded,
  /** When today's stock runs out before that. */
  runsDryAt: Instant.optional(),
  /** Why so much is wanted; they add up to what is wanted before `atMostMl`. */
  needs: z.array(SeasonNeed),
  wantedMl: amount,
  atMostMl: amount.optional(),
  yield: SeasonYield,
  bottleSizeMl: z.number(),
  /** What the plan lays down; the band is that of the yields. */
  plannedMl: Banded,
  bottles: z.number().int().nonnegative(),
  shortMl: amount,
  /** What the shortage is due to, the first reason first. */
  cutBy: z.array(SeasonLimit),
  /** Litre-weeks of jar that one finished litre takes, and what it costs where prices are known. */
  jarLWeeksPerL: amount,
  minorPerL: z.number().optional(),
})
export type SeasonKind = z.infer<typeof SeasonKind>

const inJar = z.strictObject({ jarId: Id, fillMl: amount, fillShare: amount })

export const SeasonBatch = z.strictObject({
  key: Id,
  kindId: Id,
  /** Bought fresh, or from the pantry. */
  source: z.enum(['fresh', 'pantry']),
  week,
  fruitG: amount,
  volumeMl: Banded,
  bottleSizeMl: z.number(),
  bottles: z.number().int().nonnegative(),
  startAt: Instant,
  drawnAt: Instant,
  bottledAt: Instant,
  readyAt: Instant,
  steepJars: z.array(z.strictObject({ ...inJar.shape, fruitG: amount })),
  /** In which its extracts come together and settle. */
  settleJars: z.array(inJar),
  /** The batch on paper, to be looked at or started as it is. */
  spec: DraftSpec,
  /** What the engine makes of that paper. */
  replay: z.strictObject({
    bottles: z.number().int().nonnegative(),
    volumeMl: amount,
    isWithinBand: z.boolean(),
  }),
})
export type SeasonBatch = z.infer<typeof SeasonBatch>

/** A jar taken, from the start of one week to the start of another. */
export const SeasonSpan = z.strictObject({
  jarId: Id,
  fromWeek: week,
  toWeek: week,
  use: z.enum([
    /** A batch of today, until it is expected to leave the jar. */
    'standing',
    /** What such a batch is drawn off into. */
    'standingSettle',
    'steep',
    'settle',
    'cleaning',
  ]),
  /** Of the plan. */
  batchKey: Id.optional(),
  /** Of today's cellar. */
  batchId: Id.optional(),
  fillMl: amount,
})
export type SeasonSpan = z.infer<typeof SeasonSpan>

export const SeasonJar = z.strictObject({
  jarId: Id,
  name: Name,
  shape: JarShape,
  capacityMl: VolumeMl,
  /** Weeks of the year in which something stands in it. */
  usedWeeks: z.number().int().nonnegative(),
})
export type SeasonJar = z.infer<typeof SeasonJar>

export const Shop = z.enum(['market', 'hedgerow', 'grocer', 'spirits', 'supplies'])
export type Shop = z.infer<typeof Shop>

export const SeasonPurchase = z.strictObject({
  /** The same for the same goods of the same week, so that ticks outlive a plan made anew. */
  key: z.string().min(1).max(120),
  week,
  /** Needed from that day on. */
  from: Instant,
  shop: Shop,
  what: z.enum(['fruit', 'spirit', 'sweetener', 'bottle', 'cork', 'label']),
  fruitId: Id.optional(),
  sweetenerId: z.enum(['sugar', 'honey']).optional(),
  strengthPctVol: z.number().optional(),
  massG: amount.optional(),
  volumeMl: amount.optional(),
  count: z.number().int().nonnegative().optional(),
  bottleSizeMl: z.number().optional(),
  /** Part of the need that the pantry has already, and that is not to be bought. */
  atHandG: amount.optional(),
  atHandMl: amount.optional(),
  priceMinor: z.number().optional(),
  batchKeys: z.array(Id),
})
export type SeasonPurchase = z.infer<typeof SeasonPurchase>

export const SeasonTotals = z.strictObject({
  batches: z.number().int().nonnegative(),
  volumeMl: Banded,
  bottles: z.number().int().nonnegative(),
  shortMl: amount,
  fruitG: amount,
  /** To be poured, pantry and purchases together. */
  spirits: z.array(z.strictObject({ strengthPctVol: z.number(), volumeMl: amount })),
  sugarG: amount,
  /** To be paid for what has a price. */
  moneyMinor: amount,
  isWholeMoney: z.boolean(),
})
export type SeasonTotals = z.infer<typeof SeasonTotals>

/**
 * A limit that is reached: how much of how much, and in which weeks every jar of a size is taken.
 * Jars without a size: no two of them are free together when they are needed.
 */
export const SeasonBinding = z.strictObject({
  limit: SeasonLimit.extract(['jars', 'money', 'shelf', 'spirit', 'fruitWeeks']),
  used: amount,
  of: amount,
  unit: z.enum(['jars', 'minor', 'bottles', 'ml', 'weeks']),
  capacityMl: z.number().optional(),
  weeks: z.array(week),
  kindIds: z.array(Id),
})
export type SeasonBinding = z.infer<typeof SeasonBinding>

/** The plan solved again with one limit eased: what that would bring. */
export const SeasonRelief = z.strictObject({
  eases: z.enum(['jars', 'money', 'shelf', 'spirit', 'fruitWeeks']),
  /** One jar of that size, or so much money, bottles, spirit, or weeks either side of the season. */
  by: amount,
  unit: z.enum(['jarMl', 'minor', 'bottles', 'ml', 'weeks']),
  gainsMl: amount,
  /** What the plan then costs more. */
  costsMinor: z.number(),
  kinds: z.array(z.strictObject({ kindId: Id, gainsMl: z.number() })),
  isProven: z.boolean(),
})
export type SeasonRelief = z.infer<typeof SeasonRelief>

/** The same season when the harvest is poor or good; the factors are stated, not known. */
export const SeasonVariant = z.strictObject({
  harvest: z.enum(['poor', 'good']),
  factors: z.strictObject({
    fruitPrice: z.number(),
    yield: z.number(),
    /** Weeks by which each season is shorter (below zero) or longer at either end. */
    seasonWeeks: z.number(),
  }),
  totals: SeasonTotals,
  kinds: z.array(z.strictObject({ kindId: Id, plannedMl: amount, shortMl: amount })),
  isProven: z.boolean(),
})
export type SeasonVariant = z.infer<typeof SeasonVariant>

export const SeasonNotice = z.strictObject({
  code: z.enum([
    'noJars',
    /** Nothing was ever drunk or given: only wishes count. */
    'noHistory',
    'nothingWanted',
    'noPrices',
    /** Some of what is to be bought has no price: money is not whole. */
    'somePricesMissing',
    /** A batch of today will find no jar to be drawn off into. */
    'standingWithoutJar',
    'timeUp',
    /** A wish names a kind that is in season in no week of the year. */
    'neverInSeason',
    /** Even the smallest jar is too large for so little. */
    'tooLittleForAnyJar',
    /** The engine could not make the recipe of that kind. */
    'recipeRefused',
  ]),
  kindId: Id.optional(),
  batchId: Id.optional(),
})
export type SeasonNotice = z.infer<typeof SeasonNotice>

/** How near the best the plan is known to be. */
export const SeasonProof = z.strictObject({
  isProven: z.boolean(),
  /** Litres by which no plan at all could be better, weighted by priority: a share of all wanted. */
  gapShare: amount,
  seconds: amount,
})
export type SeasonProof = z.infer<typeof SeasonProof>

export const SeasonPlan = z.strictObject({
  madeAt: Instant,
  /** The Monday of week 0. */
  startAt: Instant,
  weekCount: z.number().int().positive(),
  wishes: SeasonWishes,
  kinds: z.array(SeasonKind),
  batches: z.array(SeasonBatch),
  jars: z.array(SeasonJar),
  spans: z.array(SeasonSpan),
  purchases: z.array(SeasonPurchase),
  totals: SeasonTotals,
  binding: z.array(SeasonBinding),
  /** Both empty until they are worked out, or when they were not asked for. */
  reliefs: z.array(SeasonRelief),
  variants: z.array(SeasonVariant),
  proof: SeasonProof,
  notices: z.array(SeasonNotice),
})
export type SeasonPlan = z.infer<typeof SeasonPlan>

export const SeasonStep = z.enum([
  'recipes',
  'covering',
  'saving',
  'placing',
  'explaining',
  'variants',
])
export type SeasonStep = z.infer<typeof SeasonStep>

/** A plan in the making. A plan that is there already is told while its explanations are worked out. */
export const SeasonJob = z.strictObject({
  jobId: Id,
  state: z.enum(['running', 'done', 'cancelled', 'failed']),
  step: SeasonStep,
  /** 0 to 1 of all the steps. */
  progress: z.number().min(0).max(1),
  /** Of the best found so far, while one is sought. */
  gapShare: amount.optional(),
  seconds: amount,
  plan: SeasonPlan.optional(),
})
export type SeasonJob = z.infer<typeof SeasonJob>

export const StartSeasonPlan = z.strictObject({
  jobId: Id,
  /** Left out, the wishes kept. */
  wishes: SeasonWishes.optional(),
  /** Any day of the first week; left out, this week. */
  startAt: Instant.optional(),
  /** With what an eased limit would bring, and with poor and good harvests. */
  isExplained: z.boolean(),
  /** For the plan itself; each further question gets a share of it. */
  timeLimitSeconds: z.number().min(0.1).max(300),
})
export type StartSeasonPlan = z.infer<typeof StartSeasonPlan>

export const KeptSeasonPlan = z.strictObject({ id: Id, keptAt: Instant, plan: SeasonPlan })
export type KeptSeasonPlan = z.infer<typeof KeptSeasonPlan>

const laidDown = { fruitG: amount, volumeMl: amount, bottles: z.number().int().nonnegative() }

/** The newest plan beside the one kept for the season before, and what was done in that season. */
export const SeasonComparison = z.strictObject({
  /** The season that is looked back on: that of the earlier plan, or the last 52 weeks. */
  from: Instant,
  to: Instant,
  earlier: z.strictObject({ id: Id, keptAt: Instant }).optional(),
  kinds: z.array(
    z.strictObject({
      kindId: Id,
      now: z.strictObject(laidDown).optional(),
      earlier: z.strictObject({ ...laidDown, startAt: Instant.optional() }).optional(),
      /** Bottled, and still in jars. */
      happened: z
        .strictObject({
          ...laidDown,
          inJarsMl: amount,
          /**
           * What the goods that went into these batches cost: of each lot the share that was used,
           * whenever it was bought. Absent where none of it has a price.
           */
          spent: Cost.optional(),
          firstAt: Instant.optional(),
          batchIds: z.array(Id),
        })
        .optional(),
    }),
  ),
  money: z.strictObject({
    now: Cost.optional(),
    earlier: Cost.optional(),
    /** All that was bought in the season, whatever it is for. */
    happened: Cost.optional(),
  }),
})
export type SeasonComparison = z.infer<typeof SeasonComparison>

/** A line of the purchase list, bought or not. */
export const PurchaseLine = z.strictObject({
  ...SeasonPurchase.shape,
  /** The batches it is bought for, the first to begin first. */
  batches: z.array(z.strictObject({ kindId: Id, startAt: Instant })),
  ticked: z
    .strictObject({
      at: Instant,
      /** The pantry lot it became; bottles, corks and labels become none. */
      lotId: Id.optional(),
      massG: amount.optional(),
      volumeMl: amount.optional(),
      count: z.number().int().optional(),
      priceMinor: z.number().optional(),
      /** False once some of the lot is used. */
      canBeTakenBack: z.boolean(),
    })
    .optional(),
})
export type PurchaseLine = z.infer<typeof PurchaseLine>

export const PurchaseList = z.strictObject({
  /** Both absent while no plan is kept. */
  planId: Id.optional(),
  planKeptAt: Instant.optional(),
  weekStarts: z.array(Instant),
  /** By week, then by shop. */
  lines: z.array(PurchaseLine),
  /** Still to be paid for what has a price. */
  openMinor: amount,
  paidMinor: amount,
})
export type PurchaseList = z.infer<typeof PurchaseList>

/** What was really bought; amounts left out are as planned. */
export const TickPurchase = z.strictObject({
  /** Chosen by the caller; the same again does nothing more. */
  key: Id,
  lineKey: z.string().min(1).max(120),
  isTicked: z.boolean(),
  at: Instant.optional(),
  massG: MassG.optional(),
  volumeMl: VolumeMl.optional(),
  count: z.number().int().positive().max(100_000).optional(),
  priceMinor: z.number().int().nonnegative().max(1_000_000_000).optional(),
})
export type TickPurchase = z.infer<typeof TickPurchase>
