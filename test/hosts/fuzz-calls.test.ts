/** Some seconds of what `npm run fuzz` does for an hour. */
import { expect, it } from 'vitest'
import { fuzzCalls, fuzzedChannels } from '../fuzz/fuzz-calls.ts'

it(
  'answers 1,000 sound and broken calls as data, and writes nothing on a refused one',
  { timeout: 600_000 },
  async () => {
    const counts = await fuzzCalls({ calls: 1000, seed: 2026 })
    expect(counts.faults).toEqual([])
    expect(counts.restarts).toBe(1)
    expect(counts.byChannel.size).toBeGreaterThan(0.9 * fuzzedChannels.length)
    expect(counts.accepted).toBeGreaterThan(300)
    expect(counts.refused).toBeGreaterThan(300)
    expect(counts.overHttp).toBeGreaterThan(50)
  },
)
