/** Seconds that the maker lets the search for the best plan take. */
export const timeLimits = [10, 30, 120, 300] as const
export const usualTimeLimit = 30

/** The next longer search; undefined where none is. */
export const longerThan = (seconds: number): number | undefined =>
  timeLimits.find((limit) => limit > seconds)
