/** Tasks as Today, a notice on the desktop and a calendar tell them. */
import * as z from 'zod'
import { Language } from '../language.ts'
import { BatchSummary, BottleLot, Caution } from './cellar.ts'
import { KindStock } from './shelf.ts'
import { LocalDay, Task } from './tasks.ts'

/** A task about bottles, with the lot they are of. */
const TaskOfLot = z.strictObject({ task: Task, lot: BottleLot })

export const Today = z.strictObject({
  /** The maker's day that this was told for. */
  day: LocalDay,
  /** What can be done now, in the order of what is lost by waiting. */
  now: z.array(Task),
  /** What comes within a week, by its day. */
  week: z.array(Task),
  /** What the maker put off, and is not back. */
  putOff: z.array(Task),
  /** The first task after all of these. */
  after: Task.optional(),
  /** Bottles that came ready lately and have not been tasted since, each with its tasting. */
  cameReady: z.array(TaskOfLot),
  /** Lots about to fade, and opened bottles past their best. */
  fading: z.array(TaskOfLot),
  /** Kinds that run out before more can be laid down, by the maker's own drinking. */
  runningLow: z.array(KindStock),
  cautions: z.array(Caution),
  /** The batches that any of these name. */
  batches: z.array(BatchSummary),
})
export type Today = z.infer<typeof Today>

/** What a notice on the desktop tells. */
export const Reminder = z.strictObject({
  /** Tasks that are late or due; all the turning together is one. */
  count: z.number().int().positive(),
  /** Of the batches they belong to, the most pressing first. */
  batchNames: z.array(z.string()),
  /** What the cellar speaks, for a host that has no screen at hand. */
  language: Language.optional(),
})
export type Reminder = z.infer<typeof Reminder>

export const CalendarFeed = z.strictObject({
  /** Below the address of the browser host. */
  path: z.string().nullable(),
})
export type CalendarFeed = z.infer<typeof CalendarFeed>
