/** How long a season takes to plan, and how near the best it is: twenty jars, a year of weeks. */
import { fruitLibrary } from '../../main/engine/fruit/fruit-library.ts'
import { planSeason } from '../../main/engine/index.ts'
import { integerSolver } from '../../main/service/integer-solver.ts'
import { wholeYear } from '../engine/season/season-cellar.ts'

const kindIds = [
  'strawberry',
  'elderflower',
  'raspberry',
  'blackcurrant',
  'sour_cherry',
  'green_walnut',
  'apricot',
  'blackberry',
  'plum',
  'damson',
  'cornelian_cherry',
  'quince',
  'sloe',
  'orange_peel',
  'ginger',
]

/** Many kinds, a little of each: sixty batches and more in the year. */
const manyKindIds = [...fruitLibrary.keys()].slice(0, 45)

const timeLimitSeconds = 10

export async function run(): Promise<void> {
  const solve = await integerSolver()
  for (const [asked, litres] of [
    [kindIds, 6],
    [kindIds, 12],
    [kindIds, 18],
    [manyKindIds, 4],
  ] as const) {
    const started = performance.now()
    const { proof, totals, batches, kinds } = planSeason(wholeYear(asked, litres), {
      solve,
      isExplained: false,
      timeLimitSeconds,
      clock: () => (performance.now() - started) / 1000,
    })
    const seconds = (performance.now() - started) / 1000
    const loads = batches.reduce((sum, { steepJars }) => sum + steepJars.length, 0)
    const wantedL = kinds.reduce((sum, { wantedMl }) => sum + wantedMl, 0) / 1000
    const shortL = totals.shortMl / 1000
    const best = proof.isProven ? 'proven' : `gap ${(100 * proof.gapShare).toFixed(2)} %`
    console.log(
      `${asked.length} kinds, 20 jars, 52 weeks: ${String(wantedL.toFixed(0)).padStart(4)} L wanted,` +
        ` ${shortL.toFixed(1)} L short; ${batches.length} batches in ${loads} jar-loads;` +
        ` ${seconds.toFixed(1)} s, ${best}`,
    )
  }
}
