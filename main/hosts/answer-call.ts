/** The last catch before a host: whatever happens, the caller gets a reply as data. */
import type { ErrorReply, Reply } from '../../shared/schemas/errors.ts'
import type { Service } from '../service/service.ts'

export async function answerCall(
  service: Pick<Service, 'dispatch'>,
  name: unknown,
  request: unknown,
): Promise<Reply<unknown>> {
  if (typeof name !== 'string')
    return failed({ code: 'unknownChannel', message: 'a channel has a name', details: {} })
  try {
    return await service.dispatch(name, request)
  } catch (error) {
    // Only the log may know more: stacks and paths never leave the main process.
    console.error(`${name}:`, error)
    return failed({ code: 'internal', message: 'Ratafia made a mistake', details: {} })
  }
}

const failed = (error: ErrorReply): Reply<never> => ({ ok: false, error })
