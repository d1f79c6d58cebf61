/** The open windows' event streams: one line to each after every write, a heartbeat between. */
import type { ServerResponse } from 'node:http'
import type { BookChanged } from '../../../shared/channels.ts'

export interface EventStreams {
  add: (response: ServerResponse) => void
  tell: (event: BookChanged) => void
  end: () => void
}

export function eventStreams(options: {
  heartbeatMs: number
  /** Called when the number of open streams changes. */
  onCount: (count: number) => void
}): EventStreams {
  const open = new Set<ServerResponse>()
  const writeAll = (text: string) => {
    for (const response of open) response.write(text)
  }
  const heartbeat = setInterval(writeAll, options.heartbeatMs, ': still here\n\n').unref()

  return {
    add: (response) => {
      open.add(response)
      response.on('close', () => {
        open.delete(response)
        options.onCount(open.size)
      })
      response.write(': listening\n\n')
      options.onCount(open.size)
    },
    tell: (event) => writeAll(`data: ${JSON.stringify(event)}\n\n`),
    end: () => {
      clearInterval(heartbeat)
      for (const response of open) response.end()
    },
  }
}
