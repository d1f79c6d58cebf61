/** How warm the batch is kept now, as its moves last said. */
import type { LedgerStep } from '../../../../shared/schemas/cellar.ts'

/** What the forecast reckons with where nobody said otherwise. */
const usualC = 20

export function keptTemperatureC(steps: readonly LedgerStep[]): number {
  const said = steps
    .flatMap(({ recorded: { move } }) => (move.kind === 'keep' ? [move] : []))
    .filter(({ temperatureC }) => temperatureC !== undefined)
    .sort((a, b) => a.at.localeCompare(b.at))
  return said.at(-1)?.temperatureC ?? usualC
}
