/** The real starter as a process of its own, with the browser host behind it. */
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import type { Reply } from '../../shared/schemas/errors.ts'

export interface HostProcess {
  /** The whole link, secret included. */
  link: string
  origin: string
  token: string
  /** All of its stdout so far. */
  output: () => string
  call: (channel: string, request?: unknown) => Promise<Reply<unknown>>
  /** Ends it as a system would; resolves to how that went. */
  stop: () => Promise<{ exitCode: number | null; ms: number }>
  /** Resolves when it has ended by itself. */
  ended: Promise<unknown>
}

/** A demo is filled first, and the machine may be busy. */
const startLimitMs = 120_000

/** `args` are more of the starter's own, such as `--demo`. */
export async function startHost(
  cellarFile: string,
  { args = ['--no-open'], env = {} }: { args?: string[]; env?: NodeJS.ProcessEnv } = {},
): Promise<HostProcess> {
  const starter = ['main/node24.mjs', 'main/start.ts', '--host', 'browser', '--port', '0']
  const child = spawn(process.execPath, [...starter, '--cellar', cellarFile, ...args], {
    env: { ...process.env, ...env },
  })
  let printed = ''
  let said = ''
  const link = await new Promise<string>((found, failed) => {
    const limit = setTimeout(() => {
      child.kill()
      failed(new Error(`no link within ${startLimitMs} ms:\n${said}`))
    }, startLimitMs)
    const read = (text: string) => {
      printed += text
      const [, seen] = /^Ratafia is open at (\S+)$/m.exec(printed) ?? []
      if (seen === undefined) return
      clearTimeout(limit)
      found(seen)
    }
    child.stdout.setEncoding('utf8').on('data', read)
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      said += text
    })
    child.once('exit', (code) => failed(new Error(`the starter ended with ${code}:\n${said}`)))
  })
  const ended = once(child, 'exit')
  const { origin, hash } = new URL(link)
  const [token = ''] = hash.slice(1).split('/')

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
        await ended
      }
      return { exitCode: child.exitCode, ms: performance.now() - started }
    },
    ended,
  }
}
