/** The loads of a season in the very jars they stand in, and the jars' weeks told one by one. */
import type { SeasonSpan } from '../../../shared/schemas/season.ts'
import { assignJars, type JarLoad } from './assign-jars.ts'
import type { SeasonFacts } from './season-facts.ts'
import type { Load, SeasonQuestion, Way } from './season-program.ts'
import type { SeasonSolved } from './solve-season.ts'
import { mondayMs, msPerWeek } from './weeks.ts'

export interface PlacedLoad {
  readonly load: Load
  readonly way: Way
  readonly key: string
  readonly steepJarIds: readonly string[]
  readonly settleJarIds: readonly string[]
}

export interface Placed {
  readonly loads: readonly PlacedLoad[]
  readonly spans: readonly SeasonSpan[]
}

interface Use {
  readonly place: JarLoad
  readonly use: 'steep' | 'settle' | 'standingSettle'
  readonly loadIndex: number
}

export function placed(
  question: SeasonQuestion,
  { loads, settled }: SeasonSolved,
  facts: SeasonFacts,
): Placed {
  const { ways, classes, cleaningWeeks, mustSettle } = question
  const uses: Use[] = [
    ...mustSettle.flatMap(({ fromWeek, toWeek }, loadIndex) =>
      each(settled[loadIndex]?.jars ?? []).map((classIndex) => ({
        place: { classIndex, fromWeek, toWeek },
        use: 'standingSettle' as const,
        loadIndex,
      })),
    ),
    ...loads.flatMap(({ wayIndex, week, steep, settle }, loadIndex) => {
      const { emptiedWeek, settleFromWeek, settleToWeek } = ways[wayIndex] as Way
      const at = (classIndex: number, from: number, to: number): JarLoad => ({
        classIndex,
        fromWeek: week + from,
        toWeek: week + to,
      })
      return [
        ...each(steep).map((index) => ({
          place: at(index, 0, emptiedWeek),
          use: 'steep' as const,
          loadIndex,
        })),
        ...each(settle).map((index) => ({
          place: at(index, settleFromWeek, settleToWeek),
          use: 'settle' as const,
          loadIndex,
        })),
      ]
    }),
  ]
  const taken = takenJars(facts, question)
  const jarIds = assignJars(
    uses.map(({ place }) => place),
    classes,
    taken,
    cleaningWeeks,
  )
  const jarsOf = (loadIndex: number, use: Use['use']) =>
    uses.flatMap((one, index) =>
      one.loadIndex === loadIndex && one.use === use ? [jarIds[index] as string] : [],
    )
  const placedLoads = loads.map((load, index): PlacedLoad => {
    const way = ways[load.wayIndex] as Way
    const kindId = question.kinds[way.kindIndex]?.kindId ?? ''
    return {
      load,
      way,
      key: `${kindId.slice(0, 44)}-w${load.week}${way.source === 'pantry' ? '-pantry' : ''}`,
      steepJarIds: jarsOf(index, 'steep'),
      settleJarIds: jarsOf(index, 'settle'),
    }
  })
  const capacityOf = new Map(classes.flatMap((c) => c.jarIds.map((id) => [id, c.capacityMl])))
  const spans = uses.map(({ place, use, loadIndex }, index): SeasonSpan => {
    const jarId = jarIds[index] as string
    const { fromWeek, toWeek } = place
    if (use === 'standingSettle') {
      const { batchId, volumeMl } = mustSettle[loadIndex] as SeasonQuestion['mustSettle'][number]
      const fillMl = shareOf(volumeMl, jarId, jarsOf(loadIndex, use), capacityOf)
      return { jarId, fromWeek, toWeek, use, batchId, fillMl }
    }
    const { load, way, key, steepJarIds, settleJarIds } = placedLoads[loadIndex] as PlacedLoad
    const isSteeping = use === 'steep'
    const wholeMl = load.kg * (isSteeping ? way.steepMlPerKg : way.settleMlPerKg)
    const fillMl = shareOf(wholeMl, jarId, isSteeping ? steepJarIds : settleJarIds, capacityOf)
    return { jarId, fromWeek, toWeek, use, batchKey: key, fillMl }
  })
  const standing = standingSpans(facts, taken)
  return { loads: placedLoads, spans: withCleaning([...standing, ...spans], cleaningWeeks) }
}

/** Class indices, one for each jar counted. */
const each = (counts: readonly number[]): number[] =>
  counts.flatMap((count, index) => Array.from({ length: count }, () => index))

/** Filled alike: each jar gets the share of its size. */
export function shareOf(
  wholeMl: number,
  jarId: string,
  jarIds: readonly string[],
  capacityOf: ReadonlyMap<string, number>,
): number {
  const sum = jarIds.reduce((total, id) => total + (capacityOf.get(id) ?? 0), 0)
  return sum === 0 ? 0 : (wholeMl * (capacityOf.get(jarId) ?? 0)) / sum
}

function takenJars({ standing, startMs }: SeasonFacts, { classes }: SeasonQuestion) {
  const fromMs = mondayMs(startMs)
  const known = new Set(classes.flatMap(({ jarIds }) => jarIds))
  return standing.jars.flatMap(({ jarId, untilMs }) => {
    const untilWeek = Math.max(0, Math.ceil((untilMs - fromMs) / msPerWeek))
    return known.has(jarId) && untilWeek > 0 ? [{ jarId, untilWeek }] : []
  })
}

const standingSpans = (
  { standing }: SeasonFacts,
  taken: readonly { jarId: string; untilWeek: number }[],
): SeasonSpan[] =>
  taken.map(({ jarId, untilWeek }) => {
    const jar = standing.jars.find((one) => one.jarId === jarId)
    return {
      jarId,
      fromWeek: 0,
      toWeek: untilWeek,
      use: 'standing',
      ...(jar && { batchId: jar.batchId }),
      fillMl: jar?.fillMl ?? 0,
    }
  })

const withCleaning = (spans: readonly SeasonSpan[], cleaningWeeks: number): SeasonSpan[] =>
  cleaningWeeks === 0
    ? [...spans]
    : spans.flatMap((span): SeasonSpan[] => [
        span,
        {
          jarId: span.jarId,
          fromWeek: span.toWeek,
          toWeek: span.toWeek + cleaningWeeks,
          use: 'cleaning',
          fillMl: 0,
        },
      ])
