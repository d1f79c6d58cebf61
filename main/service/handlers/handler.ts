/** What answers one channel: gets the checked request, returns the reply or throws a ServiceError. */
import type { Answer, Channel, ParsedRequest } from '../../../shared/channels.ts'
import type { Session } from '../session.ts'

export type Handler<C extends Channel> = (
  session: Session,
  request: ParsedRequest<C>,
) => Answer<C> | Promise<Answer<C>>

export type Handlers<C extends Channel = Channel> = { [Name in C]: Handler<Name> }

/** Channels whose name begins with an area, so that each file answers for one area whole. */
export type ChannelsOf<Area extends string> = Extract<Channel, `${Area}.${string}`>

export const nowMs = (session: Session): number => session.options.now().getTime()
