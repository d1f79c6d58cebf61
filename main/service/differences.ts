/**
 * What differs today between the ledger and the same with some moves changed or struck. Told is only
 * what a screen can show: less than a tenth of a percent, or half a gram or millilitre, is the same.
 */
import { allBatches, batchById } from '../cellar/batch-store.ts'
import { massOf } from '../../shared/matter.ts'
import type { Differences, LiquidNumbers, TaskDifference } from '../../shared/schemas/amending.ts'
import {
  dayOf,
  describeLiquid,
  liquidVolumeMl,
  settledJar,
  type CellarState,
  type LotState,
} from '../engine/index.ts'
import { batchSummary } from './describe.ts'
import { nowMs } from './handlers/handler.ts'
import type { LedgerView } from './ledger-view.ts'
import { scheduledTasks, timeZoneOf, toldTasks } from './schedule.ts'
import type { Session } from './session.ts'

interface Views {
  readonly before: LedgerView
  readonly after: LedgerView
}

export function differencesBetween(session: Session, views: Views): Differences {
  const cellars = [views.before.folded.cellar, views.after.folded.cellar] as const
  const names = new Map(allBatches(session.book).map(({ id, name }) => [id, name]))
  const now = nowMs(session)
  const batchTold = (ledger: LedgerView, batchId: string) => {
    const batch = batchById(session.book, batchId)
    if (!batch) return null
    const { stage, liquid } = batchSummary({ ledger }, batch, { nowMs: now, next: undefined })
    return { stage, liquid: numbersOf(liquid) }
  }
  const lotName = (id: string) => {
    const lot = cellars[0].bottles.get(id) ?? cellars[1].bottles.get(id)
    return lot?.name ?? names.get(lot?.batchId ?? '') ?? id
  }
  return {
    batches: batchesTouched(cellars)
      .map((batchId) => ({
        batchId,
        before: batchTold(views.before, batchId),
        after: batchTold(views.after, batchId),
      }))
      .filter(({ before, after }) => !looksSame(before, after)),
    jars: changed(cellars, 'jars', (jar) =>
      numbersOf(describeLiquid(settledJar(jar, Math.max(now, jar.atMs)).bodies.free)),
    ).map(({ id, ...sides }) => ({ jarId: id, ...sides })),
    bottles: changed(cellars, 'bottles', ({ count, perBottle }) => ({
      count,
      liquid: numbersOf(describeLiquid(perBottle)),
    })).map(({ id, ...sides }) => ({ bottleLotId: id, name: lotName(id), ...sides })),
    opened: changed(cellars, 'opened', ({ matter }) => numbersOf(describeLiquid(matter))).map(
      ({ id, ...sides }) => ({ openedId: id, name: lotName(lotOfOpened(cellars, id)), ...sides }),
    ),
    pantry: changed(cellars, 'lots', leftInLot).map(({ id, ...sides }) => ({
      lotId: id,
      goods: (cellars[1].lots.get(id) ?? (cellars[0].lots.get(id) as LotState)).goods,
      ...sides,
    })),
  }
}

const lotOfOpened = (cellars: Cellars, id: string) =>
  cellars.map(({ opened }) => opened.get(id)?.bottleLotId).find((lotId) => lotId !== undefined) ??
  ''

const leftInLot = ({ goods, matter }: LotState) => ({
  massG: massOf(matter),
  ...(goods.kind === 'spirit' && { volumeMl: liquidVolumeMl(matter) }),
})

const numbersOf = (liquid: LiquidNumbers | undefined): LiquidNumbers | null =>
  liquid
    ? {
        volumeMl: liquid.volumeMl,
        strengthPctVol: liquid.strengthPctVol,
        sugarGPerL: liquid.sugarGPerL,
      }
    : null

type Cellars = readonly [before: CellarState, after: CellarState]
type Places = 'batches' | 'jars' | 'bottles' | 'opened' | 'lots'
type StateOf<Place extends Places> =
  CellarState[Place] extends ReadonlyMap<string, infer State> ? State : never

/** The places that are told otherwise afterwards, both ways. */
function changed<Place extends Places, Told>(
  cellars: Cellars,
  place: Place,
  tell: (state: StateOf<Place>) => Told | null,
): Changed<Told>[] {
  const told = (cellar: CellarState, id: string) => {
    // A cast, since the compiler does not join the place with its state.
    const state = cellar[place].get(id) as StateOf<Place> | undefined
    return state === undefined ? null : tell(state)
  }
  return differing(cellars, place)
    .map((id) => ({ id, before: told(cellars[0], id), after: told(cellars[1], id) }))
    .filter(({ before, after }) => !looksSame(before, after))
}

interface Changed<Told> {
  readonly id: string
  readonly before: Told | null
  readonly after: Told | null
}

/** Half of the last place that is shown of each number. */
const leastOf: Readonly<Record<string, number>> = {
  strengthPctVol: 0.05,
  sugarGPerL: 0.5,
  volumeMl: 0.5,
  massG: 0.5,
}

function looksSame(before: unknown, after: unknown, name = ''): boolean {
  if (typeof before === 'number' && typeof after === 'number')
    return Math.abs(before - after) < (leastOf[name] ?? Number.MIN_VALUE)
  if (!isObject(before) || !isObject(after)) return before === after
  const names = new Set([...Object.keys(before), ...Object.keys(after)])
  return [...names].every((key) => looksSame(before[key], after[key], key))
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null

/** Tasks that come up, fall away, or go to another day, of the batches that something changes in. */
export function taskDifferences(session: Session, after: LedgerView): TaskDifference[] {
  const batchIds = batchesTouched([session.ledger.folded.cellar, after.folded.cellar])
  const timeZone = timeZoneOf(session)
  const day = (due: string) => dayOf(Date.parse(due), timeZone)
  const tasksOf = (asked: Session) =>
    new Map(
      batchIds
        .flatMap((batchId) => toldTasks(asked, scheduledTasks(asked, batchId)))
        .map((task) => [task.id, task]),
    )
  const before = tasksOf(session)
  const afterwards = tasksOf({ ...session, ledger: after })
  return [...new Set([...before.keys(), ...afterwards.keys()])].flatMap((taskId) => {
    const [was, is] = [before.get(taskId), afterwards.get(taskId)]
    if (was && is && day(was.due) === day(is.due)) return []
    return [{ taskId, before: was ?? null, after: is ?? null }]
  })
}

/** The batches that stand otherwise, or that something of stands otherwise. */
function batchesTouched([before, after]: Cellars): string[] {
  const touched = new Set<string>()
  for (const place of ['jars', 'bottles', 'opened'] as const)
    for (const id of differing([before, after], place))
      for (const cellar of [before, after]) {
        const batchId = cellar[place].get(id)?.batchId
        if (batchId !== undefined) touched.add(batchId)
      }
  for (const id of differing([before, after], 'batches')) touched.add(id)
  return [...touched]
}

/** The places whose state differs in any number. */
function differing<Place extends Places>([before, after]: Cellars, place: Place): string[] {
  const ids = new Set([...before[place].keys(), ...after[place].keys()])
  return [...ids].filter((id) => {
    const [was, is] = [before[place].get(id), after[place].get(id)]
    return was !== is && JSON.stringify(was) !== JSON.stringify(is)
  })
}
