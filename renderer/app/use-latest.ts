/**
 * Asks about what stands in the form now, one question at a time: while one is being answered the
 * form may change as fast as a slider moves, and only the newest is asked next. The last answer stays.
 */
import { useState } from 'react'
import type { UseQueryResult } from '@tanstack/react-query'
import type { Answer, Channel, Request } from '../../shared/channels.ts'
import type { CallError } from './calls.ts'
import { useRead } from './queries.ts'

/** Answers to passing positions of a slider are not kept. */
const keptMs = 2000

export const useLatest = <C extends Channel>(
  channel: C,
  wanted: Request<C>,
  isEnabled: boolean,
): UseQueryResult<Answer<C>, CallError> => useLatestAnswer(channel, wanted, isEnabled).query

/** The same, and whether the answer is already the one to what stands in the form now. */
export function useLatestAnswer<C extends Channel>(
  channel: C,
  wanted: Request<C>,
  isEnabled: boolean,
): { query: UseQueryResult<Answer<C>, CallError>; isOfWanted: boolean } {
  const [asked, setAsked] = useState(wanted)
  // Whoever looks at nothing else of a query is not drawn anew just because it is on its way.
  const query = useRead(channel, asked, { isEnabled, keepsLast: true, keptMs })
  const { data, error, isPlaceholderData } = query
  const isOnItsWay = isEnabled && !error && (data === undefined || isPlaceholderData)
  const isBehind = JSON.stringify(wanted) !== JSON.stringify(asked)
  // While rendering, so that the question leaves with the movement that raised it.
  if (isBehind && !isOnItsWay) setAsked(() => wanted)
  return { query, isOfWanted: !isBehind && data !== undefined && !isPlaceholderData }
}
