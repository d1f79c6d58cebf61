import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { expect, it } from 'vitest'

it(
  'ends the planner in the midst of a solve when whoever asked is killed',
  { timeout: 120_000 },
  async () => {
    const asker = spawn(process.execPath, [join(import.meta.dirname, 'season-asker.ts')])
    const said: string[] = []
    asker.stderr.setEncoding('utf8').on('data', (text: string) => said.push(text))
    await once(asker.stdout, 'data')
    asker.kill('SIGKILL')
    // The planner has the same stderr: it closes when both are gone, an hour before the plan is due.
    await once(asker.stderr, 'close')
    expect(said).toEqual([])
    expect(asker.signalCode).toBe('SIGKILL')
  },
)
