/** Bytes as nobody's library would send them, and what comes back until the other side closes. */
import { connect } from 'node:net'

export interface Heard {
  /** All that was answered. */
  readonly text: string
  readonly statuses: readonly number[]
}

/** `parts` are sent one after the other, `pauseMs` apart; the connection is left open by us. */
export function sendRaw(origin: string, parts: readonly string[], pauseMs = 0): Promise<Heard> {
  const { hostname, port } = new URL(origin)
  return new Promise((done, failed) => {
    const socket = connect(Number(port), hostname)
    let text = ''
    const timers = parts.map((part, index) =>
      setTimeout(() => void (socket.writable && socket.write(part, 'latin1')), index * pauseMs),
    )
    socket.setEncoding('latin1').on('data', (more: string) => {
      text += more
    })
    // Cut off in the midst of a request is an answer too.
    socket.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'ECONNRESET' && error.code !== 'EPIPE') failed(error)
    })
    socket.on('close', () => {
      for (const timer of timers) clearTimeout(timer)
      const statuses = [...text.matchAll(/^HTTP\/1\.1 (\d{3})/gm)].map(([, status]) =>
        Number(status),
      )
      done({ text, statuses })
    })
  })
}
