/** What stands in each jar, week by week: a row a jar, the largest first. */
import type { SeasonJar, SeasonPlan, SeasonSpan } from '../../shared/schemas/season.ts'
import type { TimeDomain } from './time-axis.ts'
import { weekMs, weeksDomain } from './week-scale.ts'

export interface OccupancyBar {
  readonly key: string
  readonly jarId: string
  readonly use: SeasonSpan['use']
  readonly fromMs: number
  readonly toMs: number
  readonly weeks: number
  readonly fillMl: number
  /** Of the plan. */
  readonly batchKey?: string | undefined
  readonly kindId?: string | undefined
  /** Of today's cellar. */
  readonly batchId?: string | undefined
}

export interface OccupancyRow {
  readonly jar: SeasonJar
  readonly bars: readonly OccupancyBar[]
}

export interface Occupancy {
  readonly domain: TimeDomain
  readonly rows: readonly OccupancyRow[]
}

export function occupancyOf({
  startAt,
  weekCount,
  jars,
  spans,
  batches,
}: Pick<SeasonPlan, 'startAt' | 'weekCount' | 'jars' | 'spans' | 'batches'>): Occupancy {
  const startMs = Date.parse(startAt)
  const kinds = new Map(batches.map(({ key, kindId }) => [key, kindId]))
  const byJar = Map.groupBy(spans, ({ jarId }) => jarId)
  const last = spans.reduce((most, { toWeek }) => Math.max(most, toWeek), weekCount)
  const rows = jars
    .toSorted((a, b) => b.capacityMl - a.capacityMl || a.name.localeCompare(b.name))
    .map((jar) => ({
      jar,
      bars: (byJar.get(jar.jarId) ?? [])
        .toSorted((a, b) => a.fromWeek - b.fromWeek)
        .map((span) => barOf(span, startMs, kinds)),
    }))
  return { domain: weeksDomain(startMs, last), rows }
}

const barOf = (
  { jarId, fromWeek, toWeek, use, batchKey, batchId, fillMl }: SeasonSpan,
  startMs: number,
  kinds: ReadonlyMap<string, string>,
): OccupancyBar => ({
  key: `${jarId} ${fromWeek} ${use}`,
  jarId,
  use,
  fromMs: weekMs(startMs, fromWeek),
  toMs: weekMs(startMs, toWeek),
  weeks: toWeek - fromWeek,
  fillMl,
  batchKey,
  kindId: batchKey === undefined ? undefined : kinds.get(batchKey),
  batchId,
})

/** The bar to which a key leads; undefined where the key is not for walking the chart. */
export function stepInOccupancy(
  rows: readonly OccupancyRow[],
  from: OccupancyBar,
  pressed: string,
): OccupancyBar | undefined {
  const filled = rows.filter(({ bars }) => bars.length > 0)
  const at = filled.findIndex(({ jar }) => jar.jarId === from.jarId)
  const own = filled[at]?.bars ?? []
  const index = own.findIndex(({ key }) => key === from.key)
  switch (pressed) {
    case 'ArrowRight':
      return own[index + 1]
    case 'ArrowLeft':
      return own[index - 1]
    case 'ArrowDown':
      return nearest(filled[at + 1]?.bars, from)
    case 'ArrowUp':
      return nearest(filled[at - 1]?.bars, from)
    case 'Home':
      return own[0]
    case 'End':
      return own.at(-1)
    default:
      return undefined
  }
}

/** Of another jar, the bar that stands at the same time, or else the least far off. */
function nearest(bars: readonly OccupancyBar[] = [], from: OccupancyBar): OccupancyBar | undefined {
  const distance = ({ fromMs, toMs }: OccupancyBar) =>
    Math.max(0, fromMs - from.fromMs, from.fromMs - toMs)
  return bars.toSorted((a, b) => distance(a) - distance(b))[0]
}
