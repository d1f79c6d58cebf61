/**
 * `npm run soak [-- KILLS [SEED [CALLS]]]`: the long versions of what `npm test` does a few times: the
 * host is killed, then every channel is called with what its schema allows and what it does not.
 */
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { buildIfStale } from '../../main/hosts/build-if-stale.ts'
import { killHosts } from './kill-hosts.ts'

const [kills = 1000, seed = 8, calls = 100_000] = process.argv.slice(2).map(Number)
buildIfStale(join(import.meta.dirname, '..', '..'))
const started = performance.now()
const counts = await killHosts({
  kills,
  seed,
  isBuilt: true,
  onKill: (sofar) => {
    if (sofar.kills % 25 === 0) console.log(`${sofar.kills} kills, ${sofar.lost} lost`)
  },
})
for (const [name, count] of Object.entries(counts)) console.log(`${name.padEnd(18)}${count}`)
console.log(`${'seconds'.padEnd(18)}${Math.round((performance.now() - started) / 1000)}`)
const failures = counts.lost + counts.torn + counts.unsound

console.log('\nfuzz')
const fuzz = join(import.meta.dirname, '..', 'fuzz', 'run.ts')
const args = [fuzz, String(calls), String(seed)]
const { status } = spawnSync(process.execPath, args, { stdio: 'inherit' })
process.exitCode = failures === 0 && status === 0 ? 0 : 1
