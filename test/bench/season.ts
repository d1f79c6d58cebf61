/** How long a season takes to plan, and how near the best it is: twenty jars, a year of weeks. */
import { planSeason, type SeasonFacts } from '../../main/engine/index.ts'
import { integerSolver } from '../../main/service/integer-solver.ts'
import { cellar, jar, stock } from '../engine/season/season-cellar.ts'

const sizes: readonly (readonly [capacityMl: number, count: number])[] = [
  [2000, 4],
  [3000, 4],
  [4000, 6],
  [5000, 3],
  [10_000, 2],
  [15_000, 1],
]

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

export const year = (litres: number): SeasonFacts =>
  cellar({
    jars: sizes.flatMap(([capacityMl, count], size) =>
      Array.from({ length: count }, (_, index) => jar(`jar-${size}-${index}`, capacityMl)),
    ),
    stocks: kindIds.map((id, index) => stock(id, 0, (litres * (6 + (index % 5))) / 8)),
  })

const timeLimitSeconds = 10

export async function run(): Promise<void> {
  const solve = await integerSolver()
  for (const litres of [6, 12, 18]) {
    const started = performance.now()
    const { proof, totals, batches, kinds } = planSeason(year(litres), {
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
      `${kindIds.length} kinds, 20 jars, 52 weeks: ${String(wantedL.toFixed(0)).padStart(4)} L wanted,` +
        ` ${shortL.toFixed(1)} L short; ${batches.length} batches in ${loads} jar-loads;` +
        ` ${seconds.toFixed(1)} s, ${best}`,
    )
  }
}
