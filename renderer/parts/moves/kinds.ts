/** Which moves are likely now, which are possible, and which a maker seldom makes. */
import type { BatchSummary } from '../../../shared/schemas/cellar.ts'
import type { MoveKind } from '../../../shared/schemas/moves.ts'
import type { Task } from '../../../shared/schemas/tasks.ts'

/** Done on the shelf, where the bottle stands; the log of a batch only mends them. */
const shelfKinds = [
  'breakBottle',
  'shelve',
  'openBottle',
  'pourGlass',
  'topUp',
] as const satisfies readonly MoveKind[]
export type ShelfKind = (typeof shelfKinds)[number]
/** Comes in by a spreadsheet; the log only mends it as well. */
type BroughtKind = 'bringIn'
export type LoggedKind = Exclude<MoveKind, ShelfKind | BroughtKind>

export const isLogged = (kind: MoveKind): kind is LoggedKind =>
  kind !== 'bringIn' && !shelfKinds.some((one) => one === kind)

/** The move by which a task is done; none where that is done on the shelf. */
export function kindOfTask(task: Task | undefined): LoggedKind | undefined {
  const kind = task?.log?.kind
  return kind !== undefined && isLogged(kind) ? kind : undefined
}

/** What belongs to each stage, likeliest first. */
const usual = {
  empty: ['charge'],
  layered: ['pourSpirit', 'sugar', 'charge', 'pourWater'],
  steeping: ['drawOff', 'stir', 'read', 'keep', 'pourSpirit', 'pourWater', 'sugar'],
  drawnOff: ['crush', 'coverWithSugar', 'press', 'marry', 'filter'],
  sugarDraw: ['drawOff', 'stir', 'press', 'sugar'],
  pressed: ['marry', 'discard', 'filter', 'read'],
  married: ['filter', 'read', 'pourWater', 'sugar', 'bottle'],
  filtered: ['bottle', 'read', 'filter', 'taste', 'pourWater', 'sugar'],
  resting: ['taste', 'drawBottle', 'give', 'remark'],
  finished: ['remark'],
} as const satisfies Record<BatchSummary['stage'], readonly LoggedKind[]>

/** Work in the jars, in the order of the trade. */
const work = [
  'charge',
  'sugar',
  'addAcid',
  'pourSpirit',
  'pourWater',
  'stir',
  'keep',
  'read',
  'drawOff',
  'press',
  'crush',
  'coverWithSugar',
  'marry',
  'filter',
  'bottle',
  'unbottle',
] as const satisfies readonly LoggedKind[]

/** What keeps the book rather than the jars. */
const book = [
  'buy',
  'taste',
  'drawBottle',
  'give',
  'discard',
  'correct',
  'remark',
] as const satisfies readonly LoggedKind[]

export interface KindGroups {
  /** Shown first, the next step at the head. */
  readonly likely: readonly LoggedKind[]
  readonly work: readonly LoggedKind[]
  readonly book: readonly LoggedKind[]
}

export function kindGroups(
  summary: Pick<BatchSummary, 'stage' | 'next' | 'jars' | 'bottleLots'>,
): KindGroups {
  const next = kindOfTask(summary.next)
  const likely = [
    ...new Set<LoggedKind>([...(next ? [next] : []), ...usual[summary.stage]]),
  ].filter((kind) => isPossible(kind, summary))
  const rest = (kinds: readonly LoggedKind[]) => kinds.filter((kind) => !likely.includes(kind))
  return { likely, work: rest(work), book: rest(book) }
}

/** Whether what stands in the jars now has what the move needs. */
function isPossible(
  kind: LoggedKind,
  { jars, bottleLots }: Pick<BatchSummary, 'jars' | 'bottleLots'>,
): boolean {
  const hasFruit = jars.some((jar) => jar.fruits.length > 0)
  const withLiquid = jars.filter((jar) => jar.liquid !== undefined).length
  switch (kind) {
    case 'crush':
    case 'coverWithSugar':
    case 'press':
      return hasFruit
    case 'drawOff':
    case 'filter':
    case 'bottle':
    case 'read':
    case 'addAcid':
      return withLiquid > 0
    case 'taste':
      return withLiquid > 0 || bottleLots.some(({ count }) => count > 0)
    case 'marry':
      return withLiquid > 1
    case 'stir':
    case 'keep':
    case 'discard':
      return jars.length > 0
    case 'unbottle':
    case 'drawBottle':
    case 'give':
      return bottleLots.some(({ count }) => count > 0)
    default:
      return true
  }
}
