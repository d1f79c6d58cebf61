/**
 * The book has changed: whatever was read of it is read again. An answer still on its way was given
 * before the change; where its screen has been left meanwhile it must not pass for fresh later.
 */
import type { QueryClient } from '@tanstack/react-query'

export function readAgain(queryClient: QueryClient): void {
  void queryClient.cancelQueries({ type: 'inactive' })
  void queryClient.invalidateQueries()
}
