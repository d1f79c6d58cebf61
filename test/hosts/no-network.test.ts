/** Nothing of a cellar leaves the machine: the program opens no connection and looks up no name. */
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { startHost, type HostProcess } from '../e2e/host-process.ts'

const recorder = pathToFileURL(join(import.meta.dirname, 'record-connections.ts')).href

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'ratafia-network-'))
})
afterEach(() => rmSync(folder, { recursive: true }))

const recording = () => ({
  NODE_OPTIONS: `--import=${recorder}`,
  RECORD_CONNECTIONS: join(folder, 'connections.txt'),
})
const recorded = () => {
  const file = join(folder, 'connections.txt')
  return existsSync(file) ? readFileSync(file, 'utf8') : ''
}

/** Asks until the job that `begin` began is over; its last state. */
async function done(host: HostProcess, state: string, begin: string, request: { jobId: string }) {
  const value = async (channel: string, asked: unknown) => {
    const reply = await host.call(channel, asked)
    if (!reply.ok) throw new Error(`${channel}: ${reply.error.message}`)
    return reply.value as { state: string }
  }
  let job = await value(begin, request)
  while (job.state === 'running') {
    await new Promise((resolve) => setTimeout(resolve, 100))
    job = await value(state, { jobId: request.jobId })
  }
  return job.state
}

it('reaches out to nothing, whatever a maker does', { timeout: 240_000 }, async () => {
  const host = await startHost(join(folder, 'cellar.ratafia'), { env: recording() })
  try {
    for (const channel of ['cellar.openDemo', 'today.list', 'calendar.file', 'season.wishes'])
      expect(await host.call(channel), channel).toMatchObject({ ok: true })
    const plan = { jobId: 'plan', isExplained: false, timeLimitSeconds: 5 }
    expect(await done(host, 'season.planState', 'season.startPlan', plan)).toBe('done')
    expect(await done(host, 'backups.job', 'exports.start', { jobId: 'out' })).toBe('done')
    expect(await host.call('cellar.openOwn')).toMatchObject({ ok: true })
    expect(await done(host, 'backups.job', 'backups.start', { jobId: 'kept' })).toBe('done')
  } finally {
    await host.stop()
  }
  expect(recorded()).toBe('')
})

it('would be seen to reach out', async () => {
  const reaching = [
    "import net from 'node:net'",
    "net.connect(9, '127.0.0.1').on('error', () => {})",
    "await fetch('http://localhost:49151/').catch(() => {})",
  ].join('\n')
  const args = ['--input-type=module', '-e', reaching]
  const child = spawn(process.execPath, args, { env: { ...process.env, ...recording() } })
  await once(child, 'exit')
  expect(recorded()).toMatch(/^connect .*"port":9,/m)
  expect(recorded()).toMatch(/^connect .*"port":"?49151/m)
  expect(recorded()).toMatch(/^lookup "localhost"$/m)
})
