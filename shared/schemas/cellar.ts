import * as z from 'zod'
import { Colour, Id, Instant, MatterShape, Name, Note, VolumeMl } from './basics.ts'
import { Goods } from './goods.ts'
import { RecordedMove } from './moves.ts'
import { Interpretation } from './readings.ts'
import { Task } from './tasks.ts'

export const JarShape = z.enum(['jar', 'demijohn', 'crock', 'flask'])
export type JarShape = z.infer<typeof JarShape>

/** A vessel the maker owns. */
export const Jar = z.strictObject({
  id: Id,
  name: Name,
  shape: JarShape,
  /** To the brim. */
  capacityMl: VolumeMl,
  isRetired: z.boolean(),
})
export type Jar = z.infer<typeof Jar>

export const Batch = z.strictObject({
  id: Id,
  name: Name,
  colour: Colour,
  note: Note,
  openedAt: Instant,
})
export type Batch = z.infer<typeof Batch>

/** Where a batch stands, in the order in which batches go through it. */
export const Stage = z.enum([
  'empty',
  'layered',
  'steeping',
  'drawnOff',
  'sugarDraw',
  'pressed',
  'married',
  'filtered',
  'resting',
  'finished',
])
export type Stage = z.infer<typeof Stage>

/** A liquid described at 20 °C. */
export const Liquid = z.strictObject({
  volumeMl: z.number(),
  strengthPctVol: z.number(),
  sugarGPerL: z.number(),
  acidGPerL: z.number(),
  densityKgPerM3: z.number(),
})
export type Liquid = z.infer<typeof Liquid>

/** What stands in a jar at an instant. */
export const JarContents = z.strictObject({
  jarId: Id,
  batchId: Id,
  /** Liquid that can be poured, liquid and pulp of the fruit, undissolved sugar at the bottom. */
  free: MatterShape,
  held: MatterShape,
  bed: MatterShape,
  /** The free liquid; absent while there is none. */
  liquid: Liquid.optional(),
  /** Everything liquid in the jar once it has come to rest; absent with none, or with raw fruit. */
  resting: Liquid.optional(),
  heldMl: z.number(),
  pulpMl: z.number(),
  bedMl: z.number(),
  /** How far the jar is filled: free, held, pulp and sugar together. */
  fillMl: z.number(),
  fruits: z.array(z.strictObject({ fruitId: Id, massG: z.number() })),
  sugarDraws: z.number().int(),
})
export type JarContents = z.infer<typeof JarContents>

export const PantryLot = z.strictObject({
  id: Id,
  goods: Goods,
  boughtAt: Instant,
  boughtMassG: z.number(),
  massG: z.number(),
  /** Spirit only. */
  boughtVolumeMl: z.number().optional(),
  volumeMl: z.number().optional(),
  priceMinor: z.number().optional(),
})
export type PantryLot = z.infer<typeof PantryLot>

export const BottleLot = z.strictObject({
  id: Id,
  batchId: Id,
  name: Name,
  bottledAt: Instant,
  bottleSizeMl: z.number(),
  filledCount: z.number().int(),
  count: z.number().int(),
  /** Where they stand; null where they have no place. They add up to the count. */
  places: z.array(z.strictObject({ shelfId: Id.nullable(), count: z.number().int().positive() })),
  liquid: Liquid.optional(),
})
export type BottleLot = z.infer<typeof BottleLot>

export const Transfer = z.strictObject({ from: z.string(), to: z.string(), matter: MatterShape })
export type Transfer = z.infer<typeof Transfer>

/** One line of a batch's ledger with the composition right after it. */
export const LedgerStep = z.strictObject({
  recorded: RecordedMove,
  transfers: z.array(Transfer),
  /** The jars this move touched, as they stood right after it. */
  after: z.array(JarContents),
  /** Jars this move left empty. */
  emptied: z.array(Id),
  interpretation: Interpretation.optional(),
})
export type LedgerStep = z.infer<typeof LedgerStep>

export const StageBand = z.strictObject({ stage: Stage, from: Instant, to: Instant })
export type StageBand = z.infer<typeof StageBand>

/** Something that is allowed but should be seen, at the act or on Today. */
export const Caution = z.strictObject({
  code: z.enum([
    'sugarOnlyTooLong',
    'mayFerment',
    'weakForFruit',
    'jarOverfull',
    'uncovered',
    'strongSpirit',
    'stonesTooLong',
    'fruitHazard',
    'sugarUndissolved',
    'openedSpirit',
  ]),
  severity: z.enum(['note', 'warning']),
  batchId: Id.optional(),
  jarId: Id.optional(),
  fruitId: Id.optional(),
  /** A lot of the pantry. */
  lotId: Id.optional(),
  /** Since when. */
  since: Instant.optional(),
  /** The number that raised it and the limit it passed, where there is one. */
  value: z.number().optional(),
  limit: z.number().optional(),
})
export type Caution = z.infer<typeof Caution>

export const BatchYield = z.strictObject({
  fruitG: z.number(),
  sugarAddedG: z.number(),
  /** Pure ethanol poured in, as volume at 20 °C. */
  ethanolPouredMl: z.number(),
  /** Share of that ethanol now in free liquid, bottles, or drunk from them. */
  ethanolRecoveredFraction: z.number().optional(),
  liquidMl: z.number(),
  bottledMl: z.number(),
})
export type BatchYield = z.infer<typeof BatchYield>

export const BatchSummary = z.strictObject({
  batch: Batch,
  stage: Stage,
  startedAt: Instant.optional(),
  jars: z.array(JarContents),
  bottleLots: z.array(BottleLot),
  /** All the batch's free liquid, and bottles, as if poured together. */
  liquid: Liquid.optional(),
  fruitIds: z.array(Id),
  /** The task that comes next; absent where nothing is to be done any more. */
  next: Task.optional(),
  moveCount: z.number().int(),
})
export type BatchSummary = z.infer<typeof BatchSummary>

export const JarSpan = z.strictObject({
  jarId: Id,
  batchId: Id,
  stage: Stage,
  from: Instant,
  to: Instant,
  /** True when the jar still holds it. */
  isOpen: z.boolean(),
  contents: JarContents,
})
export type JarSpan = z.infer<typeof JarSpan>

export const BatchPage = z.strictObject({
  summary: BatchSummary,
  steps: z.array(LedgerStep),
  bands: z.array(StageBand),
  jarSpans: z.array(JarSpan),
  yield: BatchYield,
  cautions: z.array(Caution),
})
export type BatchPage = z.infer<typeof BatchPage>

/** The whole cellar's books: what came in, what is where, what went out. Each column adds up to zero. */
export const Balance = z.strictObject({
  bought: MatterShape,
  tap: MatterShape,
  /** Bottles that no jar of this book filled. */
  broughtIn: MatterShape,
  inPantry: MatterShape,
  inJars: MatterShape,
  inBottles: MatterShape,
  drunk: MatterShape,
  given: MatterShape,
  wasted: MatterShape,
  corrected: MatterShape,
  /** What the columns fail to add up to; rounding only. */
  missing: MatterShape,
})
export type Balance = z.infer<typeof Balance>
