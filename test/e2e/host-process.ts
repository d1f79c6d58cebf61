/** The real starter as a process of its own, with the browser host behind it. */
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import type { Reply } from '../../shared/schemas/errors.ts'

export interface HostProcess {
  /** The whole link, secret included. */
  link: string
  origin: string
  token: string
  /** All that was printed so far. */
  output: () => string
  call: (channel: string, request?: unknown) => Promise<Reply<unknown>>
  /** Ends it as a system would; resolves to how that went. */
  stop: () => Promise<{ exitCode: number | null; ms: number }>
}

const startLimitMs = 30_000

export async function startHost(cellarFile: string, ...more: string[]): Promise<HostProcess> {
  const args = ['main/node24.mjs', 'main/start.ts', '--host', 'browser', '--no-open', '--port', '0']
  const child = spawn(process.execPath, [...args, '--cellar', cellarFile, ...more])
  let printed = ''
  const link = await new Promise<string>((found, failed) => {
    const limit = setTimeout(() => {
      child.kill()
      failed(new Error(`no link within ${startLimitMs} ms:\n${printed}`))
    }, startLimitMs)
    const read = (text: string) => {
      printed += text
      const [, seen] = /^Ratafia is open at (\S+)$/m.exec(printed) ?? []
      if (seen === undefined) return
      clearTimeout(limit)
      found(seen)
    }
    child.stdout.setEncoding('utf8').on('data', read)
    child.stderr.setEncoding('utf8').on('data', read)
    child.once('exit', (code) => failed(new Error(`the starter ended with ${code}:\n${printed}`)))
  })
  const { origin, hash } = new URL(link)
  const token = hash.slice(1)

  return {
    link,
    origin,
    token,
    output: () => printed,
    call: async (channel, request = {}) => {
      const response = await fetch(`${origin}/rpc/${channel}`, {
        method: 'POST',
        headers: { Authorization: `Bearer ${token}`, 'Content-Type': 'application/json' },
        body: JSON.stringify(request),
      })
      if (!response.ok) throw new Error(`${channel}: HTTP ${response.status}`)
      return (await response.json()) as Reply<unknown>
    },
    stop: async () => {
      const started = performance.now()
      if (child.exitCode === null && child.signalCode === null) {
        child.kill('SIGTERM')
        await once(child, 'exit')
      }
      return { exitCode: child.exitCode, ms: performance.now() - started }
    },
  }
}
