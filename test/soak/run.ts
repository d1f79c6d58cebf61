/** `npm run soak [-- KILLS [SEED]]`: the long version of what `npm test` does a few times. */
import { join } from 'node:path'
import { buildIfStale } from '../../main/hosts/build-if-stale.ts'
import { killHosts } from './kill-hosts.ts'

const [kills = 1000, seed = 8] = process.argv.slice(2).map(Number)
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
process.exitCode = failures === 0 ? 0 : 1
