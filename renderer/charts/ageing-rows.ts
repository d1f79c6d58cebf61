/** Lots as bars through their windows, kind by kind, and the part of time that is looked at. */
import { msPerDay } from '../../shared/spans-of-time.ts'
import type { Verdict } from '../../shared/schemas/moves.ts'
import type { InstantBand, ShelfLot } from '../../shared/schemas/shelf.ts'
import type { TimeDomain } from './time-axis.ts'

export interface EdgeMs {
  readonly earlyMs: number
  readonly likelyMs: number
  readonly lateMs: number
}

export interface AgeingBar {
  readonly lotId: string
  readonly batchId: string
  readonly name: string
  readonly count: number
  readonly phase: Verdict
  readonly bottledMs: number
  readonly ready: EdgeMs
  readonly fading: EdgeMs
}

export interface AgeingGroup {
  readonly kindId: string
  /** What fades first stands first. */
  readonly bars: readonly AgeingBar[]
}

export const edgeMs = ({ early, likely, late }: InstantBand): EdgeMs => ({
  earlyMs: Date.parse(early),
  likelyMs: Date.parse(likely),
  lateMs: Date.parse(late),
})

export const ageingBar = ({ lot, window }: ShelfLot): AgeingBar => ({
  lotId: lot.id,
  batchId: lot.batchId,
  name: lot.name,
  count: lot.count,
  phase: window.phase,
  bottledMs: Date.parse(lot.bottledAt),
  ready: edgeMs(window.readyAt),
  fading: edgeMs(window.fadingAt),
})

/** Groups in the order of their names, as `kindName` tells them. */
export function ageingGroups(
  lots: readonly ShelfLot[],
  kindName: (kindId: string) => string,
  locale: string,
): AgeingGroup[] {
  const byKind = new Map<string, AgeingBar[]>()
  for (const shelfLot of lots) {
    const bars = byKind.get(shelfLot.kindId)
    if (bars) bars.push(ageingBar(shelfLot))
    else byKind.set(shelfLot.kindId, [ageingBar(shelfLot)])
  }
  return [...byKind]
    .map(([kindId, bars]) => ({
      kindId,
      bars: bars.sort((a, b) => a.fading.likelyMs - b.fading.likelyMs),
    }))
    .sort((a, b) => kindName(a.kindId).localeCompare(kindName(b.kindId), locale))
}

/** A heading, or a bar under it: what the long list is made of. */
export type AgeingRow =
  { readonly kindId: string; readonly count: number } | { readonly bar: AgeingBar }

export const ageingRows = (groups: readonly AgeingGroup[]): AgeingRow[] =>
  groups.flatMap(({ kindId, bars }) => [
    { kindId, count: bars.length },
    ...bars.map((bar) => ({ bar })),
  ])

export const ageingSpans = ['all', 'ten', 'three'] as const
export type AgeingSpan = (typeof ageingSpans)[number]

const msPerYear = 365.25 * msPerDay
const yearsOf: Readonly<Record<Exclude<AgeingSpan, 'all'>, number>> = { ten: 10, three: 3 }

/** After the fading edge a bar runs on for as long again as a fifth of its life, to be seen. */
const tail = 0.2

export const endOfBar = ({ bottledMs, fading }: AgeingBar): number =>
  Math.max(fading.lateMs, fading.likelyMs + tail * (fading.likelyMs - bottledMs))

/** All of it, or some years with today a third in; `shift` moves on by thirds. */
export function ageingDomain(
  bars: readonly AgeingBar[],
  span: AgeingSpan,
  nowMs: number,
  shift: number,
): TimeDomain {
  if (span === 'all') {
    const fromMs = bars.reduce((least, bar) => Math.min(least, bar.bottledMs), nowMs)
    const toMs = bars.reduce((most, bar) => Math.max(most, endOfBar(bar)), nowMs)
    return { fromMs, toMs: Math.max(toMs, fromMs + msPerYear) }
  }
  const width = yearsOf[span] * msPerYear
  const fromMs = nowMs - width / 3 + (shift * width) / 3
  return { fromMs, toMs: fromMs + width }
}
