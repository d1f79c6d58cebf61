/** Weeks in a row as one range each: from the first of them to the one after the last. */
export interface WeekRange {
  readonly from: number
  readonly to: number
}

export function weekRanges(weeks: readonly number[]): WeekRange[] {
  const ranges: { from: number; to: number }[] = []
  for (const week of new Set(weeks.toSorted((a, b) => a - b))) {
    const last = ranges.at(-1)
    if (last?.to === week) last.to = week + 1
    else ranges.push({ from: week, to: week + 1 })
  }
  return ranges
}
