/** A few of the deaths that `npm run soak` deals by the thousand. */
import { expect, it } from 'vitest'
import { killHosts } from '../soak/kill-hosts.ts'

it(
  'loses no acknowledged move when it is killed while it writes',
  { timeout: 600_000 },
  async () => {
    const counts = await killHosts({ kills: 8, seed: 8, isBuilt: false })
    expect(counts).toMatchObject({ kills: 8, lost: 0, torn: 0, unsound: 0 })
    expect(counts.acknowledged).toBeGreaterThan(0)
  },
)
