/** Writes deeds in the order of their days, up to fifty moves a request, as the service takes them. */
import type { Answer, Channel, Request } from '../../../shared/channels.ts'
import type { Move } from '../../../shared/schemas/moves.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { Dispatch } from '../../../main/service/service.ts'

/** What is written at an instant; deeds may plan later ones, and what lies after the end never happens. */
export type Deed = (atMs: number) => readonly Move[] | Promise<readonly Move[]>

export interface Clerk {
  readonly ask: <C extends Channel>(channel: C, request: Request<C>) => Promise<Answer<C>>
  readonly plan: (atMs: number, deed: Deed) => void
  /** Writes everything up to an instant, for those who must look. */
  readonly writeUp: (untilMs: number) => Promise<void>
  readonly live: (onDay: (dayMs: number, moves: number) => void) => Promise<number>
}

const mostMoves = 50

export function openClerk(dispatch: Dispatch, endMs: number): Clerk {
  const days = new Map<number, { readonly atMs: number; readonly deed: Deed }[]>()
  let waiting: Move[] = []
  let requests = 0
  let written = 0
  let firstDay = Number.POSITIVE_INFINITY

  const ask: Clerk['ask'] = async (channel, request) => {
    const reply = await dispatch(channel, request)
    if (!reply.ok) throw new Error(`${channel}: ${reply.error.message} ${JSON.stringify(request)}`)
    return reply.value as Answer<typeof channel>
  }

  async function write(moves: Move[]) {
    if (moves.length === 0) return
    await ask('moves.record', { key: `request-${(requests += 1)}`, moves })
    written += moves.length
  }

  async function writeUp(untilMs: number) {
    const until = new Date(untilMs).toISOString()
    const inOrder = waiting.sort((a, b) => (a.at < b.at ? -1 : Number(a.at > b.at)))
    const moves = inOrder.filter(({ at }) => at <= until)
    waiting = inOrder.slice(moves.length)
    for (let from = 0; from < moves.length; from += mostMoves)
      await write(moves.slice(from, from + mostMoves))
  }

  return {
    ask,
    writeUp,
    plan: (atMs, deed) => {
      if (atMs > endMs) return
      const day = Math.floor(atMs / msPerDay)
      firstDay = Math.min(firstDay, day)
      const there = days.get(day)
      if (there) there.push({ atMs, deed })
      else days.set(day, [{ atMs, deed }])
    },
    live: async (onDay) => {
      for (let day = firstDay; day * msPerDay <= endMs; day += 1) {
        // Deeds may still plan something for later the same day.
        for (let next = earliest(days.get(day)); next; next = earliest(days.get(day))) {
          const moves = await next.deed(next.atMs)
          waiting.push(...moves)
        }
        days.delete(day)
        if (waiting.length >= mostMoves) await writeUp((day + 1) * msPerDay)
        onDay(day * msPerDay, written + waiting.length)
      }
      await writeUp(endMs)
      return written
    },
  }
}

/** Takes out the first of a day's deeds; of equal instants the one planned first. */
function earliest<T extends { readonly atMs: number }>(deeds: T[] = []): T | undefined {
  let first = 0
  for (let at = 1; at < deeds.length; at += 1)
    if ((deeds[at] as T).atMs < (deeds[first] as T).atMs) first = at
  return deeds.splice(first, 1)[0]
}
