/** The Bench: instruments that need no batch. What cannot be is refused with its numbers. */
import { DomainError, measure } from '../../engine/index.ts'
import { ServiceError } from '../service-error.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

export const benchHandlers: Handlers<ChannelsOf<'bench'>> = {
  'bench.measure': (_session, request) => {
    try {
      return measure(request)
    } catch (error) {
      if (error instanceof DomainError)
        throw new ServiceError(error.code, error.message, { ...error.details })
      throw error
    }
  },
}
