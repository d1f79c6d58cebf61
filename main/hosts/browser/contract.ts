/** The contract as JSON Schemas, for tests, fuzzers and scripts. */
import * as z from 'zod'
import { channels } from '../../../shared/channels.ts'

export const contract = () => ({
  channels: Object.fromEntries(
    Object.entries(channels).map(([name, { effect, request, reply }]) => [
      name,
      {
        effect,
        request: z.toJSONSchema(request, { io: 'input' }),
        reply: z.toJSONSchema(reply, { io: 'output' }),
      },
    ]),
  ),
})
