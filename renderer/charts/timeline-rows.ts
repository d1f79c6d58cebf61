/** Which liquid stood in which vessel: one row a vessel, in the order in which they came into use. */
import type { JarContents, JarSpan } from '../../shared/schemas/cellar.ts'
import { timeDomain, type TimeDomain } from './time-axis.ts'

export interface TimelineBar {
  readonly stage: JarSpan['stage']
  readonly fromMs: number
  readonly toMs: number
  readonly isOpen: boolean
  readonly contents: JarContents
}

export interface TimelineRow {
  readonly jarId: string
  readonly bars: readonly TimelineBar[]
}

export interface Timeline {
  readonly domain: TimeDomain
  readonly rows: readonly TimelineRow[]
}

export function timelineOf(spans: readonly JarSpan[], nowMs: number): Timeline {
  const bars = new Map<string, TimelineBar[]>()
  const inOrder = spans.toSorted((a, b) => a.from.localeCompare(b.from))
  for (const { jarId, stage, from, to, isOpen, contents } of inOrder) {
    const bar = { stage, fromMs: Date.parse(from), toMs: Date.parse(to), isOpen, contents }
    bars.set(jarId, [...(bars.get(jarId) ?? []), bar])
  }
  const rows = [...bars].map(([jarId, own]) => ({ jarId, bars: own }))
  const all = rows.flatMap((row) => row.bars)
  const fromMs = Math.min(...all.map((bar) => bar.fromMs), nowMs)
  const toMs = Math.max(...all.map((bar) => bar.toMs), fromMs)
  return { domain: timeDomain(fromMs, toMs), rows }
}

/** Where an instant lies in a domain, as a share from 0 to 1. */
export const shareOfDomain = ({ fromMs, toMs }: TimeDomain, atMs: number): number =>
  Math.min(1, Math.max(0, (atMs - fromMs) / (toMs - fromMs)))

/** The same as a style's distance from the left. */
export const placeInDomain = (domain: TimeDomain, atMs: number): string =>
  `${100 * shareOfDomain(domain, atMs)}%`

/** Whether a bar is of fruit that still stands under its spirit. */
export const steepsStill = ({ stage, isOpen }: TimelineBar): boolean =>
  isOpen && stage === 'steeping'
