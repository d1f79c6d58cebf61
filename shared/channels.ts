/**
 * The contract between the screens and the service: every channel once, with what goes in, what
 * comes out, and whether it changes the book. Types are inferred from here and never restated.
 */
import * as z from 'zod'
import { Language } from './language.ts'
import { BenchReply, BenchRequest } from './schemas/bench.ts'
import { MovePage, MovesAsked } from './schemas/all-moves.ts'
import { Differences, TaskDifference } from './schemas/amending.ts'
import {
  BeginningInstant,
  Colour,
  Count,
  Id,
  Instant,
  MassG,
  Name,
  Note,
} from './schemas/basics.ts'
import {
  Balance,
  Batch,
  BatchPage,
  BatchSummary,
  BottleLot,
  Caution,
  Jar,
  JarContents,
  LedgerStep,
  PantryLot,
} from './schemas/cellar.ts'
import {
  Draft,
  DraftOutcome,
  DraftPin,
  DraftSolution,
  DraftSpec,
  DraftSpirit,
  DraftWishes,
  FollowedPlan,
  FollowedStage,
  KeptDraft,
  Recipe,
  RecipeScale,
  StartDraft,
} from './schemas/drafts.ts'
import { Refusal } from './schemas/errors.ts'
import { Fruit, FruitOrigin, FruitPage } from './schemas/fruits.ts'
import {
  DrawnLabels,
  LabelJob,
  LabelSheet,
  LabelStyle,
  PaperFile,
  StrengthPrefix,
  UsualLabel,
} from './schemas/labels.ts'
import {
  CellarCosts,
  MarryReply,
  MarryRequest,
  MendReply,
  MendRequest,
} from './schemas/marrying.ts'
import { Move, RecordedMove } from './schemas/moves.ts'
import { ExportManifest } from './schemas/exports.ts'
import {
  BackupFolder,
  BackupManifest,
  BackupSchedule,
  BackupState,
  ExportFolder,
  MachinePath,
  RescueState,
  SafekeepingJob,
} from './schemas/safekeeping.ts'
import { CalendarFeed, Reminder, Today } from './schemas/schedule.ts'
import { LocalDay, Task, TaskId } from './schemas/tasks.ts'
import {
  KeptSeasonPlan,
  PurchaseList,
  Region,
  SeasonCalendar,
  SeasonComparison,
  SeasonJob,
  SeasonWishes,
  StartSeasonPlan,
  TickPurchase,
} from './schemas/season.ts'
import {
  Lineage,
  LineageRequest,
  Shelf,
  ShelfLots,
  ShelfPage,
  ShelfStock,
} from './schemas/shelf.ts'
import { RowVerdict, Sheet } from './schemas/sheets.ts'
import { BatchCurve, BatchForecast, ComparedBatch, WhatIf } from './schemas/steeping.ts'

const nothing = z.strictObject({})

/** Chosen by the caller; the same key again answers with what the first call did. */
const key = Id

function isLocale(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length === 1
  } catch {
    return false
  }
}

export const Settings = z.strictObject({
  /** A BCP 47 tag; decides how numbers and dates are read and written. */
  locale: z.string().min(2).max(35).refine(isLocale, 'not a language tag'),
  /** Of volumes, weights and lengths. */
  units: z.enum(['metric', 'us']),
  temperature: z.enum(['celsius', 'fahrenheit']),
  strength: z.enum(['pctVol', 'proof']),
  /** Of the words, on screens and papers; left out until one was chosen. Numbers follow the locale. */
  language: Language.optional(),
  theme: z.enum(['light', 'dark', 'system']),
  currency: z.string().regex(/^[A-Z]{3}$/),
  /** A notice on the desktop, once a day at most, where something wants hands. */
  reminders: z.boolean(),
})
export type Settings = z.infer<typeof Settings>

export const CellarStatus = z.strictObject({
  host: z.enum(['electron', 'browser']),
  version: z.string(),
  file: z.string(),
  isDemo: z.boolean(),
  hasDemo: z.boolean(),
  /** No jar, batch or move yet: the first-run screen is shown. */
  isEmpty: z.boolean(),
  settings: Settings,
})
export type CellarStatus = z.infer<typeof CellarStatus>

const Recorded = z.strictObject({
  groupId: Id,
  moveIds: z.array(Id),
  warnings: z.array(Caution),
})

/** What was done to one move: null before it was recorded, null after it was struck. */
const MoveChange = z.strictObject({
  moveId: Id,
  before: Move.nullable(),
  after: Move.nullable(),
})

const Preview = z.strictObject({
  refusals: z.array(z.strictObject({ index: z.number().int(), refusal: Refusal })),
  /** The composition after each of the moves asked about. */
  steps: z.array(LedgerStep),
  warnings: z.array(Caution),
  /** Later moves that would no longer be possible. */
  breaks: z.array(z.strictObject({ recorded: RecordedMove, refusal: Refusal })),
})

const moves = z.array(Move).min(1).max(50)

/** Later moves to strike with it; each as it was seen, so that no change made meanwhile is lost. */
const alsoStrike = z
  .array(z.strictObject({ moveId: Id, fromVersion: Count }))
  .max(1000)
  .optional()

const oneDraft = z.strictObject({ draftId: Id })

const oneJob = z.strictObject({ jobId: Id })

const oneTask = z.strictObject({ taskId: TaskId })

const curvePoints = z.number().int().min(2).max(2000)

const channel = <Effect extends 'read' | 'write', Asked extends z.ZodType, Told extends z.ZodType>(
  effect: Effect,
  request: Asked,
  reply: Told,
) => ({ effect, request, reply })

export const channels = {
  'cellar.status': channel('read', nothing, CellarStatus),
  /** Builds the demo book beside the maker's own if need be, and opens it. */
  'cellar.openDemo': channel('write', nothing, CellarStatus),
  'cellar.openOwn': channel('write', nothing, CellarStatus),
  /** Deletes the demo book's file and opens the maker's own. */
  'cellar.removeDemo': channel('write', nothing, CellarStatus),
  'cellar.changeSettings': channel('write', Settings.partial(), Settings),
  'cellar.balance': channel('read', nothing, Balance),
  /** What the matter in each place cost, and what is already gone. */
  'cellar.costs': channel('read', nothing, CellarCosts),
  'cellar.check': channel(
    'read',
    nothing,
    z.strictObject({
      integrity: z.string(),
      moveCount: z.number().int(),
      lotsDiffering: z.array(Id),
      bottleLotsDiffering: z.array(Id),
      refusedMoves: z.array(Id),
    }),
  ),
  /** Makes every derived table again from the moves. */
  'cellar.rebuild': channel('write', nothing, nothing),

  /** Whether the book is backed up, and how the last tries went. */
  'backups.state': channel('read', nothing, BackupState),
  /** The backups in a folder of this machine; left out, the one where they are kept. */
  'backups.list': channel('read', z.strictObject({ folder: MachinePath.optional() }), BackupFolder),
  /** A folder is made if need be and tried out; null is the usual one, beside the book. */
  'backups.change': channel(
    'write',
    z.strictObject({
      folder: MachinePath.nullable().optional(),
      schedule: BackupSchedule.optional(),
    }),
    BackupState,
  ),
  /** Begins a backup; ask `backups.job` how far it is. The book stays as it is. */
  'backups.start': channel('read', oneJob, SafekeepingJob),
  /** Looks into a backup: is it sound, and in what does it differ from the present book? */
  'backups.look': channel('read', z.strictObject({ jobId: Id, file: MachinePath }), SafekeepingJob),
  'backups.job': channel('read', oneJob, SafekeepingJob),
  'backups.cancel': channel('read', oneJob, SafekeepingJob),
  /** Puts the book of a backup in place of the present one, which is kept aside. */
  'backups.restore': channel(
    'write',
    z.strictObject({ file: MachinePath }),
    z.strictObject({ asideFile: z.string().nullable(), manifest: BackupManifest }),
  ),

  /** The whole cellars in open form in a folder of this machine; left out, the usual one. */
  'exports.list': channel('read', z.strictObject({ folder: MachinePath.optional() }), ExportFolder),
  /** Begins to write the open book, demo or own, in open form; ask `backups.job` how far it is. */
  'exports.start': channel(
    'read',
    z.strictObject({ jobId: Id, folder: MachinePath.optional() }),
    SafekeepingJob,
  ),
  /** Looks into an export: can it be brought in, and in what does it differ from the present book? */
  'exports.look': channel('read', z.strictObject({ jobId: Id, file: MachinePath }), SafekeepingJob),
  /** Puts the cellar of an export in place of the present book, which is kept aside. */
  'exports.import': channel(
    'write',
    z.strictObject({ file: MachinePath }),
    z.strictObject({ asideFile: z.string().nullable(), manifest: ExportManifest }),
  ),

  /** What is wrong with the maker's own book; null where it is open or could be. */
  'rescue.state': channel('read', nothing, RescueState.nullable()),
  /** Reads what can be read of the damaged book into a new one; the report comes with the job. */
  'rescue.salvage': channel('read', oneJob, SafekeepingJob),
  /** Goes on with what was read; the damaged book is kept aside. */
  'rescue.accept': channel('write', oneJob, z.strictObject({ asideFile: z.string() })),
  /** Begins an empty book; the damaged one is kept aside. */
  'rescue.beginAnew': channel('write', nothing, z.strictObject({ asideFile: z.string() })),

  /** Every fruit as this cellar reckons with it: the library, the maker's copies, own fruits. */
  'fruits.list': channel('read', nothing, z.array(Fruit)),
  /** Which of them are not as the library has them. */
  'fruits.origins': channel(
    'read',
    nothing,
    z.array(z.strictObject({ fruitId: Id, origin: FruitOrigin })),
  ),
  'fruits.page': channel('read', z.strictObject({ fruitId: Id }), FruitPage),
  /** Keeps the maker's copy of a library fruit, or a fruit of their own; later charges use it. */
  'fruits.keep': channel('write', Fruit, FruitPage),
  /** Back to the library's row; a fruit of the maker's own goes, unless the book names it. */
  'fruits.reset': channel('write', z.strictObject({ fruitId: Id }), nothing),

  'jars.list': channel(
    'read',
    nothing,
    z.array(z.strictObject({ jar: Jar, contents: JarContents.optional() })),
  ),
  'jars.add': channel('write', z.strictObject({ jars: z.array(Jar).min(1).max(50) }), nothing),
  'jars.change': channel('write', Jar, Jar),

  'pantry.list': channel('read', nothing, z.array(PantryLot)),
  /** Whether an opened spirit was found shut: true ends the question until it is poured from again. */
  'pantry.sayShut': channel('write', z.strictObject({ lotId: Id, isShut: z.boolean() }), nothing),
  'bottles.list': channel('read', nothing, z.array(BottleLot)),

  'shelves.list': channel('read', nothing, z.array(Shelf)),
  'shelves.add': channel('write', Shelf, Shelf),
  'shelves.change': channel('write', Shelf, Shelf),
  /** Bottle lots with their windows; lots that are gone only when asked for. */
  'shelf.lots': channel('read', z.strictObject({ withGone: z.boolean() }), ShelfLots),
  'shelf.page': channel('read', z.strictObject({ bottleLotId: Id }), ShelfPage),
  /** Stock by kind: months gone, and months to come by the maker's own drinking. */
  'shelf.stock': channel(
    'read',
    z.strictObject({
      pastMonths: z.number().int().min(0).max(600),
      forecastMonths: z.number().int().min(1).max(60),
    }),
    ShelfStock,
  ),
  'lineage.of': channel('read', LineageRequest, Lineage),

  /** What the book would put on the labels of these lots; the maker changes it as they like. */
  'labels.usual': channel(
    'read',
    z.strictObject({
      bottleLotIds: z.array(Id).min(1).max(200),
      strengthPrefix: StrengthPrefix,
    }),
    z.array(UsualLabel),
  ),
  /** Labels laid out on their sheets, as the paper will have them. */
  'labels.draw': channel('read', LabelJob, DrawnLabels),
  'labels.paper': channel('read', LabelJob, PaperFile),
  /** Outlines and a ruler, to hold against a sheet of labels before one is used up. */
  'labels.testPaper': channel('read', z.strictObject({ sheet: LabelSheet }), PaperFile),
  'labels.sheets': channel(
    'read',
    nothing,
    z.strictObject({ usual: z.array(LabelSheet), own: z.array(LabelSheet) }),
  ),
  /** Adds a sheet of the maker's own, or changes the one that has its id. */
  'labels.keepSheet': channel('write', LabelSheet, LabelSheet),
  'labels.removeSheet': channel('write', z.strictObject({ sheetId: Id }), nothing),
  /** What was chosen last, or to begin with. */
  'labels.style': channel('read', nothing, LabelStyle),
  'labels.keepStyle': channel('write', LabelStyle, LabelStyle),

  'batches.list': channel('read', nothing, z.array(BatchSummary)),
  'batches.open': channel('write', Batch, Batch),
  'batches.change': channel(
    'write',
    z.strictObject({
      id: Id,
      name: Name.optional(),
      colour: Colour.optional(),
      note: Note.optional(),
    }),
    Batch,
  ),
  'batches.page': channel('read', z.strictObject({ batchId: Id }), BatchPage),
  'batches.curve': channel(
    'read',
    z.strictObject({ batchId: Id, points: curvePoints, whatIf: WhatIf.optional() }),
    BatchCurve,
  ),
  'batches.forecast': channel('read', z.strictObject({ batchId: Id }), BatchForecast),
  'batches.compare': channel(
    'read',
    z.strictObject({ batchIds: z.array(Id).min(1).max(12), points: curvePoints }),
    z.array(ComparedBatch),
  ),

  /** The moves of the book, newest first; a part of them at a time. */
  'moves.list': channel('read', MovesAsked, MovePage),
  'moves.preview': channel('read', z.strictObject({ moves }), Preview),
  'moves.record': channel('write', z.strictObject({ key, moves }), Recorded),
  /** What becomes of the cellar when a move reads otherwise, or is struck (`move` null). */
  'moves.previewAmend': channel(
    'read',
    z.strictObject({ moveId: Id, move: Move.nullable(), alsoStrike }),
    /** Nothing differs while the move itself is refused. */
    Preview.extend({ differences: Differences }),
  ),
  /** The tasks that follow from it; apart, since a forecast may have to be made for them. */
  'moves.previewTasks': channel(
    'read',
    z.strictObject({ moveId: Id, move: Move.nullable(), alsoStrike }),
    z.array(TaskDifference),
  ),
  /**
   * Writes a new version of a move, or strikes it when `move` is null, and strikes together with it
   * what would not be possible any more.
   */
  'moves.amend': channel(
    'write',
    z.strictObject({ key, moveId: Id, fromVersion: Count, move: Move.nullable(), alsoStrike }),
    Recorded.extend({ changes: z.array(MoveChange) }),
  ),
  /**
   * Takes back what was done last to the ledger, together: to a batch, or to the whole book. A group
   * that is named is taken back and no other: bottles are drawn and given without naming a batch.
   * Taking back makes a group too, `groupId`, and taking that back puts everything back.
   */
  'moves.undo': channel(
    'write',
    z.strictObject({ key, batchId: Id.optional(), groupId: Id.optional() }),
    z.strictObject({ groupId: Id, undoes: Id, changes: z.array(MoveChange) }),
  ),
  'moves.history': channel(
    'read',
    z.strictObject({ moveId: Id }),
    z.array(
      z.strictObject({
        version: z.number().int(),
        recordedAt: Instant,
        move: Move.nullable(),
      }),
    ),
  ),

  /** What would become of each row of a spreadsheet; nothing is written. */
  'sheets.look': channel(
    'read',
    z.strictObject({ sheet: Sheet }),
    z.strictObject({ verdicts: z.array(RowVerdict) }),
  ),
  /** Writes every row in one group, or none where one cannot be or is there already unwanted. */
  'sheets.bringIn': channel(
    'write',
    z.strictObject({ key, sheet: Sheet }),
    z.strictObject({ groupId: Id, changes: z.array(MoveChange) }),
  ),

  /** What an instrument's numbers mean, or what a small calculation comes to; touches no book. */
  'bench.measure': channel('read', BenchRequest, BenchReply),

  /** Amounts of jars, bottles, spirit, sugar and water that make what is wished; nothing is written. */
  'marry.solve': channel('read', MarryRequest, MarryReply),
  /** The least that makes a jar's liquid as it is wished. */
  'mend.solve': channel('read', MendRequest, MendReply),

  'drafts.list': channel('read', nothing, z.array(KeptDraft)),
  'drafts.page': channel('read', oneDraft, KeptDraft),
  'drafts.keep': channel('write', Draft, KeptDraft),
  'drafts.remove': channel('write', oneDraft, nothing),
  /** A fruit as the trade usually makes it, to begin with: numbers, and what is usually wanted. */
  'drafts.usual': channel(
    'read',
    z.strictObject({
      fruitId: Id,
      massG: MassG,
      spiritPctVol: DraftSpirit.shape.strengthPctVol,
    }),
    z.strictObject({ spec: DraftSpec, wishes: DraftWishes }),
  ),
  /** What a draft comes to. */
  'drafts.reckon': channel('read', z.strictObject({ spec: DraftSpec }), DraftOutcome),
  /** Which amounts give what is wanted; the pinned ones stay. */
  'drafts.solve': channel(
    'read',
    z.strictObject({
      spec: DraftSpec,
      pins: z.array(DraftPin).max(DraftPin.options.length),
      wishes: DraftWishes,
    }),
    DraftSolution,
  ),
  /** Opens a batch, with the draft's moves as the plan to follow. */
  'drafts.start': channel('write', StartDraft, Batch),
  /** The plan on one page, for the kitchen wall. */
  'drafts.paper': channel(
    'read',
    z.strictObject({ name: Name, note: Note, spec: DraftSpec, size: z.enum(['A4', 'Letter']) }),
    z.strictObject({ fileName: z.string(), pdfBase64: z.base64() }),
  ),

  'recipes.list': channel('read', nothing, z.array(Recipe)),
  /** All versions, the newest first. */
  'recipes.versions': channel('read', z.strictObject({ recipeId: Id }), z.array(Recipe)),
  /** Adds a recipe, or a version to the one that has its id. */
  'recipes.keep': channel(
    'write',
    z.strictObject({ id: Id, name: Name, note: Note, spec: DraftSpec }),
    Recipe,
  ),
  /** The numbers read off what was really done. */
  'recipes.keepBatch': channel(
    'write',
    z.strictObject({ id: Id, name: Name, note: Note, batchId: Id }),
    Recipe,
  ),
  'recipes.remove': channel('write', z.strictObject({ recipeId: Id }), nothing),
  'recipes.scale': channel(
    'read',
    z.strictObject({ spec: DraftSpec, scale: RecipeScale }),
    z.strictObject({ spec: DraftSpec, outcome: DraftOutcome }),
  ),
  /** The recipe beside what really happened in a batch, stage by stage. */
  'recipes.compare': channel(
    'read',
    z.strictObject({ spec: DraftSpec, batchId: Id }),
    z.array(FollowedStage),
  ),

  /** How a batch stands against its plan; null where it was started without one. */
  'plans.follow': channel('read', z.strictObject({ batchId: Id }), FollowedPlan.nullable()),
  /** The next planned move of every batch that follows a plan. */
  'plans.next': channel('read', nothing, z.array(z.strictObject({ batchId: Id, next: Move }))),

  /** When each fruit is to be had: 52 weeks from the week of that day, or from this one. */
  'season.calendar': channel(
    'read',
    z.strictObject({ from: BeginningInstant.optional() }),
    SeasonCalendar,
  ),
  'season.changeRegion': channel('write', Region, Region),
  'season.wishes': channel('read', nothing, SeasonWishes),
  'season.keepWishes': channel('write', SeasonWishes, SeasonWishes),
  /** Begins a plan; ask `season.planState` how far it is. The book stays as it is. */
  'season.startPlan': channel('read', StartSeasonPlan, SeasonJob),
  'season.planState': channel('read', z.strictObject({ jobId: Id }), SeasonJob),
  'season.cancelPlan': channel('read', z.strictObject({ jobId: Id }), SeasonJob),
  /** Keeps what the job came to: its purchases are the purchase list from now on. */
  'season.keepPlan': channel('write', z.strictObject({ id: Id, jobId: Id }), KeptSeasonPlan),
  /** The newest plan kept. */
  'season.lastPlan': channel('read', nothing, KeptSeasonPlan.nullable()),
  /** The job's plan, or the newest kept, beside the season before and what was done in it. */
  'season.compare': channel('read', z.strictObject({ jobId: Id.optional() }), SeasonComparison),

  'purchases.list': channel('read', nothing, PurchaseList),
  /** Bought: it becomes a pantry lot with its price. Unticked, that purchase is struck again. */
  'purchases.tick': channel(
    'write',
    TickPurchase,
    /** `groupId` is null where the ledger keeps no account of what was bought. */
    z.strictObject({ list: PurchaseList, groupId: Id.nullable() }),
  ),
  'purchases.paper': channel(
    'read',
    z.strictObject({ by: z.enum(['week', 'shop']), size: z.enum(['A4', 'Letter']) }),
    z.strictObject({ fileName: z.string(), pdfBase64: z.base64() }),
  ),
  /** Commas, quotes and line ends as RFC 4180 has them; no cell can run as a formula. */
  'purchases.csv': channel(
    'read',
    z.strictObject({ by: z.enum(['week', 'shop']) }),
    z.strictObject({ fileName: z.string(), csv: z.string() }),
  ),

  /** What each batch in hand needs, what waits for something else among it. */
  'schedule.list': channel('read', z.strictObject({ batchId: Id.optional() }), z.array(Task)),
  /** Null once it is done. */
  'schedule.task': channel('read', oneTask, Task.nullable()),
  /** Puts a task off until a day; answers with the day it was put off until before. */
  'schedule.putOff': channel(
    'write',
    z.strictObject({ taskId: TaskId, until: LocalDay }),
    z.strictObject({ before: LocalDay.nullable() }),
  ),
  /** Puts a task back on its own day. */
  'schedule.bringBack': channel('write', oneTask, z.strictObject({ before: LocalDay.nullable() })),

  'today.list': channel('read', nothing, Today),
  /** What to remind of, once a day at most and only where that is wished; else null. */
  'today.remind': channel('write', nothing, Reminder.nullable()),

  /** What is to be done, for a calendar program. What was handed out is kept in the book. */
  'calendar.file': channel(
    'write',
    nothing,
    z.strictObject({ fileName: z.string(), ics: z.string() }),
  ),
  /** Where the browser host serves the calendar; null while it does not. */
  'calendar.feed': channel('read', nothing, CalendarFeed),
  /** Serves it at an address nobody can guess; a former one is no longer answered. */
  'calendar.openFeed': channel('write', nothing, CalendarFeed),
  'calendar.closeFeed': channel('write', nothing, CalendarFeed),
  /** For the host that serves it: whoever asks has to know the secret of the address. */
  'calendar.serve': channel(
    'write',
    z.strictObject({ secret: z.string().max(200) }),
    z.strictObject({ ics: z.string() }),
  ),
} as const

export type Channel = keyof typeof channels
export type Request<C extends Channel> = z.input<(typeof channels)[C]['request']>
export type ParsedRequest<C extends Channel> = z.output<(typeof channels)[C]['request']>
export type Answer<C extends Channel> = z.output<(typeof channels)[C]['reply']>

export const isChannel = (name: string): name is Channel => Object.hasOwn(channels, name)

/** What the service tells every window after a write. */
export const BookChanged = z.strictObject({ event: z.literal('bookChanged') })
export type BookChanged = z.infer<typeof BookChanged>

/** How a screen reaches the service, whichever host it runs in. */
export interface Bridge {
  call(name: string, request: unknown): Promise<unknown>
  /** Returns a function that stops listening. */
  onChange(listener: () => void): () => void
}
