/**
 * What the rows of each table look like in an export: the published JSON Schemas are made from
 * these, and nothing is brought in that does not keep to them.
 */
import * as z from 'zod'
import { Settings } from '../../../shared/channels.ts'
import { Id, Instant, Name, Note } from '../../../shared/schemas/basics.ts'
import { Batch, Jar } from '../../../shared/schemas/cellar.ts'
import { Draft, DraftSpec } from '../../../shared/schemas/drafts.ts'
import { Fruit } from '../../../shared/schemas/fruits.ts'
import { LabelSheet, LabelStyle } from '../../../shared/schemas/labels.ts'
import { Move } from '../../../shared/schemas/moves.ts'
import { Region, SeasonPlan, SeasonWishes } from '../../../shared/schemas/season.ts'
import { Shelf } from '../../../shared/schemas/shelf.ts'
import { LocalDay, TaskId } from '../../../shared/schemas/tasks.ts'
import { TickContent } from '../purchase-store.ts'

const order = z.number().int().positive().max(1e12)

/** Tables of one row. */
const single = { only: z.literal(1) }

/** What a kept thing calls itself is the name it is kept under. */
const sameId = 'the two ids differ'

/** Told to a calendar once; its words are the maker's language's. */
const CalendarEntry = z.strictObject({
  uid: z.string().min(1).max(300),
  firstDay: LocalDay,
  lastDay: LocalDay,
  summary: z.string(),
  description: z.string(),
})

export const rowSchemas: Readonly<Record<string, z.ZodType>> = {
  // A setting that cannot be read counts as not set, so that it may be of another program's version.
  setting: z.strictObject({ key: z.string().max(100), value: z.json() }).meta({
    description: `One setting. Known ones: ${Object.keys(Settings.shape).join(', ')}.`,
  }),
  jar: Jar,
  batch: Batch,
  batch_with_moves: z.strictObject({ batchId: Id }),
  move_group: z.strictObject({
    id: Id,
    requestKey: z.string().min(1).max(200),
    recordedAt: Instant,
    /** The group that this one takes back. */
    undoes: Id.nullable(),
  }),
  /** Every version of every move; null where the move was struck. */
  move: z.strictObject({
    seq: order,
    id: Id,
    version: order,
    groupId: Id,
    payload: Move.nullable(),
  }),
  fruit: z
    .strictObject({ id: Id, origin: z.enum(['edited', 'own']), facts: Fruit, changedAt: Instant })
    .refine(({ id, facts }) => facts.id === id, sameId),
  draft: z
    .strictObject({ id: Id, content: Draft, createdAt: Instant, changedAt: Instant })
    .refine(({ id, content }) => content.id === id, sameId),
  recipe: z.strictObject({ id: Id, name: Name, note: Note, fromBatchId: Id.nullable() }),
  recipe_version: z.strictObject({
    recipeId: Id,
    version: order,
    keptAt: Instant,
    spec: DraftSpec,
  }),
  plan: z.strictObject({
    batchId: Id,
    startedAt: Instant,
    spec: DraftSpec,
    moves: z.array(Move),
    recipeId: Id.nullable(),
    recipeVersion: order.nullable(),
  }),
  shelf: Shelf,
  label_sheet: z
    .strictObject({ id: Id, content: LabelSheet })
    .refine(({ id, content }) => content.id === id, sameId),
  // Like a setting: a style that cannot be read counts as not kept.
  label_style: z.strictObject({ ...single, content: z.json() }).meta({
    description: `What was chosen when labels were printed last: ${Object.keys(LabelStyle.shape).join(', ')}.`,
  }),
  season_region: z.strictObject({ ...single, content: Region }),
  season_wishes: z.strictObject({ ...single, content: SeasonWishes }),
  season_plan: z.strictObject({ id: Id, keptAt: Instant, content: SeasonPlan }),
  purchase_tick: z.strictObject({
    lineKey: z.string().min(1).max(400),
    moveId: Id.nullable(),
    content: TickContent,
  }),
  put_off: z.strictObject({
    taskId: TaskId,
    until: LocalDay,
    putOffAt: Instant,
  }),
  calendar_entry: z.strictObject({
    uid: z.string().min(1).max(300),
    entry: CalendarEntry,
    sequence: z.number().int().nonnegative(),
    isCancelled: z.boolean(),
    changedAt: Instant,
  }),
  calendar_feed: z.strictObject({ ...single, secret: z.string().min(1).max(200) }),
  reminder: z.strictObject({ ...single, day: LocalDay }),
  spirit_shut: z.strictObject({ lotId: Id, shutAt: Instant }),
}
