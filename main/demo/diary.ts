/**
 * The demo's years in the order of their days: deeds may put later deeds in the diary, and what
 * would lie after today has not happened yet. So a batch begun lately is simply not finished.
 */
export type Deed = (atMs: number) => Promise<void>

export interface Diary {
  /** Puts a deed at an instant. */
  at: (ms: number, deed: Deed) => void
  /** Does everything up to today, in the order of time. */
  live: () => Promise<void>
}

export function openDiary(nowMs: number): Diary {
  const entries: { ms: number; deed: Deed }[] = []
  return {
    at: (ms, deed) => {
      if (ms > nowMs) return
      // Sorted from the last to the first; of equal instants the one entered first comes first.
      let place = entries.length
      while (place > 0 && (entries[place - 1]?.ms ?? 0) <= ms) place -= 1
      entries.splice(place, 0, { ms, deed })
    },
    live: async () => {
      for (let next = entries.pop(); next; next = entries.pop()) await next.deed(next.ms)
    },
  }
}
