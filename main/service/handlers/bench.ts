/** The Bench: instruments that need no batch. What cannot be is refused with its numbers. */
import { measure } from '../../engine/index.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

export const benchHandlers: Handlers<ChannelsOf<'bench'>> = {
  'bench.measure': (_session, request) => measure(request),
}
