/** One hook to read a channel and one to write it; both typed by the contract. */
import {
  keepPreviousData,
  useMutation,
  useQuery,
  useQueryClient,
  type UseMutationResult,
  type UseQueryResult,
} from '@tanstack/react-query'
import type { Answer, Channel, Request } from '../../shared/channels.ts'
import { useBridge } from './bridge-context.tsx'
import { call, type CallError } from './calls.ts'
import { readAgain } from './read-again.ts'
import { eventOfWrite } from './undo/event-of-write.ts'
import { useUndoEvents } from './undo/undo-context.tsx'

export interface ReadOptions<C extends Channel> {
  /** False holds the question back, for a form that is not yet complete. */
  isEnabled?: boolean
  /** True keeps showing the last answer while a changed question is being answered. */
  keepsLast?: boolean
  /** How long an answer is kept that nothing shows any more; left out, as long as usual. */
  keptMs?: number
  /** Asks again after so long, for work that goes on meanwhile; false asks no more. */
  everyMs?: (last: Answer<C> | undefined) => number | false
}

export function useRead<C extends Channel>(
  channel: C,
  request: Request<C>,
  { isEnabled = true, keepsLast = false, keptMs, everyMs }: ReadOptions<C> = {},
): UseQueryResult<Answer<C>, CallError> {
  const bridge = useBridge()
  return useQuery<Answer<C>, CallError>({
    queryKey: [channel, request],
    queryFn: () => call(bridge, channel, request),
    enabled: isEnabled,
    ...(keptMs !== undefined && { gcTime: keptMs }),
    ...(everyMs && {
      refetchInterval: ({ state }) => (state.error ? false : everyMs(state.data)),
    }),
    // The cast only forgets that the placeholder function is generic over our own answer.
    ...(keepsLast && { placeholderData: keepPreviousData as never }),
  })
}

/** A question asked by hand, which leaves the book as it is. */
export function useAsk<C extends Channel>(
  channel: C,
): UseMutationResult<Answer<C>, CallError, Request<C>> {
  const bridge = useBridge()
  return useMutation<Answer<C>, CallError, Request<C>>({
    mutationKey: [channel],
    mutationFn: (request) => call(bridge, channel, request),
  })
}

/**
 * Everything read is read again after a write: a move in one jar shows on many screens. What it did
 * to the ledger can be taken back from there on.
 */
export function useWrite<C extends Channel>(
  channel: C,
): UseMutationResult<Answer<C>, CallError, Request<C>> {
  const bridge = useBridge()
  const queryClient = useQueryClient()
  const tellUndo = useUndoEvents()
  return useMutation<Answer<C>, CallError, Request<C>>({
    mutationKey: [channel],
    mutationFn: (request) => call(bridge, channel, request),
    onSuccess: (answer, request) => {
      const event = eventOfWrite(channel, request, answer)
      if (event) tellUndo(event)
      void readAgain(queryClient)
    },
  })
}
