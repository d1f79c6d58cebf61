/** What a batch needs next, and when: tasks read off the ledger, never kept in it. */
import * as z from 'zod'
import { Id, Instant } from './basics.ts'
import { Cut, FilterMedium } from './moves.ts'

/** A day of the maker's own calendar. */
export const LocalDay = z.iso.date()
export type LocalDay = z.infer<typeof LocalDay>

/**
 * Batch, kind, jar where there is one, and which of its kind it is: the same for as long as the
 * task is the same, whatever is amended.
 */
export const TaskId = z
  .string()
  .max(200)
  .regex(/^[A-Za-z0-9_-]+(\.[A-Za-z0-9_-]+){2,3}$/, 'ids joined by dots')

export const TaskKind = z.enum([
  'charge',
  'addSpirit',
  'strengthen',
  'coverFruit',
  'lookIn',
  'turn',
  'drawOff',
  'coverWithSugar',
  'pourOffSugarDraw',
  'press',
  'clearJar',
  'marry',
  'rack',
  'filter',
  'bottle',
  'taste',
  'drinkUp',
  'finishOpened',
])
export type TaskKind = z.infer<typeof TaskKind>

/** What waiting costs, the worst first: this is the order in which tasks are told. */
export const Loss = z.enum([
  /** It begins to ferment. */
  'ferments',
  /** Fruit in the air moulds. */
  'mould',
  /** Whole stones give up more cyanide. */
  'stones',
  /** The fruit gives up bitterness, its colour goes. */
  'oversteeps',
  /** Bottles lose what they were laid down for. */
  'fades',
  /** Nothing spoils; a vessel stands taken. */
  'idle',
  /** Nothing but the pleasure. */
  'nothing',
])
export type Loss = z.infer<typeof Loss>

/** Where a task's dates come from. */
export const TaskSource = z.enum(['plan', 'forecast', 'fruit', 'trade', 'shelf', 'ledger'])
export type TaskSource = z.infer<typeof TaskSource>

/** What has to be out for it: what is out for one jar serves the others too. */
export const Effort = z.enum([
  'fruit',
  'spirit',
  'turning',
  'funnel',
  'sugar',
  'filters',
  'bottles',
  'glass',
])
export type Effort = z.infer<typeof Effort>

/** The move that does it, as far as the ledger can propose one; the form is filled in with it. */
export const Proposal = z.strictObject({
  kind: z.enum([
    'charge',
    'pourSpirit',
    'stir',
    'drawOff',
    'coverWithSugar',
    'press',
    'discard',
    'marry',
    'filter',
    'bottle',
    'taste',
    'drawBottle',
    'pourGlass',
  ]),
  jarIds: z.array(Id),
  /** Into each jar: millilitres of liquid, grams of everything else. */
  amount: z.number().positive().optional(),
  refuseG: z.number().nonnegative().optional(),
  cut: Cut.optional(),
  medium: FilterMedium.optional(),
  bottleSizeMl: z.number().positive().optional(),
  count: z.number().int().positive().optional(),
  bottleLotId: Id.optional(),
  openedId: Id.optional(),
})
export type Proposal = z.infer<typeof Proposal>

/** How a task stands today. */
export const TaskState = z.enum([
  /** What waiting costs is being lost. */
  'late',
  /** Its day has come. */
  'due',
  /** It can be done, and loses nothing yet. */
  'open',
  /** Not yet. */
  'coming',
])
export type TaskState = z.infer<typeof TaskState>

export const Task = z.strictObject({
  id: TaskId,
  kind: TaskKind,
  batchId: Id,
  jarIds: z.array(Id),
  bottleLotId: Id.optional(),
  openedId: Id.optional(),
  /** The second sugar draw is 2. */
  ordinal: z.number().int().positive(),
  early: Instant,
  due: Instant,
  /** Left out where waiting loses nothing. */
  late: Instant.optional(),
  from: TaskSource,
  loss: Loss,
  effort: Effort,
  /** Something of the batch has to be done before. */
  isWaiting: z.boolean(),
  state: TaskState,
  log: Proposal.optional(),
  putOff: z
    .strictObject({
      until: LocalDay,
      /** It was put off past the day from which it loses: it is told again. */
      isBack: z.boolean(),
    })
    .optional(),
})
export type Task = z.infer<typeof Task>
