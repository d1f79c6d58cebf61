/** The bridge over the loopback server: calls as POST, changes as a stream that comes back. */
import type { Bridge } from '../../shared/channels.ts'
import type { Reply } from '../../shared/schemas/errors.ts'

const reconnectMs = 1000

export function httpBridge(token: string): Bridge {
  const headers = { Authorization: `Bearer ${token}` }
  const listeners = new Set<() => void>()
  let isFollowing = false
  let isListening = false
  /** Something was read, or the stream was gone, while changes were not told here. */
  let mayBeStale = false

  const tellAll = () => {
    for (const listener of listeners) listener()
  }

  async function follow(): Promise<void> {
    for (;;) {
      try {
        const response = await fetch('/events', { headers })
        // A new launch has a new secret: this window can never be let in again.
        if (response.status === 401) return
        isListening = true
        if (mayBeStale) tellAll()
        mayBeStale = false
        if (response.body) await readEvents(response.body, tellAll)
      } catch {
        // The host is gone, or asleep with the machine: it may come back.
      }
      if (isListening) mayBeStale = true
      isListening = false
      await new Promise((done) => setTimeout(done, reconnectMs))
    }
  }

  return {
    call: async (name, request) => {
      if (!isListening) mayBeStale = true
      try {
        const response = await fetch(`/rpc/${encodeURIComponent(name)}`, {
          method: 'POST',
          headers: { ...headers, 'Content-Type': 'application/json' },
          body: JSON.stringify(request),
        })
        if (response.ok) return (await response.json()) as Reply<unknown>
        return lost(await response.text(), response.status === 401)
      } catch {
        return lost('the host does not answer', true)
      }
    },
    onChange: (listener) => {
      listeners.add(listener)
      if (!isFollowing) {
        isFollowing = true
        void follow()
      }
      return () => void listeners.delete(listener)
    },
  }
}

/** Calls `onEvent` for each event of the stream; comments, such as heartbeats, are passed over. */
async function readEvents(
  body: ReadableStream<Uint8Array<ArrayBuffer>>,
  onEvent: () => void,
): Promise<void> {
  let rest = ''
  for (const reader = body.pipeThrough(new TextDecoderStream()).getReader(); ;) {
    const { done, value } = await reader.read()
    if (done) return
    const blocks = (rest + value).split('\n\n')
    rest = blocks.pop() ?? ''
    for (const block of blocks) if (block.startsWith('data:')) onEvent()
  }
}

const lost = (message: string, isLost: boolean): Reply<never> => ({
  ok: false,
  error: { code: 'internal', message, details: isLost ? { lost: true } : {} },
})
