/** The later moves that stand in the way, as a refused write names them. */
import { channels } from '../../../shared/channels.ts'
import { CallError } from '../../app/calls.ts'
import type { Preview } from './use-preview.ts'

const { breaks: schema } = channels['moves.preview'].reply.shape

export function breaksOf(error: Error | null): Preview['breaks'] {
  if (!(error instanceof CallError)) return []
  const parsed = schema.safeParse(error.reply.details['breaks'])
  return parsed.success ? parsed.data : []
}
