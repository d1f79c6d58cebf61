/**
 * The book has changed: whatever was read of it is read again. An answer still on its way was given
 * before the change and must not pass for fresh: invalidating alone lets a first answer through.
 */
import type { QueryClient } from '@tanstack/react-query'

export async function readAgain(queryClient: QueryClient): Promise<void> {
  await queryClient.cancelQueries()
  await queryClient.invalidateQueries()
}
