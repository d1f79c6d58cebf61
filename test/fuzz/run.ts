/** `npm run fuzz [-- CALLS [SEED]]`: the long version of what `npm test` does for some seconds. */
import { fuzzCalls } from './fuzz-calls.ts'
import type { FuzzCounts } from './fuzz-counts.ts'

const [calls = 100_000, seed = 8] = process.argv.slice(2).map(Number)
const started = performance.now()
const seconds = () => Math.round((performance.now() - started) / 1000)

const kindsTold = new Set<string>()
let faultsTold = 0

/** One line on each fault as it comes, the first of a kind with all that is known of it. */
function tell({ faults }: FuzzCounts) {
  for (const { what, channel, seed: ofBook, call, told } of faults.slice(faultsTold)) {
    const isNew = !kindsTold.has(`${what} ${channel}`)
    kindsTold.add(`${what} ${channel}`)
    console.log(`${what} in ${channel}, seed ${ofBook}, call ${call}${isNew ? `: ${told}` : ''}`)
  }
  faultsTold = faults.length
}

const counts = await fuzzCalls({
  calls,
  seed,
  onCall: (sofar) => {
    tell(sofar)
    if (sofar.calls % 5000 === 0)
      console.log(`${sofar.calls} calls, ${sofar.faults.length} faults, ${seconds()} s`)
  },
})
tell(counts)

const channels = [...counts.byChannel].map(([name, count]) => ({ name, ...count }))
const by = (of: 'calls' | 'accepted' | 'slowestMs') =>
  channels.toSorted((a, b) => a[of] - b[of]).map((each) => `${each.name} ${Math.round(each[of])}`)
const ends = (list: string[], many = 3) => `${list.slice(0, many).join(', ')} … ${list.at(-1)}`
const { byChannel: _, faults, ...plain } = counts
for (const [name, count] of Object.entries(plain)) console.log(`${name.padEnd(18)}${count}`)
console.log(`${'channels'.padEnd(18)}${channels.length}`)
console.log(`${'calls by channel'.padEnd(18)}${ends(by('calls'))}`)
console.log(`${'accepted of it'.padEnd(18)}${ends(by('accepted'), 12)}`)
console.log(`${'slowest, ms'.padEnd(18)}${by('slowestMs').slice(-8).join(', ')}`)
for (const what of ['crash', 'internal', 'status', 'wrote', 'lost', 'unsound'] as const)
  console.log(`${what.padEnd(18)}${faults.filter((fault) => fault.what === what).length}`)
console.log(`${'seconds'.padEnd(18)}${seconds()}`)
process.exit(faults.length === 0 ? 0 : 1)
