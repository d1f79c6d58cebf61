/**
 * Asks about what stands in the form now, one question at a time: while one is being answered the
 * form may change as fast as a slider moves, and only the newest is asked next. The last answer stays.
 */
import { useState } from 'react'
import type { Channel, Request } from '../../shared/channels.ts'
import { useRead } from './queries.ts'

/** Answers to passing positions of a slider are not kept. */
const keptMs = 2000

export function useLatest<C extends Channel>(channel: C, wanted: Request<C>, isEnabled: boolean) {
  const [asked, setAsked] = useState(wanted)
  const query = useRead(channel, asked, { isEnabled, keepsLast: true, keptMs })
  const { isFetching } = query
  const isBehind = JSON.stringify(wanted) !== JSON.stringify(asked)
  // While rendering, so that the question leaves with the movement that raised it.
  if (isBehind && !(isFetching && isEnabled)) setAsked(wanted)
  return { ...query, isBehind }
}
