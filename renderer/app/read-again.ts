/**
 * The book has changed: whatever was read of it is read again. An answer still on its way was given
 * before the change and must not pass for fresh: invalidating alone lets a first answer through.
 */
import type { QueryClient } from '@tanstack/react-query'

/** A window hears of its own write twice, by the reply and by the host's news: both come within this. */
const togetherMs = 20

const waiting = new WeakMap<QueryClient, Promise<void>>()

export async function readAgain(queryClient: QueryClient): Promise<void> {
  await queryClient.cancelQueries()
  const begun = waiting.get(queryClient)
  if (begun) return begun
  const soon = new Promise((resolve) => setTimeout(resolve, togetherMs)).then(() => {
    waiting.delete(queryClient)
    return queryClient.invalidateQueries()
  })
  waiting.set(queryClient, soon)
  return soon
}
