/** Starts the host over a book, asks it, and kills it. */
import { spawn, type ChildProcess } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import type { Answer, Channel, Request } from '../../shared/channels.ts'
import type { Reply } from '../../shared/schemas/errors.ts'

export interface Hosted {
  /** The answer; throws where the host refuses, and `HostGone` where it is gone. */
  ask: <C extends Channel>(channel: C, request: Request<C>) => Promise<Answer<C>>
  /** Resolves when the process is no more. */
  kill: () => Promise<void>
  /** Asks it to end; resolves to its exit code. */
  stop: () => Promise<number | null>
}

export class HostGone extends Error {
  override name = 'HostGone'
}

const root = join(import.meta.dirname, '..', '..')

export const hostFiles = {
  sources: join(root, 'main', 'hosts', 'browser', 'main.ts'),
  /** Starts faster. */
  built: join(root, 'out', 'main', 'browser.js'),
} as const

export async function hosted(cellarFile: string, hostFile: string): Promise<Hosted> {
  const script = join(import.meta.dirname, 'host.ts')
  const args = [script, cellarFile, hostFile]
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'pipe'] })
  const ended = once(child, 'exit')
  const link = await linkOf(child)
  const { origin, hash } = new URL(link)
  return {
    ask: async (channel, request) => {
      const reply = await posted(`${origin}/rpc/${channel}`, hash.slice(1), request)
      if (!reply.ok) throw new Error(`${channel}: ${reply.error.code}: ${reply.error.message}`)
      return reply.value as Answer<typeof channel>
    },
    kill: async () => {
      child.kill('SIGKILL')
      await ended
    },
    stop: async () => {
      child.kill('SIGTERM')
      await ended
      return child.exitCode
    },
  }
}

async function posted(url: string, token: string, request: unknown): Promise<Reply<unknown>> {
  try {
    const response = await fetch(url, {
      method: 'POST',
      headers: { Authorization: `Bearer ${token}`, 'Content-Type': 'application/json' },
      body: JSON.stringify(request),
    })
    return (await response.json()) as Reply<unknown>
  } catch (error) {
    throw new HostGone('the host is gone', { cause: error })
  }
}

function linkOf(child: ChildProcess): Promise<string> {
  return new Promise((found, failed) => {
    let said = ''
    child.stderr?.setEncoding('utf8').on('data', (text: string) => {
      said += text
    })
    child.stdout?.setEncoding('utf8').on('data', (text: string) => {
      said += text
      const [, link] = /Ratafia is open at (\S+)/.exec(said) ?? []
      if (link !== undefined) found(link)
    })
    child.once('exit', (code) => failed(new Error(`the host ended with ${code}:\n${said}`)))
  })
}
