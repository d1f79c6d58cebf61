/** Time as the caller tells it: the engine has no clock of its own. */

/** Seconds since the question was asked. */
export type Clock = () => number

/** Seconds left of so many from now on. */
export function timeLeft(clock: Clock, seconds: number): () => number {
  const until = clock() + seconds
  return () => until - clock()
}
